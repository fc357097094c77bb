import { useCallback } from 'react';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import type { StageClock, StageLook, StageLoop } from '../../shared/wire/stage.ts';
import { useLink, useLinkState } from './use-link.tsx';

/** A clock as a desk says it: the server notes when. */
export type ClockSaid = Omit<StageClock, 'since'>;

/** The clock of a new stage: at the beginning, and waiting. */
export const RESTING: ClockSaid = { playing: false, speed: 1, at: 0 };

/** How a new stage looks. */
export const USUAL_LOOK: StageLook = { sensors: false, whole: false, onTop: false, ways: [], whatIf: null };

/** Run time at a moment of server time, by the clock of the stage. */
export function runTime(clock: StageClock | null, now: number, duration: Seconds): Seconds {
  if (!clock) return 0;
  const gone = clock.playing ? Math.max(0, (now - clock.since) / 1000) * clock.speed : 0;
  return Math.min(duration, Math.max(0, looped(clock.at, gone, clock.loop)));
}

/** Who stands behind a loop when it begins goes on to the end. */
function looped(at: Seconds, gone: Seconds, loop: StageLoop | undefined): Seconds {
  const t = at + gone;
  if (!loop || at > loop.to || t <= loop.to) return t;
  return loop.from + ((t - loop.to) % (loop.to - loop.from));
}

/** The run time to show now, on the one clock that desk and board share. */
export function useStageTime(duration: Seconds): () => Seconds {
  const link = useLink();
  const clock = useLinkState((state) => state.stageClock);
  return useCallback(() => runTime(clock, link.serverNow(), duration), [link, clock, duration]);
}

/** How the stage is shown. */
export const useStageLook = (): StageLook => useLinkState((state) => state.stageClock?.look) ?? USUAL_LOOK;

/** When marks are read in these runs, in order, each time once. */
export function readingTimes(traces: readonly Trace[]): Seconds[] {
  const all = traces.flatMap(({ events }) => events.flatMap(({ kind, t }) => (kind === 'read' ? [t] : [])));
  return [...new Set(all)].sort((a, b) => a - b);
}

/** Times nearer than this are the same to a hand that steps, s. */
const SAME: Seconds = 0.05;

/** The reading after `at`, or the end; and the one before, or the beginning. */
export const readingAfter = (times: readonly Seconds[], at: Seconds, duration: Seconds): Seconds =>
  times.find((t) => t > at + SAME) ?? duration;
export const readingBefore = (times: readonly Seconds[], at: Seconds): Seconds =>
  times.findLast((t) => t < at - SAME) ?? 0;

/** Before a reading and after it, so much is shown with it. */
const AROUND = { before: 0.5, after: 1 } as const;

/** The stretch from the reading before `at` to the one after, at least as long as what is shown around one. */
export function stretchAt(times: readonly Seconds[], at: Seconds, duration: Seconds): StageLoop {
  const from = Math.max(0, readingBefore(times, at + 2 * SAME) - AROUND.before);
  const to = Math.min(duration, readingAfter(times, at, duration) + AROUND.after);
  return to - from > SAME ? { from, to } : { from: Math.max(0, duration - AROUND.after), to: duration };
}
