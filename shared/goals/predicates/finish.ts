import type { Trace } from '../../documents/trace.ts';
import { type Margin, marginOf, UNLIMITED } from '../margin.ts';
import type { RunMeasure } from '../predicate.ts';

/** How deep the middle of the axle came into the berth where the run wants to arrive, mm. */
export const arrivalDepth = (run: Trace, by: string): Margin =>
  marginOf(by, 'mm', -(run.finish ?? UNLIMITED));

export const finish: RunMeasure<'finish'> = {
  id: 'G-finish',
  over: 'run',
  measure: (_wish, run) => arrivalDepth(run, 'finish'),
};
