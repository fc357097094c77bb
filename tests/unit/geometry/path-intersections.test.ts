import { describe, expect, it } from 'vitest';
import {
  isClosed,
  pathIntersections,
  selfIntersections,
} from '../../../shared/geometry/path-intersections.ts';
import { bulgeOf, path } from './scenes.ts';

describe('pathIntersections', () => {
  it('a crossing at a joint of both is found once, and is a cross', () => {
    const a = path([0, 0], [50, 0], [100, 0]);
    const b = path([50, -40], [50, 0], [50, 40]);
    expect(pathIntersections(a, b)).toEqual([{ kind: 'cross', a: 50, b: 40, point: { x: 50, y: 0 } }]);
  });

  it('corner to corner without passing is a touch', () => {
    const a = path([0, 0], [50, 0], [100, 10]);
    const b = path([0, -50], [50, 0], [100, -50]);
    expect(pathIntersections(a, b)).toMatchObject([{ kind: 'touch', a: 50 }]);
  });

  it('a corner poked through a straight is a cross where the joint lies on it', () => {
    const a = path([0, 0], [100, 0]);
    const b = path([30, -30], [50, 0], [90, 60]);
    expect(pathIntersections(a, b)).toMatchObject([{ kind: 'cross', a: 50 }]);
  });

  it('an end of a path on the other is an end', () => {
    const a = path([0, 0], [100, 0]);
    const b = path([40, 0], [40, 50], [70, 50]);
    expect(pathIntersections(a, b)).toMatchObject([{ kind: 'end', a: 40, b: 0 }]);
  });

  it('a shared stretch over several pieces is one', () => {
    const a = path([0, 0], [40, 0], [100, 0]);
    const b = path([20, 0], [70, 0], [70, 50]);
    expect(pathIntersections(a, b)).toMatchObject([{ kind: 'shared', a: 20, b: 0, until: { a: 70, b: 50 } }]);
  });

  it('a line through the seam of a closed path crosses it there once', () => {
    const square = path([0, 0], [60, 0], [60, 60], [0, 60], [0, 0]);
    const through = path([-20, -20], [30, 30]);
    expect(pathIntersections(square, through)).toMatchObject([{ kind: 'cross', a: 0 }]);
  });
});

describe('selfIntersections', () => {
  it('a loop crosses itself once, and the crossing has both ways', () => {
    const loop = path([0, 0], [100, 0], [100, 50], [50, 50], [50, -50]);
    expect(selfIntersections(loop)).toEqual([{ kind: 'cross', a: 50, b: 250, point: { x: 50, y: 0 } }]);
  });

  it('corners, even sharp ones, are no crossings', () => {
    expect(selfIntersections(path([0, 0], [50, 0], [1, 1], [60, 2]))).toEqual([]);
  });

  it('a closed path has none at its seam', () => {
    const square = path([0, 0], [60, 0], [60, 60], [0, 60], [0, 0]);
    expect(isClosed(square)).toBe(true);
    expect(selfIntersections(square)).toEqual([]);
  });

  it('a circle of two arcs has none', () => {
    expect(selfIntersections(path([0, 0], [60, 0, 1], [0, 0, 1]))).toEqual([]);
  });

  it('a line that ends on itself', () => {
    const six = path([0, 0], [0, 80], [40, 80], [40, 40], [0, 40]);
    expect(selfIntersections(six)).toMatchObject([{ kind: 'end', a: 40, b: 200 }]);
  });

  it('a line drawn back over itself shares the stretch', () => {
    const back = path([0, 0], [80, 0], [30, 0]);
    expect(selfIntersections(back)).toMatchObject([{ kind: 'shared', a: 30, until: { a: 80 } }]);
  });

  it('an eight of arcs crosses once, at a joint', () => {
    const eight = path([0, 0], [0, -60, bulgeOf(180)], [0, 0, bulgeOf(180)], [0, 60, -1], [0, 0, -1]);
    const found = selfIntersections(eight);
    expect(found).toHaveLength(1);
    expect(found[0]!.point).toEqual({ x: 0, y: 0 });
  });
});
