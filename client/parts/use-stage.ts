import { useCallback, useMemo } from 'react';
import type { Answers } from '../../shared/documents/answers.ts';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Design, EMPTY_DESIGN } from '../../shared/documents/design.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import { isReplayOf } from '../../shared/documents/verdict.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { durationOf } from '../../shared/picture/replay.ts';
import type { Entry, EntryId, RoomState, Team } from '../../shared/room/state.ts';
import type { StageClock } from '../../shared/wire/protocol.ts';
import { entryOf, teamOf } from './figures.ts';
import type { JudgedHere } from './judge-here.ts';
import { useJudged } from './judging.ts';
import { hereOf, useDocument } from './use-document.ts';
import { useLink, useLinkState } from './use-link.tsx';
import { onSheetOf } from './variants.ts';

/** An entry on the stage with everything that its replay shows. */
export interface Staged {
  readonly entry: Entry;
  readonly team: Team;
  readonly challenge: Challenge;
  /** Empty where all is given and predicted. */
  readonly design: Design;
  /** What the team predicted; null where it drew. */
  readonly answers: Answers | null;
  /** Worked out on this page: the engine is the server's. */
  readonly judged: JudgedHere;
  /** The runs that are shown: the likeliest from each berth. None where the robot never started. */
  readonly traces: readonly Trace[];
  /** It was judged by another version of the engine, which drove it differently. */
  readonly outdated: boolean;
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
  const chosen = hereOf(
    useDocument('challenge', entry ? (room.rounds[entry.round]?.challenge ?? null) : null),
  );
  const challenge = entry && chosen ? onSheetOf(entry, chosen) : null;
  const isPredicted = challenge?.play === 'predict';
  const answers = hereOf(useDocument('answers', isPredicted ? (entry?.design ?? null) : null));
  const drawn = hereOf(useDocument('design', challenge && !isPredicted ? (entry?.design ?? null) : null));
  const design = isPredicted ? EMPTY_DESIGN : drawn;
  const judged = useJudged(challenge, design);
  const verdict = hereOf(useDocument('verdict', drawn ? (entry?.verdict?.document ?? null) : null));
  return useMemo(() => {
    if (!entry || !team) return 'none';
    if (!challenge || !design || !judged || (isPredicted && !answers)) return 'loading';
    const outdated = verdict !== null && !isReplayOf(judged.verdict, verdict);
    return { entry, team, challenge, design, answers, judged, traces: likeliest(judged.traces), outdated };
  }, [entry, team, challenge, design, isPredicted, answers, judged, verdict]);
}

/** The likeliest run from each berth, in the order of the berths. */
function likeliest(traces: readonly Trace[]): Trace[] {
  const best = new Map<Trace['start'], Trace>();
  for (const trace of traces)
    if ((best.get(trace.start)?.probability ?? 0) < trace.probability) best.set(trace.start, trace);
  return [...best.values()];
}

/** The run that a goal about this berth is about; a goal about none is about the first. */
export const runFrom = (
  { traces }: Pick<Staged, 'traces'>,
  start: Trace['start'] | undefined,
): Trace | undefined => traces.find((trace) => trace.start === start) ?? traces[0];

/** Until every robot on the stage has ended. */
export const stageDuration = (stage: readonly Staged[]): Seconds =>
  Math.max(0, ...stage.flatMap(({ traces }) => traces.map(durationOf)));

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
