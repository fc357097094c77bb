import type { Goal } from '../documents/challenge.ts';
import { GOAL_REASON, type GoalResult, type PointLine } from '../documents/verdict.ts';

/** Points that a challenge can give. */
export const FULL_POINTS = 100;

/**
 * One line a goal: its share of the full points by weight, got when the goal is met. Whole numbers
 * that add up to the full points. Results in the order of the goals.
 */
export function pointLines(goals: readonly Goal[], results: readonly GoalResult[]): PointLine[] {
  const shares = wholeShares(
    FULL_POINTS,
    goals.map((goal) => goal.weight),
  );
  return goals.map((goal, i) => {
    const of = shares[i]!;
    return { reason: `${GOAL_REASON}${goal.id}`, got: results[i]!.met ? of : 0, of };
  });
}

export const totalOf = (lines: readonly PointLine[]): number =>
  lines.reduce((sum, line) => sum + line.got, 0);

/**
 * Splits a whole number by weights into whole numbers that add up to it: each gets the whole part of
 * its share, and what is left goes to the largest remainders, the earlier of two equal ones first.
 */
export function wholeShares(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  const shares = weights.map((weight) => Math.floor((total * weight) / sum));
  const left = total - shares.reduce((a, b) => a + b, 0);
  // Remainders as whole numbers, so that equal ones compare as equal.
  const order = weights
    .map((weight, i) => ({ i, remainder: (total * weight) % sum }))
    .sort((a, b) => b.remainder - a.remainder || a.i - b.i);
  for (const { i } of order.slice(0, left)) shares[i]!++;
  return shares;
}
