import type { RuleId } from '../documents/verdict.ts';
import type { Millis } from '../geometry/units.ts';
import type { TeamId } from '../room/state.ts';
import { graveFindings, judgedEntries, type LessonRecord } from './record.ts';

/** What a class's rounds came to, in figures. */

export interface RoundFigures {
  readonly round: number;
  /** The library's key of its challenge. */
  readonly key: string;
  /** Those who play, in the order of their berths. */
  readonly teams: readonly TeamInRound[];
  /** What went wrong, that of most teams first; equal ones in the order in which they came up. */
  readonly trips: readonly Trip[];
}

export interface TeamInRound {
  readonly team: TeamId;
  /** Judged ones. */
  readonly entries: number;
  readonly met: boolean;
  /** Building time, without pauses, until the first entry, the first one that met it, and the last. */
  readonly untilFirst: Millis | null;
  readonly untilMet: Millis | null;
  readonly untilLast: Millis | null;
}

/** A rule by which robots failed, or may have: whose entries broke it, and whose newest one still does. */
export interface Trip {
  readonly rule: RuleId;
  readonly teams: readonly TeamId[];
  readonly left: readonly TeamId[];
}

export const roundFigures = (record: LessonRecord): RoundFigures[] =>
  record.room.rounds.map(({ key }, round) => ({
    round,
    key,
    teams: record.room.teams.map(({ id }) => teamInRound(record, id, round)),
    trips: tripsIn(record, round),
  }));

function teamInRound({ room }: LessonRecord, team: TeamId, round: number): TeamInRound {
  const entries = judgedEntries(room, team, round);
  const met = entries.find(({ verdict }) => verdict?.met);
  return {
    team,
    entries: entries.length,
    met: met !== undefined,
    untilFirst: entries[0]?.after ?? null,
    untilMet: met?.after ?? null,
    untilLast: entries.at(-1)?.after ?? null,
  };
}

function tripsIn(record: LessonRecord, round: number): Trip[] {
  const trips = new Map<RuleId, { teams: Set<TeamId>; left: Set<TeamId> }>();
  for (const { id } of record.room.teams) {
    const entries = judgedEntries(record.room, id, round);
    for (const entry of entries) {
      for (const { rule } of graveFindings(record, entry)) {
        const trip = trips.get(rule) ?? { teams: new Set(), left: new Set() };
        trips.set(rule, trip);
        trip.teams.add(id);
        if (entry === entries.at(-1)) trip.left.add(id);
      }
    }
  }
  return [...trips]
    .map(([rule, { teams, left }]) => ({ rule, teams: [...teams], left: [...left] }))
    .sort((a, b) => b.teams.length - a.teams.length);
}
