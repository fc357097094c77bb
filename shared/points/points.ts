import type { Goal } from '../documents/challenge.ts';
import { GOAL_REASON, type GoalResult, type PointLine } from '../documents/verdict.ts';

/** Points that a challenge can give. */
export const FULL_POINTS = 100;

/** What the parts are worth where all of them apply; where one does not, the others share its points. */
const PARTS = { goals: 60, steadiness: 20, thrift: 20 } as const;

/** What an entry has shown beside its goals. A part that does not apply is left out. */
export interface Merits {
  /** A finding stops the robot. */
  readonly stopped: boolean;
  /** Of so many slightly different robots so many do as the undisturbed one. Counts from breezy weather on. */
  readonly steadiness?: { readonly same: number; readonly of: number } | undefined;
  /** What the drawing costs, beside the lowest cost that is known. */
  readonly thrift?: { readonly cost: number; readonly par: number } | undefined;
}

/**
 * The lines that make up an entry's points: goals by weight in their order, then steadiness and thrift
 * as far as they apply. Whole numbers; together 100 at most. While a must-goal is unmet or a finding
 * stops the robot, only goals that are met give points.
 */
export function pointLines(
  goals: readonly Goal[],
  results: readonly GoalResult[],
  merits: Merits,
): PointLine[] {
  const { steadiness, thrift, stopped } = merits;
  const apply = [PARTS.goals, steadiness ? PARTS.steadiness : 0, thrift ? PARTS.thrift : 0];
  const [forGoals, forSteadiness, forThrift] = wholeShares(FULL_POINTS, apply);
  const withheld = stopped || goals.some((goal, i) => goal.must && !results[i]!.met);
  const lines = goalLines(goals, results, forGoals!);
  if (steadiness) {
    const { same, of } = steadiness;
    lines.push(meritLine('steadiness', forSteadiness!, same, of, share(same, of), withheld));
  }
  if (thrift) {
    const { cost, par } = thrift;
    lines.push(meritLine('thrift', forThrift!, cost, par, share(par, cost), withheld));
  }
  return lines;
}

function goalLines(goals: readonly Goal[], results: readonly GoalResult[], points: number): PointLine[] {
  const shares = wholeShares(
    points,
    goals.map((goal) => goal.weight),
  );
  return goals.map((goal, i) => {
    const of = shares[i]!;
    return { reason: `${GOAL_REASON}${goal.id}`, got: results[i]!.met ? of : 0, of };
  });
}

interface Share {
  readonly part: number;
  readonly whole: number;
}

/** A share of at most the whole, in hundredths, so that whole points stay whole. */
function share(part: number, whole: number): Share {
  const hundredths = { part: Math.round(part * 100), whole: Math.round(whole * 100) };
  return hundredths.part >= hundredths.whole ? { part: 1, whole: 1 } : hundredths;
}

/** Points begun are not points: only the full share gives them all. */
function meritLine(
  reason: 'steadiness' | 'thrift',
  of: number,
  measured: number,
  allowed: number,
  { part, whole }: Share,
  withheld: boolean,
): PointLine {
  const line = { reason, got: withheld ? 0 : Math.floor((of * part) / whole), of, measured, allowed };
  return withheld ? { ...line, withheld } : line;
}

/** Points of a team that predicts: its share of right answers, to the nearest whole number. */
export const answerPoints = (right: number, questions: number): number =>
  questions === 0 ? 0 : Math.round((FULL_POINTS * right) / questions);

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
  // Remainders as whole numbers, so that equal ones compare as equal and keep their order.
  const order = weights
    .map((weight, i) => ({ i, remainder: (total * weight) % sum }))
    .sort((a, b) => b.remainder - a.remainder);
  for (const { i } of order.slice(0, left)) shares[i]!++;
  return shares;
}
