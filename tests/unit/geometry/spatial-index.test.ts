import { describe, expect, it } from 'vitest';
import { boxesMeet, boxGapSquared, boxOf } from '../../../shared/geometry/box.ts';
import { boxIndex, pieceIndex } from '../../../shared/geometry/spatial-index.ts';
import { piece } from './scenes.ts';

describe('boxes', () => {
  it('of a half circle holds its top', () => {
    const box = piece(-50, 0, 50, 0, 1).box;
    expect(box.minX).toBeCloseTo(-50, 9);
    expect(box.minY).toBeCloseTo(-50, 9);
    expect(box.maxX).toBeCloseTo(50, 9);
    expect(box.maxY).toBeCloseTo(0, 9);
  });

  it('of a shallow arc holds its sagitta: bulge·chord/2', () => {
    const box = piece(0, 0, 100, 0, -0.1).box;
    expect(box.maxY).toBeCloseTo(5, 9);
    expect(box.minY).toBe(0);
  });

  it('of a straight, and of points', () => {
    expect(piece(5, 9, 2, 3).box).toEqual({ minX: 2, minY: 3, maxX: 5, maxY: 9 });
    expect(() => boxOf([])).toThrow(RangeError);
  });

  it('meet, and are apart', () => {
    const a = boxOf([
      { x: 0, y: 0 },
      { x: 10, y: 10 },
    ]);
    const b = boxOf([
      { x: 13, y: 14 },
      { x: 20, y: 20 },
    ]);
    expect(boxesMeet(a, b)).toBe(false);
    expect(boxesMeet(a, b, 4)).toBe(true);
    expect(boxGapSquared(a, b)).toBe(25);
    expect(boxGapSquared(a, a)).toBe(0);
  });
});

describe('spatial index', () => {
  // A hundred short straights on a grid of 10 mm, in reading order.
  const pieces = Array.from({ length: 100 }, (_, i) => {
    const [x, y] = [(i % 10) * 10, Math.floor(i / 10) * 10];
    return piece(x, y, x + 4, y);
  });
  const index = pieceIndex(pieces);

  it('finds by box, in order', () => {
    expect(index.size).toBe(100);
    expect(index.within({ minX: 11, minY: 9, maxX: 24, maxY: 21 })).toEqual([11, 12, 21, 22]);
  });

  it('finds by point and radius, as measuring every box would', () => {
    const p = { x: 47, y: 33 };
    const expected = pieces.flatMap(({ from, to }, i) => {
      const dx = Math.max(0, from.x - p.x, p.x - to.x);
      return Math.hypot(dx, from.y - p.y) <= 15 ? [i] : [];
    });
    expect(index.near(p, 15)).toEqual(expected);
    expect(expected.length).toBeGreaterThan(4);
  });

  it('an empty index finds nothing', () => {
    const none = boxIndex([]);
    expect(none.within({ minX: 0, minY: 0, maxX: 9, maxY: 9 })).toEqual([]);
    expect(none.near({ x: 0, y: 0 }, 9)).toEqual([]);
  });
});
