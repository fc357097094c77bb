import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  either,
  pointwise,
  type Scale,
  type Signal,
  sometime,
  timeIn,
  turned,
  until,
} from '../../../shared/goals/temporal.ts';
import '../../seed.ts';

const PLAIN: Scale<number> = {
  rank: (value) => value,
  least: Number.NEGATIVE_INFINITY,
  most: Number.POSITIVE_INFINITY,
};
const signal = (end: number, ...pairs: [number, number][]): Signal<number> => ({
  times: pairs.map(([t]) => t),
  values: pairs.map(([, value]) => value),
  end,
});
const valueAt = ({ times, values }: Signal<number>, t: number): number =>
  values[times.findLastIndex((from) => from <= t)]!;

describe('sometime', () => {
  const steps = signal(10, [0, 1], [4, 5], [6, 2]);
  test('a value counts from when it comes into the window until it has left it', () => {
    // Within 2 to 3 s: 5 is seen from 4 - 3 = 1 until 6 - 2 = 4.
    const seen = sometime(steps, 2, 3, PLAIN);
    expect([0.99, 1, 3.99, 4].map((t) => valueAt(seen, t))).toEqual([1, 5, 5, 2]);
  });
  test('a window past the end is empty: nothing is true in it', () => {
    expect(valueAt(sometime(steps, 8, 9, PLAIN), 1.99)).toBe(2);
    expect(valueAt(sometime(steps, 8, 9, PLAIN), 2)).toBe(PLAIN.least);
    expect(valueAt(sometime(steps, 8, 9, turned(PLAIN)), 2)).toBe(PLAIN.most);
  });
  test('without an end of the window all that is left counts', () => {
    const ever = sometime(steps, 0, Number.POSITIVE_INFINITY, PLAIN);
    expect([0, 5.9, 6].map((t) => valueAt(ever, t))).toEqual([5, 5, 2]);
  });
  test('of equal values the first is taken', () => {
    const named: Signal<readonly [number, string]> = {
      times: [0, 1, 2],
      values: [
        [3, 'first'],
        [1, 'between'],
        [3, 'last'],
      ],
      end: 4,
    };
    const scale: Scale<readonly [number, string]> = {
      rank: ([value]) => value,
      least: [-9, 'least'],
      most: [9, 'most'],
    };
    expect(sometime(named, 0, 4, scale).values[0]).toEqual([3, 'first']);
    const other: typeof named = { times: [0], values: [[3, 'other']], end: 4 };
    expect(either([named, other], scale).values[0]).toEqual([3, 'first']);
  });
});

describe('until', () => {
  const hold = signal(10, [0, 4], [5, -1]);
  test('the left side need not hold in the moment of the right', () => {
    expect(valueAt(until(hold, signal(10, [0, -3], [5, 2]), 10, PLAIN), 0)).toBe(2);
  });
  test('what comes after the left side has failed is too late', () => {
    expect(valueAt(until(hold, signal(10, [0, -3], [5.5, 2]), 10, PLAIN), 0)).toBe(-1);
  });
  test('a goal past the time allowed does not count', () => {
    const goal = signal(10, [0, -3], [4, 2]);
    expect(valueAt(until(hold, goal, 4, PLAIN), 0)).toBe(2);
    expect(valueAt(until(hold, goal, 3.9, PLAIN), 0)).toBe(-3);
    expect(valueAt(until(hold, goal, 3.9, PLAIN), 0.2)).toBe(2);
  });
  test('a goal that never comes leaves it untrue, however long the left side holds', () => {
    expect(valueAt(until(signal(10, [0, 4]), signal(10, [0, -3]), Number.POSITIVE_INFINITY, PLAIN), 0)).toBe(
      -3,
    );
  });
});

describe('pointwise', () => {
  test('changes whenever one of the signals does', () => {
    const sum = pointwise([signal(3, [0, 1], [2, 5]), signal(3, [0, 10], [1, 20])], ([a, b]) => a! + b!);
    expect(sum).toEqual({ times: [0, 1, 2], values: [11, 21, 25], end: 3 });
  });
});

describe('timeIn', () => {
  test('adds up the pieces in which the value holds, as far as the end', () => {
    const swinging = signal(10, [0, 1], [2, -1], [5, 3], [6, -2], [7, 4]);
    expect(timeIn(swinging, (value) => value >= 0, 9)).toBe(2 + 1 + 2);
    expect(timeIn(swinging, (value) => value >= 0, 5)).toBe(2);
  });
});

describe('against the definition, wherever the changes are', () => {
  // Hundredths of a second, off each other's grid, and moments looked at between them.
  const anywhere = fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { maxLength: 8 }).chain((changes) =>
    fc
      .array(fc.integer({ min: -9, max: 9 }), {
        minLength: changes.length + 1,
        maxLength: changes.length + 1,
      })
      .map((values) => ({ times: [0, ...changes.toSorted((a, b) => a - b)], values, end: 1000 })),
  );
  const window = fc.tuple(fc.integer({ min: 0, max: 700 }), fc.integer({ min: 0, max: 700 }));
  test('sometime', () => {
    fc.assert(
      fc.property(anywhere, window, fc.nat(999), (signal, [from, width], whole) => {
        const t = whole + 0.5;
        const found = sometime(signal, from, from + width, PLAIN);
        const seen = signal.values.filter((_, i) => {
          const piece = { from: signal.times[i]!, to: signal.times[i + 1] ?? signal.end };
          return piece.from <= t + from + width && piece.to > t + from;
        });
        expect(valueAt(found, t)).toBe(Math.max(...seen));
        expect(found.times).toEqual(found.times.toSorted((a, b) => a - b));
      }),
    );
  });
});

describe('against the definition, moment by moment', () => {
  // Changes at whole seconds and windows of whole seconds: then whole seconds are all that counts.
  const grid = fc
    .array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 12 })
    .map((values) => ({ times: values.map((_, i) => i), values, end: values.length }));
  const window = fc
    .tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 5 }))
    .map(([from, width]) => [from, from + width] as const);

  test('sometime', () => {
    fc.assert(
      fc.property(grid, window, ({ times, values, end }, [from, to]) => {
        const found = sometime({ times, values, end }, from, to, PLAIN);
        times.forEach((t) => {
          expect(valueAt(found, t)).toBe(Math.max(...values.slice(t + from, t + to + 1)));
        });
      }),
    );
  });
  test('until', () => {
    fc.assert(
      fc.property(
        grid,
        fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 12, maxLength: 12 }),
        window,
        (a, more, [, within]) => {
          const goal = { ...a, values: a.values.map((_, i) => more[i]!) };
          const found = until(a, goal, within, PLAIN);
          a.times.forEach((t) => {
            const ways = goal.values
              .map((reached, k) => Math.min(reached, ...a.values.slice(t, k)))
              .slice(t, t + within + 1);
            expect(valueAt(found, t)).toBe(Math.max(...ways));
          });
        },
      ),
    );
  });
});
