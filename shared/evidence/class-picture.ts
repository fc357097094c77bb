import type { Sheet } from '../documents/sheet.ts';
import type { Ending } from '../documents/trace.ts';
import { type Finding, RULE_IDS, type RuleId, type Verdict } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Millis, Mm, PaperPoint } from '../geometry/units.ts';
import {
  counts,
  type Entry,
  type EntryId,
  type Phase,
  type RoomState,
  type TeamId,
  timeIn,
} from '../room/state.ts';

/**
 * What a class has done with one challenge, for the desk and its exports: which rules trip how many
 * teams, where runs fail, points and times. Evidence, never a rank; teams stand in the order of their berths.
 */

/** An entry with what the judge says of it; null: no verdict yet, or answers instead of a drawing. */
export interface JudgedEntry {
  readonly entry: Entry;
  readonly verdict: Verdict | null;
}

export interface RuleTrips {
  readonly rule: RuleId;
  readonly teams: number;
  readonly entries: number;
  /** The finding that is furthest from what is allowed. */
  readonly worst: Finding;
}

/** A run that came to nothing. */
export interface FailedRun {
  readonly entry: EntryId;
  readonly team: TeamId;
  readonly ending: Ending;
  /** On the sheet as it is, whichever variant it was drawn on. */
  readonly at: PaperPoint;
  /** How likely it is that the entry's robot ends so, there. */
  readonly chance: number;
}

/** Where runs failed close to one another. */
export interface FailedPlace {
  readonly at: PaperPoint;
  /** So many teams had one there. */
  readonly teams: number;
}

export interface TeamWork {
  readonly team: TeamId;
  readonly tries: number;
  readonly entries: number;
  /** Of the best entry that counts; null without one. */
  readonly points: number | null;
  readonly met: boolean;
  /**
   * Building time until its first entry that meets the challenge, or else its last entry; null before
   * it has handed in.
   */
  readonly onTask: Millis | null;
}

export interface ClassPicture {
  /** What trips most teams first; untidy is left out, since the run does not care. */
  readonly rules: readonly RuleTrips[];
  readonly failures: readonly FailedRun[];
  readonly teams: readonly TeamWork[];
  readonly minutes: Minutes;
}

export interface Minutes {
  /** Teams at their tablets: the building phase. */
  readonly screen: Millis;
  /** Real robots on paper: the driving phase. */
  readonly paper: Millis;
}

/** `judged` are the entries of round `round`, in the order of handing in; `now` is server time. */
export function classPicture(
  state: RoomState,
  round: number,
  judged: readonly JudgedEntry[],
  sheet: Pick<Sheet, 'w' | 'h'>,
  now: Millis,
): ClassPicture {
  const playing = judged.filter(({ entry }) => state.teams.some(({ id }) => id === entry.team));
  return {
    rules: rulesThatTrip(playing),
    failures: playing.flatMap((one) => failedRuns(one, sheet)),
    teams: state.teams.map(({ id }) => workOf(id, state, round)),
    minutes: minutesOf(state, round, now),
  };
}

export function rulesThatTrip(judged: readonly JudgedEntry[]): RuleTrips[] {
  const found = judged.flatMap(({ entry, verdict }) =>
    (verdict?.findings ?? []).filter((f) => f.severity !== 'untidy').map((finding) => ({ entry, finding })),
  );
  const trips = RULE_IDS.flatMap((rule): RuleTrips[] => {
    const own = found.filter(({ finding }) => finding.rule === rule);
    if (own.length === 0) return [];
    const teams = new Set(own.map(({ entry }) => entry.team)).size;
    const entries = new Set(own.map(({ entry }) => entry.id)).size;
    const worst = own.map(({ finding }) => finding).reduce((a, b) => (farOf(b) > farOf(a) ? b : a));
    return [{ rule, teams, entries, worst }];
  });
  return trips.sort((a, b) => b.teams - a.teams || b.entries - a.entries);
}

const farOf = ({ measured = 0, allowed = 0 }: Finding): number => Math.abs(measured - allowed);

/** Endings after which the robot has gone nowhere that anybody wished. */
const FAILED: readonly Ending[] = ['stopped', 'lost', 'off-paper', 'time-up', 'never-started'];

function failedRuns({ entry, verdict }: JudgedEntry, sheet: Pick<Sheet, 'w' | 'h'>): FailedRun[] {
  const endings = (verdict?.odds ?? []).flatMap((odds) => odds.endings);
  return endings
    .filter(({ ending, probability }) => FAILED.includes(ending) && probability > 0)
    .map(({ ending, at, probability }) => ({
      entry: entry.id,
      team: entry.team,
      ending,
      at: asOnSheet(at, entry, sheet),
      chance: probability,
    }));
}

/** Failed runs by places that lie at least `apart` from one another, each where its first one failed. */
export function failedPlaces(failures: readonly FailedRun[], apart: Mm): FailedPlace[] {
  const places: { readonly at: PaperPoint; readonly teams: Set<TeamId> }[] = [];
  for (const { at, team } of failures) {
    const near = places.find((place) => distance(place.at, at) < apart);
    if (near) near.teams.add(team);
    else places.push({ at, teams: new Set([team]) });
  }
  return places.map(({ at, teams }) => ({ at, teams: teams.size }));
}

/** A place of an entry's own sheet on the sheet as it is. */
function asOnSheet(at: PaperPoint, { variant }: Entry, { w, h }: Pick<Sheet, 'w' | 'h'>): PaperPoint {
  if (variant === null) return at;
  return variant === 'mirrored' ? { x: w - at.x, y: at.y } : { x: w - at.x, y: h - at.y };
}

function workOf(team: TeamId, { entries: all, tries }: RoomState, round: number): TeamWork {
  const own = all.filter((entry) => entry.team === team && entry.round === round);
  const counting = own.filter(counts).flatMap(({ verdict }) => verdict ?? []);
  const first = own.find((entry) => counts(entry) && entry.verdict?.met);
  return {
    team,
    tries: tries.filter((one) => one.team === team && one.round === round).length,
    entries: own.length,
    points: counting.length === 0 ? null : Math.max(...counting.map(({ points }) => points)),
    met: first !== undefined,
    onTask: (first ?? own.at(-1))?.spent ?? null,
  };
}

const AT: Readonly<Record<keyof Minutes, Phase>> = { screen: 'build', paper: 'drive' };

/** How long a round was spent at the screen and on paper; all rounds where `round` is null. */
export function minutesOf(state: RoomState, round: number | null, now: Millis): Minutes {
  const last = state.rounds.length - 1;
  const rounds = round === null ? state.rounds.map((_, i) => i) : [round];
  const inPhase = (phase: Phase, of: number): Millis => {
    const before = state.spent[of]?.[phase] ?? 0;
    const running = of === last && state.phase === phase ? timeIn(state, now) - state.phaseSince : 0;
    return before + Math.max(0, running);
  };
  const sum = (phase: Phase): Millis => rounds.reduce((all, of) => all + inPhase(phase, of), 0);
  return { screen: sum(AT.screen), paper: sum(AT.paper) };
}
