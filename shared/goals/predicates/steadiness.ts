import { marginOf } from '../margin.ts';
import type { RobotsMeasure } from '../predicate.ts';

/** Share of the disturbed robots that do as the undisturbed one, beside the share that is wished for. */
export const steadiness: RobotsMeasure<'steadiness'> = {
  id: 'G-steadiness',
  over: 'robots',
  // Of hundredths, so that 19 of 20 is exactly 0.95.
  measure: (wish, { same, of }) =>
    marginOf('steadiness', 'ratio', Math.round((same / of - wish.least) * 1e6) / 1e6),
};
