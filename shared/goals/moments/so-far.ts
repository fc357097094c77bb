import type { MomentPredicate, Predicate } from '../../documents/formula.ts';
import type { MomentMeasure, MomentOf, PredicateOf, RunMeasure } from '../predicate.ts';
import { signalEnd } from './sampled.ts';

/**
 * A predicate over events as it stands at each moment: its margin as if the run had only the events
 * up to then. A stretch counts from where it ends.
 */
export const soFar = <K extends MomentPredicate['kind'] & Predicate['kind']>(
  whole: RunMeasure<K>,
): MomentMeasure<K> => ({
  id: whole.id,
  signal(wish: MomentOf<K> & PredicateOf<K>, run, context) {
    const times = [...new Set([0, ...run.events.map((event) => event.t)])];
    const values = times.map((t) => {
      const events = run.events.filter((event) => event.t <= t);
      return whole.measure(wish, { ...run, events }, context);
    });
    return { times, values, end: signalEnd(run) };
  },
});
