import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Formula, Moment } from '../../shared/documents/formula.ts';
import { PACES, type Pace } from '../../shared/documents/kit.ts';
import type { RunEvent, Trace } from '../../shared/documents/trace.ts';
import { certainFrom } from '../../shared/goals/certain.ts';
import { evaluate } from '../../shared/goals/evaluate.ts';
import { isMet } from '../../shared/goals/margin.ts';
import { at, CONTEXT, run, samplesAt } from '../unit/goals/hand-made.ts';
import '../seed.ts';

const LANDING = { kind: 'in-area', area: 'landing' } as const;

/** What a robot does in one sample: inside or before the landing, and one event at most. */
interface Step {
  readonly inside: boolean;
  readonly does: 'turn' | 'gate' | 'pace' | 'signal' | 'finish' | null;
  readonly pace: Pace;
}

const step: fc.Arbitrary<Step> = fc.record({
  inside: fc.boolean(),
  does: fc.constantFrom('turn', 'gate', 'pace', 'signal', 'finish', null, null, null),
  pace: fc.constantFrom(...PACES),
});

/** A run of one sample a step, 5 mm each. */
function runOf(steps: readonly Step[]): Trace {
  const events: RunEvent[] = [];
  let pace: Pace = 'steady';
  steps.forEach((now, i) => {
    const place = { t: i / 50, x: now.inside ? 130 : 90, y: 120, way: 5 * i };
    if (now.does === 'pace' && now.pace !== pace)
      events.push({ kind: 'pace', ...place, from: pace, pace: now.pace });
    if (now.does === 'pace') pace = now.pace;
    if (now.does === 'turn') events.push({ kind: 'turn-back', ...place, pace });
    if (now.does === 'gate') events.push(at.gate('market', { ...place, pace }));
    if (now.does === 'signal') events.push(at.acting('signal', { ...place, pace }));
    const arrived = events.some((event) => event.kind === 'finish');
    if (now.does === 'finish' && !arrived) events.push(at.finish({ ...place, pace }));
  });
  const last = steps.length - 1;
  const finish = events.some((event) => event.kind === 'finish') ? -5 : 5;
  events.push(at.end('lost', { t: last / 50, way: 5 * last, pace }));
  const places = steps.map(({ inside }, i) => ({ x: inside ? 130 : 90, y: 120, way: 5 * i, count: 1 }));
  return run(events, { samples: samplesAt(places), finish });
}

const seconds = fc.integer({ min: 0, max: 30 }).map((samples) => samples / 50);
const span = fc.tuple(seconds, seconds).map((ends) => ({ from: Math.min(...ends), to: Math.max(...ends) }));
const small = fc.integer({ min: 0, max: 3 });
const how = fc.constantFrom('exactly', 'at-least', 'at-most');
const bound = fc.constantFrom('at-least', 'at-most');
const length = fc.integer({ min: 0, max: 200 });
const soFar = fc.oneof(
  fc.record({ kind: fc.constant('turn-back' as const), count: small }),
  fc.record({
    kind: fc.constant('gates' as const),
    gates: fc.constant<string[]>(['market']),
    ordered: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('act-in' as const),
    act: fc.constant('signal' as const),
    area: fc.constant('landing'),
  }),
  fc.record({ kind: fc.constant('way' as const), how: bound, length }),
  fc.record({
    kind: fc.constant('stretches' as const),
    pace: fc.constantFrom(...PACES),
    how,
    count: small,
    length,
  }),
);
const { moment } = fc.letrec<{ moment: Moment }>((tie) => ({
  moment: fc.oneof(
    { maxDepth: 3 },
    soFar,
    fc.constant(LANDING),
    fc.record({ kind: fc.constant('pace' as const), pace: fc.constantFrom(...PACES) }),
    fc.record({ kind: fc.constant('not' as const), of: tie('moment') }),
    fc.record({
      kind: fc.constantFrom('and' as const, 'or' as const),
      of: fc.array(tie('moment'), { minLength: 1, maxLength: 3 }),
    }),
    fc.record({
      kind: fc.constantFrom('always' as const, 'eventually' as const),
      of: tie('moment'),
      window: fc.option(span, { nil: undefined }),
    }),
    fc.record({ kind: fc.constant('until' as const), hold: tie('moment'), until: tie('moment') }),
  ),
}));
const { formula } = fc.letrec<{ formula: Formula }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 3 },
    soFar,
    fc.constant({ kind: 'finish' as const }),
    span.map((ends) => ({ kind: 'time' as const, ...ends })),
    fc.record({ kind: fc.constant('pace-at-end' as const), pace: fc.constantFrom(...PACES) }),
    fc.record({ kind: fc.constant('lasting' as const), of: moment, how: bound, time: seconds }),
    moment.filter((one) => ['always', 'eventually', 'until'].includes(one.kind)) as fc.Arbitrary<Formula>,
    fc.record({ kind: fc.constant('not' as const), of: tie('formula') }),
    fc.record({
      kind: fc.constantFrom('and' as const, 'or' as const),
      of: fc.array(tie('formula'), { minLength: 1, maxLength: 3 }),
    }),
  ),
}));

test('what is certain of any formula is so however the run goes on from there', () => {
  const steps = fc.array(step, { minLength: 1, maxLength: 30 });
  let early = 0;
  fc.assert(
    fc.property(formula, steps, steps, (wish, first, other) => {
      const found = certainFrom(wish, runOf(first), CONTEXT);
      const known = found ? Math.round(found.t * 50) + 1 : first.length;
      // What the end itself tells, no other way on has to agree with.
      if (!found || known === first.length) return;
      early++;
      for (const rest of [first.slice(known), other, []]) {
        const whole = evaluate(wish, runOf([...first.slice(0, known), ...rest]), CONTEXT);
        expect(isMet(whole)).toBe(found.met);
      }
    }),
    { numRuns: 400 },
  );
  expect(early).toBeGreaterThan(50);
});
