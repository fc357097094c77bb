import { describe, expect, it } from 'vitest';
import { cleanStroke, withoutHooks, withoutRepeats } from '../../../shared/geometry/fitting/clean.ts';
import { fitStroke } from '../../../shared/geometry/fitting/fit-stroke.ts';
import {
  arcTo,
  endDirection,
  startDirection,
  straightAndArc,
  twoArcs,
} from '../../../shared/geometry/fitting/joins.ts';
import { evenly, lengthOf, smoothed } from '../../../shared/geometry/fitting/sampling.ts';
import { pathOf } from '../../../shared/geometry/path.ts';
import { type Direction, pieceDirection, shapeOf } from '../../../shared/geometry/piece.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';

const at = (x: number, y: number): PaperPoint => ({ x, y });
const heading = (degrees: number): Direction => ({
  x: Math.cos((degrees * Math.PI) / 180),
  y: Math.sin((degrees * Math.PI) / 180),
});

/** Samples every few mm along straight legs. */
function legs(corners: readonly PaperPoint[], step: number): PaperPoint[] {
  return corners.slice(1).flatMap((to, i) => {
    const from = corners[i]!;
    const n = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step);
    return Array.from({ length: n + (i === corners.length - 2 ? 1 : 0) }, (_, k) =>
      at(from.x + ((to.x - from.x) * k) / n, from.y + ((to.y - from.y) * k) / n),
    );
  });
}

const circle = (radius: number, turn: number): PaperPoint[] =>
  Array.from({ length: 101 }, (_, i) => {
    const a = (turn * 2 * Math.PI * i) / 100;
    return at(100 + radius * Math.cos(a), 100 + radius * Math.sin(a));
  });

describe('cleaning a stroke', () => {
  it('leaves out repeats and what is no number', () => {
    expect(withoutRepeats([at(1, 1), at(1, 1), at(Number.NaN, 2), at(1.005, 1), at(2, 1)])).toEqual([
      at(1, 1),
      at(2, 1),
    ]);
  });

  it('cuts hooks under 3 mm at both ends, and only those', () => {
    const straight = legs([at(0, 0), at(60, 0)], 2);
    const hooked = [at(1, 2), ...straight, at(59, -1.5)];
    expect(withoutHooks(hooked)).toEqual(straight);
    const corner = legs([at(0, 8), at(0, 0), at(60, 0)], 2);
    expect(withoutHooks(corner)).toEqual(corner);
  });

  it('spaces points evenly along the way', () => {
    const even = evenly([at(0, 0), at(3, 0), at(3, 5)], 2, 4);
    expect(even).toEqual([at(0, 0), at(2, 0), at(3, 1), at(3, 3), at(3, 5)]);
    expect(lengthOf(even)).toBeCloseTo(8 - 2 + Math.SQRT2, 12);
  });

  it('smooths between fixed points and leaves these where they are', () => {
    const zigzag = [at(0, 0), at(1, 1), at(2, 0), at(3, 1), at(4, 0), at(5, 1), at(6, 0)];
    const calm = smoothed(zigzag, 1, [3], 3);
    expect([calm[0], calm[3], calm[6]]).toEqual([at(0, 0), at(3, 1), at(6, 0)]);
    expect(calm[1]!.y).toBeCloseTo(1 / 3, 12);
  });

  it('finds the corner of a right angle where it is', () => {
    const clean = cleanStroke(legs([at(0, 0), at(60, 0), at(60, 60)], 3))!;
    expect(clean.corners).toHaveLength(1);
    expect(clean.points[clean.corners[0]!]).toEqual(at(60, 0));
  });

  it('finds none on a circle of 20 mm', () => {
    expect(cleanStroke(circle(20, 0.9))!.corners).toEqual([]);
  });
});

describe('joins', () => {
  const from = { at: at(0, 0), along: heading(0) };

  it('an arc leaves along the given direction', () => {
    const arc = arcTo(from, at(40, 40))!;
    expect(startDirection(arc).x).toBeCloseTo(1, 12);
    expect(endDirection(arc).y).toBeCloseTo(1, 12);
    expect(arcTo(from, at(-40, 1))).toBeUndefined();
  });

  it.each([20, 90, -60, 150])('two arcs keep both directions, turning by %d degrees', (turn) => {
    const to = { at: at(80, 30), along: heading(turn) };
    const [first, last] = twoArcs(from, to)!;
    expect(startDirection(first!).x).toBeCloseTo(1, 9);
    expect(endDirection(first!).x).toBeCloseTo(startDirection(last!).x, 9);
    expect(endDirection(first!).y).toBeCloseTo(startDirection(last!).y, 9);
    expect(endDirection(last!).x).toBeCloseTo(to.along.x, 9);
    expect(endDirection(last!).y).toBeCloseTo(to.along.y, 9);
  });

  it('a straight and an arc keep both directions, in either order', () => {
    for (const end of [at(80, 30), at(30, 80)]) {
      const pieces = straightAndArc(from, { at: end, along: heading(90) })!;
      expect(pieces.filter(({ bulge }) => bulge === 0)).toHaveLength(1);
      expect(startDirection(pieces[0]!).x).toBeCloseTo(1, 9);
      expect(endDirection(pieces[1]!).y).toBeCloseTo(1, 9);
    }
    expect(straightAndArc(from, { at: at(80, -30), along: heading(90) })).toBeUndefined();
  });
});

describe('fitStroke', () => {
  it('a tap has no line', () => {
    expect(fitStroke([])).toBeNull();
    expect(fitStroke([at(5, 5)])).toBeNull();
    expect(fitStroke([at(5, 5), at(5, 5), at(6, 5.5)])).toBeNull();
  });

  it('a straight is one straight', () => {
    expect(fitStroke(legs([at(10, 10), at(100, 40)], 4))).toEqual({
      from: at(10, 10),
      pieces: [{ to: at(100, 40), bulge: 0 }],
    });
  });

  it('an angle is two straights with its corner in place', () => {
    const { pieces } = fitStroke(legs([at(10, 10), at(90, 10), at(90, 80)], 4))!;
    expect(pieces).toHaveLength(2);
    expect(Math.hypot(pieces[0]!.to.x - 90, pieces[0]!.to.y - 10)).toBeLessThan(0.5);
  });

  it('a circle drawn to nine tenths is at most two arcs of its radius', () => {
    const path = pathOf(fitStroke(circle(45, 0.9))!);
    expect(path.pieces.length).toBeLessThanOrEqual(2);
    for (const arc of path.pieces) expect(Math.abs(1 / arc.curvature - 45)).toBeLessThan(1);
  });

  it('straight, curve, straight come back, tangent to one another', () => {
    const bend = Array.from({ length: 31 }, (_, i) => {
      const a = (i * Math.PI) / 60;
      return at(80 + 40 * Math.sin(a), 60 - 40 * Math.cos(a));
    });
    const samples = [...legs([at(20, 20), at(80, 20)], 3), ...bend, ...legs([at(120, 63), at(120, 120)], 3)];
    const { pieces } = pathOf(fitStroke(samples)!);
    expect(pieces.length).toBeLessThanOrEqual(4);
    for (let i = 1; i < pieces.length; i++) {
      const before = pieceDirection(pieces[i - 1]!, pieces[i - 1]!.length);
      const after = pieceDirection(pieces[i]!, 0);
      expect(before.x * after.x + before.y * after.y).toBeGreaterThan(0.9998);
    }
  });

  it('a tight loop keeps its own radius', () => {
    const { pieces } = pathOf(fitStroke(circle(9, 0.8))!);
    for (const piece of pieces) expect(Math.abs(1 / piece.curvature)).toBeLessThan(13);
  });

  it('an endless scribble has at most 200 pieces, all with length', () => {
    const samples = Array.from({ length: 5000 }, (_, i) =>
      at(90 + 80 * Math.sin(i * 1.7) * Math.cos(i / 9), 90 + 80 * Math.cos(i * 2.3)),
    );
    const fit = fitStroke(samples)!;
    expect(fit.pieces.length).toBeLessThanOrEqual(200);
    let from = fit.from;
    for (const piece of fit.pieces) {
      expect(() => shapeOf({ from, ...piece })).not.toThrow();
      from = piece.to;
    }
  });

  it('the same samples give the same line', () => {
    const samples = circle(30, 1.7);
    expect(fitStroke(samples)).toEqual(fitStroke(samples));
  });
});
