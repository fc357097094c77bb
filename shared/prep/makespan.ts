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

/** How many parts of plans the search may look at: well under a tenth of a second. */
const MOST_STEPS = 25_000;

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
  const order = longestFirst(times);
  let machines: readonly (readonly number[])[] = longestFirstSchedule(times, count);
  let makespan = makespanOf(times, machines);
  let bound = lowerBound(times, count);
  let left = MOST_STEPS;
  for (let most = bound; most < makespan; most++) {
    const steps = Math.ceil(left / 2);
    const tried = packed(order, times, count, most, steps);
    left -= tried.steps;
    if (tried.machines) {
      machines = tried.machines;
      makespan = most;
    } else if (tried.proved && bound === most) bound = most + 1;
  }
  return { machines, makespan, bound, optimal: makespan === bound };
}

interface Packed {
  /** All jobs, none later than wished; null where none was found. */
  readonly machines: number[][] | null;
  /** None was found since there is none. */
  readonly proved: boolean;
  readonly steps: number;
}

/**
 * All jobs within `most` a machine. One machine after the other gets the longest job that is left and others
 * with it, as long as the room that is lost in all does not exceed what there is to spare (bin completion,
 * Martello and Toth 1990, from memory). A machine into which another job would fit is not looked at: taking
 * that job from a later machine does no harm.
 */
function packed(
  order: readonly number[],
  times: readonly number[],
  count: number,
  most: number,
  mostSteps: number,
): Packed {
  const free = order.map(() => true);
  const machines: number[][] = [];
  let spare = count * most - sum(times);
  let steps = 0;
  const timeAt = (place: number) => times[order[place]!]!;

  /** Undefined where the steps are used up. */
  function nextMachine(): boolean | undefined {
    const first = free.indexOf(true);
    if (first < 0) return true;
    if (machines.length === count) return false;
    machines.push([]);
    const done = withJob(first, most);
    if (done === false) machines.pop();
    return done;
  }

  function withJob(place: number, room: number): boolean | undefined {
    free[place] = false;
    machines.at(-1)!.push(order[place]!);
    const done = filled(place + 1, room - timeAt(place));
    if (done !== false) return done;
    machines.at(-1)!.pop();
    free[place] = true;
    return false;
  }

  /** Goes on with the machine that is being filled: jobs from `from` on, each in turn, or none of them. */
  function filled(from: number, room: number): boolean | undefined {
    if (steps++ >= mostSteps) return undefined;
    let tried = 0;
    for (let place = from; place < order.length; place++) {
      const time = timeAt(place);
      if (!free[place] || time > room || time === tried) continue;
      tried = time;
      const done = withJob(place, room);
      if (done !== false) return done;
    }
    if (room > spare || order.some((_, place) => free[place] && timeAt(place) <= room)) return false;
    spare -= room;
    const done = nextMachine();
    if (done === false) spare += room;
    return done;
  }

  const done = spare < 0 ? false : nextMachine();
  return { machines: done ? machines : null, proved: done === false, steps };
}
