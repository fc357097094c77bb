import { describe, expect, it } from 'vitest';
import { pieceDistance } from '../../../shared/geometry/distances.ts';
import { pieceIntersections } from '../../../shared/geometry/intersections.ts';
import { piecePart, shapeOf } from '../../../shared/geometry/piece.ts';
import { pathDistance } from '../../paths.ts';
import { path, piece } from './scenes.ts';

describe('pieceIntersections', () => {
  it('two straights cross once', () => {
    const found = pieceIntersections(piece(0, 0, 100, 0), piece(30, -20, 30, 40));
    expect(found).toEqual([{ kind: 'cross', a: 30, b: 20, point: { x: 30, y: 0 } }]);
  });

  it('an end on the other is an end, at its exact way', () => {
    const found = pieceIntersections(piece(0, 0, 100, 0), piece(40, 0, 40, 50));
    expect(found).toEqual([{ kind: 'end', a: 40, b: 0, point: { x: 40, y: 0 } }]);
  });

  it('an end short by less than the tolerance counts, by more does not', () => {
    expect(pieceIntersections(piece(0, 0, 100, 0), piece(40, 0.0009, 40, 50))).toHaveLength(1);
    expect(pieceIntersections(piece(0, 0, 100, 0), piece(40, 0.0011, 40, 50))).toHaveLength(0);
  });

  it('a straight through a half circle crosses twice, in order of the way along it', () => {
    const found = pieceIntersections(piece(-100, -30, 100, -30), piece(-50, 0, 50, 0, 1));
    expect(found.map(({ kind }) => kind)).toEqual(['cross', 'cross']);
    // Half the chord at 30 from the centre of r = 50 is 40.
    expect(found[0]!.a).toBeCloseTo(60, 9);
    expect(found[1]!.a).toBeCloseTo(140, 9);
  });

  it('a tangent straight touches once, also off by half the tolerance to either side', () => {
    for (const off of [0, 0.0005, -0.0005]) {
      const found = pieceIntersections(piece(-100, -50 + off, 100, -50 + off), piece(-50, 0, 50, 0, 1));
      expect(found).toHaveLength(1);
      expect(found[0]!.kind).toBe('touch');
      expect(found[0]!.a).toBeCloseTo(100, 3);
    }
    expect(pieceIntersections(piece(-100, -50.002, 100, -50.002), piece(-50, 0, 50, 0, 1))).toHaveLength(0);
  });

  it('circles that touch outside and inside touch once', () => {
    const upper = piece(-50, 0, 50, 0, 1);
    const outside = pieceIntersections(upper, piece(30, -80, -30, -80, 1));
    expect(outside).toMatchObject([{ kind: 'touch' }]);
    expect(outside[0]!.point.y).toBeCloseTo(-50, 6);
    const inside = pieceIntersections(upper, piece(-20, -30, 20, -30, 1));
    expect(inside).toMatchObject([{ kind: 'touch' }]);
    expect(inside[0]!.point.y).toBeCloseTo(-50, 6);
  });

  it('two arcs cross where worked by hand', () => {
    // r = 50 about (0, 0) and (60, 0): at x = 30, y = −√(2500 − 900) = −40.
    const found = pieceIntersections(piece(-50, 0, 50, 0, 1), piece(10, 0, 110, 0, 1));
    expect(found).toHaveLength(1);
    expect(found[0]!.point.x).toBeCloseTo(30, 9);
    expect(found[0]!.point.y).toBeCloseTo(-40, 9);
  });

  it('collinear straights share their common part, whichever way they run', () => {
    expect(pieceIntersections(piece(0, 0, 100, 0), piece(60, 0, 140, 0))).toEqual([
      {
        kind: 'shared',
        a: 60,
        b: 0,
        point: { x: 60, y: 0 },
        until: { a: 100, b: 40, point: { x: 100, y: 0 } },
      },
    ]);
    const [against] = pieceIntersections(piece(0, 0, 100, 0), piece(140, 0, 60, 0));
    expect(against).toMatchObject({ kind: 'shared', a: 60, b: 80, until: { a: 100, b: 40 } });
  });

  it('co-circular arcs share their common part', () => {
    const whole = piece(-50, 0, 50, 0, 1);
    const part = shapeOf(piecePart(whole, 40, 120));
    const [shared] = pieceIntersections(whole, part);
    expect(shared).toMatchObject({ kind: 'shared' });
    expect(shared!.a).toBeCloseTo(40, 6);
    expect(shared!.kind === 'shared' && shared!.until.a).toBeCloseTo(120, 6);
  });

  it('collinear straights that only meet at an end, and ones apart', () => {
    expect(pieceIntersections(piece(0, 0, 50, 0), piece(50, 0, 90, 0))).toMatchObject([{ kind: 'end' }]);
    expect(pieceIntersections(piece(0, 0, 50, 0), piece(60, 0, 90, 0))).toEqual([]);
    expect(pieceIntersections(piece(0, 0, 50, 0), piece(0, 5, 50, 5))).toEqual([]);
  });

  it('concentric arcs don’t meet', () => {
    expect(pieceIntersections(piece(-50, 0, 50, 0, 1), piece(-40, 0, 40, 0, 1))).toEqual([]);
  });

  it('an almost straight arc is crossed at the place of its chord', () => {
    // Sagitta = bulge·chord/2 = 0.0005: the crossing in the middle lies that much higher.
    const flat = piece(0, 0, 500, 0, 2e-6);
    const [found] = pieceIntersections(flat, piece(250, -20, 250, 20));
    expect(found!.a).toBeCloseTo(250, 6);
    expect(found!.point.y).toBeCloseTo(-0.0005, 6);
  });
});

describe('pieceDistance and pathDistance', () => {
  it('parallel straights', () => {
    expect(pieceDistance(piece(0, 0, 100, 0), piece(0, 12, 100, 12)).distance).toBe(12);
  });

  it('a straight above a half circle', () => {
    const found = pieceDistance(piece(-80, -70, 80, -70), piece(-50, 0, 50, 0, 1));
    expect(found.distance).toBeCloseTo(20, 9);
    expect(found.a).toBeCloseTo(80, 9);
    expect(found.pointB.y).toBeCloseTo(-50, 9);
  });

  it('two half circles back to back, ways measured along each', () => {
    const found = pieceDistance(piece(-50, 0, 50, 0, 1), piece(30, -100, -30, -100, 1));
    // Tops at −50 and −100 + 30 = −70.
    expect(found.distance).toBeCloseTo(20, 9);
    expect(found.a).toBeCloseTo(25 * Math.PI, 6);
    expect(found.b).toBeCloseTo(15 * Math.PI, 6);
  });

  it('meeting pieces are 0 apart, at the place', () => {
    const found = pieceDistance(piece(0, 0, 100, 0), piece(30, -20, 30, 40));
    expect(found).toMatchObject({ distance: 0, a: 30, b: 20 });
  });

  it('paths: ways along the whole paths', () => {
    const a = path([0, 0], [100, 0], [100, 100]);
    const b = path([150, -50], [150, 60], [112, 60]);
    const found = pathDistance(a, b);
    expect(found).toMatchObject({ distance: 12, a: 160, b: 148 });
  });
});
