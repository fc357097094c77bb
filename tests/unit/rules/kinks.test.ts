import { describe, expect, it } from 'vitest';
import { pathOf } from '../../../shared/geometry/path.ts';
import { kinkedCurves } from '../../../shared/rules/kinks.ts';
import { Pen } from '../../sweeps/pen.ts';

/** Curves of many kinks, by hand. What turns by more than a right angle is looked for. */

/** A right angle, and more than sums of kinks are off by rounding. */
const RIGHT = Math.PI / 2 + 1e-9;
const radians = (degrees: number) => (degrees * Math.PI) / 180;
/** A kink that lasts from one to the next piece of a circle of radius 10 by so many degrees. */
const chord = (degrees: number) => 20 * Math.sin(radians(degrees) / 2);

const pen = () => new Pen().to(50, 50).straight(30);
/** Kinks in degrees with 2 mm of line behind each, or as much as given. */
const kinked = (kinks: readonly number[], piece = 2, from = pen()) => {
  for (const kink of kinks) from.turn(kink).straight(piece);
  return from;
};
const curvesOf = (drawn: Pen, limit = 15, least = RIGHT) =>
  kinkedCurves(pathOf(drawn.lines[0]!), least, limit);
const times = (count: number, kink: number) => new Array<number>(count).fill(kink);

describe('kinkedCurves', () => {
  it('finds the shortest stretches that turn by more than the least', () => {
    // 10 kinks of 10 degrees turn by 100; 9 by exactly 90.
    const found = curvesOf(kinked(times(12, 10), chord(10)));
    expect(found.map(({ from }) => from)).toEqual(
      [0, 1, 2].map((k) => expect.closeTo(30 + k * chord(10), 9)),
    );
    for (const { from, to, turn, radius } of found) {
      expect(to - from).toBeCloseTo(9 * chord(10), 9);
      expect(turn).toBeCloseTo(radians(100), 9);
      // Ten vertices, each moved by rounding to 0.01 mm, at 9 chords of a circle of radius 10.
      expect(radius).toBeCloseTo(10 + (2 * 0.01 * 10) / (18 * Math.sin(radians(5))), 9);
    }
  });

  it('leaves out what turns too little, or is as wide as the limit', () => {
    expect(curvesOf(kinked(times(9, 10), chord(10)))).toEqual([]);
    const drawn = kinked(times(10, 10), chord(10));
    const radius = 10 + 0.2 / (18 * Math.sin(radians(5)));
    expect(curvesOf(drawn, radius - 0.001)).toEqual([]);
    expect(curvesOf(drawn, radius + 0.001)).toHaveLength(1);
  });

  it('is the same to the left, and wherever the line turns the other way begins anew', () => {
    expect(curvesOf(kinked(times(12, -10), chord(10)))).toHaveLength(3);
    expect(curvesOf(kinked([...times(8, 10), -10, ...times(8, 10)]))).toEqual([]);
    expect(curvesOf(kinked([...times(8, 10), 10, 10, ...times(8, -10)]))).toHaveLength(1);
  });

  it('goes on over no corner, that is no kink of more than 20 degrees', () => {
    expect(curvesOf(kinked([...times(6, 10), 30, ...times(6, 10)]))).toEqual([]);
    expect(curvesOf(kinked([...times(6, 10), 19, ...times(6, 10)]))).not.toEqual([]);
    expect(curvesOf(kinked([95, 10]))).toEqual([]);
  });

  it('tells of each beginning once, with as little behind it as is enough', () => {
    // Five kinks of 19 degrees turn by 95; one degree more makes no other curve of it.
    const found = curvesOf(kinked([19, 19, 19, 19, 19, 1], 5), 30);
    expect(found.map(({ from, to }) => [from, to])).toEqual([[30, expect.closeTo(50, 9)]]);
    const later = curvesOf(kinked([1, 19, 19, 19, 19, 19], 5), 30);
    expect(later.map(({ from, to }) => [from, to])).toEqual([[expect.closeTo(35, 9), expect.closeTo(55, 9)]]);
  });

  it('counts an arc between kinks with all its turn, but begins and ends at kinks', () => {
    const drawn = kinked([10, 10]).arc(12, 80);
    const [curve, ...others] = curvesOf(kinked([10], 2, drawn));
    expect(others).toEqual([]);
    const arc = 12 * radians(80);
    // From the second kink on: 2 mm, the arc, and the third. Half of each kink lies inside.
    expect([curve!.from, curve!.to]).toEqual([32, 34 + arc].map((way) => expect.closeTo(way, 6)));
    expect(curve!.turn).toBeCloseTo(radians(100), 6);
    const turned = radians(80) + 2 * Math.sin(radians(5));
    expect(curve!.radius).toBeCloseTo((2 + arc + 2 * 0.01 * 3) / turned, 6);
  });

  it('an arc alone is none, nor one that turns the other way', () => {
    expect(curvesOf(pen().arc(8, 110).straight(20))).toEqual([]);
    expect(curvesOf(kinked(times(6, 10), 2, kinked(times(6, 10)).arc(12, -30)))).toEqual([]);
  });

  it('passes over vertices at which the line goes straight on', () => {
    // The sixth kink stands behind two pieces of 2 mm.
    const found = curvesOf(kinked([19, 19, 19, 19, 0, 19], 2));
    expect(found).toHaveLength(1);
    const chords = 2 * Math.sin(radians(9.5)) * 4;
    expect(found[0]!.radius).toBeCloseTo((10 + 2 * 0.01 * 5) / chords, 6);
  });
});
