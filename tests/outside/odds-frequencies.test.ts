import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { oddsOf } from '../../shared/odds/odds.ts';
import { driveLightly } from '../../shared/run/driving.ts';
import { idealRuns } from '../../shared/run/ideal-runs.ts';
import { SAME_LIGHT, UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { wilsonInterval } from '../../shared/steadiness/statistics.ts';
import { buildTrack } from '../../shared/track/graph.ts';
import { layOut } from '../../shared/track/layout.ts';
import { FORK, RING, type Scene, STREET } from '../unit/odds/tracks.ts';

/**
 * What the chain says against what robots do that roll their own dice: the seeds are fixed, so a difference
 * outside the 95 % interval is a difference.
 */
const RUNS = 200;
const LIMIT = 40;

function compared({ sheet, drawing }: Scene, disturbance: number) {
  const layout = layOut(sheet, drawing);
  const world = worldOf(layout, sheet, DEMO_KIT);
  const ideal = idealRuns(world, { starts: ['start'], limit: LIMIT });
  const odds = oddsOf(world, buildTrack(layout, DEMO_KIT), {
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

/** The graph's times are as good as its closed forms for turns, which leave out how the robot swings in. */
const FORM = 0.15;

describe.each([
  ['a fork', FORK],
  ['a ring', RING],
  ['a street of crossings', STREET],
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
