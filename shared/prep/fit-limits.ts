import type { Kit } from '../documents/kit.ts';
import type { Interval } from '../documents/outlook.ts';
import type { Mm } from '../geometry/units.ts';
import { wilsonInterval } from '../steadiness/statistics.ts';

/** What the strip of limits has to drive over, easiest first, and what it says of a class's robots. */

/** Interior angles in degrees. */
export const CORNERS_TRIED = [90, 80, 70, 60, 55, 50, 45, 40, 35] as const;

const BAND_STEP: Mm = 0.5;
const BANDS_TRIED = 8;

/** Lengths of bands, from the one that the reader counts as one band downwards. */
export const bandsTried = ({ robot }: Pick<Kit, 'robot'>): Mm[] =>
  Array.from({ length: BANDS_TRIED }, (_, i) => robot.bandUnit - i * BAND_STEP).filter(
    (length) => length > BAND_STEP,
  );

/** How many robots made a step, of those that tried; null where none has tried. */
export type Made = number | null;

export interface Limit {
  /** The hardest step that all robots made, all easier ones too. */
  readonly step: number;
  /** What all of so few says of all robots. */
  readonly interval: Interval;
  /** The next one was not made by all; otherwise the strip ended, or was not driven further. */
  readonly met: boolean;
}

/** Steps may be made again beyond one that was not: only what leads up to the first failure counts. */
export function limitOf(made: readonly Made[], robots: number): Limit | undefined {
  const first = made.findIndex((count) => count === null || count < robots);
  const step = (first < 0 ? made.length : first) - 1;
  if (robots < 1 || step < 0) return undefined;
  const next = made[step + 1];
  return { step, interval: wilsonInterval(robots, robots), met: next !== null && next !== undefined };
}
