import { marginOf, UNLIMITED } from '../margin.ts';
import type { RunMeasure } from '../predicate.ts';

/** Least distance of the robot's outline to any keep-out area, mm. */
export const keepOut: RunMeasure<'keep-out'> = {
  id: 'G-keep-out',
  over: 'run',
  measure: (_wish, run) => marginOf('keep-out', 'mm', Math.min(UNLIMITED, ...Object.values(run.keepOut))),
};
