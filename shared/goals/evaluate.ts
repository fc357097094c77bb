import {
  type Formula,
  isPredicate,
  type Moment,
  type MomentPredicate,
  type Predicate,
  type TimeOperator,
} from '../documents/formula.ts';
import type { Steadiness } from '../documents/outlook.ts';
import type { Trace } from '../documents/trace.ts';
import { isMet, largest, type Margin, marginOf, opposite, scaled, smallest, UNLIMITED } from './margin.ts';
import { MOMENTS } from './moments/index.ts';
import type { GoalContext, Measure, MomentMeasure } from './predicate.ts';
import { PREDICATES } from './predicates/index.ts';
import { type Reading, signalOf, timed } from './signals.ts';
import { type Scale, type Signal, timeIn } from './temporal.ts';

/**
 * The margin of a formula on one run, or without a run where only the design counts. "Not" is carried
 * down to the predicates, so that a count can turn about between two whole numbers.
 */
export function evaluate(
  formula: Formula,
  run: Trace | undefined,
  context: GoalContext,
  negated = false,
): Margin {
  switch (formula.kind) {
    case 'not':
      return evaluate(formula.of, run, context, !negated);
    case 'and':
    case 'or': {
      const margins = formula.of.map((part) => evaluate(part, run, context, negated));
      return (formula.kind === 'and') !== negated ? smallest(margins) : largest(margins);
    }
    case 'always':
    case 'eventually':
    case 'until':
      return timed(formula, margins(driven(run), context), negated).values[0]!;
    case 'lasting': {
      const seconds = lasting(formula.of, driven(run), context);
      const value = formula.how === 'at-least' ? seconds - formula.time : formula.time - seconds;
      return negated ? opposite(marginOf('lasting', 's', value)) : marginOf('lasting', 's', value);
    }
    default: {
      const margin = measured(formula, run, context);
      return negated ? opposite(margin) : margin;
    }
  }
}

/** Whether any part of a formula looks at a run. */
export function dependsOnRuns(formula: Formula): boolean {
  switch (formula.kind) {
    case 'not':
      return dependsOnRuns(formula.of);
    case 'and':
    case 'or':
      return formula.of.some(dependsOnRuns);
    case 'always':
    case 'eventually':
    case 'until':
    case 'lasting':
      return true;
    default:
      return PREDICATES[formula.kind].over === 'run';
  }
}

/** Whether any part of a formula looks at the disturbed robots; none stands under a time operator. */
export function dependsOnRobots(formula: Formula): boolean {
  switch (formula.kind) {
    case 'not':
      return dependsOnRobots(formula.of);
    case 'and':
    case 'or':
      return formula.of.some(dependsOnRobots);
    default:
      return isPredicate(formula) && PREDICATES[formula.kind].over === 'robots';
  }
}

function driven(run: Trace | undefined): Trace {
  if (!run) throw new RangeError('a goal over runs needs at least one run');
  return run;
}

function robotsOf({ steadiness }: GoalContext): Steadiness {
  if (!steadiness) throw new RangeError('a goal over disturbed robots needs what they did');
  return steadiness;
}

function measured<K extends Predicate['kind']>(
  wish: Extract<Predicate, { kind: K }>,
  run: Trace | undefined,
  context: GoalContext,
): Margin {
  const predicate = PREDICATES[wish.kind as K] as Measure<K>;
  if (predicate.over === 'design') return predicate.measure(wish, context);
  if (predicate.over === 'robots') return predicate.measure(wish, robotsOf(context));
  return predicate.measure(wish, driven(run), context);
}

/** Margins in steps of their scale; over an empty window nothing but time decides. */
const scaleOf = (operator: TimeOperator['kind']): Scale<Margin> => ({
  rank: scaled,
  least: marginOf(operator, 's', -UNLIMITED),
  most: marginOf(operator, 's', UNLIMITED),
});

/** Conditions on moments read as margins. */
const margins = (run: Trace, context: GoalContext): Reading<Margin> => ({
  signal: (wish, negated) => {
    const signal = momentMargins(wish, run, context);
    return negated ? { ...signal, values: signal.values.map(opposite) } : signal;
  },
  scale: scaleOf,
  smallest,
  largest,
});

/** The margins of a predicate from the run's start to its end. */
export const momentMargins = <K extends MomentPredicate['kind']>(
  wish: Extract<MomentPredicate, { kind: K }>,
  run: Trace,
  context: GoalContext,
): Signal<Margin> => (MOMENTS[wish.kind as K] as MomentMeasure<K>).signal(wish, run, context);

/** Seconds of the run in which the condition is met. */
function lasting(moment: Moment, run: Trace, context: GoalContext): number {
  const end = run.events.at(-1)!.t;
  return timeIn(signalOf(moment, margins(run, context), false), isMet, end);
}
