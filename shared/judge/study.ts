import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { type Stray, USUAL_WEATHER } from '../documents/outlook.ts';
import { type BarReadings, barReadings } from '../run/bar-readings.ts';
import { SAME_LIGHT } from '../run/world.ts';
import { type FrayedInk, frayedInk } from '../steadiness/frayed-ink.ts';
import {
  disturbedRobots,
  FIRST_SEED,
  LATER_ROBOTS,
  ROBOTS,
  type SteadinessQuestion,
} from '../steadiness/steadiness.ts';
import { judge } from './judge.ts';
import { type NextQuestion, nextQuestions } from './next-questions.ts';
import { refusalOf } from './refusal.ts';
import { sceneOf } from './scene.ts';
import { type Trouble, troublesOf } from './trouble.ts';

/** How many of the robots that were driven so far do as the undisturbed one. */
export interface RobotsSoFar {
  readonly same: number;
  readonly of: number;
}

/** What can be found out of a drawing beyond its runs. It changes no points. */
export interface Study {
  /** Beside the runs of the live verdict, in the same order. */
  readonly bars: readonly BarReadings[];
  readonly troubles: readonly (Trouble | undefined)[];
  /** Of twenty, the very ones of an entry's verdict. */
  readonly robots: RobotsSoFar;
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
  const question = { world, starts, limit: limits.time, ambient, weather, runs: judged.traces };
  const strays = yield* counted(question);
  if (judged.verdict.met) yield* nextQuestions(challenge, design);
  for (const stray of disturbedRobots(question, FIRST_SEED + ROBOTS, LATER_ROBOTS)) {
    if (stray) strays.push(stray);
    yield {};
  }
  yield { frayed: frayedInk(world.layout, strays, ROBOTS + LATER_ROBOTS) };
}

/** The first twenty, told one by one. */
export function* counted(question: SteadinessQuestion): Generator<Pick<Study, 'robots'>, Stray[]> {
  const strays: Stray[] = [];
  let of = 0;
  for (const stray of disturbedRobots(question)) {
    if (stray) strays.push(stray);
    of++;
    yield { robots: { same: of - strays.length, of } };
  }
  return strays;
}
