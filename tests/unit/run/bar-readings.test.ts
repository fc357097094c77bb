import { describe, expect, it } from 'vitest';
import { barReadings } from '../../../shared/run/bar-readings.ts';
import { drive } from '../../../shared/run/drive.ts';
import { SAME_LIGHT, UNDISTURBED } from '../../../shared/run/world.ts';
import { Pen } from '../../sweeps/pen.ts';
import { EQUAL_BANDS, world } from './worlds.ts';

/** A straight of 5 mm from the boathouse at (30, 105), with one mark. Five sensors 4 mm apart, 11 mm ahead of the axle. */
const straight = () => new Pen().to(20, 105).straight(240).mark(80, 'CAV', EQUAL_BANDS);
const on = world(straight().drawing());
const trace = drive(on, { ...UNDISTURBED, limit: 8 });
const { dark, middle } = barReadings(on, trace, SAME_LIGHT);
const sampleAt = (barX: number) => trace.samples.x.findIndex((x) => x + 11 >= barX);

describe('barReadings', () => {
  it('has five readings and one colour a sample', () => {
    expect(dark).toHaveLength(5 * trace.samples.x.length);
    expect([...middle]).toHaveLength(trace.samples.x.length);
  });

  it('on a straight the middle is on the line, its neighbours and the outer ones on paper', () => {
    // 2.5 mm from middle to edge, a footprint of 0.8 mm: the middle is dark in full, at 4 mm 3 % are left.
    const five = [...dark.subarray(5 * sampleAt(70), 5 * sampleAt(70) + 5)];
    expect(five[2]).toBeGreaterThan(248);
    expect(Math.max(five[1]!, five[3]!)).toBeLessThan(0.06 * 255);
    expect([five[0], five[4]]).toEqual([0, 0]);
  });

  it('the middle sees the bands in their order, and the line around them', () => {
    // The mark stands from 80 mm along the line, which begins at x = 20: bands of 5.5 mm from x = 100 on.
    const seen = [90, 102.75, 108.25, 113.75, 125].map((x) => middle[sampleAt(x)]);
    expect(seen).toEqual(['-', 'C', 'A', 'V', '-']);
  });

  it('five on a line across are dark at once, and on white none is', () => {
    const across = world(new Pen().to(20, 105).straight(100).to(100, 60, 90).straight(90).drawing());
    const run = drive(across, { ...UNDISTURBED, limit: 8 });
    const crossing = barReadings(across, run, SAME_LIGHT).dark;
    const i = run.samples.x.findIndex((x) => x + 11 >= 100);
    expect(Math.min(...crossing.subarray(5 * i, 5 * i + 5))).toBeGreaterThan(200);
  });

  it('more light makes everything look whiter to a robot that was calibrated in the dark', () => {
    const bright = barReadings(on, trace, { ...SAME_LIGHT, now: 0.6 }).dark;
    const i = 5 * sampleAt(70) + 2;
    expect(bright[i]!).toBeLessThan(dark[i]!);
  });
});
