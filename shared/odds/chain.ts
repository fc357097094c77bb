import { solve } from './linear.ts';

/**
 * A Markov chain with absorbing states (Grinstead and Snell, Introduction to Probability, section 11.2).
 * States 0 … transient − 1 are transient or belong to a class without a way out; the next ones absorb.
 */
export interface Chain {
  readonly transient: number;
  readonly absorbing: number;
  /** From each state that does not absorb: where to, with what probability. They add up to 1. */
  readonly steps: readonly (readonly Step[])[];
}

export interface Step {
  readonly to: number;
  readonly probability: number;
}

/** All by state that does not absorb. */
export interface Absorption {
  /** The fundamental matrix N: expected visits to each other such state, its own beginning counted. */
  readonly visits: readonly (readonly number[])[];
  /** Expected steps until the chain is absorbed, or caught for ever. */
  readonly steps: readonly number[];
  /** The matrix B: the chance of each absorbing state. */
  readonly absorbed: readonly (readonly number[])[];
  /** The chance of a class without a way out. In such a class visits and steps count as none. */
  readonly endless: readonly number[];
}

/** Solves a chain exactly, up to rounding. Endless classes are found by reachability, not by waiting. */
export function absorptionOf(chain: Chain): Absorption {
  const free = statesWithAWayOut(chain);
  const states = free.flatMap((isFree, state) => (isFree ? [state] : []));
  const place = new Map(states.map((state, i) => [state, i]));
  const outcomes = chain.absorbing + 1;
  const left = states.map((_, i) => states.map((__, j) => (i === j ? 1 : 0)));
  const right = states.map((_, i) => [
    ...new Array<number>(outcomes).fill(0),
    ...states.map((__, j) => (i === j ? 1 : 0)),
  ]);
  states.forEach((state, i) => {
    for (const { to, probability } of chain.steps[state]!) {
      const column = place.get(to);
      if (column !== undefined) left[i]![column]! -= probability;
      else right[i]![to >= chain.transient ? to - chain.transient : chain.absorbing]! += probability;
    }
  });
  return spread(chain, place, solve(left, right));
}

/** Puts the rows of the solution back to all states. */
function spread(
  chain: Chain,
  place: ReadonlyMap<number, number>,
  solved: readonly (readonly number[])[],
): Absorption {
  const all = Array.from({ length: chain.transient }, (_, state) => state);
  const rows = all.map((state) => solved[place.get(state) ?? -1]);
  const { absorbing } = chain;
  const visits = rows.map((row) =>
    all.map((other) => {
      const at = place.get(other);
      return row && at !== undefined ? row[absorbing + 1 + at]! : 0;
    }),
  );
  return {
    visits,
    steps: visits.map((row) => row.reduce((sum, n) => sum + n, 0)),
    absorbed: rows.map((row) => row?.slice(0, absorbing) ?? new Array<number>(absorbing).fill(0)),
    endless: rows.map((row) => row?.[absorbing] ?? 1),
  };
}

/** Which states may be absorbed, found from the absorbing ones backwards. */
function statesWithAWayOut({ transient, steps }: Chain): boolean[] {
  const before: number[][] = Array.from({ length: transient }, () => []);
  const free = new Array<boolean>(transient).fill(false);
  const open: number[] = [];
  const release = (state: number): void => {
    if (free[state]) return;
    free[state] = true;
    open.push(state);
  };
  steps.forEach((row, from) => {
    for (const { to, probability } of row) {
      if (probability === 0) continue;
      if (to >= transient) release(from);
      else before[to]!.push(from);
    }
  });
  for (let state = open.pop(); state !== undefined; state = open.pop()) before[state]!.forEach(release);
  return free;
}

/** The chance of ever coming into one of `targets`, by state. */
export function hittingChances(chain: Chain, targets: ReadonlySet<number>): number[] {
  const hit = chain.transient;
  const missed = hit + 1;
  const steps = chain.steps.map((row, from) =>
    targets.has(from)
      ? [{ to: hit, probability: 1 }]
      : row.map(({ to, probability }) => ({ to: to >= chain.transient ? missed : to, probability })),
  );
  return absorptionOf({ transient: chain.transient, absorbing: 2, steps }).absorbed.map((row) => row[0]!);
}
