import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { type Stray, USUAL_WEATHER } from '../documents/outlook.ts';
import { idealRuns } from '../run/ideal-runs.ts';
import { SAME_LIGHT, worldOf } from '../run/world.ts';
import { type FrayedInk, frayedInk } from '../steadiness/frayed-ink.ts';
import { disturbedRobots, FIRST_SEED, LATER_ROBOTS, ROBOTS } from '../steadiness/steadiness.ts';
import { canonicalDrawing } from '../track/canonical.ts';
import { layOut } from '../track/layout.ts';
import { refusalOf } from './refusal.ts';

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
  const { sheet, kit, starts, limits, light: ambient = SAME_LIGHT, weather = USUAL_WEATHER } = challenge;
  const layout = layOut(sheet, canonicalDrawing(design.drawing, sheet.given));
  const world = worldOf(layout, sheet, kit);
  const limit = limits.time;
  const { traces: runs } = idealRuns(world, { starts, limit, ambient });
  const strays: Stray[] = [];
  const count = ROBOTS + LATER_ROBOTS;
  for (const stray of disturbedRobots({ world, starts, limit, ambient, weather, runs }, FIRST_SEED, count)) {
    if (stray) strays.push(stray);
    yield 'robot';
  }
  return frayedInk(layout, strays, count);
}
