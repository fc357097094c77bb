import { describe, expect, it } from 'vitest';
import { ROBOTS } from '../../../shared/documents/outlook.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { idealRuns } from '../../../shared/run/ideal-runs.ts';
import { SAME_LIGHT, worldOf } from '../../../shared/run/world.ts';
import { frayedInk } from '../../../shared/steadiness/frayed-ink.ts';
import {
  DISTURBANCE,
  disturbedRobots,
  LATER_ROBOTS,
  type SteadinessQuestion,
  steadinessFrom,
} from '../../../shared/steadiness/steadiness.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { BANDS, FORK, fromStart, lighthouseAt, type Scene } from '../odds/tracks.ts';

const LIMIT = 15;

function question({ sheet, drawing }: Scene, change: Partial<SteadinessQuestion> = {}): SteadinessQuestion {
  const world = worldOf(layOut(sheet, drawing), sheet, DEMO_KIT);
  const { traces } = idealRuns(world, { starts: ['start'], limit: LIMIT });
  return {
    world,
    starts: ['start'],
    limit: LIMIT,
    ambient: SAME_LIGHT,
    weather: 'calm',
    runs: traces,
    ...change,
  };
}

/** The steadiness of a drawing, all at once. */
const steadinessOf = (asked: SteadinessQuestion) =>
  steadinessFrom([...disturbedRobots(asked)], asked.weather);

const STRAIGHT: Scene = {
  sheet: lighthouseAt(220, 150),
  drawing: fromStart().straight(220).mark(50, 'CA', BANDS).drawing(),
};
/** 17 mm of black before the mark, of which the reader wants 10 after 11 of bar: some read it, some do not. */
const TOO_CLOSE: Scene = {
  sheet: lighthouseAt(100, 60),
  drawing: fromStart()
    .straight(70)
    .turn(-90)
    .straight(110)
    .mark(70 + 22, 'CA', BANDS)
    .drawing(),
};

describe('steadinessFrom of all disturbed robots', () => {
  it('is 20 of 20 in calm weather for a sound line, with Wilson’s interval', () => {
    const steadiness = steadinessOf(question(STRAIGHT));
    expect(steadiness).toMatchObject({ weather: 'calm', same: 20, of: ROBOTS, strays: [] });
    // z² / (n + z²) of 20 failures that did not happen: 3.8415 / 23.8415 (Wilson 1927, by hand).
    expect(steadiness.interval.low).toBeCloseTo(1 - 3.8415 / 23.8415, 4);
    expect(steadiness.interval.high).toBe(1);
  });

  it('compares robots that decide by themselves with the fork that each follows', () => {
    expect(steadinessOf(question(FORK)).same).toBe(20);
  });

  it('drives the forks that were not followed', () => {
    const all = question(FORK);
    expect(steadinessOf({ ...all, runs: all.runs.slice(0, 1) })).toEqual(steadinessOf(all));
  });

  it('names the mark that some robots miss or read where the undisturbed one does otherwise', () => {
    const { same, of, strays } = steadinessOf(question(TOO_CLOSE));
    // Common practice wants 25 mm; the model's description has two thirds reading at 22 mm.
    expect(strays.length).toBeGreaterThan(0);
    expect(same + strays.length).toBe(of);
    for (const stray of strays) {
      expect(stray).toMatchObject({ mark: 'mark0', start: 'start' });
      expect(['mark-missed', 'mark-misread']).toContain(stray.cause);
    }
  });

  it('the same robots come again: equal designs get equal results', () => {
    expect(steadinessOf(question(TOO_CLOSE))).toEqual(steadinessOf(question(TOO_CLOSE)));
  });

  it('a robot has to make it from every berth', () => {
    // From the lighthouse there is plenty of line before the mark; from the boathouse too little.
    const { sheet } = TOO_CLOSE;
    const scene = { ...TOO_CLOSE, sheet: { ...sheet, finish: { ...sheet.finish!, heading: Math.PI / 2 } } };
    const asked = question(scene);
    const { traces } = idealRuns(asked.world, { starts: ['start', 'finish'], limit: LIMIT });
    const from = (...starts: ('start' | 'finish')[]) => steadinessOf({ ...asked, starts, runs: traces });
    expect(from('finish')).toMatchObject({ same: 20, of: 20 });
    expect(from('start').same).toBeLessThan(20);
    expect(from('finish', 'start')).toEqual(from('start'));
  });

  it('weather multiplies the tolerances by 1, 1.5 and 3', () => {
    expect(DISTURBANCE).toEqual({ calm: 1, breezy: 1.5, stormy: 3 });
    const shares = (['calm', 'stormy'] as const).map(
      (weather) => steadinessOf(question(STRAIGHT, { weather })).same,
    );
    expect(shares[1]).toBeLessThanOrEqual(shares[0]!);
  });
});

describe('disturbedRobots', () => {
  it('gives one robot at a time, so that one may stop in between', () => {
    const robots = disturbedRobots(question(STRAIGHT));
    expect(robots.next()).toEqual({ done: false, value: undefined });
    expect(robots.return(undefined)).toEqual({ done: true, value: undefined });
    expect(robots.next().done).toBe(true);
  });

  it('goes on with later seeds where the first ones ended', () => {
    const asked = question(TOO_CLOSE);
    const first = [...disturbedRobots(asked, 1, 6)];
    const parts = [...disturbedRobots(asked, 1, 4), ...disturbedRobots(asked, 5, 2)];
    expect(parts).toEqual(first);
    expect(LATER_ROBOTS).toBe(180);
  });
});

describe('steadinessFrom', () => {
  it('counts who made it and keeps who did not', () => {
    const stray = { seed: 2, start: 'start', cause: 'lost', at: { x: 1, y: 2 } } as const;
    expect(steadinessFrom([undefined, stray, undefined], 'breezy')).toMatchObject({
      weather: 'breezy',
      same: 2,
      of: 3,
      strays: [stray],
    });
  });
});

describe('frayedInk', () => {
  const layout = layOut(STRAIGHT.sheet, fromStart().straight(200).to(30, 250).straight(200).drawing());
  const stray = (seed: number, x: number, y: number, cause: 'lost' | 'mark-missed' = 'lost') => ({
    seed,
    start: 'start' as const,
    cause,
    at: { x, y },
  });

  it('gathers robots along the nearest line, 20 mm at a time, most first', () => {
    const strays = [
      stray(1, 95, 152),
      stray(2, 99, 147, 'mark-missed'),
      stray(3, 91, 150),
      stray(4, 60, 249),
    ];
    const frayed = frayedInk(layout, strays, 200);
    expect(frayed).toMatchObject({ same: 196, of: 200 });
    expect(frayed.stretches.map(({ line, from, to, left }) => [line, from, to, left])).toEqual([
      ['line0', 60, 80, 3],
      ['line1', 20, 40, 1],
    ]);
    expect(frayed.stretches[0]!.at).toEqual({ x: 100, y: 150 });
    expect(frayed.stretches[0]!.causes).toEqual([
      { cause: 'lost', left: 2 },
      { cause: 'mark-missed', left: 1 },
    ]);
    // 3 of 200, by Wilson's formula: the middle of (3 + 1.92) / 203.84 and 0.0192 to either side.
    expect(frayed.stretches[0]!.interval.low).toBeCloseTo(0.0051, 4);
    expect(frayed.stretches[0]!.interval.high).toBeCloseTo(0.0432, 4);
  });

  it('of nobody who left has no stretches', () => {
    expect(frayedInk(layout, [], 20)).toMatchObject({ same: 20, of: 20, stretches: [] });
  });

  it('without lines nothing frays', () => {
    const bare = layOut(STRAIGHT.sheet, { lines: [], marks: [] });
    expect(frayedInk(bare, [stray(1, 10, 10)], 20).stretches).toEqual([]);
  });
});
