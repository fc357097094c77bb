import { describe, expect, it } from 'vitest';
import {
  distanceToSegment,
  isInside,
  polygonSignedDistance,
  rectangleAt,
  segmentCrossing,
  segmentSignedDistance,
  signedDistance,
} from '../../../shared/geometry/polygon.ts';

const at = (x: number, y: number) => ({ x, y });
const square = [at(0, 0), at(100, 0), at(100, 100), at(0, 100)];
/** A U, open at the top between x = 40 and 60, down to y = 70. */
const u = [at(0, 0), at(40, 0), at(40, 70), at(60, 70), at(60, 0), at(100, 0), at(100, 100), at(0, 100)];

describe('segmentCrossing', () => {
  it('gives shares along both and the side that is reached', () => {
    expect(segmentCrossing(at(0, -10), at(0, 30), at(-20, 0), at(20, 0))).toEqual({
      t: 0.25,
      u: 0.5,
      side: 1,
    });
    expect(segmentCrossing(at(0, 30), at(0, -10), at(-20, 0), at(20, 0))).toMatchObject({ side: -1 });
  });

  it('a chain of moves with a point on the gate passes once', () => {
    const chain = [at(-5, -10), at(0, 0), at(5, 12)];
    const passes = [1, 2].filter((i) => segmentCrossing(chain[i - 1]!, chain[i]!, at(-20, 0), at(20, 0)));
    expect(passes).toHaveLength(1);
  });

  it('coming up to the gate and turning back passes twice or never, not once', () => {
    for (const sense of [1, -1]) {
      const chain = [at(0, 10 * sense), at(3, 0), at(6, 10 * sense)];
      const passes = [1, 2].filter((i) => segmentCrossing(chain[i - 1]!, chain[i]!, at(-20, 0), at(20, 0)));
      expect(passes.length % 2).toBe(0);
    }
  });

  it('passing beside the gate, or along it, does not pass it', () => {
    expect(segmentCrossing(at(21, -10), at(21, 10), at(-20, 0), at(20, 0))).toBeUndefined();
    expect(segmentCrossing(at(-10, 0), at(10, 0), at(-20, 0), at(20, 0))).toBeUndefined();
  });
});

describe('points and areas', () => {
  it('distance to a segment: beside it, beyond it, and to a point', () => {
    expect(distanceToSegment(at(5, 3), at(0, 0), at(10, 0))).toBe(3);
    expect(distanceToSegment(at(13, 4), at(0, 0), at(10, 0))).toBe(5);
    expect(distanceToSegment(at(3, 4), at(0, 0), at(0, 0))).toBe(5);
  });

  it('inside, outside, and in the notch of a U', () => {
    expect([at(50, 50), at(-1, 50), at(50, 101)].map((p) => isInside(square, p))).toEqual([
      true,
      false,
      false,
    ]);
    expect([at(50, 30), at(50, 80), at(20, 30)].map((p) => isInside(u, p))).toEqual([false, true, true]);
    expect(isInside([...u].reverse(), at(20, 30))).toBe(true);
  });

  it('signed distance is negative inside', () => {
    expect(signedDistance(square, at(30, 45))).toBe(-30);
    expect(signedDistance(square, at(103, 104))).toBe(5);
    expect(signedDistance(u, at(50, 30))).toBe(10);
  });
});

describe('segments and outlines against areas', () => {
  it('a segment outside keeps its distance', () => {
    expect(segmentSignedDistance(square, at(-50, -12), at(150, -12))).toBe(12);
  });

  it('a segment through gets as deep as its deepest point, though both its ends are outside', () => {
    expect(segmentSignedDistance(square, at(30, -50), at(30, 150))).toBeCloseTo(-30, 1);
  });

  it('a segment wholly inside, one along an edge, and one that only touches', () => {
    expect(segmentSignedDistance(square, at(20, 40), at(40, 40))).toBeCloseTo(-40, 1);
    expect(segmentSignedDistance(square, at(10, 0), at(90, 0))).toBeCloseTo(0, 1);
    expect(segmentSignedDistance(square, at(-30, 30), at(0, 30))).toBeCloseTo(0, 9);
  });

  it('a segment through the notch of a U stays outside', () => {
    expect(segmentSignedDistance(u, at(50, -20), at(50, 55))).toBe(10);
  });

  it('an outline beside, reaching in, and around an area', () => {
    const outline = (x: number) => rectangleAt(at(x, 50), at(1, 0), { ahead: 17, behind: 12, half: 14 });
    expect(polygonSignedDistance(square, outline(-40))).toBe(23);
    expect(polygonSignedDistance(square, outline(-10))).toBeCloseTo(-7, 1);
    const small = [at(-3, 47), at(3, 47), at(3, 53), at(-3, 53)];
    expect(polygonSignedDistance(small, outline(0))).toBeLessThan(-8);
  });

  it('a rectangle is placed ahead, behind and to both sides of its origin', () => {
    // Heading down the sheet: ahead is +y, right is −x.
    expect(rectangleAt(at(10, 10), at(0, 1), { ahead: 5, behind: 2, half: 3 })).toEqual([
      at(13, 15),
      at(7, 15),
      at(7, 8),
      at(13, 8),
    ]);
  });
});
