import type { Challenge } from '../../documents/challenge.ts';
import { GOAL_REASON, type PointLine } from '../../documents/verdict.ts';
import { goals } from './goals.ts';

/** What the points were for; a reason that this page is too old to know is said as it is. */
function reason(line: PointLine, challenge: Pick<Challenge, 'goals' | 'sheet'>): string {
  const id = line.reason.startsWith(GOAL_REASON) ? line.reason.slice(GOAL_REASON.length) : undefined;
  const goal = challenge.goals.find((one) => one.id === id);
  return goal ? goals.short(goal.formula, challenge.sheet) : line.reason;
}

/** Why points were given: codes of `shared/points`. */
export const points = {
  reason,
  got: (line: PointLine): string => `${line.got} of ${line.of}`,
  total: (points: number): string => `${points} of 100 points`,
};
