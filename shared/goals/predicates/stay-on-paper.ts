import { marginOf } from '../margin.ts';
import type { RunMeasure } from '../predicate.ts';

/** Least distance of the robot's outline to the edge of the paper, mm. */
export const stayOnPaper: RunMeasure<'stay-on-paper'> = {
  id: 'G-stay-on-paper',
  over: 'run',
  measure: (_wish, run) => marginOf('stay-on-paper', 'mm', run.edge),
};
