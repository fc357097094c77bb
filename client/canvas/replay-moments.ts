import { useEffect, useMemo, useState } from 'react';
import type { Pace } from '../../shared/documents/kit.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { poseAt, type Replay, type ReplayReading } from '../../shared/picture/replay.ts';

/** What can be said of a run at one moment, one a robot. */
export interface ReplayMoment {
  readonly pace: Pace;
  /** The mark read last, while it is news: until a while after it acted. */
  readonly reading: ReplayReading | null;
  readonly acted: boolean;
  readonly over: boolean;
}

export type OnMoment = (moments: readonly ReplayMoment[]) => void;

/** A reading stays beside its mark for so long after it acted, s of run time. */
const NEWS = 1.6;

function momentAt(replay: Replay, t: Seconds): ReplayMoment {
  const { pace } = poseAt(replay.trace, t);
  const reading = replay.readings.filter((candidate) => candidate.t <= t).at(-1) ?? null;
  const until = reading ? (reading.actedAt ?? reading.t) + NEWS : 0;
  const acted = reading?.actedAt !== undefined && reading.actedAt <= t;
  return { pace, reading: t <= until ? reading : null, acted, over: t >= replay.duration };
}

const sameMoment = (a: ReplayMoment | undefined, b: ReplayMoment) =>
  a?.pace === b.pace && a.reading === b.reading && a.acted === b.acted && a.over === b.over;

/** What is said at the moment, told anew when it changes. */
export function useMoments(replays: readonly Replay[], onMoment: OnMoment | undefined) {
  const [moments, setMoments] = useState<readonly ReplayMoment[]>([]);
  const tell = useMemo(() => {
    let before: readonly ReplayMoment[] = [];
    return (t: Seconds) => {
      const now = replays.map((replay) => momentAt(replay, t));
      if (before.length === now.length && now.every((moment, i) => sameMoment(before[i], moment))) return;
      before = now;
      setMoments(now);
    };
  }, [replays]);
  useEffect(() => onMoment?.(moments), [moments, onMoment]);
  return { moments, tell };
}
