import type { Goal } from '../documents/challenge.ts';
import type { Trace } from '../documents/trace.ts';
import type { GoalResult } from '../documents/verdict.ts';
import { dependsOnRobots, dependsOnRuns, evaluate } from './evaluate.ts';
import { isMet, type Margin, smallest } from './margin.ts';
import type { GoalContext } from './predicate.ts';

/** All runs of a design: those from the start, then those from the finish. At least one. */
export interface Runs {
  readonly traces: readonly Trace[];
  /** The robot decides by itself so often that not every run was followed. */
  readonly tooMany: boolean;
}

/**
 * Measures one goal over every run that counts for it, of which there is at least one. It is met when it
 * is met in every one; the result names the run with the smallest margin. A goal that depends on more runs
 * than are followed is left to luck: not met. One that depends on disturbed robots that were not driven is
 * open: not met, and not missed.
 */
export function measureGoal(goal: Goal, runs: Runs, context: GoalContext): GoalResult {
  if (dependsOnRobots(goal.formula) && !context.steadiness) return open(goal);
  if (!dependsOnRuns(goal.formula)) {
    return result(goal, evaluate(goal.formula, undefined, context), undefined);
  }
  if (runs.tooMany) {
    return { id: goal.id, met: false, margin: -1, unit: 'count', by: 'luck', leftToLuck: true };
  }
  const counted = runs.traces.filter((run) => goal.start === undefined || run.start === goal.start);
  const margins = counted.map((run) => evaluate(goal.formula, run, context));
  const worst = smallest(margins);
  return result(goal, worst, runs.traces.indexOf(counted[margins.indexOf(worst)]!));
}

const open = ({ id }: Goal): GoalResult => ({
  id,
  met: false,
  margin: -1,
  unit: 'count',
  by: 'steadiness',
  leftToLuck: false,
  open: true,
});

function result(goal: Goal, margin: Margin, run: number | undefined): GoalResult {
  return {
    id: goal.id,
    met: isMet(margin),
    margin: margin.value,
    unit: margin.unit,
    ...(run === undefined ? {} : { run }),
    by: margin.by,
    ...(margin.side === undefined ? {} : { side: margin.side }),
    leftToLuck: false,
  };
}
