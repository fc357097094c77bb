import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import {
  after,
  endTurnTime,
  halfTurnTime,
  halfWidth,
  leaningOn,
  pastEnd,
  rollOut,
  SEARCH_TIME,
  timeFor,
  turnBy,
} from '../../../shared/odds/motion.ts';

/** Speeds change by 220 mm/s², turns on the spot are made at 3.6 rad/s, motors lag by 0.04 s. */
const RATE = 220;
const SPIN = 3.6;
const LAG = 0.04;
/** Half of a 5 mm line, seen from the axle 11 mm behind the bar. */
const HALF_SEEN = Math.asin(2.5 / 11);

describe('a motion', () => {
  it.each([
    // From rest to 40 mm/s in 40/220 s over 3.636 mm, then 40 mm/s.
    [0, 40, 40 / RATE, (40 * 40) / (2 * RATE), 40],
    [0, 40, 1, 40 - (40 * 40) / (2 * RATE), 40],
    [0, 40, 0.1, (RATE * 0.1 * 0.1) / 2, 22],
    // From 80 down to 20: 60/220 s over 13.636 mm.
    [80, 20, 60 / RATE, (80 * 80 - 20 * 20) / (2 * RATE), 20],
    [80, 20, 0.1, 8 - (RATE * 0.1 * 0.1) / 2, 58],
    [40, 40, 2, 80, 40],
  ])('from %f to %f mm/s has in %f s come %f mm', (speed, target, time, way, then) => {
    const moved = after({ speed, target }, time);
    expect(moved.way).toBeCloseTo(way, 9);
    expect(moved.speed).toBeCloseTo(then, 9);
    expect(timeFor({ speed, target }, way)).toBeCloseTo(time, 9);
  });

  it('of no way takes no time', () => {
    expect(timeFor({ speed: 0, target: 40 }, 0)).toBe(0);
    expect(timeFor({ speed: 40, target: 40 }, 0)).toBe(0);
  });
});

describe('leaningOn', () => {
  it('a straight does not lean', () => {
    expect(leaningOn(0, DEMO_KIT)).toEqual({ offset: 0, share: 1 });
  });

  it.each([15, 25, 50, 150])(
    'on a circle of radius %f the turn rate is the one that the circle needs',
    (radius) => {
      const { offset, share } = leaningOn(1 / radius, DEMO_KIT);
      // The axle runs behind the bar, whose middle runs outside of the line: Pythagoras.
      const axle = Math.sqrt((radius + offset) ** 2 - 11 ** 2);
      const forward = 1 - (0.35 * offset) / 8;
      expect(0.022 * offset).toBeCloseTo(forward / axle, 9);
      // The line's way is gained at the same angle.
      expect(share).toBeCloseTo(0.022 * offset * radius, 9);
      expect(share).toBeLessThan(1);
    },
  );

  it('is the same to either side, and harder the tighter the circle', () => {
    expect(leaningOn(-1 / 30, DEMO_KIT)).toEqual(leaningOn(1 / 30, DEMO_KIT));
    expect(leaningOn(1 / 15, DEMO_KIT).offset).toBeGreaterThan(leaningOn(1 / 30, DEMO_KIT).offset);
    expect(leaningOn(1 / 15, DEMO_KIT).share).toBeLessThan(leaningOn(1 / 30, DEMO_KIT).share);
  });
});

describe('turns on the spot', () => {
  it('by a right angle: from the very corner, until the middle sensor is over the line’s edge', () => {
    const turn = turnBy(Math.PI / 2, DEMO_KIT, 0);
    expect(halfWidth(DEMO_KIT)).toBe(2.5);
    expect(turn.past).toBeCloseTo(0, 9);
    expect(turn.time).toBeCloseTo((Math.PI / 2 - HALF_SEEN) / SPIN + 2 * LAG, 9);
    expect(turn.ahead).toBeCloseTo(11 * Math.cos(HALF_SEEN) - 11, 9);
  });

  it('by a right angle at 80 mm/s rolls 3.2 mm beyond the new line, and so turns further', () => {
    const turn = turnBy(Math.PI / 2, DEMO_KIT, 80);
    expect(turn.past).toBeCloseTo(0, 9);
    expect(turn.time).toBeCloseTo((Math.PI / 2 + Math.asin((80 * LAG - 2.5) / 11)) / SPIN + 2 * LAG, 9);
  });

  it('by 120 degrees begins before the corner, by 70 behind it', () => {
    // The outer sensor, 8 mm out, meets the line's near edge where it has come to (8 cos − 2.5) / sin.
    const past = (angle: number) => (8 * Math.cos(angle) - 2.5) / Math.sin(angle) + 2.5;
    for (const degrees of [70, 120, 135]) {
      const angle = (degrees * Math.PI) / 180;
      expect(turnBy(angle, DEMO_KIT, 40).past).toBeCloseTo(past(angle), 9);
    }
    expect(turnBy((120 * Math.PI) / 180, DEMO_KIT, 40).past).toBeLessThan(0);
    expect(turnBy((70 * Math.PI) / 180, DEMO_KIT, 40).past).toBeGreaterThan(0);
  });

  it('by little goes on for 0.6 rad all the same', () => {
    expect(turnBy(0.2, DEMO_KIT, 40).time).toBeCloseTo(0.6 / SPIN + 2 * LAG, 9);
  });

  // The model's description, from an older program: 2 mm before the line's end at creep, 1.5 mm past it at fast.
  it.each([
    [20, -2],
    [80, 1.5],
  ])('at a loose end it halts, coming at %i mm/s, %f mm past it', (speed, stated) => {
    expect(Math.abs(pastEnd(5, DEMO_KIT) + rollOut(speed) - stated)).toBeLessThan(1);
  });

  it('half a turn, and giving up at a loose end: 1.75 rad there and twice that back', () => {
    expect(halfTurnTime(DEMO_KIT)).toBeCloseTo((Math.PI - HALF_SEEN) / SPIN + 2 * LAG, 9);
    // Once the lag from rest, twice from one full speed of turning to the other.
    expect(SEARCH_TIME).toBeCloseTo((3 * 1.75) / SPIN + LAG + 2 * LAG, 9);
    const on = (Math.PI - 1.75 - HALF_SEEN) / SPIN + LAG;
    expect(endTurnTime(DEMO_KIT)).toBeCloseTo(SEARCH_TIME + on, 9);
  });
});
