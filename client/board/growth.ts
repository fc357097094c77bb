import { growth, scoredOf } from '../../shared/points/standings.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { hasMet } from '../parts/figures.ts';

/** What can be said well of a team at the end. Nobody is compared with anybody else. */
export interface TeamGrowth {
  readonly team: Team;
  /** Points that its best entries have more than its first ones. */
  readonly grown: number;
  /** It met every goal of a challenge. */
  readonly met: boolean;
  /** Without those that were given back. */
  readonly entries: number;
}

/** Every team against its own first entries, in the order of the berths. */
export function growthOf({ teams, entries }: RoomState): TeamGrowth[] {
  const ids = teams.map(({ id }) => id);
  const grown = growth(ids, scoredOf(entries));
  return teams.map((team, i) => {
    const own = entries.filter((entry) => entry.team === team.id && !entry.returned);
    return {
      team,
      grown: grown[i]!.grown,
      met: own.some(hasMet),
      entries: own.length,
    };
  });
}
