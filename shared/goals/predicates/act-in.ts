import { largest, marginOf } from '../margin.ts';
import { areaDepth, eventsOf, type RunMeasure } from '../predicate.ts';

/** How deep in the area the axle stood when it began to wait or call, mm; without any, one is missing. */
export const actIn: RunMeasure<'act-in'> = {
  id: 'G-act-in',
  over: 'run',
  measure(wish, run, { sheet }) {
    const depths = eventsOf(run, wish.act).map((event) =>
      marginOf('act-in', 'mm', areaDepth(sheet, wish.area, event)),
    );
    return depths.length === 0 ? marginOf('act-in', 'count', -1) : largest(depths);
  },
};
