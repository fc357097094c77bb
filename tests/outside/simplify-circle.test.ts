import { describe, expect, it } from 'vitest';
import { circleFit, quickCircle } from '../../shared/geometry/fitting/circle.ts';
import { simplified } from '../../shared/geometry/fitting/simplify.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';

const points = (...pairs: [number, number][]): PaperPoint[] => pairs.map(([x, y]) => ({ x, y }));

const scaled = (all: readonly PaperPoint[], by: number): PaperPoint[] =>
  all.map(({ x, y }) => ({ x: x * by, y: y * by }));

describe('Ramer, Douglas and Peucker', () => {
  // Source: Rosetta Code, task "Ramer-Douglas-Peucker line simplification", epsilon 1.0.
  const line = points([0, 0], [1, 0.1], [2, -0.1], [3, 5], [4, 6], [5, 7], [6, 8.1], [7, 9], [8, 9], [9, 9]);

  it('keeps the five points of the published example', () => {
    expect(simplified(line, 1).map((i) => line[i])).toEqual(
      points([0, 0], [2, -0.1], [3, 5], [7, 9], [9, 9]),
    );
  });

  it('keeps the same five in a copy scaled by 7, and ones that a chord left undivided would lose', () => {
    expect(simplified(scaled(line, 7), 7)).toEqual(simplified(line, 1));
    expect(simplified(scaled(line, 1 / 7), 1 / 7)).toEqual(simplified(line, 1));
  });

  // Source: scikit-image, tests/skimage/measure/test_polygon.py, a closed square of 13 points.
  const square = points(
    ...([
      [0, 0],
      [0, 1],
      [0, 2],
      [0, 3],
      [1, 3],
      [2, 3],
      [3, 3],
      [3, 2],
      [3, 1],
      [3, 0],
      [2, 0],
      [1, 0],
      [0, 0],
    ] as [number, number][]),
  );

  it('keeps the corners of a closed square', () => {
    expect(simplified(square, 0.1)).toEqual([0, 3, 6, 9, 12]);
    expect(simplified(square, 2.2)).toEqual([0, 6, 12]);
  });
});

describe('circle fit', () => {
  // Source: Gander, Golub and Strebel, BIT 34 (1994) 558-578, section 3 (geometric fit, from memory,
  // reproduced by an independent fit to all printed digits).
  const published = points([1, 7], [2, 6], [5, 8], [7, 7], [9, 5], [3, 7]);

  it('agrees with the published geometric fit', () => {
    const { center, radius } = circleFit(published, 100)!;
    expect(center.x).toBeCloseTo(4.7398, 4);
    expect(center.y).toBeCloseTo(2.9835, 4);
    expect(radius).toBeCloseTo(4.7142, 4);
  });

  it('leaves the published sum of squares', () => {
    const { center, radius } = circleFit(published, 100)!;
    const squares = published.map((p) => (Math.hypot(p.x - center.x, p.y - center.y) - radius) ** 2);
    expect(squares.reduce((a, b) => a + b)).toBeCloseTo(1.2276, 4);
  });

  // Kåsa's fit of the same points by an independent calculation: on a short arc it is a third of a radius off.
  it('the quick fit of the published points is Kåsa’s, which the geometric one improves', () => {
    const { center, radius } = quickCircle(published)!;
    expect(center.x).toBeCloseTo(4.7423, 4);
    expect(center.y).toBeCloseTo(3.8351, 4);
    expect(radius).toBeCloseTo(4.1088, 4);
  });

  // Source: OSGeoLabBp tutorials, circle.rst, four points; Kåsa's fit by an independent calculation.
  it('the quick fit agrees on a surveyor’s example', () => {
    const { center, radius } = quickCircle(
      points([11.88, 0.08], [10.34, 8.59], [2.58, 9.54], [-0.29, 1.95]),
    )!;
    expect(center.x).toBeCloseTo(6.0814, 4);
    expect(center.y).toBeCloseTo(3.6346, 4);
    expect(radius).toBeCloseTo(6.6992, 4);
  });

  it('refuses points on a straight', () => {
    expect(circleFit(points([0, 0], [5, 5], [10, 10], [20, 20]))).toBeUndefined();
  });
});
