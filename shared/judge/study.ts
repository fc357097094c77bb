import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { ROBOTS, type Stray, USUAL_WEATHER } from '../documents/outlook.ts';
import type { Verdict } from '../documents/verdict.ts';
import type { BarReadings } from '../run/bar.ts';
import { barReadings } from '../run/bar-readings.ts';
import { SAME_LIGHT } from '../run/world.ts';
import { type FrayedInk, frayedInk } from '../steadiness/frayed-ink.ts';
import { disturbedRobots, FIRST_SEED, LATER_ROBOTS } from '../steadiness/steadiness.ts';
import { judge, judging } from './judge.ts';
import type { NextQuestion } from './next-question.ts';
import { nextQuestions } from './next-questions.ts';
import { refusalOf } from './refusal.ts';
import { type SceneMaker, sceneOf } from './scene.ts';
import { type Trouble, troublesOf } from './trouble.ts';

/** What can be found out of a drawing beyond its runs. It changes no points. */
export interface Study {
  /** Beside the runs of the live verdict, in the same order. */
  readonly bars: readonly BarReadings[];
  readonly troubles: readonly (Trouble | undefined)[];
  /** What the judge would say of it as an entry, with its twenty robots and its points. */
  readonly entry: Verdict;
  /** What to ask of a drawing that meets its challenge; none of another one. */
  readonly next: readonly NextQuestion[];
  /** Where two hundred robots leave the line. */
  readonly frayed: FrayedInk;
}

/**
 * Studies a drawing piece by piece, what is quick first, one robot a step, so that it may be put aside for
 * anything more urgent: nothing is lost by not asking on. Yields nothing where the design is not judged.
 */
export function* studyOf(challenge: Challenge, design: Design): Generator<Partial<Study>, void> {
  if (refusalOf(challenge, design)) return;
  const scene = sceneOf(challenge, design);
  const judged = judge(challenge, design, 'live', () => scene);
  const { world } = scene;
  const { starts, limits, light: ambient = SAME_LIGHT, weather = USUAL_WEATHER } = challenge;
  yield { bars: judged.traces.map((trace) => barReadings(world, trace, ambient)) };
  yield { troubles: troublesOf(challenge, design, scene.track, judged) };
  const entry = yield* entryOf(challenge, design, () => scene);
  yield { entry };
  const question = { world, starts, limit: limits.time, ambient, weather, runs: judged.traces };
  if (judged.verdict.met) yield* nextQuestions(challenge, design, question);
  const strays: Stray[] = [...(entry.steadiness?.strays ?? [])];
  for (const stray of disturbedRobots(question, FIRST_SEED + ROBOTS, LATER_ROBOTS)) {
    if (stray) strays.push(stray);
    yield {};
  }
  yield { frayed: frayedInk(world.layout, strays, ROBOTS + LATER_ROBOTS) };
}

/** The entry's verdict, step by step. */
function* entryOf(
  challenge: Challenge,
  design: Design,
  scenes: SceneMaker,
): Generator<Partial<Study>, Verdict> {
  const steps = judging(challenge, design, 'entry', scenes);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value.verdict;
    yield {};
  }
}
