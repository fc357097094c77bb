import type { Trace } from '../../documents/trace.ts';
import { distance } from '../../geometry/exact-math.ts';
import type { PaperPoint } from '../../geometry/units.ts';
import { marginOf, UNLIMITED } from '../margin.ts';
import {
  areaDepth,
  eventsOf,
  type GoalContext,
  type PredicateOf,
  type RunMeasure,
  targetOf,
} from '../predicate.ts';

/** A run that did not park lacks one parking; one that did has the depth of its axle in the place, mm. */
export const park: RunMeasure<'park'> = {
  id: 'G-park',
  over: 'run',
  measure(wish, run, context) {
    const end = eventsOf(run, 'end').at(-1);
    if (run.ending !== 'parked' || !end) return marginOf('park', 'count', -1);
    return marginOf('park', 'mm', depth(wish, run, context, end));
  },
};

function depth(wish: PredicateOf<'park'>, run: Trace, { sheet }: GoalContext, at: PaperPoint): number {
  if (wish.area !== undefined) return areaDepth(sheet, wish.area, at);
  const berth = targetOf(sheet, run);
  return berth ? berth.r - distance(berth.at, at) : -UNLIMITED;
}
