/**
 * Jobs on identical machines in the least time (P||Cmax): longest first for a good plan, then a search for a
 * better one until it is proved that there is none or the search has used its steps.
 */

export interface Schedule {
  /** For each machine the jobs (places in `times`) in the order in which it does them. */
  readonly machines: readonly (readonly number[])[];
  /** When the last machine is done, in the unit of `times`. */
  readonly makespan: number;
  /** No schedule is shorter than this. */
  readonly bound: number;
  /** Whether `makespan` is proved to be the least. */
  readonly optimal: boolean;
}

/** How many placements the search may try: well under a tenth of a second. */
const MOST_STEPS = 40_000;

const longestFirst = (times: readonly number[]): number[] =>
  times.map((_, i) => i).sort((a, b) => times[b]! - times[a]! || a - b);

const sum = (times: readonly number[]): number => times.reduce((total, time) => total + time, 0);

/** Each job in the given order goes to the machine that is free first (list scheduling, Graham 1966). */
export function listSchedule(times: readonly number[], count: number, order: readonly number[]): number[][] {
  const machines: number[][] = Array.from({ length: count }, () => []);
  const loads = new Array<number>(count).fill(0);
  for (const job of order) {
    const first = loads.indexOf(Math.min(...loads));
    machines[first]!.push(job);
    loads[first]! += times[job]!;
  }
  return machines;
}

/** Longest processing time first: at most 4/3 − 1/(3m) of the least time (Graham 1969). */
export function longestFirstSchedule(times: readonly number[], count: number): number[][] {
  return listSchedule(times, count, longestFirst(times));
}

export function makespanOf(times: readonly number[], machines: readonly (readonly number[])[]): number {
  return Math.max(0, ...machines.map((jobs) => sum(jobs.map((job) => times[job]!))));
}

/**
 * No schedule can be shorter than the longest job, than an even share of all work, or than the jobs that
 * must meet on one machine: of k·m + 1 jobs some k + 1 share one, at best the shortest of them.
 */
export function lowerBound(times: readonly number[], count: number): number {
  const sorted = longestFirst(times).map((job) => times[job]!);
  let bound = Math.max(0, sorted[0] ?? 0, Math.ceil(sum(times) / count));
  for (let k = 1; k * count < sorted.length; k++) {
    bound = Math.max(bound, sum(sorted.slice(k * count - k, k * count + 1)));
  }
  return bound;
}

/** The least time for `times` (whole numbers above 0) on `count` machines, 1 or more. */
export function shortestSchedule(times: readonly number[], count: number): Schedule {
  let machines: readonly (readonly number[])[] = longestFirstSchedule(times, count);
  let makespan = makespanOf(times, machines);
  let bound = lowerBound(times, count);
  const search = { times, order: longestFirst(times), steps: MOST_STEPS };
  while (makespan > bound) {
    const better = packed(search, count, makespan - 1);
    if (better === undefined) break;
    if (better === null) bound = makespan;
    else {
      machines = better;
      makespan = makespanOf(times, better);
    }
  }
  return { machines, makespan, bound, optimal: makespan === bound };
}

interface Search {
  readonly times: readonly number[];
  readonly order: readonly number[];
  /** Steps that are left, over all calls. */
  steps: number;
}

/** All jobs within `most` a machine; null where that is proved impossible, undefined out of steps. */
function packed(search: Search, count: number, most: number): number[][] | null | undefined {
  const { times, order } = search;
  const machines: number[][] = Array.from({ length: count }, () => []);
  const loads = new Array<number>(count).fill(0);
  let waste = count * most - sum(times);

  function place(at: number): boolean | undefined {
    const job = order[at];
    if (job === undefined) return true;
    if (search.steps-- <= 0) return undefined;
    const time = times[job]!;
    // The fullest machine first leaves the most room to what comes later; of equally full ones one will do.
    for (let machine = fullest(time, most + 1); machine >= 0; machine = fullest(time, loads[machine]!)) {
      const load = loads[machine]!;
      const lost = lostBy(most - load - time, at);
      if (lost > waste) continue;
      machines[machine]!.push(job);
      loads[machine] = load + time;
      waste -= lost;
      const done = place(at + 1);
      if (done !== false) return done;
      waste += lost;
      machines[machine]!.pop();
      loads[machine] = load;
    }
    return false;
  }

  /** The fullest machine under `below` that has room for `time`, or -1. */
  function fullest(time: number, below: number): number {
    let best = -1;
    for (let m = 0; m < count; m++) {
      const load = loads[m]!;
      if (load < below && load + time <= most && (best < 0 || load > loads[best]!)) best = m;
    }
    return best;
  }

  /** Room that no later job can use, since even the shortest is longer. */
  function lostBy(room: number, at: number): number {
    return at + 1 < order.length && room < times[order.at(-1)!]! ? room : 0;
  }

  const done = waste < 0 ? false : place(0);
  if (done === undefined) return undefined;
  return done ? machines : null;
}
