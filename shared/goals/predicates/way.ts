import { marginOf } from '../margin.ts';
import { arrivalOrEnd, type PredicateOf, type RunMeasure } from '../predicate.ts';

/** Way along the drawing beside the wish, mm. */
export const wayMargin = (wish: PredicateOf<'way'>, driven: number) =>
  marginOf('way', 'mm', wish.how === 'at-least' ? driven - wish.length : wish.length - driven);

/** Counts until the finish is reached, or else until the run ends. */
export const way: RunMeasure<'way'> = {
  id: 'G-way',
  over: 'run',
  measure: (wish, run) => wayMargin(wish, arrivalOrEnd(run).way),
};
