import { describe, expect, it } from 'vitest';
import { acos, atan, atan2, cos, expMinus, norm, sin } from '../../../shared/geometry/exact-math.ts';

/** Values spread over [low, high], ends included. */
const spread = (low: number, high: number, count = 2000): number[] =>
  Array.from({ length: count + 1 }, (_, i) => low + ((high - low) * i) / count);

const worst = (values: readonly number[], error: (x: number) => number): number =>
  Math.max(...values.map((x) => Math.abs(error(x))));

// The engine's own Math is no part of the core; here it is what the core is measured against.
describe('exact-math beside Math', () => {
  it('sine and cosine within 1e-15 for angles up to 1e5', () => {
    const near = spread(-4 * Math.PI, 4 * Math.PI);
    expect(worst(near, (x) => sin(x) - Math.sin(x))).toBeLessThan(1e-15);
    expect(worst(near, (x) => cos(x) - Math.cos(x))).toBeLessThan(1e-15);
    const far = spread(-1e5, 1e5, 20_000);
    expect(worst(far, (x) => sin(x) - Math.sin(x))).toBeLessThan(1e-15);
    expect(worst(far, (x) => cos(x) - Math.cos(x))).toBeLessThan(1e-15);
  });

  it('arctangent within 1e-14, also where squares overflow', () => {
    expect(worst(spread(-20, 20), (x) => atan(x) - Math.atan(x))).toBeLessThan(1e-14);
    for (const x of [1e200, -1e200, 1e-200, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(Math.abs(atan(x) - Math.atan(x))).toBeLessThan(1e-14);
    }
  });

  it('the angle of a vector in all directions', () => {
    const error = (a: number) => {
      const gap = atan2(3 * Math.sin(a), 3 * Math.cos(a)) - Math.atan2(3 * Math.sin(a), 3 * Math.cos(a));
      return gap;
    };
    expect(worst(spread(-3.14, 3.14), error)).toBeLessThan(1e-14);
    expect([atan2(0, 0), atan2(0, 1), atan2(1, 0), atan2(-1, 0), atan2(0, -1)]).toEqual([
      0,
      0,
      Math.PI / 2,
      -Math.PI / 2,
      Math.PI,
    ]);
  });

  it('arc cosine within 1e-13, clamped outside', () => {
    expect(worst(spread(-1, 1), (x) => acos(x) - Math.acos(x))).toBeLessThan(1e-13);
    expect(Math.abs(acos(1 - 1e-10) - Math.acos(1 - 1e-10))).toBeLessThan(1e-15);
    expect([acos(2), acos(-2)]).toEqual([0, Math.PI]);
  });

  it('exp(−x) within 1e-12 of itself, and an end to it', () => {
    expect(worst(spread(0, 100), (x) => expMinus(x) / Math.exp(-x) - 1)).toBeLessThan(1e-12);
    expect([expMinus(0), expMinus(1e6), expMinus(Number.POSITIVE_INFINITY)]).toEqual([1, 0, 0]);
  });

  it('length of a vector', () => {
    expect(norm(3, -4)).toBe(5);
  });
});
