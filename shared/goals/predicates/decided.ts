import { marginOf } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';

/** Junctions at which the run decided by itself: each is one too many. */
export const decided: RunMeasure<'decided'> = {
  id: 'G-decided',
  over: 'run',
  measure: (_wish, run) =>
    marginOf('decided', 'count', -eventsOf(run, 'junction').filter((event) => event.by === 'chance').length),
};
