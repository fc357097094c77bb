import { useEffect, useState } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';
import type { StageClock, StageLook } from '../../shared/wire/stage.ts';
import { type ClockSaid, RESTING, runTime, USUAL_LOOK } from '../parts/stage-clock.ts';
import { useLink, useLinkState } from '../parts/use-link.tsx';

/** The stage's clock as the desk holds it, and how it is set. */
export interface StageSet {
  readonly clock: ClockSaid;
  readonly look: StageLook;
  /** Run time now, renewed while it moves. */
  readonly at: Seconds;
  readonly duration: Seconds;
  /** Whether the run moves: not at its end, unless a stretch is shown again and again. */
  readonly playing: boolean;
  readonly ended: boolean;
  /** From where the run stands now, with these changes. */
  readonly set: (change: Partial<ClockSaid>) => void;
  readonly setLook: (change: Partial<StageLook>, clock?: Partial<ClockSaid>) => void;
}

export function useStageSet(duration: Seconds): StageSet {
  const link = useLink();
  const told = useLinkState((state) => state.stageClock);
  const at = useShownTime(told, duration);
  const clock: ClockSaid = told ?? RESTING;
  const look = clock.look ?? USUAL_LOOK;
  const set = (change: Partial<ClockSaid>) => {
    const { playing, speed, loop, look } = clock;
    const now = runTime(told, link.serverNow(), duration);
    link.tell({ kind: 'stage-clock', clock: { playing, speed, at: now, loop, look, ...change } });
  };
  const ended = at >= duration && !clock.loop;
  return {
    ...{ clock, look, at, duration, ended, set },
    playing: clock.playing && !ended,
    setLook: (change, more) => set({ ...more, look: { ...look, ...change } }),
  };
}

/** The time for the slider: often enough to look smooth, not at every frame. */
function useShownTime(clock: StageClock | null, duration: Seconds): Seconds {
  const link = useLink();
  const [, setTurn] = useState(0);
  const at = runTime(clock, link.serverNow(), duration);
  const moving = (clock?.playing ?? false) && (at < duration || clock?.loop !== undefined);
  useEffect(() => {
    if (!moving) return;
    const timer = setInterval(() => setTurn((turn) => turn + 1), 100);
    return () => clearInterval(timer);
  }, [moving]);
  return at;
}
