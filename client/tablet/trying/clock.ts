import type { Seconds } from '../../../shared/geometry/units.ts';

export const SPEEDS = [1, 2, 4] as const;
export type Speed = (typeof SPEEDS)[number];

/** Where a replay stands: run time `at` when the page's clock was `since`, ms. */
export interface ReplayClock {
  readonly playing: boolean;
  readonly speed: Speed;
  readonly at: Seconds;
  readonly since: number;
}

/** The run time at `now` of the page's clock, at most `duration`. */
export function timeOf(clock: ReplayClock, now: number, duration: Seconds): Seconds {
  const gone = clock.playing ? ((now - clock.since) / 1000) * clock.speed : 0;
  return Math.max(0, Math.min(duration, clock.at + gone));
}

/** The clock changed at `now`, going on from where it stood. */
export const changed = (
  clock: ReplayClock,
  change: Partial<ReplayClock>,
  now: number,
  duration: Seconds,
): ReplayClock => ({ ...clock, at: timeOf(clock, now, duration), since: now, ...change });
