/** One judged entry of a team in one round. */
export interface Scored {
  readonly team: string;
  readonly round: number;
  readonly points: number;
}

/** An entry as a room has it. */
interface Judged extends Omit<Scored, 'points'> {
  readonly taken: boolean;
  readonly returned: boolean;
  readonly verdict: { readonly points: number } | null;
}

/** Those entries that count: judged, in time or taken all the same, and not given back. */
export const scoredOf = (entries: readonly Judged[]): Scored[] =>
  entries.flatMap(({ team, round, taken, returned, verdict }) =>
    taken && !returned && verdict ? [{ team, round, points: verdict.points }] : [],
  );

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

/** How far a team has come: nobody is compared with anybody else. */
export interface Growth {
  readonly team: string;
  /** Sums over its rounds, of its first entry and of its best one. */
  readonly first: number;
  readonly best: number;
  /** best − first, never negative. */
  readonly grown: number;
}

/** Every team against its own first entries, in the order of `teams`; entries in the order of handing in. */
export const growth = (teams: readonly string[], entries: readonly Scored[]): Growth[] =>
  teams.map((team) => {
    const first = total(firstOfRounds(team, entries));
    const best = total(bestOfRounds(team, entries));
    return { team, first, best, grown: best - first };
  });

function firstOfRounds(team: string, entries: readonly Scored[]): ReadonlyMap<number, number> {
  const first = new Map<number, number>();
  for (const entry of entries) {
    if (entry.team === team && !first.has(entry.round)) first.set(entry.round, entry.points);
  }
  return first;
}

/** The rank of each value, highest first: equal values share a rank and the next one leaves a gap. */
export const ranksOf = (values: readonly number[]): number[] =>
  values.map((value) => 1 + values.filter((other) => other > value).length);

const total = (best: ReadonlyMap<number, number>): number =>
  [...best.values()].reduce((sum, points) => sum + points, 0);
