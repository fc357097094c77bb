import { describe, expect, it } from 'vitest';
import {
  boundsOf,
  NO_TRIALS,
  type Sequence,
  type SequentialPlan,
  STEADINESS_PLAN,
  wilsonInterval,
  withTrial,
} from '../../shared/steadiness/statistics.ts';

describe('wilsonInterval', () => {
  // R. G. Newcombe, Two-sided confidence intervals for the single proportion: comparison of seven methods,
  // Statistics in Medicine 17 (1998) 857-872, table I, method 3; seen as quoted in other projects' tests.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i is %f to %f, as Newcombe prints', (successes, trials, low, high) => {
    const interval = wilsonInterval(successes, trials);
    expect(Math.abs(interval.low - low)).toBeLessThan(5e-5);
    expect(Math.abs(interval.high - high)).toBeLessThan(5e-5);
  });

  // SciPy's own test of binomtest(...).proportion_ci(method='wilson') (test_confidence_intervals2).
  it.each([
    [3, 10, 0.1077913, 0.6032219],
    [0, 10, 0, 0.2775328],
    [10, 10, 0.7224672, 1],
  ])('%i of %i is %f to %f, as SciPy expects', (successes, trials, low, high) => {
    const interval = wilsonInterval(successes, trials);
    expect(interval.low).toBeCloseTo(low, 6);
    expect(interval.high).toBeCloseTo(high, 6);
  });

  it('takes another quantile: 3 of 10 at 99 % as SciPy expects', () => {
    const interval = wilsonInterval(3, 10, 2.5758293035489004);
    expect(interval.low).toBeCloseTo(0.07956632, 6);
    expect(interval.high).toBeCloseTo(0.6799753, 6);
  });

  it('of no trials nothing is known', () => {
    expect(wilsonInterval(0, 0)).toEqual({ low: 0, high: 1 });
  });
});

const run = (plan: SequentialPlan, trials: readonly number[]): Sequence[] => {
  let sequence = NO_TRIALS;
  return trials.map((success) => {
    sequence = withTrial(sequence, plan, success === 1);
    return sequence;
  });
};

describe('withTrial', () => {
  // R package SPRT 1.1.0 (CRAN), vignette "Introduction to SPRT package", example 1, as printed there.
  const plan: SequentialPlan = { low: 0.1, high: 0.3, wronglyHigh: 0.05, wronglyLow: 0.1 };
  const sequences = run(plan, [0, 0, 1, 0, 1, 1, 1, 0, 0, 1, 0, 0]);

  it('has the log likelihood ratios and bounds of the R package SPRT', () => {
    const printed = [-0.2513144, -0.5026289, 0.5959834, 0.344669, 1.4432813, 2.5418936, 3.6405059];
    printed.forEach((log, i) => {
      expect(Math.log(sequences[i]!.ratio)).toBeCloseTo(log, 6);
    });
    expect(Math.log(boundsOf(plan).high)).toBeCloseTo(2.890372, 6);
    expect(Math.log(boundsOf(plan).low)).toBeCloseTo(-2.251292, 6);
  });

  it('decides at the seventh trial, as it does, and stays so', () => {
    expect(sequences.map((sequence) => sequence.decision)).toEqual([
      ...new Array(6).fill('open'),
      ...new Array(6).fill('high'),
    ]);
    expect(sequences.at(-1)).toMatchObject({ trials: 7, successes: 4 });
  });

  // NIST/SEMATECH e-Handbook of Statistical Methods, 6.2.6, item-by-item plan for p1 = 0.01, p2 = 0.10,
  // alpha = 0.05, beta = 0.10: accept at x = −0.939 + 0.0397 n, reject at x = 1.205 + 0.0397 n (from memory).
  it('accepts a lot after 24 good items and rejects after two bad ones, by the NIST lines', () => {
    const lot: SequentialPlan = { low: 0.01, high: 0.1, wronglyHigh: 0.05, wronglyLow: 0.1 };
    const good = run(lot, new Array(24).fill(0));
    expect(good[22]!.decision).toBe('open');
    expect(good[23]!.decision).toBe('low');
    expect(run(lot, [1, 1]).map((sequence) => sequence.decision)).toEqual(['open', 'high']);
    // The second bad item rejects while 1.205 + 0.0397 n is at most 2, which ends about the 20th.
    const second = (n: number) => run(lot, [1, ...new Array(n - 2).fill(0), 1]).at(-1)!.decision;
    expect(second(19)).toBe('high');
    expect(second(21)).toBe('open');
  });

  // By hand: (0.95 / 0.8)^n ≥ 19 from n = 18 on; (0.05 / 0.2)^n ≤ 1/19 from n = 3 on.
  it('calls a design steady after 18 robots that make it, shaky after three that do not', () => {
    const steady = run(STEADINESS_PLAN, new Array(18).fill(1));
    expect(steady.map((sequence) => sequence.decision).indexOf('high')).toBe(17);
    const shaky = run(STEADINESS_PLAN, [0, 0, 0]);
    expect(shaky.map((sequence) => sequence.decision)).toEqual(['open', 'open', 'low']);
  });
});
