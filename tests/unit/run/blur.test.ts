import { describe, expect, it } from 'vitest';
import { shareInside } from '../../../shared/run/blur.ts';

describe('shareInside', () => {
  // Source: standard normal table.
  it.each([
    [0, 0.5],
    [0.5, 0.69146],
    [1, 0.84134],
    [1.5, 0.93319],
    [2, 0.97725],
    [3, 0.99865],
    [-1, 0.15866],
    [-2.5, 0.00621],
  ])('at %d deviations is %d', (deviations, share) => {
    expect(shareInside(deviations)).toBeCloseTo(share, 4);
  });

  it('is all or nothing beyond four deviations', () => {
    expect(shareInside(4)).toBe(1);
    expect(shareInside(-4)).toBe(0);
    expect(shareInside(Number.NaN)).toBe(0);
  });
});
