import { describe, expect, test } from 'vitest';
import type { Formula, Moment } from '../../shared/documents/formula.ts';
import { UNLIMITED } from '../../shared/goals/margin.ts';
import {
  either,
  pointwise,
  type Scale,
  type Signal,
  sometime,
  turned,
  until,
} from '../../shared/goals/temporal.ts';
import { at, CONTEXT, measured, run, SHEET, samplesAt } from '../unit/goals/hand-made.ts';
import { IN_DENSE_TIME, IN_STEPS, type Pairs, SECOND_TOOL, SIGNALS } from './published-robustness.ts';

/** Semantics after Fainekos and Pappas 2009 and Donzé and Maler 2010; sources of the values stand beside them. */
type Plain = Signal<number>;
const EVER = Number.POSITIVE_INFINITY;
const SCALE: Scale<number> = { rank: (value) => value, least: -EVER, most: EVER };

const opposite = (a: Plain): Plain => pointwise([a], ([value]) => -value!);
const or = (a: Plain, b: Plain): Plain => either([a, b], SCALE);
const and = (a: Plain, b: Plain): Plain => either([a, b], turned(SCALE));
const eventually = (a: Plain, from = 0, to = EVER): Plain => sometime(a, from, to, SCALE);
const always = (a: Plain, from = 0, to = EVER): Plain => sometime(a, from, to, turned(SCALE));
const arithmetic = (a: Plain, b: Plain, join: (x: number, y: number) => number): Plain =>
  pointwise([a, b], ([x, y]) => join(x!, y!));

/** Discrete time as steps of one second. */
const inSteps = (values: readonly number[]): Plain => ({
  times: values.map((_, i) => i),
  values,
  end: values.length,
});
/** The past is the future of the steps in their opposite order. */
const backwards = ({ times, values, end }: Plain): Plain => {
  const at = times.map((_, i) => (i === 0 ? 0 : end - times[times.length - i]!));
  return { times: at, values: values.toReversed(), end };
};
const atSteps = (signal: Plain, count: number): Plain =>
  inSteps(Array.from({ length: count }, (_, t) => valueAt(signal, t)));
const past = (a: Plain, of: (mirrored: Plain) => Plain): Plain =>
  backwards(atSteps(of(backwards(a)), a.values.length));
const once = (a: Plain, from = 0, to = EVER): Plain => past(a, (m) => eventually(m, from, to));
const historically = (a: Plain, from = 0, to = EVER): Plain => past(a, (m) => always(m, from, to));
const since = (a: Plain, b: Plain, within = EVER): Plain =>
  past(a, (m) => until(m, backwards(b), within, SCALE));

const valueAt = ({ times, values }: Plain, t: number): number =>
  values[times.findLastIndex((from) => from <= t)]!;

const DISCRETE: Readonly<Record<string, (req: Plain, gnt: Plain) => Plain>> = {
  'req + gnt': (req, gnt) => arithmetic(req, gnt, (x, y) => x + y),
  '(req - gnt)': (req, gnt) => arithmetic(req, gnt, (x, y) => x - y),
  'req and gnt': and,
  'req or gnt': or,
  'req xor gnt': (req, gnt) => arithmetic(req, gnt, (x, y) => Math.abs(x - y)),
  'req -> gnt': (req, gnt) => or(opposite(req), gnt),
  'always req': (req) => always(req),
  'always[0,1] req': (req) => always(req, 0, 1),
  'historically req': (req) => historically(req),
  'once req': (req) => once(req),
  'eventually req': (req) => eventually(req),
  'eventually[0,1] req': (req) => eventually(req, 0, 1),
  'req since gnt': (req, gnt) => since(req, gnt),
  'req until gnt': (req, gnt) => until(req, gnt, EVER, SCALE),
  'req until[0,1] gnt': (req, gnt) => until(req, gnt, 1, SCALE),
  'once[0,1] req': (req) => once(req, 0, 1),
  'once[1,2] req': (req) => once(req, 1, 2),
  'historically[0,1] req': (req) => historically(req, 0, 1),
  'historically[1,2] req': (req) => historically(req, 1, 2),
  'req since[0,1] gnt': (req, gnt) => since(req, gnt, 1),
  'not req': (req) => opposite(req),
  'rise(req)': (req) => and(req, historically(opposite(req), 1, 1)),
  'fall(req)': (req) => and(opposite(req), historically(req, 1, 1)),
  'req >= gnt': (req, gnt) => arithmetic(req, gnt, (x, y) => x - y),
  'req <= gnt': (req, gnt) => arithmetic(req, gnt, (x, y) => y - x),
  'req == gnt': (req, gnt) => arithmetic(req, gnt, (x, y) => -Math.abs(x - y)),
  'req iff gnt': (req, gnt) => arithmetic(req, gnt, (x, y) => -Math.abs(x - y)),
  'next req (weak)': (req) => always(req, 1, 1),
  's_next req (strong)': (req) => eventually(req, 1, 1),
};

/** −0 and 0 are one value. */
const shown = (values: readonly number[]): number[] => values.map((value) => (value === 0 ? 0 : value));

describe('robustness in steps, as published by RTAMT', () => {
  test('29 examples, each with a way to say it here', () => {
    expect(IN_STEPS).toHaveLength(29);
    expect(IN_STEPS.map((one) => one.formula).sort()).toEqual(Object.keys(DISCRETE).sort());
  });
  for (const { formula, robustness } of IN_STEPS) {
    test(formula, () => {
      const found = DISCRETE[formula]!(inSteps(SIGNALS.req), inSteps(SIGNALS.gnt));
      expect(shown(robustness.map((_, t) => valueAt(found, t)))).toEqual(robustness);
    });
  }
});

const DENSE: Readonly<Record<string, (req: Plain, gnt: Plain) => Plain>> = {
  'always(req)': (req) => always(req),
  'eventually(req)': (req) => eventually(req),
  'always[0,1](req)': (req) => always(req, 0, 1),
  'eventually[0,1](req)': (req) => eventually(req, 0, 1),
  'eventually[0,5](req)': (req) => eventually(req, 0, 5),
  // That tool wants the left side in the moment of the right one too.
  'req until gnt': (req, gnt) => until(req, and(req, gnt), EVER, SCALE),
};

/** Signals of pairs; the last value is taken to hold for a second. */
const inPairs = (pairs: Pairs, end = pairs.at(-1)![0] + 1): Plain => ({
  times: pairs.map(([t]) => t),
  values: pairs.map(([, value]) => value),
  end,
});

describe('robustness in dense time, as published', () => {
  for (const { formula, req, gnt = req, result } of IN_DENSE_TIME) {
    test(`RTAMT: ${formula} of ${req.length} values`, () => {
      const found = DENSE[formula]!(inPairs(req), inPairs(gnt));
      const wanted = inPairs(result, found.end);
      const moments = [...found.times, ...wanted.times, ...wanted.times.slice(1).map((t) => t - 1e-9)];
      expect(moments.map((t) => valueAt(found, t))).toEqual(moments.map((t) => valueAt(wanted, t)));
    });
  }
  test('py-metric-temporal-logic: F(a | b) is 100 at the start and 2 at 3 s; X b is b a step later', () => {
    const { a, b, robustness } = SECOND_TOOL;
    const either = or(inPairs(a, 5), inPairs(b, 5));
    const found = [
      valueAt(eventually(either), 0),
      valueAt(eventually(either), 3),
      valueAt(eventually(inPairs(b, 5), 0.2, 0.2), 0),
    ];
    expect(found).toEqual(robustness);
  });
});

/** Depths in two large areas, of which x and y of the axle are each the depth in one. */
const field = (id: string, x: readonly [number, number], y: readonly [number, number]) => ({
  id,
  name: { en: id },
  polygon: [
    { x: x[0], y: y[0] },
    { x: x[1], y: y[0] },
    { x: x[1], y: y[1] },
    { x: x[0], y: y[1] },
  ],
});
const fields = {
  ...CONTEXT,
  sheet: { ...SHEET, areas: [field('req', [-900, 900], [0, 1800]), field('gnt', [0, 1800], [-900, 900])] },
};
const REQ = { kind: 'in-area', area: 'req' } as const;
const GNT = { kind: 'in-area', area: 'gnt' } as const;
const soon = { from: 0, to: 1 };
const next = { from: 1, to: 1 };
const now = (of: Moment): Formula => ({ kind: 'always', of, window: { from: 0, to: 0 } });
const GOALS: Readonly<Record<string, Formula>> = {
  'req and gnt': now({ kind: 'and', of: [REQ, GNT] }),
  'req or gnt': now({ kind: 'or', of: [REQ, GNT] }),
  'req -> gnt': now({ kind: 'or', of: [{ kind: 'not', of: REQ }, GNT] }),
  'not req': now({ kind: 'not', of: REQ }),
  'always req': { kind: 'always', of: REQ },
  'always[0,1] req': { kind: 'always', of: REQ, window: soon },
  'eventually req': { kind: 'eventually', of: REQ },
  'eventually[0,1] req': { kind: 'eventually', of: REQ, window: soon },
  'req until gnt': { kind: 'until', hold: REQ, until: GNT },
  'req until[0,1] gnt': { kind: 'until', hold: REQ, until: GNT, within: 1 },
  'next req (weak)': { kind: 'always', of: REQ, window: next },
  's_next req (strong)': { kind: 'eventually', of: REQ, window: next },
};

describe('goals over a run whose place carries the published signals', () => {
  const { req, gnt } = SIGNALS;
  /** The run from one step on, each step a second long. */
  const runFrom = (t: number) =>
    run([at.end('finished', { t: req.length - t - 0.02 })], {
      samples: samplesAt(req.slice(t).map((y, i) => ({ x: gnt[t + i]!, y, count: 50 }))),
    });
  const wanted = (formula: string) =>
    IN_STEPS.find((one) => one.formula === formula)!.robustness.map((value) =>
      Math.max(-UNLIMITED, Math.min(UNLIMITED, value)),
    );
  for (const [name, formula] of Object.entries(GOALS)) {
    test(name, () => {
      expect(req.map((_, t) => measured(formula, [runFrom(t)], fields).margin)).toEqual(wanted(name));
    });
    test(`not (${name}): every margin turned`, () => {
      const against: Formula = { kind: 'not', of: formula };
      const margins = req.map((_, t) => measured(against, [runFrom(t)], fields).margin);
      expect(margins).toEqual(shown(wanted(name).map((value) => -value)));
    });
  }
});
