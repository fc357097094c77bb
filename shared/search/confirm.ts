import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { type Stray, USUAL_WEATHER } from '../documents/outlook.ts';
import { judge } from '../judge/judge.ts';
import { plainFindings, ruleContext } from '../rules/rules.ts';
import { SAME_LIGHT, worldOf } from '../run/world.ts';
import { disturbedRobots, ROBOTS } from '../steadiness/steadiness.ts';
import { canonicalDrawing } from '../track/canonical.ts';
import { layOut } from '../track/layout.ts';

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
export function confirm(challenge: Challenge, design: Design): Confirmed {
  const { verdict, traces } = judge(challenge, design, 'live');
  if (!verdict.met) return NOT_MET;
  const isOpen = verdict.goals.some((goal) => goal.open);
  if (isOpen && !judge(challenge, design, 'entry').verdict.met) return NOT_MET;
  const { sheet, kit, starts, limits, light = SAME_LIGHT, weather = USUAL_WEATHER } = challenge;
  const world = worldOf(layOut(sheet, canonicalDrawing(design.drawing, sheet.given)), sheet, kit);
  const question = { world, starts, limit: limits.time, ambient: light, weather, runs: traces };
  const steady = strayCount(disturbedRobots(question, undefined, ROBOTS)) <= MOST_STRAYS;
  return { met: true, steady };
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
