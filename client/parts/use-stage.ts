import { useMemo, useRef } from 'react';
import type { Answers } from '../../shared/documents/answers.ts';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Design, EMPTY_DESIGN } from '../../shared/documents/design.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import { type Replayed, replayed, type Verdict } from '../../shared/documents/verdict.ts';
import type { WhatIf } from '../../shared/documents/what-if.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { supposed } from '../../shared/judge/what-if.ts';
import { durationOf } from '../../shared/picture/replay.ts';
import type { Entry, EntryId, RoomState, Team } from '../../shared/room/state.ts';
import type { StageLook } from '../../shared/wire/stage.ts';
import { entryOf, teamOf } from './figures.ts';
import type { JudgedHere, Staging } from './judge-here.ts';
import { useStagedRun } from './judging.ts';
import { useStageLook } from './stage-clock.ts';
import { hereOf, useDocument } from './use-document.ts';
import { onSheetOf } from './variants.ts';

/** An entry on the stage with everything that its replay shows. */
export interface Staged {
  readonly entry: Entry;
  readonly team: Team;
  /** As they were handed in; where something is supposed, as that makes them. */
  readonly challenge: Challenge;
  /** Empty where all is given and predicted. */
  readonly design: Design;
  /** What is supposed of it; null where it is shown as it was handed in. */
  readonly whatIf: WhatIf | null;
  /** What the team predicted; null where it drew. */
  readonly answers: Answers | null;
  /** Worked out on this page: the engine is the server's. */
  readonly judged: JudgedHere;
  /** The runs that are shown: from each berth the one that was chosen, or the likeliest. None where the robot never started. */
  readonly traces: readonly Trace[];
  /** Whether it is the run that was judged when it was handed in. */
  readonly replayed: Replayed;
}

/** What is on the stage; null while documents are on their way. */
export function useStage(room: RoomState): readonly Staged[] | null {
  const look = useStageLook();
  // At most four stand there, and as many hooks are called at each turn.
  const a = useStaged(room, room.stage[0], look);
  const b = useStaged(room, room.stage[1], look);
  const c = useStaged(room, room.stage[2], look);
  const d = useStaged(room, room.stage[3], look);
  const now = useMemo(() => {
    const wanted = [a, b, c, d].filter((each) => each !== 'none');
    return wanted.some((each) => each === 'loading') ? null : (wanted as Staged[]);
  }, [a, b, c, d]);
  // While something supposed is worked out, what was shown before stays, all of it.
  const before = useRef<readonly Staged[]>([]);
  if (now) before.current = now;
  const isSame = before.current.map(({ entry }) => entry.id).join() === room.stage.join();
  return now ?? (isSame ? before.current : null);
}

/** What is driven: what was handed in, or what is supposed of it. */
interface Driven {
  readonly challenge: Challenge;
  readonly design: Design;
  readonly staging: Staging;
  readonly whatIf: WhatIf | null;
}

/** As it was handed in. */
const AS_IS: Staging = { robot: null };

function useStaged(room: RoomState, id: EntryId | undefined, look: StageLook): Staged | 'none' | 'loading' {
  const entry = id === undefined ? undefined : entryOf(room, id);
  const team = entry ? teamOf(room, entry.team) : undefined;
  const { challenge, design, answers, verdict } = useHandedIn(room, entry);
  const { whatIf, ways } = look;
  const driven = useMemo((): Driven | null => {
    if (!challenge || !design) return null;
    const other = whatIf && supposed(whatIf, challenge, design);
    if (!other) return { challenge, design, staging: AS_IS, whatIf: null };
    const { robot, ...changed } = other;
    return { ...changed, staging: { robot }, whatIf };
  }, [challenge, design, whatIf]);
  const judged = useStagedRun(driven?.challenge ?? null, driven?.design ?? null, driven?.staging ?? AS_IS);
  return useMemo(() => {
    if (!entry || !team) return 'none';
    if (!driven || !judged || answers === 'loading') return 'loading';
    const { challenge, design, whatIf } = driven;
    const chosen = ways.filter((way) => way.entry === entry.id).map(({ run }) => run);
    const stored = whatIf ? null : verdict;
    return {
      ...{ entry, team, challenge, design, whatIf, answers, judged: settled(judged, stored) },
      traces: shownRuns(judged.traces, chosen),
      replayed: stored ? replayed(judged.verdict, stored) : 'same',
    } satisfies Staged;
  }, [entry, team, driven, answers, judged, ways, verdict]);
}

/** With what is found out for entries only, as the verdict on the entry has it. */
export function settled(judged: JudgedHere, stored: Verdict | null): JudgedHere {
  const goals = judged.verdict.goals.map((result) =>
    result.open ? (stored?.goals.find(({ id }) => id === result.id) ?? result) : result,
  );
  return { ...judged, verdict: { ...judged.verdict, goals } };
}

/** The documents of an entry; null while they are on their way. */
function useHandedIn(room: RoomState, entry: Entry | undefined) {
  const chosen = hereOf(
    useDocument('challenge', entry ? (room.rounds[entry.round]?.challenge ?? null) : null),
  );
  const challenge = entry && chosen ? onSheetOf(entry, chosen) : null;
  const isPredicted = challenge?.play === 'predict';
  const said = hereOf(useDocument('answers', isPredicted ? (entry?.design ?? null) : null));
  const drawn = hereOf(useDocument('design', challenge && !isPredicted ? (entry?.design ?? null) : null));
  const verdict = hereOf(useDocument('verdict', drawn ? (entry?.verdict?.document ?? null) : null));
  const answers = isPredicted ? (said ?? ('loading' as const)) : null;
  return { challenge, design: isPredicted ? EMPTY_DESIGN : drawn, answers, verdict };
}

/** From each berth, in the order of the berths, the run that was chosen or the likeliest one. */
export function shownRuns(traces: readonly Trace[], chosen: readonly number[]): Trace[] {
  const best = new Map<Trace['start'], Trace>();
  for (const trace of traces)
    if ((best.get(trace.start)?.probability ?? 0) < trace.probability) best.set(trace.start, trace);
  for (const run of chosen) {
    const trace = traces[run];
    if (trace) best.set(trace.start, trace);
  }
  return [...best.values()];
}

/** Whether drawings of a heat can lie on top of each other: all are on one sheet. */
export const canLieOnTop = (stage: readonly Staged[]): boolean =>
  stage.every(({ challenge }) => challenge.sheet === stage[0]?.challenge.sheet);

/** Until every robot on the stage has ended. */
export const stageDuration = (stage: readonly Staged[]): Seconds =>
  Math.max(0, ...stage.flatMap(({ traces }) => traces.map(durationOf)));
