import { isPredicate, type Moment, type MomentPredicate, type TimeOperator } from '../documents/formula.ts';
import { pointwise, type Scale, type Signal, sometime, turned, until } from './temporal.ts';

/** How conditions on moments are read: as margins, or as what is certain so far. */
export interface Reading<V> {
  /** A predicate, or its opposite, from the run's start on. */
  readonly signal: (wish: MomentPredicate, negated: boolean) => Signal<V>;
  readonly scale: (operator: TimeOperator['kind']) => Scale<V>;
  readonly smallest: (values: readonly V[]) => V;
  readonly largest: (values: readonly V[]) => V;
}

/** A condition at every moment. "Not" is carried down to the predicates. */
export function signalOf<V>(moment: Moment, reading: Reading<V>, negated: boolean): Signal<V> {
  if (isPredicate(moment)) return reading.signal(moment, negated);
  switch (moment.kind) {
    case 'not':
      return signalOf(moment.of, reading, !negated);
    case 'and':
    case 'or': {
      const parts = moment.of.map((part) => signalOf(part, reading, negated));
      return pointwise(parts, (moment.kind === 'and') !== negated ? reading.smallest : reading.largest);
    }
    default:
      return timed(moment, reading, negated);
  }
}

export function timed<V>(operator: TimeOperator, reading: Reading<V>, negated: boolean): Signal<V> {
  const part = (moment: Moment) => signalOf(moment, reading, negated);
  const scale = reading.scale(operator.kind);
  const asSaid = negated ? turned(scale) : scale;
  if (operator.kind === 'until') {
    const { hold, until: goal, within = Number.POSITIVE_INFINITY } = operator;
    return until(part(hold), part(goal), within, asSaid);
  }
  const { from = 0, to = Number.POSITIVE_INFINITY } = operator.window ?? {};
  return sometime(part(operator.of), from, to, operator.kind === 'eventually' ? asSaid : turned(asSaid));
}
