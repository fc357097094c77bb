import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { ROBOTS, type Stray, USUAL_WEATHER } from '../documents/outlook.ts';
import { judge } from '../judge/judge.ts';
import { type Scene, type SceneMaker, sceneOf } from '../judge/scene.ts';
import { plainFindings, ruleContext } from '../rules/rules.ts';
import { SAME_LIGHT } from '../run/world.ts';
import { NO_TRIALS, STEADINESS_PLAN, withTrial } from '../steadiness/statistics.ts';
import {
  disturbedRobots,
  FIRST_SEED,
  LATER_ROBOTS,
  type SteadinessQuestion,
} from '../steadiness/steadiness.ts';

/** What the real run says of a design. */
export interface Confirmed {
  /** Every must-goal is met, and nothing stops the robot. */
  readonly met: boolean;
  /** At least 19 of 20 slightly different robots do the same. Asked only where it is met. */
  readonly steady: boolean;
}

const NOT_MET: Confirmed = { met: false, steady: false };

/** How many of the twenty may do otherwise. */
const MOST_STRAYS = 1;

/** Drives a design: the undisturbed runs first, then the disturbed robots until too many strayed. */
export function confirm(challenge: Challenge, design: Design, scenes: SceneMaker = sceneOf): Confirmed {
  const scene = scenes(challenge, design);
  const { verdict, traces } = judge(challenge, design, 'live', () => scene);
  if (!verdict.met) return NOT_MET;
  const isOpen = verdict.goals.some((goal) => goal.open);
  if (isOpen && !judge(challenge, design, 'entry', () => scene).verdict.met) return NOT_MET;
  const steady = strayCount(disturbedRobots(questionOf(challenge, scene, traces))) <= MOST_STRAYS;
  return { met: true, steady };
}

function questionOf(
  { starts, limits, light = SAME_LIGHT, weather = USUAL_WEATHER }: Challenge,
  { world }: Scene,
  runs: SteadinessQuestion['runs'],
): SteadinessQuestion {
  return { world, starts, limit: limits.time, ambient: light, weather, runs };
}

/**
 * Whether a design is steady with other robots than the twenty of a verdict too, which it may suit by luck:
 * by Wald's test between 16 and 19 of 20. As few later robots are driven as that takes; where not even all
 * of them decide, it is not.
 */
export function staysSteady(challenge: Challenge, design: Design): boolean {
  const scene = sceneOf(challenge, design);
  const { traces } = judge(challenge, design, 'live', () => scene);
  const question = questionOf(challenge, scene, traces);
  let sequence = NO_TRIALS;
  for (const stray of disturbedRobots(question, FIRST_SEED + ROBOTS, LATER_ROBOTS)) {
    sequence = withTrial(sequence, STEADINESS_PLAN, stray === undefined);
    if (sequence.decision !== 'open') break;
  }
  return sequence.decision === 'high';
}

/** Whether any drawing rule has something to say. Drives nothing. */
export function breaksRules({ sheet, kit, starts }: Challenge, design: Design): boolean {
  return plainFindings(ruleContext(sheet, design.drawing, kit, starts)).length > 0;
}

function strayCount(robots: Iterable<Stray | undefined>): number {
  let strays = 0;
  for (const stray of robots) {
    if (stray) strays++;
    if (strays > MOST_STRAYS) break;
  }
  return strays;
}
