import type { Interval } from '../documents/outlook.ts';

/** The normal quantile that leaves 2.5 % above it. */
const Z_95 = 1.959963984540054;

/**
 * Wilson's score interval of a share, without continuity correction (E. B. Wilson, Probable inference, the
 * law of succession, and statistical inference, JASA 22, 1927). 95 % unless another quantile is given.
 * Nothing is known of a share of none.
 */
export function wilsonInterval(successes: number, trials: number, z = Z_95): Interval {
  if (trials === 0) return { low: 0, high: 1 };
  const share = successes / trials;
  const square = z * z;
  const middle = share + square / (2 * trials);
  const spread = z * Math.sqrt((share * (1 - share) + square / (4 * trials)) / trials);
  const scale = 1 + square / trials;
  return {
    low: successes === 0 ? 0 : (middle - spread) / scale,
    high: successes === trials ? 1 : (middle + spread) / scale,
  };
}

/** Which of two shares is the true one, and how often each may be missed. */
export interface SequentialPlan {
  readonly low: number;
  readonly high: number;
  /** Chance of saying "high" where it is low. */
  readonly wronglyHigh: number;
  /** Chance of saying "low" where it is high. */
  readonly wronglyLow: number;
}

/** Steadiness of 16 or of 19 in 20, each missed once in 20 times. */
export const STEADINESS_PLAN: SequentialPlan = { low: 0.8, high: 0.95, wronglyHigh: 0.05, wronglyLow: 0.05 };

/** Where a sequential test stands. */
export interface Sequence {
  readonly trials: number;
  readonly successes: number;
  /** How many times likelier the trials so far are with the high share than with the low one. */
  readonly ratio: number;
  readonly decision: 'low' | 'high' | 'open';
}

export const NO_TRIALS: Sequence = { trials: 0, successes: 0, ratio: 1, decision: 'open' };

/** The likelihood ratios at which the test ends: at `low` or less, at `high` or more. */
export const boundsOf = ({ wronglyHigh, wronglyLow }: SequentialPlan) => ({
  low: wronglyLow / (1 - wronglyHigh),
  high: (1 - wronglyLow) / wronglyHigh,
});

/**
 * One more trial of Wald's sequential probability ratio test (A. Wald, Sequential tests of statistical
 * hypotheses, 1945), in ratios instead of their logarithms. A test that has ended stays as it is.
 */
export function withTrial(sequence: Sequence, plan: SequentialPlan, success: boolean): Sequence {
  if (sequence.decision !== 'open') return sequence;
  const { low, high } = plan;
  const ratio = sequence.ratio * (success ? high / low : (1 - high) / (1 - low));
  const bounds = boundsOf(plan);
  return {
    trials: sequence.trials + 1,
    successes: sequence.successes + (success ? 1 : 0),
    ratio,
    decision: ratio <= bounds.low ? 'low' : ratio >= bounds.high ? 'high' : 'open',
  };
}
