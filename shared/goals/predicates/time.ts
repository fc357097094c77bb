import { twoSided } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';
import { arrivalDepth } from './finish.ts';

/** Time to the nearer end of the window, s; a run that does not arrive lacks the way to the berth, mm. */
export const time: RunMeasure<'time'> = {
  id: 'G-time',
  over: 'run',
  measure(wish, run) {
    const arrival = eventsOf(run, 'finish')[0];
    if (!arrival) return arrivalDepth(run, 'time');
    return twoSided('time', 's', arrival.t - wish.from, wish.to - arrival.t);
  },
};
