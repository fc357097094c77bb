import { describe, expect, it } from 'vitest';
import { directionAt, pathOf, pointAt } from '../../shared/geometry/path.ts';
import { type Arc, pieceAt, pieceDirection, pieceFoot, shapeOf } from '../../shared/geometry/piece.ts';

// Source: elementary geometry of the circle, worked by hand. Bulge = tan(sweep/4); chord = 2r·sin(sweep/2);
// sagitta = r·(1 − cos(sweep/2)) = bulge·chord/2; arc length = r·sweep. y points down.

describe('arc from chord and bulge', () => {
  it('half circle: bulge 1 on a chord of 100 is r = 50, length 50π, and passes 50 above', () => {
    const arc = shapeOf({ from: { x: 0, y: 0 }, to: { x: 100, y: 0 }, bulge: 1 }) as Arc;
    expect(arc.radius).toBeCloseTo(50, 12);
    expect(arc.length).toBeCloseTo(157.07963267948966, 10);
    expect(arc.center.x).toBeCloseTo(50, 12);
    expect(arc.center.y).toBeCloseTo(0, 12);
    // Bending to the right from (0, 0) to (100, 0) it sets out upwards, where y is negative.
    expect(pieceDirection(arc, 0).y).toBeCloseTo(-1, 12);
    const top = pieceAt(arc, arc.length / 2);
    expect(top.x).toBeCloseTo(50, 10);
    expect(top.y).toBeCloseTo(-50, 10);
  });

  it('quarter circle of r = 40 from (0, 0) heading right, turning right: ends at (40, 40) heading down', () => {
    // tan(90°/4) = √2 − 1; length 20π.
    const arc = shapeOf({ from: { x: 0, y: 0 }, to: { x: 40, y: 40 }, bulge: Math.SQRT2 - 1 }) as Arc;
    expect(arc.center.x).toBeCloseTo(0, 12);
    expect(arc.center.y).toBeCloseTo(40, 12);
    expect(arc.radius).toBeCloseTo(40, 12);
    expect(arc.length).toBeCloseTo(62.83185307179586, 10);
    expect(arc.curvature).toBeCloseTo(1 / 40, 14);
    expect(pieceDirection(arc, 0).x).toBeCloseTo(1, 12);
    expect(pieceDirection(arc, arc.length).y).toBeCloseTo(1, 12);
  });

  it('60°: the chord of a sixth of the circle is its radius', () => {
    // tan 15° = 2 − √3; sagitta r·(1 − cos 30°) = 30·0.1339745962 = 4.0192378865.
    const arc = shapeOf({ from: { x: 0, y: 0 }, to: { x: 30, y: 0 }, bulge: 2 - Math.sqrt(3) }) as Arc;
    expect(arc.radius).toBeCloseTo(30, 10);
    expect(arc.length).toBeCloseTo(31.41592653589793, 10);
    expect(pieceAt(arc, arc.length / 2).y).toBeCloseTo(-4.0192378865, 9);
  });

  it('three quarters, to the left: bulge −(1 + √2), length 1.5π·r, negative curvature', () => {
    // tan(270°/4) = tan 67.5° = 1 + √2; chord = 2r·sin 135° = r·√2, so r = 20 on a chord of 20·√2.
    const ends = { from: { x: 0, y: 0 }, to: { x: 20, y: 20 }, bulge: -(1 + Math.SQRT2) };
    const arc = shapeOf(ends) as Arc;
    expect(arc.radius).toBeCloseTo(20, 10);
    expect(arc.length).toBeCloseTo(94.24777960769379, 9);
    expect(arc.curvature).toBeCloseTo(-0.05, 12);
  });

  it('the foot of a point on a half circle, and beyond its ends', () => {
    const arc = shapeOf({ from: { x: 0, y: 0 }, to: { x: 100, y: 0 }, bulge: 1 });
    // From (50, −80) straight down to the top; distance 80 − 50; a quarter of the circle along.
    const top = pieceFoot(arc, { x: 50, y: -80 });
    expect(top.distance).toBeCloseTo(30, 10);
    expect(top.s).toBeCloseTo(78.53981633974483, 9);
    // (103, 4) lies below the end (100, 0): 3-4-5.
    expect(pieceFoot(arc, { x: 103, y: 4 })).toMatchObject({ s: arc.length, distance: 5 });
  });
});

describe('a path of straights and arcs', () => {
  // A running track: straights of 100, half circles of r = 30. Length 200 + 60π.
  const track = pathOf({
    from: { x: 0, y: 0 },
    pieces: [
      { to: { x: 100, y: 0 }, bulge: 0 },
      { to: { x: 100, y: 60 }, bulge: 1 },
      { to: { x: 0, y: 60 }, bulge: 0 },
      { to: { x: 0, y: 0 }, bulge: 1 },
    ],
  });

  it('adds up lengths', () => {
    expect(track.length).toBeCloseTo(388.49555921538757, 9);
    expect(track.starts[3]).toBeCloseTo(294.2477796077, 9);
  });

  it('finds points and directions by way along', () => {
    // A quarter of the circle beyond the first straight: 100 + 15π.
    const east = 100 + 15 * Math.PI;
    expect(pointAt(track, east).x).toBeCloseTo(130, 9);
    expect(pointAt(track, east).y).toBeCloseTo(30, 9);
    expect(directionAt(track, east).y).toBeCloseTo(1, 12);
    expect(directionAt(track, 0)).toEqual({ x: 1, y: 0 });
  });
});
