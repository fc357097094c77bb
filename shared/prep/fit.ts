import { PACES, type Pace, type Robot } from '../documents/kit.ts';
import type { Mm, MmPerSecond, Seconds } from '../geometry/units.ts';
import { type Fitted, leastSquares, type Row, type Spread, spreadOf } from './least-squares.ts';

/**
 * A robot's numbers from a stopwatch. Over a line of `way` mm at speed v a run takes way / v. Round a circle a
 * differential drive turns about its middle (ω = (v_r − v_l)/l, R = l/2 · (v_r + v_l)/(v_r − v_l); Dudek and
 * Jenkin, Computational Principles of Mobile Robotics), so that the outer wheel, half a track l/2 further out,
 * goes 2π(R + l/2) a lap. Of a robot whose outer wheel keeps its pace in a bend, n laps therefore take
 * s·(2πnR) + (s·l)·(πn), with s = 1/v: linear in s and s·l, the slowness that the straight line tells too. The
 * sensor bar is what stays on the line; the axle's middle, L behind it, goes round at R = √(r² − L²). A robot
 * that steers by how far the line lies off its middle runs a little outside of it in a bend, some 0.9 mm for the
 * model's on a circle of 80 mm: so much twice is what the wheel track comes out too wide by.
 */

/** mm between the two ticks of the printed line. */
export const TIMED_LINE: Mm = 500;
/** mm, radii of the printed circle: on the smaller and on the larger papers. */
export const TIMED_CIRCLES = [80, 120] as const;

export interface TimedRun {
  /** The number on the robot. */
  readonly robot: number;
  readonly pace: Pace;
  /** Laps of the printed circle; 0 for the printed line. */
  readonly laps: number;
  /** Of the circle's middle line; of no matter on the line. */
  readonly radius: Mm;
  readonly time: Seconds;
}

/** A value from runs. `spread` null: too few runs to say how sure it is. */
export interface Told {
  readonly value: number;
  readonly spread: Spread | null;
  readonly runs: number;
  readonly robots: number;
}

export interface PaceTold extends Told {
  readonly pace: Pace;
  readonly value: MmPerSecond;
}

export type TrackTold =
  /** Laps and runs over the line at one pace are wanted, and more of them than there are. */
  | { readonly kind: 'open' }
  | ({ readonly kind: 'told'; readonly value: Mm } & Told)
  /** No wheels that far apart fit this robot: in a bend its middle keeps the pace, and laps tell nothing. */
  | ({ readonly kind: 'not-told'; readonly value: Mm } & Told);

export interface RobotFit {
  /** Slowest first; paces without a run over the line are absent. */
  readonly paces: readonly PaceTold[];
  readonly track: TrackTold;
}

/** What timed runs say of a robot of this kind. Runs must have taken time and robots are not told apart. */
export function fitRobot(runs: readonly TimedRun[], robot: Pick<Robot, 'width' | 'barAhead'>): RobotFit {
  const each = PACES.flatMap((pace) =>
    fitPace(
      runs.filter((run) => run.pace === pace && run.time > 0),
      robot.barAhead,
    ),
  );
  const rounds = each.filter(({ fitted }) => fitted.coefficients.length === 2);
  const best = rounds.toSorted((a, b) => b.fitted.freedom - a.fitted.freedom)[0];
  return { paces: each.map(paceOf), track: best ? trackOf(best, robot.width) : { kind: 'open' } };
}

interface Fit {
  readonly pace: Pace;
  readonly fitted: Fitted;
  readonly runs: readonly TimedRun[];
}

/** Laps count where the same pace was timed on the line: alone they can't tell a slow robot from a wide one. */
function fitPace(runs: readonly TimedRun[], barAhead: Mm): Fit[] {
  const straight = runs.filter(({ laps }) => laps === 0);
  const [first] = straight;
  if (!first) return [];
  const used = runs.length > straight.length ? runs : straight;
  const fitted = leastSquares(used.map((run) => rowOf(run, barAhead, used.length > straight.length ? 2 : 1)));
  return fitted ? [{ pace: first.pace, fitted, runs: used }] : [];
}

const rowOf = ({ laps, radius, time }: TimedRun, barAhead: Mm, columns: 1 | 2): Row => {
  const inside = Math.sqrt(Math.max(0, radius * radius - barAhead * barAhead));
  const way = laps === 0 ? TIMED_LINE : 2 * Math.PI * laps * inside;
  return { x: columns === 1 ? [way] : [way, Math.PI * laps], y: time };
};

const countsOf = (runs: readonly TimedRun[]) => ({
  runs: runs.length,
  robots: new Set(runs.map(({ robot }) => robot)).size,
});

/** v = 1/s, whose variance is var(s)·v⁴ to first order (propagation of errors). */
function paceOf({ pace, fitted, runs }: Fit): PaceTold {
  const value = 1 / fitted.coefficients[0]!;
  const { covariance, freedom } = fitted;
  const spread = covariance && spreadOf(value, covariance[0]![0]! * value * value * value * value, freedom);
  return { pace, value, spread, ...countsOf(runs) };
}

/** Wheels stand inside the robot's outline, and further apart than half of it. */
const NARROWEST = 0.5;

/** l = (s·l)/s, whose variance is that of a ratio to first order: (var(q) − 2l·cov(s,q) + l²·var(s))/s². */
function trackOf({ fitted, runs }: Fit, width: Mm): TrackTold {
  const [slowness, product] = fitted.coefficients as [number, number];
  const value = product / slowness;
  const { covariance, freedom } = fitted;
  if (!covariance) return { kind: 'open' };
  const [[ss, sq], [, qq]] = covariance as [[number, number], [number, number]];
  const variance = (qq - 2 * value * sq + value * value * ss) / (slowness * slowness);
  const spread = spreadOf(value, variance, freedom);
  const fits = spread.low > 0 && spread.low <= width && spread.high >= NARROWEST * width;
  return { kind: fits ? 'told' : 'not-told', value, spread, ...countsOf(runs) };
}
