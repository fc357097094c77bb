import type { Interval } from '../documents/outlook.ts';
import type { Seconds } from '../geometry/units.ts';
import { wilsonInterval } from '../steadiness/statistics.ts';
import { leastSquares, type Spread, spreadOf } from './least-squares.ts';

/** Prediction beside trial, over a class. */

/** One trial: how likely "as predicted" was said to be, and whether it was so. */
export interface Checked {
  readonly share: number;
  readonly came: boolean;
}

/** Trials of which about the same was foretold. */
export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly trials: number;
  readonly came: number;
  /** The mean of what was foretold. */
  readonly foretold: number;
  readonly interval: Interval;
}

export interface Calibration {
  readonly trials: number;
  readonly came: number;
  /** Mean square of what was foretold less what came, 0 to 1, the smaller the better. */
  readonly brier: number;
  /** The same of whoever says of every trial what came of them all together. */
  readonly plain: number;
  /** Those with trials, lowest first. */
  readonly bins: readonly Bin[];
}

/** Of twenty robots: under 10, 10 to 15, 16 to 18, 19 and 20. */
const EDGES = [0, 0.5, 0.775, 0.925, 1] as const;

/**
 * The Brier score (G. W. Brier, Verification of forecasts expressed in terms of probability, Monthly Weather
 * Review 78, 1950; the half of his sum over both cases, as it is used for yes and no today) and the
 * calibration curve in bins. Undefined without a trial.
 */
export function calibrationOf(checked: readonly Checked[]): Calibration | undefined {
  const trials = checked.length;
  if (trials === 0) return undefined;
  const came = checked.filter((one) => one.came).length;
  const bins = EDGES.slice(0, -1).map((from, i) => binOf(checked, from, EDGES[i + 1]!));
  return {
    trials,
    came,
    brier: brierOf(checked),
    plain: brierOf(checked.map((one) => ({ ...one, share: came / trials }))),
    bins: bins.filter((bin) => bin.trials > 0),
  };
}

export const brierOf = (checked: readonly Checked[]): number =>
  checked.reduce((sum, { share, came }) => {
    const off = share - (came ? 1 : 0);
    return sum + off * off;
  }, 0) / checked.length;

function binOf(all: readonly Checked[], from: number, to: number): Bin {
  const here = all.filter(({ share }) => share >= from && (share < to || (to === 1 && share === 1)));
  const came = here.filter((one) => one.came).length;
  const foretold = here.reduce((sum, { share }) => sum + share, 0) / Math.max(1, here.length);
  return { from, to, trials: here.length, came, foretold, interval: wilsonInterval(came, here.length) };
}

/** A timed trial that came as predicted. */
export interface TimedTrial {
  readonly robot: number;
  readonly foretold: Seconds;
  readonly took: Seconds;
}

/** Evidence enough to offer other paces: chosen, so that neither one robot nor one hand on the watch decides. */
export const ENOUGH = { trials: 8, robots: 3, apart: 0.02 } as const;

export type PaceOffer =
  | { readonly kind: 'few'; readonly trials: number; readonly robots: number }
  /** Robots need `times` as long as foretold; `alike` where that may well be 1, or is nearly. */
  | {
      readonly kind: 'alike' | 'offer';
      readonly times: number;
      readonly spread: Spread;
      readonly trials: number;
      readonly robots: number;
    };

/** How many times as long as foretold runs take: least squares through the origin. */
export function paceOffer(timed: readonly TimedTrial[]): PaceOffer {
  const counts = { trials: timed.length, robots: new Set(timed.map(({ robot }) => robot)).size };
  const fitted = leastSquares(timed.map(({ foretold, took }) => ({ x: [foretold], y: took })));
  if (counts.trials < ENOUGH.trials || counts.robots < ENOUGH.robots || !fitted?.covariance)
    return { kind: 'few', ...counts };
  const times = fitted.coefficients[0]!;
  const spread = spreadOf(times, fitted.covariance[0]![0]!, fitted.freedom);
  const off = times < 1 ? 1 - times : times - 1;
  const clear = (spread.low > 1 || spread.high < 1) && off >= ENOUGH.apart;
  return { kind: clear ? 'offer' : 'alike', times, spread, ...counts };
}
