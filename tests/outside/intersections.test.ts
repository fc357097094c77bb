import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieceDistance } from '../../shared/geometry/distances.ts';
import { pieceIntersections } from '../../shared/geometry/intersections.ts';
import { type PieceEnds, type PieceShape, shapeOf } from '../../shared/geometry/piece.ts';
import '../seed.ts';

// Source: @flatten-js/core 1.6.15, a geometry library that shares no code with this project.

const coordinate = fc.integer({ min: 0, max: 20_000 }).map((n) => n / 100);
const point = fc.record({ x: coordinate, y: coordinate });
const bulge = fc.oneof(
  fc.constant(0),
  fc.integer({ min: -300, max: 300 }).map((n) => n / 100),
);
const ends: fc.Arbitrary<PieceEnds> = fc
  .record({ from: point, to: point, bulge })
  .filter(({ from, to }) => Math.hypot(from.x - to.x, from.y - to.y) > 1)
  .filter(({ bulge: b }) => b === 0 || Math.abs(b) > 0.02);

/** The library's own arc, from centre, radius and two angles worked out here with Math. */
function shapeElsewhere({ from, to, bulge: b }: PieceEnds): Flatten.Segment | Flatten.Arc {
  if (b === 0) return Flatten.segment(from.x, from.y, to.x, to.y);
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const sweep = 4 * Math.atan(b);
  const radius = chord / 2 / Math.abs(Math.sin(sweep / 2));
  const towards = Math.atan2(to.y - from.y, to.x - from.x) - sweep / 2 + (Math.sign(b) * Math.PI) / 2;
  const center = Flatten.point(from.x + radius * Math.cos(towards), from.y + radius * Math.sin(towards));
  const start = Math.atan2(from.y - center.y, from.x - center.x);
  return new Flatten.Arc(center, radius, start, start + sweep, b > 0);
}

/** A pair that all but touches may be told apart either way; such pairs are left out, and counted. */
const nearlyTouches = (a: PieceShape, b: PieceShape): boolean => {
  const reach = (p: PieceShape, by: number): PieceShape[] => [
    shapeOf({ ...p, from: { x: p.from.x + by, y: p.from.y }, to: { x: p.to.x + by, y: p.to.y } }),
    shapeOf({ ...p, from: { x: p.from.x, y: p.from.y + by }, to: { x: p.to.x, y: p.to.y + by } }),
  ];
  const count = pieceIntersections(a, b).length;
  return [...reach(a, 0.02), ...reach(a, -0.02)].some((c) => pieceIntersections(c, b).length !== count);
};

describe('pieces beside @flatten-js/core', () => {
  it('10,000 random pairs: the same meetings', () => {
    let leftOut = 0;
    fc.assert(
      fc.property(ends, ends, (one, two) => {
        const a = shapeOf(one);
        const b = shapeOf(two);
        const ours = pieceIntersections(a, b);
        const theirs = shapeElsewhere(one).intersect(shapeElsewhere(two));
        if (ours.length !== theirs.length && nearlyTouches(a, b)) {
          leftOut++;
          return;
        }
        expect(ours.length).toBe(theirs.length);
        for (const { point: p } of ours) {
          expect(Math.min(...theirs.map((q) => Math.hypot(q.x - p.x, q.y - p.y)))).toBeLessThan(0.005);
        }
      }),
      { numRuns: 10_000 },
    );
    expect(leftOut).toBeLessThan(30);
  });

  it('10,000 random pairs: the same least distance', () => {
    fc.assert(
      fc.property(ends, ends, (one, two) => {
        const [theirs] = shapeElsewhere(one).distanceTo(shapeElsewhere(two));
        const ours = pieceDistance(shapeOf(one), shapeOf(two));
        expect(Math.abs(ours.distance - theirs)).toBeLessThan(0.002);
      }),
      { numRuns: 10_000 },
    );
  });
});
