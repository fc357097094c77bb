import type { Weather } from '../documents/outlook.ts';
import type { Seconds } from '../geometry/units.ts';
import { drive } from '../run/drive.ts';
import type { IdealRuns } from '../run/ideal-runs.ts';
import type { Ambient, StartBerth, World } from '../run/world.ts';
import { disturbedBy } from '../steadiness/steadiness.ts';

/** One of the many slightly different robots; a seed from 1 on. */
export interface OtherRobot {
  readonly weather: Weather;
  readonly seed: number;
}

/** The one run of such a robot from each berth: where it decides by itself it rolls its own die. */
export function runsOf(
  robot: OtherRobot,
  world: World,
  options: { readonly starts: readonly StartBerth[]; readonly limit: Seconds; readonly ambient: Ambient },
): IdealRuns {
  const question = { ...options, weather: robot.weather };
  const run = (start: StartBerth) => drive(world, disturbedBy(question, start, robot.seed));
  return { traces: options.starts.map((start) => ({ ...run(start), probability: 1 })), tooMany: false };
}
