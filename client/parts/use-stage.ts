import { useCallback, useMemo } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { durationOf } from '../../shared/picture/replay.ts';
import type { Entry, EntryId, RoomState, Team } from '../../shared/room/state.ts';
import type { StageClock } from '../../shared/wire/protocol.ts';
import { entryOf, teamOf } from './figures.ts';
import type { JudgedHere } from './judge-here.ts';
import { useJudged } from './judging.ts';
import { type Loaded, useDocument } from './use-document.ts';
import { useLink, useLinkState } from './use-link.tsx';

/** An entry on the stage with everything that its replay shows. */
export interface Staged {
  readonly entry: Entry;
  readonly team: Team;
  readonly challenge: Challenge;
  readonly design: Design;
  /** Worked out on this page: the engine is the server's. */
  readonly judged: JudgedHere;
  /** The run that is shown: the likeliest. Absent where the robot never started. */
  readonly trace: Trace | undefined;
}

/** One or two entries, or none; null while documents are on their way. */
export function useStage(room: RoomState): readonly Staged[] | null {
  const first = useStaged(room, room.stage[0]);
  const second = useStaged(room, room.stage[1]);
  return useMemo(() => {
    const wanted = [first, second].filter((each) => each !== 'none');
    return wanted.some((each) => each === 'loading') ? null : (wanted as Staged[]);
  }, [first, second]);
}

function useStaged(room: RoomState, id: EntryId | undefined): Staged | 'none' | 'loading' {
  const entry = id === undefined ? undefined : entryOf(room, id);
  const team = entry ? teamOf(room, entry.team) : undefined;
  const challenge = hereOf(
    useDocument('challenge', entry ? (room.rounds[entry.round]?.challenge ?? null) : null),
  );
  const design = hereOf(useDocument('design', entry?.design ?? null));
  const judged = useJudged(challenge, design);
  return useMemo(() => {
    if (!entry || !team) return 'none';
    if (!challenge || !design || !judged) return 'loading';
    return { entry, team, challenge, design, judged, trace: likeliest(judged.traces) };
  }, [entry, team, challenge, design, judged]);
}

const hereOf = <T>(loaded: Loaded<T>): T | null => (loaded.kind === 'here' ? loaded.value : null);

const likeliest = (traces: readonly Trace[]): Trace | undefined =>
  traces.reduce<Trace | undefined>(
    (best, trace) => (best && best.probability >= trace.probability ? best : trace),
    undefined,
  );

/** Until every robot on the stage has ended. */
export const stageDuration = (stage: readonly Staged[]): Seconds =>
  Math.max(0, ...stage.map(({ trace }) => (trace ? durationOf(trace) : 0)));

/** The clock of a new stage: at the beginning, and waiting. */
export const RESTING: Omit<StageClock, 'since'> = { playing: false, speed: 1, at: 0 };

/** Run time at a moment of server time, by the clock of the stage. */
export function runTime(clock: StageClock | null, now: number, duration: Seconds): Seconds {
  if (!clock) return 0;
  const gone = clock.playing ? Math.max(0, (now - clock.since) / 1000) * clock.speed : 0;
  return Math.min(duration, Math.max(0, clock.at + gone));
}

/** The run time to show now, on the one clock that desk and board share. */
export function useStageTime(duration: Seconds): () => Seconds {
  const link = useLink();
  const clock = useLinkState((state) => state.stageClock);
  return useCallback(() => runTime(clock, link.serverNow(), duration), [link, clock, duration]);
}
