import { describe, expect, it } from 'vitest';
import { NOISE, nextInteger, normal, rolled, sfc32 } from '../../../shared/run/random.ts';

describe('sfc32', () => {
  // Source: the published update, t = a + b + counter++; a = b ^ b >>> 9; b = c + (c << 3);
  // c = rotl(c, 21) + t (Doty-Humphrey, PractRand). By hand from a = 1, b = 2, c = 3, counter = 4.
  it('steps as published', () => {
    const g = { a: 1, b: 2, c: 3, count: 4 };
    expect(nextInteger(g)).toBe(7);
    expect(g).toEqual({ a: 2, b: 27, c: 3 * 2 ** 21 + 7, count: 5 });
  });

  it('gives different seeds different numbers, and one seed the same', () => {
    const first = Array.from({ length: 200 }, (_, seed) => nextInteger(sfc32(seed)));
    expect(new Set(first).size).toBe(200);
    expect(nextInteger(sfc32(7))).toBe(first[7]);
  });
});

describe('normal', () => {
  it('has mean 0 and deviation 1', () => {
    const g = sfc32(3);
    const values = Array.from({ length: 20_000 }, () => normal(g));
    const mean = values.reduce((a, b) => a + b) / values.length;
    const variance = values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / values.length;
    // Four deviations of the mean and of the variance of 20,000 values.
    expect(Math.abs(mean)).toBeLessThan(0.0283);
    expect(Math.abs(variance - 1)).toBeLessThan(0.04);
  });

  it('fills the noise table, which fits half of a first-level cache of 32 KB', () => {
    expect(NOISE.byteLength).toBeLessThan(17_000);
  });
});

describe('rolled', () => {
  it('gives every side its share', () => {
    const g = sfc32(11);
    const counts = [0, 0, 0];
    for (let i = 0; i < 9000; i++) counts[rolled(g, 3)]!++;
    // 3000 each, deviation 45; four deviations.
    for (const count of counts) expect(Math.abs(count - 3000)).toBeLessThan(180);
  });
});
