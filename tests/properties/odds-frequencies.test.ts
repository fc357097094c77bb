import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../shared/kit/second-kit.ts';
import { oddsOf } from '../../shared/odds/odds.ts';
import { driveLightly } from '../../shared/run/driving.ts';
import { idealRuns } from '../../shared/run/ideal-runs.ts';
import { SAME_LIGHT, UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { wilsonInterval } from '../../shared/steadiness/statistics.ts';
import { buildTrack } from '../../shared/track/graph.ts';
import { layOut } from '../../shared/track/layout.ts';
import { Pen } from '../sweeps/pen.ts';
import { FORK, fromStart, lighthouseAt, RING, type Scene, STREET } from '../unit/odds/tracks.ts';

/**
 * What the chain says against what robots do that roll their own dice: the seeds are fixed, so a difference
 * outside the 95 % interval is a difference.
 */
const RUNS = 200;
const LIMIT = 40;

function compared({ sheet, drawing, kit = DEMO_KIT }: Scene, disturbance: number) {
  const layout = layOut(sheet, drawing);
  const world = worldOf(layout, sheet, kit);
  const ideal = idealRuns(world, { starts: ['start'], limit: LIMIT });
  const odds = oddsOf(world, buildTrack(layout, kit), {
    start: 'start',
    limit: LIMIT,
    ambient: SAME_LIGHT,
    runs: ideal.traces,
  })!;
  const times = Array.from({ length: RUNS }, (_, i) => {
    const run = driveLightly(world, {
      ...UNDISTURBED,
      seed: i + 1,
      disturbance,
      ink: disturbance,
      limit: LIMIT,
    });
    return run.events.find((event) => event.kind === 'finish')?.t;
  }).filter((t) => t !== undefined && t <= LIMIT);
  return { odds, times: times as number[] };
}

/** Mean and half of its 95 % interval. */
function meanOf(times: readonly number[]) {
  const mean = times.reduce((a, b) => a + b, 0) / times.length;
  const square = times.reduce((sum, t) => sum + (t - mean) * (t - mean), 0) / (times.length - 1);
  return { mean, spread: 1.96 * Math.sqrt(square / times.length) };
}

/** A crossing whose arms are loose ends; robots that turn back there come again and again until they arrive. */
const CROSSING: Scene = {
  sheet: lighthouseAt(160, 70),
  drawing: fromStart().straight(230).to(160, 60, 90).straight(170).drawing(),
  kit: { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, looseEnd: 'turn-back' } },
};

/** The line ends on another one, so that robots that go straight on where they can have to roll a die too. */
const END_ON_LINE: Scene = {
  sheet: lighthouseAt(160, 60),
  drawing: new Pen(6).to(30, 150).straight(130).to(160, 54, 90).straight(170).drawing(),
  kit: SECOND_KIT,
};

/** The graph's times are as good as its closed forms for turns, which leave out how the robot swings in. */
const FORM = 0.15;

describe.each([
  ['a fork', FORK],
  ['a ring', RING],
  ['a street of crossings', STREET],
  ['a crossing with loose ends at which robots turn back', CROSSING],
  ['a line that ends on another one, with the second kit', END_ON_LINE],
] as const)('odds of %s', (_, scene) => {
  it.each([
    ['undisturbed robots', 0],
    ['calm weather', 1],
  ])('agree with the frequencies of %s', (__, disturbance) => {
    const { odds, times } = compared(scene, disturbance);
    expect(odds.basis).toBe('track');
    const { low, high } = wilsonInterval(times.length, RUNS);
    expect(odds.inTime.finish).toBeGreaterThan(low);
    expect(odds.inTime.finish).toBeLessThan(high);
    const { mean, spread } = meanOf(times);
    expect(Math.abs(odds.inTime.meanTime! - mean)).toBeLessThan(spread + FORM);
  });
});
