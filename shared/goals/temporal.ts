/**
 * Temporal logic with quantitative semantics (Fainekos and Pappas 2009, Donzé and Maler 2010) over
 * piecewise-constant signals in dense time. Windows are cut at the end of the signal: over an empty
 * one "always" is as true, and "eventually" as false, as can be.
 */

/** A value over [0, end): `values[i]` holds from `times[i]` until the next one. The first time is 0. */
export interface Signal<V> {
  readonly times: readonly number[];
  readonly values: readonly V[];
  readonly end: number;
}

/** How true values are, and the two that nothing exceeds. */
export interface Scale<V> {
  readonly rank: (value: V) => number;
  readonly least: V;
  readonly most: V;
}

/** The same values with true and false changed about: turns "or" into "and", "eventually" into "always". */
export const turned = <V>({ rank, least, most }: Scale<V>): Scale<V> => ({
  rank: (value) => -rank(value),
  least: most,
  most: least,
});

/** The truer of two values, the first of two equal ones. */
const truer = <V>(a: V, b: V, { rank }: Scale<V>): V => (rank(b) > rank(a) ? b : a);

/** Moment by moment one value out of several; signals of one length in time. At least one. */
export function pointwise<V, W>(signals: readonly Signal<V>[], join: (values: readonly V[]) => W): Signal<W> {
  const times = [...new Set(signals.flatMap((signal) => signal.times))].sort((a, b) => a - b);
  const places = signals.map(() => 0);
  const values = times.map((t) =>
    join(
      signals.map((signal, k) => {
        while (signal.times[places[k]! + 1]! <= t) places[k]!++;
        return signal.values[places[k]!]!;
      }),
    ),
  );
  return { times, values, end: signals[0]!.end };
}

/** Moment by moment the truest: "or"; with a turned scale "and". */
export const either = <V>(signals: readonly Signal<V>[], scale: Scale<V>): Signal<V> =>
  pointwise(signals, (values) => values.reduce((best, next) => truer(best, next, scale)));

/**
 * The truest value within `from` to `to` seconds from each moment, both ends included: "eventually";
 * with a turned scale "always". Takes time in proportion to the number of changes, apart from sorting.
 */
export function sometime<V>(signal: Signal<V>, from: number, to: number, scale: Scale<V>): Signal<V> {
  const { times, values, end } = signal;
  // When each piece comes into the window, and when it has left it.
  const enters = times.map((t) => t - to);
  const leaves = times.map((_, i) => (times[i + 1] ?? end) - from);
  const changes = [...enters, ...leaves].filter((t) => t > 0 && t < end);
  const moments = [...new Set([0, ...changes])].sort((a, b) => a - b);
  // Pieces in the window that no later one outdoes, in order, so the first is the truest.
  const candidates: number[] = [];
  let head = 0;
  let next = 0;
  const found = moments.map((t) => {
    for (; enters[next]! <= t; next++) {
      const rank = scale.rank(values[next]!);
      while (candidates.length > head && scale.rank(values[candidates.at(-1)!]!) < rank) candidates.pop();
      candidates.push(next);
    }
    while (leaves[candidates[head]!]! <= t) head++;
    return head < candidates.length ? values[candidates[head]!]! : scale.least;
  });
  return { times: moments, values: found, end };
}

/**
 * `goal` within so many seconds, and `hold` at every moment before it, though not necessarily in that
 * moment itself; with a turned scale the opposite of the opposites.
 */
export function until<V>(hold: Signal<V>, goal: Signal<V>, within: number, scale: Scale<V>): Signal<V> {
  const both = pointwise([hold, goal], ([held, reached]) => ({ held: held!, reached: reached! }));
  const against = turned(scale);
  const values = new Array<V>(both.values.length);
  let later = scale.least;
  for (let i = values.length - 1; i >= 0; i--) {
    const { held, reached } = both.values[i]!;
    // Of equal ones the left side is named: the right one may well come, only too late.
    later = truer(truer(held, later, against), reached, scale);
    values[i] = later;
  }
  const ever = { times: both.times, values, end: both.end };
  if (within === Number.POSITIVE_INFINITY) return ever;
  return either([ever, sometime(goal, 0, within, scale)], against);
}

/** Seconds before `end` in which a condition on the value holds. */
export function timeIn<V>({ times, values }: Signal<V>, holds: (value: V) => boolean, end: number): number {
  return times.reduce((sum, t, i) => {
    const to = Math.min(times[i + 1] ?? end, end);
    return holds(values[i]!) && to > t ? sum + (to - t) : sum;
  }, 0);
}
