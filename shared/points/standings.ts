/** One judged entry of a team in one round. */
export interface Scored {
  readonly team: string;
  readonly round: number;
  readonly points: number;
}

export interface Standing {
  readonly team: string;
  /** Sum of the team's best entry in each round. */
  readonly points: number;
  /** 1 + the number of teams with more points (standard competition ranking, "1224"). */
  readonly rank: number;
}

/** Every team of `teams`, best first; teams with equal points keep the order in which they were given. */
export function standings(teams: readonly string[], entries: readonly Scored[]): Standing[] {
  const points = teams.map((team) => total(bestOfRounds(team, entries)));
  const ranks = ranksOf(points);
  return teams
    .map((team, i) => ({ team, points: points[i]!, rank: ranks[i]! }))
    .sort((a, b) => a.rank - b.rank);
}

/** The team's best entry of each round it has entries in, by round. */
export function bestOfRounds(team: string, entries: readonly Scored[]): ReadonlyMap<number, number> {
  const best = new Map<number, number>();
  for (const entry of entries) {
    if (entry.team !== team) continue;
    best.set(entry.round, Math.max(entry.points, best.get(entry.round) ?? 0));
  }
  return best;
}

/** The rank of each value, highest first: equal values share a rank and the next one leaves a gap. */
export const ranksOf = (values: readonly number[]): number[] =>
  values.map((value) => 1 + values.filter((other) => other > value).length);

const total = (best: ReadonlyMap<number, number>): number =>
  [...best.values()].reduce((sum, points) => sum + points, 0);
