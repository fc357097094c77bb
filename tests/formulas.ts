import * as fc from 'fast-check';
import type { Formula, Moment, Window } from '../shared/documents/formula.ts';
import { PACES } from '../shared/documents/kit.ts';

/** Any formula that the schema accepts, in numbers that a file holds exactly. */

const hundredths = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((n) => n / 100);
const seconds = hundredths(60);
const length = hundredths(500);
const count = fc.integer({ min: 0, max: 6 });
const pace = fc.constantFrom(...PACES);
const id = fc.constantFrom('market', 'bakery', 'landing');
const how = fc.constantFrom('at-least' as const, 'at-most' as const);
const of = <K extends string>(kind: K) => fc.constant(kind);

const shared = [
  fc.record({ kind: of('finish') }),
  fc.record({
    kind: of('stretches'),
    pace,
    how: fc.constantFrom('exactly' as const, 'at-least' as const, 'at-most' as const),
    count,
    length,
  }),
  fc.record({
    kind: of('gates'),
    gates: fc.array(id, { minLength: 1, maxLength: 3 }),
    ordered: fc.boolean(),
  }),
  fc.record({ kind: of('every-gate') }),
  fc.record({ kind: of('keep-out') }),
  fc.record({ kind: of('stay-on-paper') }),
  fc.record({ kind: of('turn-back'), count }),
  fc.record({ kind: of('read-marks'), count }),
  fc.record({ kind: of('act-in'), act: fc.constantFrom('wait' as const, 'signal' as const), area: id }),
  fc.record({ kind: of('way'), how, length }),
];

const predicates = fc.oneof(
  ...shared,
  fc.record({ kind: of('park') }),
  fc.record({ kind: of('park'), area: id }),
  fc.record({ kind: of('pace-at-end'), pace }),
  fc.record({ kind: of('time'), from: seconds, to: seconds }),
  fc.record({ kind: of('mark-limit'), most: count }),
  fc.record({ kind: of('ink-limit'), most: length }),
  fc.record({ kind: of('decided') }),
  fc.record({ kind: of('steadiness'), least: fc.integer({ min: 0, max: 20 }).map((n) => n / 20) }),
);

const momentPredicates = fc.oneof(
  ...shared,
  fc.record({ kind: of('in-area'), area: id }),
  fc.record({ kind: of('pace'), pace }),
);

const window: fc.Arbitrary<Window> = fc.oneof(
  fc.record({ from: seconds }),
  fc.record({ from: seconds, to: seconds }),
);

const timed = (moment: fc.Arbitrary<Moment>): fc.Arbitrary<Formula & Moment> => {
  const kind = fc.constantFrom('always' as const, 'eventually' as const);
  return fc.oneof(
    fc.record({ kind, of: moment }),
    fc.record({ kind, of: moment, window }),
    fc.record({ kind: of('until'), hold: moment, until: moment }),
    fc.record({ kind: of('until'), hold: moment, until: moment, within: seconds }),
  );
};

const combined = <T>(part: fc.Arbitrary<T>) =>
  fc.oneof(
    fc.record({ kind: of('not'), of: part }),
    fc.record({
      kind: fc.constantFrom('and' as const, 'or' as const),
      of: fc.array(part, { minLength: 1, maxLength: 3 }),
    }),
  );

const momentsTo = (levels: number): fc.Arbitrary<Moment> => {
  if (levels === 0) return momentPredicates;
  const below = momentsTo(levels - 1);
  return fc.oneof(momentPredicates, combined(below), timed(below));
};

const formulasTo = (levels: number): fc.Arbitrary<Formula> => {
  const moment = momentsTo(levels);
  const flat = fc.oneof(
    predicates,
    timed(moment),
    fc.record({ kind: of('lasting'), of: moment, how, time: seconds }),
  );
  return levels === 0 ? flat : fc.oneof(flat, combined(formulasTo(levels - 1)));
};

export const formulas: fc.Arbitrary<Formula> = formulasTo(2);
