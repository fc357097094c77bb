import type { Goal } from '../documents/challenge.ts';
import type { Formula, Predicate } from '../documents/formula.ts';
import type { Trace } from '../documents/trace.ts';
import type { GoalResult } from '../documents/verdict.ts';
import { largest, type Margin, opposite, scaled, smallest } from './margin.ts';
import type { DesignMeasure, GoalContext, RunMeasure } from './predicate.ts';
import { PREDICATES } from './predicates/index.ts';

/** All runs of a design: those from the start, then those from the finish. At least one. */
export interface Runs {
  readonly traces: readonly Trace[];
  /** The robot decides by itself so often that not every run was followed. */
  readonly tooMany: boolean;
}

/**
 * Measures one goal over every run that counts for it, of which there is at least one. It is met when it
 * is met in every one; the result names the run with the smallest margin. A goal that depends on more runs
 * than are followed is left to luck: not met.
 */
export function measureGoal(goal: Goal, runs: Runs, context: GoalContext): GoalResult {
  if (!dependsOnRuns(goal.formula)) {
    return result(goal, marginIn(goal.formula, undefined, context, false), undefined);
  }
  if (runs.tooMany) {
    return { id: goal.id, met: false, margin: -1, unit: 'count', by: 'luck', leftToLuck: true };
  }
  const counted = runs.traces.filter((run) => goal.start === undefined || run.start === goal.start);
  const margins = counted.map((run) => marginIn(goal.formula, run, context, false));
  const worst = smallest(margins);
  return result(goal, worst, runs.traces.indexOf(counted[margins.indexOf(worst)]!));
}

function result(goal: Goal, margin: Margin, run: number | undefined): GoalResult {
  return {
    id: goal.id,
    met: scaled(margin) >= 0,
    margin: margin.value,
    unit: margin.unit,
    ...(run === undefined ? {} : { run }),
    by: margin.by,
    ...(margin.side === undefined ? {} : { side: margin.side }),
    leftToLuck: false,
  };
}

/** Whether any part of a formula looks at a run. */
export function dependsOnRuns(formula: Formula): boolean {
  switch (formula.kind) {
    case 'not':
      return dependsOnRuns(formula.of);
    case 'and':
    case 'or':
      return formula.of.some(dependsOnRuns);
    default:
      return PREDICATES[formula.kind].over === 'run';
  }
}

/** "Not" is carried down to the predicates, so that a count can turn about between two whole numbers. */
function marginIn(formula: Formula, run: Trace | undefined, context: GoalContext, negated: boolean): Margin {
  switch (formula.kind) {
    case 'not':
      return marginIn(formula.of, run, context, !negated);
    case 'and':
    case 'or': {
      const margins = formula.of.map((part) => marginIn(part, run, context, negated));
      return (formula.kind === 'and') !== negated ? smallest(margins) : largest(margins);
    }
    default: {
      const margin = measured(formula, run, context);
      return negated ? opposite(margin) : margin;
    }
  }
}

function measured<K extends Predicate['kind']>(
  wish: Extract<Predicate, { kind: K }>,
  run: Trace | undefined,
  context: GoalContext,
): Margin {
  const predicate = PREDICATES[wish.kind as K] as RunMeasure<K> | DesignMeasure<K>;
  if (predicate.over === 'design') return predicate.measure(wish, context);
  if (!run) throw new RangeError('a goal over runs needs at least one run');
  return predicate.measure(wish, run, context);
}
