import type { Challenge } from '../documents/challenge.ts';
import { type Stray, USUAL_WEATHER } from '../documents/outlook.ts';
import type { Verdict } from '../documents/verdict.ts';
import { oddsOf } from '../odds/odds.ts';
import type { IdealRuns } from '../run/ideal-runs.ts';
import { SAME_LIGHT, type World } from '../run/world.ts';
import { disturbedRobots, steadinessFrom } from '../steadiness/steadiness.ts';
import type { Track } from '../track/track.ts';

/** What an entry's verdict says beyond the undisturbed runs. */
export type Outlook = Pick<Verdict, 'odds' | 'steadiness'>;

/** Works out the odds from each berth, then drives the disturbed robots one by one. */
export function* outlookOf(
  challenge: Challenge,
  world: World,
  track: Track,
  { traces }: IdealRuns,
): Generator<'odds' | 'robot', Outlook> {
  const { starts, limits, light: ambient = SAME_LIGHT, weather = USUAL_WEATHER } = challenge;
  const limit = limits.time;
  const odds = starts.flatMap((start) => {
    const runs = traces.filter((trace) => trace.start === start);
    const found = oddsOf(world, track, { start, limit, ambient, runs });
    return found ? [found] : [];
  });
  yield 'odds';
  const robots: (Stray | undefined)[] = [];
  for (const robot of disturbedRobots({ world, starts, limit, ambient, weather, runs: traces })) {
    robots.push(robot);
    yield 'robot';
  }
  return { odds, steadiness: steadinessFrom(robots, weather) };
}
