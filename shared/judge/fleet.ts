import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { ROBOTS, type Stray, type Weather } from '../documents/outlook.ts';
import { TRACE_RATE, type Trace } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint, Seconds } from '../geometry/units.ts';
import { drive } from '../run/drive.ts';
import { idealRuns } from '../run/ideal-runs.ts';
import { SAME_LIGHT } from '../run/world.ts';
import { type FrayedInk, frayedInk } from '../steadiness/frayed-ink.ts';
import { disturbedBy, disturbedRobots, FIRST_SEED } from '../steadiness/steadiness.ts';
import { refusalOf } from './refusal.ts';
import { sceneOf } from './scene.ts';

/** One of the disturbed robots, to be shown: the run in which it strays, or else its first one. */
export interface FleetRobot {
  readonly trace: Trace;
  readonly stray: Stray | null;
  /** When it comes to the place where it strays, s of its run; as near as it ever does where it has gone another way before. */
  readonly straysAt: Seconds | null;
}

/** Robots one by one, then where they left the line. */
export type FleetPiece = { readonly robot: FleetRobot } | { readonly frayed: FrayedInk };

/**
 * Drives the robots that steadiness counts, in any weather, with all that a picture needs. Yields after
 * each, so that a page can say how far it is; nothing where the design is not judged.
 */
export function* fleetOf(
  challenge: Challenge,
  design: Design,
  weather: Weather,
): Generator<FleetPiece, void> {
  if (refusalOf(challenge, design)) return;
  const { world } = sceneOf(challenge, design);
  const { starts, limits, light: ambient = SAME_LIGHT } = challenge;
  const limit = limits.time;
  const { traces } = idealRuns(world, { starts, limit, ambient });
  const question = { world, starts, limit, ambient, weather, runs: traces };
  const strays: Stray[] = [];
  let seed = FIRST_SEED;
  for (const stray of disturbedRobots(question)) {
    if (stray) strays.push(stray);
    const start = stray?.start ?? starts[0]!;
    yield { robot: shown(drive(world, disturbedBy(question, start, seed)), stray ?? null) };
    seed++;
  }
  yield { frayed: frayedInk(world.layout, strays, ROBOTS) };
}

const shown = (trace: Trace, stray: Stray | null): FleetRobot => ({
  trace,
  stray,
  straysAt: stray && timeAt(trace, stray.at),
});

/** Passing a place more than once, a robot is there the first time that it comes about as near as ever. */
const AS_NEAR: Mm = 3;

function timeAt({ samples: { x, y } }: Trace, at: PaperPoint): Seconds {
  const away = x.map((each, i) => distance({ x: each, y: y[i]! }, at));
  const least = away.reduce((nearest, each) => Math.min(nearest, each), Number.POSITIVE_INFINITY);
  return away.findIndex((each) => each <= least + AS_NEAR) / TRACE_RATE;
}
