import { describe, expect, test } from 'vitest';
import type { Formula } from '../../shared/documents/formula.ts';
import { reference, referenceIsHere, skippedWithoutReference } from '../reference.ts';
import { at, measured, run } from '../unit/goals/hand-made.ts';

/**
 * Source: RTAMT (nickovic/rtamt, BSD-3-Clause), its tests of discrete-time robustness. The signals req
 * and gnt become the margins of two goals: how deep a run came into the berth, how far it stayed from the edge.
 */
interface Published {
  readonly signals: { readonly req: readonly number[]; readonly gnt: readonly number[] };
  readonly examples: readonly { readonly formula: string; readonly robustness_by_time: readonly number[] }[];
}

const REQ: Formula = { kind: 'finish' };
const GNT: Formula = { kind: 'stay-on-paper' };
const FORMULAS: readonly (readonly [string, Formula])[] = [
  ['req and gnt', { kind: 'and', of: [REQ, GNT] }],
  ['req or gnt', { kind: 'or', of: [REQ, GNT] }],
  ['not req', { kind: 'not', of: REQ }],
  ['req -> gnt', { kind: 'or', of: [{ kind: 'not', of: REQ }, GNT] }],
];

describe.skipIf(!referenceIsHere)(`robustness as published${skippedWithoutReference}`, () => {
  const published = referenceIsHere ? reference<Published>('stl.json') : undefined;
  const { req, gnt } = published?.signals ?? { req: [], gnt: [] };
  const runs = req.map((margin, t) => run([at.end('finished')], { finish: -margin, edge: gnt[t]! }));
  const expected = (formula: string) =>
    published?.examples.find((example) => example.formula === formula)?.robustness_by_time ?? [];

  for (const [name, formula] of FORMULAS) {
    test(name, () => {
      expect(runs.map((one) => measured(formula, [one]).margin)).toEqual(expected(name));
    });
  }

  test('always req: a goal over all later runs has the smallest margin', () => {
    expect(runs.map((_, t) => measured(REQ, runs.slice(t)).margin)).toEqual(expected('always req'));
  });
});
