import { exactly } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';

/** Half turns too many or too few. */
export const turnBack: RunMeasure<'turn-back'> = {
  id: 'G-turn-back',
  over: 'run',
  measure: (wish, run) => exactly('turn-back', eventsOf(run, 'turn-back').length, wish.count),
};
