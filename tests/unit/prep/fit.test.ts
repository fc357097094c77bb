import { describe, expect, it } from 'vitest';
import type { Line } from '../../../shared/documents/design.ts';
import type { Kit, Pace, Robot } from '../../../shared/documents/kit.ts';
import { PACES } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import type { Trace } from '../../../shared/documents/trace.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { fitRobot, TIMED_LINE, type TimedRun } from '../../../shared/prep/fit.ts';
import { drive } from '../../../shared/run/drive.ts';
import { UNDISTURBED, worldOf } from '../../../shared/run/world.ts';
import { layOut } from '../../../shared/track/layout.ts';

const run = (part: Partial<TimedRun>): TimedRun => ({
  robot: 1,
  pace: 'steady',
  laps: 0,
  radius: 0,
  time: 10,
  ...part,
});

const NO_BAR = { width: 28, barAhead: 0 };

describe('fitRobot', () => {
  // By hand: 10, 12.5 and 12.5 s over 500 mm. Mean 35/3 s, so v = 1500/35 = 42.857 mm/s. Residuals −5/3, 5/6 and
  // 5/6 s, squares 25/6, s² = 25/12 s²; s = t/500 has variance s²/3/500² and v = 1/s the error v²·√(25/36)/500.
  it('gives the pace of three runs, and its standard error by hand', () => {
    const { paces, track } = fitRobot(
      [10, 12.5, 12.5].map((time) => run({ time })),
      NO_BAR,
    );
    const v = 1500 / 35;
    expect(paces).toHaveLength(1);
    expect(paces[0]!.value).toBeCloseTo(v, 10);
    expect(paces[0]!.spread!.error).toBeCloseTo((v * v * (5 / 6)) / 500, 10);
    expect(track).toEqual({ kind: 'open' });
  });

  // By hand: at 50 mm/s a run over the line takes 10 s. The outer wheel of a track of 24 mm goes 2π(80 + 12) mm a
  // lap: 5 laps at 50 mm/s take 5 · 2π · 92 / 50 = 57.805 s.
  it('tells the wheel track from laps of a robot whose outer wheel keeps the pace', () => {
    const lap = (time: number) => run({ laps: 5, radius: 80, time });
    const exact = (5 * 2 * Math.PI * 92) / 50;
    const { paces, track } = fitRobot(
      [run({ time: 9.99 }), run({ time: 10.01 }), lap(exact - 0.1), lap(exact + 0.1)],
      NO_BAR,
    );
    expect(paces[0]!.value).toBeCloseTo(50, 9);
    expect(track.kind).toBe('told');
    if (track.kind === 'told') {
      expect(track.value).toBeCloseTo(24, 9);
      expect(track.spread!.low).toBeLessThan(24);
      expect(track.spread!.high).toBeGreaterThan(24);
      expect(track.runs).toBe(4);
    }
  });

  it('says nothing sure of one run, and nothing of laps whose pace was not timed on the line', () => {
    expect(fitRobot([run({ robot: 3 })], NO_BAR).paces).toEqual([
      { pace: 'steady', value: TIMED_LINE / 10, spread: null, runs: 1, robots: 1 },
    ]);
    expect(fitRobot([run({ laps: 5, radius: 80 }), run({ laps: 5, radius: 80 })], NO_BAR)).toEqual({
      paces: [],
      track: { kind: 'open' },
    });
  });
});

/** The demo kit's robot with other numbers. */
const kitOf = (robot: Partial<Robot>): Kit => ({ ...DEMO_KIT, robot: { ...DEMO_KIT.robot, ...robot } });

function driven(kit: Kit, size: { w: number; h: number }, line: Line, limit: number): Trace {
  const start = { name: { en: 'A' }, at: line.from, heading: 0, r: 15 };
  const given = { lines: [line], marks: [] };
  const sheet: Sheet = { ...size, start, gates: [], areas: [], keepOut: [], given };
  const world = worldOf(layOut(sheet, { lines: [], marks: [] }), sheet, kit);
  return drive(world, { ...UNDISTURBED, limit });
}

/** When a quantity that grows along the samples reaches `value`, s. */
function reached(values: readonly number[], value: number): number {
  const i = values.findIndex((each) => each >= value);
  return (i - 1 + (value - values[i - 1]!) / (values[i]! - values[i - 1]!)) / 50;
}

/** A hand on the watch, s too early or late: chosen, within what people do. */
const HANDS = [-0.13, 0.08, 0.11, -0.06] as const;

function timesOnLine(kit: Kit): number[] {
  const line = { id: 'l', width: 5, from: { x: 20, y: 50 }, pieces: [{ to: { x: 640, y: 50 }, bulge: 0 }] };
  const { samples } = driven(kit, { w: 660, h: 100 }, line, 60);
  const time = reached(samples.x, 620) - reached(samples.x, 620 - TIMED_LINE);
  return HANDS.map((hand) => time + hand);
}

function timesOfLaps(kit: Kit, radius: number, laps: number): number[] {
  const middle = 150;
  const [top, bottom] = [middle - radius, middle + radius];
  const pieces = [bottom, top].map((y) => ({ to: { x: middle, y }, bulge: 1 }));
  const line = { id: 'l', width: 5, from: { x: middle, y: top }, pieces };
  const { samples } = driven(kit, { w: 300, h: 300 }, line, 120);
  let turned = 0;
  const angles = samples.x.map((x, i) => {
    const angle = Math.atan2(samples.y[i]! - middle, x - middle);
    turned += ((((angle - turned) % (2 * Math.PI)) + 3 * Math.PI) % (2 * Math.PI)) - Math.PI;
    return turned;
  });
  const from = 0;
  const time = reached(angles, from + 2 * Math.PI * laps) - reached(angles, from);
  return HANDS.map((hand) => time + hand);
}

const runsOf = (times: readonly number[], part: Partial<TimedRun>) =>
  times.map((time, i) => run({ ...part, robot: i, time }));

describe('a robot that is driven with another profile', () => {
  it('is found out again: its four paces within their 95 % ranges', () => {
    const paces: Robot['paces'] = { creep: 23, steady: 37.5, brisk: 66, fast: 91 };
    const runs = PACES.flatMap((pace: Pace) =>
      runsOf(timesOnLine(kitOf({ paces, startPace: pace })), { pace }),
    );
    for (const { pace, value, spread } of fitRobot(runs, DEMO_KIT.robot).paces) {
      expect(spread!.low, pace).toBeLessThan(paces[pace]);
      expect(spread!.high, pace).toBeGreaterThan(paces[pace]);
      expect(Math.abs(value / paces[pace] - 1), pace).toBeLessThan(0.02);
    }
  });

  // Its outer wheel can go no faster than the pace, so that it keeps the pace in a bend.
  it.each([20, 27])('is found out again: a wheel track of %i mm within 2.5 mm', (wheelTrack) => {
    const kit = kitOf({ wheelTrack, topWheelSpeed: 40 });
    const runs = [
      ...runsOf(timesOnLine(kit), {}),
      ...runsOf(timesOfLaps(kit, 80, 5), { laps: 5, radius: 80 }),
    ];
    const { track } = fitRobot(runs, DEMO_KIT.robot);
    expect(track.kind).toBe('told');
    expect(track.kind === 'told' && Math.abs(track.value - wheelTrack)).toBeLessThan(2.5);
  });

  it('does not tell its wheel track where its middle keeps the pace in a bend', () => {
    const kit = kitOf({});
    const runs = [
      ...runsOf(timesOnLine(kit), {}),
      ...runsOf(timesOfLaps(kit, 80, 5), { laps: 5, radius: 80 }),
    ];
    expect(fitRobot(runs, DEMO_KIT.robot).track.kind).toBe('not-told');
  });
});
