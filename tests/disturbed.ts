import type { Challenge } from '../shared/documents/challenge.ts';
import { type Design, EMPTY_DESIGN } from '../shared/documents/design.ts';
import type { Trace } from '../shared/documents/trace.ts';
import { measureGoal } from '../shared/goals/measure.ts';
import { answerIn, answerKey, questionsOf } from '../shared/judge/predict.ts';
import { DEMO_KIT } from '../shared/kit/demo-kit.ts';
import { readyChallenges } from '../shared/library/ready.ts';
import { drive } from '../shared/run/drive.ts';
import { SAME_LIGHT, worldOf } from '../shared/run/world.ts';
import { canonicalDrawing } from '../shared/track/canonical.ts';
import { layOut } from '../shared/track/layout.ts';

/** The challenge of the library with this key, for the demo kit. */
export function challengeOf(key: string): Challenge {
  const found = readyChallenges(DEMO_KIT).find((one) => one.key === key);
  if (!found?.playable) throw new Error(`the library has no challenge ${key}`);
  return found.challenge;
}

/**
 * One run of each robot, seeds 1 to `count`, over a design as a hand draws it, from one of the
 * challenge's berths. Tolerances times `weather`: 1 calm, 1.5 breezy, 3 stormy.
 */
export function disturbedRuns(
  challenge: Challenge,
  design: Design,
  start: Trace['start'],
  { count = 40, weather = 1 } = {},
): Trace[] {
  const { sheet, kit, limits } = challenge;
  const world = worldOf(layOut(sheet, canonicalDrawing(design.drawing, sheet.given)), sheet, kit);
  const options = {
    start,
    limit: limits.time,
    disturbance: weather,
    ink: weather,
    ambient: SAME_LIGHT,
    choices: [],
  };
  return Array.from({ length: count }, (_, i) => drive(world, { ...options, seed: i + 1 }));
}

/**
 * How many of 40 disturbed robots do what the challenge wants, for each of its starts: they meet every
 * must-goal, or, where there is nothing to draw, they answer every question as the undisturbed one.
 */
export const ofForty = (challenge: Challenge, design = EMPTY_DESIGN, weather = 1): number[] =>
  challenge.starts.map((start) => {
    const runs = disturbedRuns(challenge, design, start, { weather });
    const asWanted = challenge.play === 'predict' ? answersAsKey(challenge) : meetsGoals(challenge, design);
    return runs.filter(asWanted).length;
  });

function meetsGoals(challenge: Challenge, design: Design): (run: Trace) => boolean {
  const { sheet, kit } = challenge;
  const context = { sheet, robot: kit.robot, drawing: canonicalDrawing(design.drawing, sheet.given) };
  return (run) =>
    challenge.goals
      .filter((goal) => goal.must && (goal.start === undefined || goal.start === run.start))
      .map((goal) => measureGoal(goal, { traces: [run], tooMany: false }, context))
      // What is wanted of many robots stays open for one.
      .every((result) => result.met || result.open);
}

/** What one run answers to the questions about robots from its berth, by question; numbers of robots need many. */
export const answersOfRun = (challenge: Challenge, run: Trace): ReadonlyMap<string, string> =>
  new Map(
    questionsOf(challenge).flatMap((question) =>
      question.start !== run.start || question.kind === 'how-many'
        ? []
        : [[question.id, answerIn(challenge.sheet, question, run)]],
    ),
  );

function answersAsKey(challenge: Challenge): (run: Trace) => boolean {
  const key = answerKey(challenge);
  return (run) => [...answersOfRun(challenge, run)].every(([question, says]) => key.get(question) === says);
}
