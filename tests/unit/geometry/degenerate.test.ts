import { describe, expect, it } from 'vitest';
import { pathIntersections, selfIntersections } from '../../../shared/geometry/path-intersections.ts';
import { canonicalDrawing } from '../../../shared/track/canonical.ts';
import { pathDistance } from '../../paths.ts';
import { bulgeOf, path, piece } from './scenes.ts';

/** Input that all but has no shape: full circles, joints on joints, lines over lines. Worked by hand. */

/** A circle of radius 30 about (100, 100), in two halves that meet at its left and its right. */
const circle = () => path([70, 100], [130, 100, 1], [70, 100, 1]);

describe('full circles', () => {
  it('are as long as their two halves, and meet themselves nowhere', () => {
    expect(circle().length).toBeCloseTo(60 * Math.PI, 9);
    expect(selfIntersections(circle())).toEqual([]);
  });

  it('a straight through both joints crosses twice, not four times', () => {
    const found = pathIntersections(circle(), path([0, 100], [200, 100]));
    expect(found.map(({ kind }) => kind)).toEqual(['cross', 'cross']);
    expect(found.map(({ point }) => Math.round(point.x)).sort((a, b) => a - b)).toEqual([70, 130]);
  });

  it('a straight that touches at a joint touches once', () => {
    expect(pathIntersections(circle(), path([130, 0], [130, 200]))).toMatchObject([{ kind: 'touch' }]);
    expect(pathIntersections(circle(), path([130.002, 0], [130.002, 200]))).toEqual([]);
  });

  it('two in one place share their whole way; one within the other meets nothing', () => {
    const other = path([100, 70], [100, 130, 1], [100, 70, 1]);
    const shared = pathIntersections(circle(), other);
    expect(new Set(shared.map(({ kind }) => kind))).toEqual(new Set(['shared']));
    const along = shared.reduce((sum, one) => sum + (one.kind === 'shared' ? one.until.a - one.a : 0), 0);
    expect(along).toBeCloseTo(60 * Math.PI, 2);
    const inner = path([80, 100], [120, 100, 1], [80, 100, 1]);
    expect(pathIntersections(circle(), inner)).toEqual([]);
    expect(pathDistance(circle(), inner).distance).toBeCloseTo(10, 9);
  });

  it('two that touch from outside or inside touch once, also where both have a joint', () => {
    const outside = path([130, 100], [170, 100, 1], [130, 100, 1]);
    const inside = path([90, 100], [130, 100, 1], [90, 100, 1]);
    for (const other of [outside, inside]) {
      const found = pathIntersections(circle(), other);
      expect(found).toHaveLength(1);
      expect(found[0]!.kind).not.toBe('cross');
      expect(found[0]!.point.x).toBeCloseTo(130, 6);
    }
  });

  it('drawn twice from one place, there and back, are one line', () => {
    const ring = (id: string, bulge: number) => ({
      id,
      width: 5,
      from: { x: 70, y: 100 },
      pieces: [
        { to: { x: 130, y: 100 }, bulge },
        { to: { x: 70, y: 100 }, bulge },
      ],
    });
    const lines = [ring('one', 1), ring('two', -1)];
    expect(canonicalDrawing({ lines, marks: [] }, { lines: [], marks: [] }).lines).toHaveLength(1);
  });
});

describe('all but full circles', () => {
  it('the largest bulge that a file may hold is an arc of 341 degrees', () => {
    // Sweep 4 · atan 12 = 340.9 degrees; radius = chord · (1 + b²) / (4 b) = 10 · 145 / 48.
    const arc = piece(95, 100, 105, 100, 12);
    const radius = (10 * 145) / 48;
    expect(arc.length).toBeCloseTo(radius * 4 * Math.atan(12), 6);
    const long = path([95, 100], [105, 100, 12]);
    expect(selfIntersections(long)).toEqual([]);
    // Its middle lies chord · b / 2 = 60 mm above the chord.
    expect(pathIntersections(long, path([0, 39.9], [200, 39.9]))).toEqual([]);
    expect(pathIntersections(long, path([0, 40.1], [200, 40.1]))).toHaveLength(2);
  });
});

describe('ends on ends', () => {
  const quarter = bulgeOf(90);
  it('arcs that go on in one another, or back beside one another, meet once at their ends', () => {
    const first = path([0, 0], [40, 40, quarter]);
    const onwards = path([40, 40], [80, 80, -quarter]);
    const back = path([40, 40], [80, 0, quarter]);
    for (const second of [onwards, back]) {
      expect(pathIntersections(first, second)).toMatchObject([{ point: { x: 40, y: 40 } }]);
    }
  });

  it('a line drawn over a part of another, with ends on its joints, shares just that part', () => {
    const long = path([0, 0], [50, 0], [100, 0], [100, 50]);
    const [shared, ...others] = pathIntersections(long, path([100, 0], [50, 0]));
    expect(others).toEqual([]);
    expect(shared).toMatchObject({ kind: 'shared', a: 50, until: { a: 100 } });
  });

  it('a line as short as a step of the file form still meets what it touches', () => {
    const speck = path([50, 0], [50, 0.01]);
    expect(pathIntersections(path([0, 0], [100, 0]), speck)).toMatchObject([{ kind: 'end', a: 50 }]);
    expect(pathDistance(path([0, 5], [100, 5]), speck).distance).toBeCloseTo(4.99, 9);
  });
});
