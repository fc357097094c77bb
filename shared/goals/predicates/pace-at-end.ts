import { PACES } from '../../documents/kit.ts';
import { exactly, marginOf } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';

/** Steps of pace away from the wish when the finish is reached, or else when the run ends. */
export const paceAtEnd: RunMeasure<'pace-at-end'> = {
  id: 'G-pace-at-end',
  over: 'run',
  measure(wish, run) {
    const last = eventsOf(run, 'finish')[0] ?? eventsOf(run, 'end').at(-1);
    if (!last) return marginOf('pace-at-end', 'count', -1);
    return exactly('pace-at-end', PACES.indexOf(last.pace), PACES.indexOf(wish.pace));
  },
};
