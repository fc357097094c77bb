import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { pieceIntersections } from '../../shared/geometry/intersections.ts';
import { type Path, pathFoot, pathFrom, pathOf, pathPart, pointAt } from '../../shared/geometry/path.ts';
import { pathIntersections } from '../../shared/geometry/path-intersections.ts';
import { type PieceEnds, pieceAt, piecePart, shapeOf } from '../../shared/geometry/piece.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { pathDistance } from '../paths.ts';
import '../seed.ts';

const coordinate = fc.integer({ min: 0, max: 30_000 }).map((n) => n / 100);
const point = fc.record({ x: coordinate, y: coordinate });
const bulge = fc.oneof(
  fc.constant(0),
  fc.integer({ min: -3_000_000, max: 3_000_000 }).map((n) => n / 1e6),
);
const apart = (p: PaperPoint, q: PaperPoint): number => Math.hypot(p.x - q.x, p.y - q.y);
const ends: fc.Arbitrary<PieceEnds> = fc
  .record({ from: point, to: point, bulge })
  .filter(({ from, to }) => apart(from, to) > 0.5);
const paths: fc.Arbitrary<Path> = fc
  .array(fc.record({ to: point, bulge }), { minLength: 1, maxLength: 6 })
  .chain((pieces) => fc.record({ from: point, pieces: fc.constant(pieces) }))
  .filter(({ from, pieces }) => pieces.every(({ to }, i) => apart(i ? pieces[i - 1]!.to : from, to) > 0.5))
  .map(pathOf);
const share = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);

const reversePiece = ({ from, to, bulge }: PieceEnds): PieceEnds => ({ from: to, to: from, bulge: -bulge });
const reversed = ({ pieces }: Path): Path => pathFrom([...pieces].reverse().map(reversePiece));

describe('pieces', () => {
  it('reversing keeps length and points', () => {
    fc.assert(
      fc.property(ends, share, (e, t) => {
        const there = shapeOf(e);
        const back = shapeOf(reversePiece(e));
        expect(back.length).toBeCloseTo(there.length, 8);
        const p = pieceAt(there, t * there.length);
        expect(apart(p, pieceAt(back, (1 - t) * back.length))).toBeLessThan(1e-7);
      }),
    );
  });

  it('splitting keeps length, points and curvature', () => {
    fc.assert(
      fc.property(ends, fc.integer({ min: 50, max: 950 }), share, (e, cut, t) => {
        const whole = shapeOf(e);
        const s = (cut / 1000) * whole.length;
        const first = shapeOf(piecePart(whole, 0, s));
        const second = shapeOf(piecePart(whole, s, whole.length));
        expect(first.length + second.length).toBeCloseTo(whole.length, 7);
        expect(first.length).toBeCloseTo(s, 7);
        // A part whose bulge falls under the tolerance becomes a straight: 4e-6 rad over its length.
        expect(Math.abs(second.curvature - whole.curvature) * second.length).toBeLessThan(4.1e-6);
        const way = t * whole.length;
        const q = way <= s ? pieceAt(first, way) : pieceAt(second, way - s);
        expect(apart(q, pieceAt(whole, way))).toBeLessThan(1e-6 * (1 + whole.length));
      }),
    );
  });

  it('the box holds every point and is no larger than need be', () => {
    fc.assert(
      fc.property(ends, (e) => {
        const shape = shapeOf(e);
        const { box } = shape;
        const points = Array.from({ length: 401 }, (_, i) => pieceAt(shape, (i / 400) * shape.length));
        const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
        // Between samples an arc stands off by at most its sagitta: step²/(8r).
        const slack = (shape.length / 400) ** 2 * Math.abs(shape.curvature) + 1e-6;
        for (const [least, found] of [
          [box.minX, Math.min(...xs)],
          [box.minY, Math.min(...ys)],
          [-box.maxX, -Math.max(...xs)],
          [-box.maxY, -Math.max(...ys)],
        ] as const) {
          expect(found - least).toBeGreaterThan(-1e-6);
          expect(found - least).toBeLessThan(slack);
        }
      }),
    );
  });

  it('meetings are the same seen from either piece, and lie on both', () => {
    fc.assert(
      fc.property(ends, ends, (e, f) => {
        const [a, b] = [shapeOf(e), shapeOf(f)];
        const found = pieceIntersections(a, b);
        expect(pieceIntersections(b, a)).toHaveLength(found.length);
        for (const m of found) {
          expect(apart(pieceAt(a, m.a), m.point)).toBeLessThan(0.002);
          expect(apart(pieceAt(b, m.b), m.point)).toBeLessThan(0.002);
        }
      }),
    );
  });
});

describe('paths', () => {
  it('reversing keeps length and points', () => {
    fc.assert(
      fc.property(paths, share, (path, t) => {
        const back = reversed(path);
        expect(back.length).toBeCloseTo(path.length, 7);
        expect(apart(pointAt(path, t * path.length), pointAt(back, (1 - t) * path.length))).toBeLessThan(
          1e-6,
        );
      }),
    );
  });

  it('the foot is as near as the nearest of dense samples', () => {
    fc.assert(
      fc.property(paths, point, (path, p) => {
        const foot = pathFoot(path, p);
        const step = path.length / 500;
        const samples = Array.from({ length: 501 }, (_, i) => apart(p, pointAt(path, i * step)));
        const nearest = Math.min(...samples);
        expect(foot.distance).toBeLessThanOrEqual(nearest + 1e-7);
        expect(foot.distance).toBeGreaterThanOrEqual(nearest - step);
        expect(apart(pointAt(path, foot.s), foot.point)).toBeLessThan(1e-6);
      }),
    );
  });

  it('a part is as long as the ways say, and lies on the path', () => {
    fc.assert(
      fc.property(paths, share, share, share, (path, t, u, v) => {
        const [s0, s1] = [Math.min(t, u) * path.length, Math.max(t, u) * path.length];
        fc.pre(s1 - s0 > 0.1);
        const part = pathFrom(pathPart(path, s0, s1));
        expect(Math.abs(part.length - (s1 - s0))).toBeLessThan(0.003);
        const way = v * part.length;
        expect(apart(pointAt(part, way), pointAt(path, s0 + way))).toBeLessThan(0.003);
      }),
    );
  });

  it('splitting a path at a joint changes neither its meetings nor its distances', () => {
    fc.assert(
      fc.property(paths, paths, fc.integer({ min: 50, max: 950 }), (path, other, cut) => {
        const s = (cut / 1000) * path.length;
        const split = pathFrom([...pathPart(path, 0, s), ...pathPart(path, s, path.length)]);
        const found = pathIntersections(path, other);
        const again = pathIntersections(split, other);
        expect(again.map(({ kind }) => kind)).toEqual(found.map(({ kind }) => kind));
        found.forEach((m, i) => {
          expect(Math.abs(m.a - again[i]!.a)).toBeLessThan(0.003);
        });
        const gap = pathDistance(split, other).distance - pathDistance(path, other).distance;
        expect(Math.abs(gap)).toBeLessThan(0.002);
      }),
    );
  });
});
