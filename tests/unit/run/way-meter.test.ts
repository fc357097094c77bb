import { describe, expect, it } from 'vitest';
import { drive } from '../../../shared/run/drive.ts';
import { joinsOf } from '../../../shared/run/joins.ts';
import { UNDISTURBED } from '../../../shared/run/world.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { Pen } from '../../sweeps/pen.ts';
import { EQUAL_BANDS, eventsOf, SHEET, world } from './worlds.ts';

const BAR = 11;
const wayAt = (pen: Pen, change = {}) => {
  const trace = drive(world(pen.drawing(), change), UNDISTURBED);
  return { trace, way: trace.events.at(-1)!.way };
};
const withoutFinish = { finish: { ...SHEET.start, at: { x: 5, y: 5 }, r: 1 } };

describe('the way along the drawing', () => {
  it('goes round a corner without what the bar overshoots', () => {
    const { trace, way } = wayAt(new Pen().to(30, 105).straight(100).turn(90).straight(80), withoutFinish);
    expect(trace.ending).toBe('stopped');
    expect(way).toBeCloseTo(100 + 80 - BAR, 1);
  });

  it('goes from line to line at a junction that a mark decides', () => {
    const pen = new Pen().to(160, 40, 90).straight(130).to(30, 105).straight(230);
    const { trace, way } = wayAt(pen.mark(50, 'AV', EQUAL_BANDS), withoutFinish);
    expect(eventsOf(trace, 'junction')[0]!.took).toBe('left');
    // 130 mm to the crossing, then 65 up to the other line's beginning.
    expect(way).toBeCloseTo(130 + 65 - BAR, 1);
  });

  it('stays on its line where that crosses itself', () => {
    const loop = new Pen().to(30, 105).straight(100).arc(25, -270).straight(100);
    const { trace, way } = wayAt(loop, withoutFinish);
    // It crosses 25 mm before the arc and 25 mm past it. Straight on, or left and round the other way:
    // either way all of it is driven once.
    const whole = 200 + 25 * 1.5 * Math.PI - BAR;
    const straightOn = drive(world(loop.drawing(), withoutFinish), { ...UNDISTURBED, choices: [1, 1] });
    expect(straightOn.events.at(-1)!.way).toBeCloseTo(whole, 0);
    expect(eventsOf(trace, 'junction')[0]!.took).toBe('left');
    expect(way).toBeCloseTo(whole, 0);
  });

  it('goes on over a gap between two lines', () => {
    const pen = new Pen().to(30, 105).straight(80).to(118, 105).straight(100);
    const { way } = wayAt(pen, withoutFinish);
    expect(Math.abs(way - (80 + 8 + 100 - BAR))).toBeLessThan(1);
  });
});

describe('joinsOf', () => {
  const joins = (pen: Pen) => joinsOf(layOut(SHEET, pen.drawing()), 3);

  it('finds crossings for both lines', () => {
    const { byLine } = joins(new Pen().to(30, 105).straight(200).to(130, 50, 90).straight(100));
    expect(byLine[0]![0]!.from.s).toBeCloseTo(100, 6);
    expect(byLine[0]![0]!.to).toMatchObject({ line: 1 });
    expect(byLine[1]![0]!.from.s).toBeCloseTo(55, 6);
  });

  it('finds ends that touch within the snap, and loose ends', () => {
    const { byLine, looseEnds } = joins(new Pen().to(30, 105).straight(100).to(132, 50, 90).straight(100));
    expect(byLine[0]!.some((join) => join.from.s === 100 && join.to.line === 1)).toBe(true);
    expect(looseEnds).toHaveLength(3);
  });

  it('joins a closed line to itself', () => {
    const { byLine, looseEnds } = joins(new Pen().to(100, 60).arc(40, 360));
    expect(looseEnds).toHaveLength(0);
    expect(byLine[0]!.map((join) => join.from.s).sort((a, b) => a - b)[0]).toBe(0);
  });
});
