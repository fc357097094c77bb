import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GoalResult } from '../../../shared/documents/verdict.ts';
import { costOf } from '../../../shared/points/cost.ts';
import { answerPoints, pointLines, totalOf, wholeShares } from '../../../shared/points/points.ts';
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

const ALONE = { stopped: false } as const;

describe('points', () => {
  test('three equal goals share 34, 33, 33', () => {
    expect(wholeShares(100, [1, 1, 1])).toEqual([34, 33, 33]);
  });
  test('weights 3, 2, 2 share 43, 29, 28: the larger remainders get what is left', () => {
    // 300/7 = 42 rest 6, 200/7 = 28 rest 4: two points left, one to the first, one to the second.
    expect(wholeShares(100, [3, 2, 2])).toEqual([43, 29, 28]);
  });
  test('all goals met give 100, each with its own line', () => {
    const lines = pointLines(goals(2, 1, 1), results(true, true, true), ALONE);
    expect(lines).toEqual([
      { reason: 'goal:g0', got: 50, of: 50 },
      { reason: 'goal:g1', got: 25, of: 25 },
      { reason: 'goal:g2', got: 25, of: 25 },
    ]);
    expect(totalOf(lines)).toBe(100);
  });
  test('a missed goal gives nothing and the others keep theirs', () => {
    const lines = pointLines(goals(2, 1, 1), results(true, false, true), ALONE);
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

describe('steadiness and thrift beside the goals', () => {
  const two = goals(2, 1);
  const met = results(true, true);
  const merit = (reason: string, merits: Parameters<typeof pointLines>[2]) =>
    pointLines(two, met, merits).find((line) => line.reason === reason);

  test('all three apply: goals 60 by weight, 18 of 20 robots 18 of 20, cost 400 beside 300 15 of 20', () => {
    const lines = pointLines(two, met, {
      stopped: false,
      steadiness: { same: 18, of: 20 },
      thrift: { cost: 400, par: 300 },
    });
    expect(lines).toEqual([
      { reason: 'goal:g0', got: 40, of: 40 },
      { reason: 'goal:g1', got: 20, of: 20 },
      { reason: 'steadiness', got: 18, of: 20, measured: 18, allowed: 20 },
      { reason: 'thrift', got: 15, of: 20, measured: 400, allowed: 300 },
    ]);
    expect(totalOf(lines)).toBe(93);
  });
  test('calm: goals and thrift share 75 to 25; 25 times 300 over 400 is 18.75, so 18', () => {
    const lines = pointLines(two, met, { stopped: false, thrift: { cost: 400, par: 300 } });
    expect(lines.map((line) => [line.got, line.of])).toEqual([
      [50, 50],
      [25, 25],
      [18, 25],
    ]);
  });
  test('no par: goals and steadiness share 75 to 25; 25 times 19 over 20 is 23.75, so 23', () => {
    const lines = pointLines(two, met, { stopped: false, steadiness: { same: 19, of: 20 } });
    expect(lines.map((line) => [line.got, line.of])).toEqual([
      [50, 50],
      [25, 25],
      [23, 25],
    ]);
  });
  test('20 of 20 robots and a cost at par give everything', () => {
    const lines = pointLines(two, met, {
      stopped: false,
      steadiness: { same: 20, of: 20 },
      thrift: { cost: 300.004, par: 300 },
    });
    expect(totalOf(lines)).toBe(100);
  });
  test('cheaper than the best known is no more than full thrift', () => {
    expect(merit('thrift', { stopped: false, thrift: { cost: 120, par: 300 } })).toMatchObject({
      got: 25,
      of: 25,
    });
    expect(merit('thrift', { stopped: false, thrift: { cost: 0, par: 0 } })).toMatchObject({ got: 25 });
  });
  test('a hundredth over par is not par', () => {
    expect(merit('thrift', { stopped: false, thrift: { cost: 300.01, par: 300 } })).toMatchObject({
      got: 24,
    });
  });
  test('a share that comes out whole stays whole: 300.1 of 600.2 is half of 20', () => {
    const line = merit('thrift', {
      stopped: false,
      steadiness: { same: 0, of: 20 },
      thrift: { cost: 600.2, par: 300.1 },
    });
    expect(line).toMatchObject({ got: 10, of: 20 });
  });
  test('where nothing is free, a mark costs everything', () => {
    expect(merit('thrift', { stopped: false, thrift: { cost: 20, par: 0 } })).toMatchObject({ got: 0 });
  });

  const merits = { steadiness: { same: 20, of: 20 }, thrift: { cost: 300, par: 300 } };
  test('a must-goal unmet: points for the goals that are met, and the rest is withheld', () => {
    const lines = pointLines(two, results(true, false), { stopped: false, ...merits });
    expect(lines.slice(2)).toEqual([
      { reason: 'steadiness', got: 0, of: 20, measured: 20, allowed: 20, withheld: true },
      { reason: 'thrift', got: 0, of: 20, measured: 300, allowed: 300, withheld: true },
    ]);
    expect(totalOf(lines)).toBe(40);
  });
  test('a finding that stops the robot withholds the same', () => {
    expect(totalOf(pointLines(two, met, { stopped: true, ...merits }))).toBe(60);
  });
  test('a goal that may be missed withholds nothing', () => {
    const wish = [two[0]!, { ...two[1]!, must: false }];
    expect(totalOf(pointLines(wish, results(true, false), { stopped: false, ...merits }))).toBe(80);
  });
});

describe('answerPoints', () => {
  test('2 of 3 right are 67, all are 100, none of none are 0', () => {
    expect([answerPoints(2, 3), answerPoints(3, 3), answerPoints(59, 60), answerPoints(0, 0)]).toEqual([
      67, 100, 98, 0,
    ]);
  });
});

describe('costOf', () => {
  test('a straight of 60 mm, a half circle over 20 mm and two marks cost 60 + 10 pi + 40', () => {
    const mark = (id: string) => ({ id, line: 'l1', at: 20, bands: [{ ink: 'C', length: 5.5, gap: 0 }] });
    const drawing = {
      lines: [
        { id: 'l1', width: 5, from: { x: 40, y: 50 }, pieces: [{ to: { x: 100, y: 50 }, bulge: 0 }] },
        { id: 'l2', width: 5, from: { x: 100, y: 50 }, pieces: [{ to: { x: 120, y: 50 }, bulge: 1 }] },
      ],
      marks: [mark('m1'), mark('m2')],
    };
    expect(costOf(drawing)).toBeCloseTo(100 + 10 * Math.PI, 9);
  });
});
