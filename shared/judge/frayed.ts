import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { type Stray, USUAL_WEATHER } from '../documents/outlook.ts';
import { idealRuns } from '../run/ideal-runs.ts';
import { SAME_LIGHT } from '../run/world.ts';
import { type FrayedInk, frayedInk } from '../steadiness/frayed-ink.ts';
import { disturbedRobots, FIRST_SEED, LATER_ROBOTS, ROBOTS } from '../steadiness/steadiness.ts';
import { refusalOf } from './refusal.ts';
import { sceneOf } from './scene.ts';

/**
 * Where the ink of an entry frays: the twenty robots of its verdict and 180 later ones, yielded one by one so
 * that it may be put aside for anything more urgent. It changes no points. Undefined where the design is
 * not judged at all.
 */
export function* frayedInkOf(
  challenge: Challenge,
  design: Design,
): Generator<'robot', FrayedInk | undefined> {
  if (refusalOf(challenge, design)) return undefined;
  const { starts, limits, light: ambient = SAME_LIGHT, weather = USUAL_WEATHER } = challenge;
  const { world } = sceneOf(challenge, design);
  const limit = limits.time;
  const { traces: runs } = idealRuns(world, { starts, limit, ambient });
  const strays: Stray[] = [];
  const count = ROBOTS + LATER_ROBOTS;
  for (const stray of disturbedRobots({ world, starts, limit, ambient, weather, runs }, FIRST_SEED, count)) {
    if (stray) strays.push(stray);
    yield 'robot';
  }
  return frayedInk(world.layout, strays, count);
}
