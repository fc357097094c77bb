import { PACES, type Pace } from '../../documents/kit.ts';
import type { Trace } from '../../documents/trace.ts';
import { exactly } from '../margin.ts';
import type { MomentMeasure } from '../predicate.ts';
import { signalEnd } from './sampled.ts';

/** Steps of pace away from the wish; the commanded pace, whatever a corner does to the speed. */
export const paceNow: MomentMeasure<'pace'> = {
  id: 'G-pace',
  signal(wish, run) {
    const paces = pacesOf(run);
    return {
      times: [...paces.keys()],
      values: [...paces.values()].map((pace) =>
        exactly('pace', PACES.indexOf(pace), PACES.indexOf(wish.pace)),
      ),
      end: signalEnd(run),
    };
  },
};

/** Each event says the pace from then on; the first of them also the one before, where it changes it. */
function pacesOf({ events }: Trace): ReadonlyMap<number, Pace> {
  const first = events[0]!;
  const atStart: [number, Pace] = [0, first.kind === 'pace' ? first.from : first.pace];
  return new Map([atStart, ...events.map((event): [number, Pace] => [event.t, event.pace])]);
}
