import { marginOf } from '../margin.ts';
import { eventsOf, type RunMeasure } from '../predicate.ts';

/** Drawn marks that were understood at least once, beside the wish; one that the chart lacks is not understood. */
export const readMarks: RunMeasure<'read-marks'> = {
  id: 'G-read-marks',
  over: 'run',
  measure(wish, run) {
    const understood = eventsOf(run, 'read').filter((event) => event.action !== undefined);
    const marks = new Set(understood.flatMap((event) => event.mark ?? []));
    return marginOf('read-marks', 'count', marks.size - wish.count);
  },
};
