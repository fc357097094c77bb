import { bestOfRounds, type Scored, scoredOf, standings } from '../../shared/points/standings.ts';
import { counts, type Entry, type RoomState, type Team, type TeamId } from '../../shared/room/state.ts';
import type { Together } from '../../shared/wording/en/board.ts';

/** Index of the round being played; -1 before the first challenge. */
export const currentRound = (room: RoomState): number => room.rounds.length - 1;

export const teamOf = (room: RoomState, id: TeamId): Team | undefined => room.teams.find((t) => t.id === id);
export const entryOf = (room: RoomState, id: string): Entry | undefined =>
  room.entries.find((entry) => entry.id === id);

/** Several drawings at once fill the board: there standings have no place beside them. */
export const isHeat = (room: RoomState): boolean => room.stage.length > 1;

/** A team's entries of a round, oldest first. */
export const entriesOf = (room: RoomState, team: TeamId, round = currentRound(room)): Entry[] =>
  room.entries.filter((entry) => entry.team === team && entry.round === round);

/** The judged entry with the most points that counts, the earlier of two equal ones. */
export function bestEntry(room: RoomState, team: TeamId, round = currentRound(room)): Entry | undefined {
  const judged = entriesOf(room, team, round).filter((entry) => counts(entry) && entry.verdict);
  return judged.reduce<Entry | undefined>(
    (best, entry) => (best && pointsOf(best) >= pointsOf(entry) ? best : entry),
    undefined,
  );
}

/** Late entries of teams that play, of which the desk has not said that they count. */
export const waitingLate = (room: RoomState): Entry[] =>
  countedEntries(room).filter(({ taken, returned }) => !taken && !returned);

export const pointsOf = (entry: Entry): number => entry.verdict?.points ?? 0;

export interface TeamStanding {
  readonly team: Team;
  readonly points: number;
  /** null for a team without a judged entry: it stands below the line, without a rank. */
  readonly rank: number | null;
}

/** The table of the whole lesson: the best entry of each round, standard competition ranking. */
export function standingsOf(room: RoomState): TeamStanding[] {
  const scored = scoredIn(room);
  const withEntries = room.teams.filter((team) => scored.some((entry) => entry.team === team.id));
  const ranked = standings(
    withEntries.map((team) => team.id),
    scored,
  ).map(({ team, points, rank }) => ({ team: teamOf(room, team)!, points, rank }));
  const others = room.teams.filter((team) => !withEntries.includes(team));
  return [...ranked, ...others.map((team) => ({ team, points: 0, rank: null }))];
}

/** Points of a team so far, or null before its first judged entry. */
export function pointsSoFar(room: RoomState, team: TeamId): number | null {
  const best = bestOfRounds(team, scoredIn(room));
  return best.size === 0 ? null : [...best.values()].reduce((sum, points) => sum + points, 0);
}

/** A team that has been taken out of the room counts nowhere. */
const countedEntries = (room: RoomState): Entry[] =>
  room.entries.filter((entry) => teamOf(room, entry.team) !== undefined);

const scoredIn = (room: RoomState): Scored[] => scoredOf(countedEntries(room));

/** Whether an entry met every goal, and stands: also a late one, but none that was given back. */
export const hasMet = ({ verdict, returned }: Entry): boolean => verdict?.met === true && !returned;

/** What the class did together; what was given back is as if it had not been handed in. */
export function classFigures(room: RoomState): Together {
  const entries = countedEntries(room).filter(({ returned }) => !returned);
  const met = new Set(entries.filter(hasMet).map((entry) => entry.team));
  const better = room.teams.filter((team) =>
    room.rounds.some((_, round) => {
      const first = entries.find((e) => e.team === team.id && e.round === round && e.verdict !== null);
      const best = bestEntry(room, team.id, round);
      return first && best && pointsOf(best) > pointsOf(first);
    }),
  );
  return {
    teams: room.teams.length,
    challenges: new Set(entries.map((entry) => entry.round)).size,
    entries: entries.length,
    teamsHandedIn: new Set(entries.map((entry) => entry.team)).size,
    teamsMet: met.size,
    teamsBetter: better.length,
  };
}

/** While the last questions are asked, and while the desk wishes the board to say how the class did. */
export function isCheckOnBoard({ checks }: RoomState): boolean {
  const last = checks.at(-1);
  return last !== undefined && (!last.ended || last.shown !== null);
}
