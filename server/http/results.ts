import { bestOfRounds, scoredOf, standings } from '../../shared/points/standings.ts';
import { counts, type RoomState } from '../../shared/room/state.ts';
import { type Cell, csv } from './csv.ts';

const COLUMNS = [
  'round',
  'challenge',
  'berth',
  'team',
  'entry',
  'handed in (UTC)',
  'late',
  'counts',
  'goals met',
  'points',
  'best of round',
  'points of lesson',
  'rank',
] as const;

/** One row an entry, team by team in the order of the berths; teams without one get a row too. */
export function resultsCsv(state: RoomState): string {
  const scored = scoredOf(state.entries);
  const table = standings(
    state.teams.map((team) => team.id),
    scored,
  );
  const rows = state.teams.flatMap((team): Cell[][] => {
    const standing = table.find((s) => s.team === team.id);
    const lesson: Cell[] = [standing?.points ?? 0, standing?.rank ?? null];
    const best = bestOfRounds(team.id, scored);
    const entries = state.entries.filter((e) => e.team === team.id);
    if (entries.length === 0) {
      return [[null, null, team.berth, team.emblem, null, null, null, null, null, null, null, ...lesson]];
    }
    return entries.map((e) => [
      e.round + 1,
      state.rounds[e.round]?.key ?? null,
      team.berth,
      team.emblem,
      e.number,
      new Date(e.at).toISOString(),
      e.late,
      counts(e),
      e.verdict?.met ?? null,
      e.verdict?.points ?? null,
      e.verdict ? counts(e) && e.verdict.points === best.get(e.round) : null,
      ...lesson,
    ]);
  });
  return csv([COLUMNS, ...rows]);
}
