import { PACES } from '../../documents/kit.ts';
import { exactly } from '../margin.ts';
import { arrivalOrEnd, type RunMeasure } from '../predicate.ts';

/** Steps of pace away from the wish when the finish is reached, or else when the run ends. */
export const paceAtEnd: RunMeasure<'pace-at-end'> = {
  id: 'G-pace-at-end',
  over: 'run',
  measure: (wish, run) =>
    exactly('pace-at-end', PACES.indexOf(arrivalOrEnd(run).pace), PACES.indexOf(wish.pace)),
};
