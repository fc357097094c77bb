import { marginOf } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';

/** Half turns too many or too few. */
export const turnBack: RunMeasure<'turn-back'> = {
  id: 'G-turn-back',
  over: 'run',
  measure: (wish, run) =>
    marginOf('turn-back', 'count', -Math.abs(eventsOf(run, 'turn-back').length - wish.count)),
};
