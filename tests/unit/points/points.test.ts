import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GoalResult } from '../../../shared/documents/verdict.ts';
import { pointLines, totalOf, wholeShares } from '../../../shared/points/points.ts';
import '../../seed.ts';

const goals = (...weights: number[]) =>
  weights.map((weight, i) => ({ id: `g${i}`, formula: { kind: 'finish' as const }, must: true, weight }));
const results = (...met: boolean[]): GoalResult[] =>
  met.map((m, i) => ({
    id: `g${i}`,
    met: m,
    margin: m ? 1 : -1,
    unit: 'mm',
    by: 'finish',
    leftToLuck: false,
  }));

describe('points', () => {
  test('three equal goals share 34, 33, 33', () => {
    expect(wholeShares(100, [1, 1, 1])).toEqual([34, 33, 33]);
  });
  test('weights 3, 2, 2 share 43, 29, 28: the larger remainders get what is left', () => {
    // 300/7 = 42 rest 6, 200/7 = 28 rest 4: two points left, one to the first, one to the second.
    expect(wholeShares(100, [3, 2, 2])).toEqual([43, 29, 28]);
  });
  test('all goals met give 100, each with its own line', () => {
    const lines = pointLines(goals(2, 1, 1), results(true, true, true));
    expect(lines).toEqual([
      { reason: 'goal:g0', got: 50, of: 50 },
      { reason: 'goal:g1', got: 25, of: 25 },
      { reason: 'goal:g2', got: 25, of: 25 },
    ]);
    expect(totalOf(lines)).toBe(100);
  });
  test('a missed goal gives nothing and the others keep theirs', () => {
    const lines = pointLines(goals(2, 1, 1), results(true, false, true));
    expect(totalOf(lines)).toBe(75);
    expect(lines[1]).toEqual({ reason: 'goal:g1', got: 0, of: 25 });
  });
  test('shares are whole and add up for any weights', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 8 }), (weights) => {
        const shares = wholeShares(100, weights);
        const sum = weights.reduce((a, b) => a + b, 0);
        expect(shares.reduce((a, b) => a + b, 0)).toBe(100);
        shares.forEach((share, i) => {
          expect(Number.isInteger(share)).toBe(true);
          expect(Math.abs(share - (100 * weights[i]!) / sum)).toBeLessThan(1);
        });
      }),
    );
  });
});
