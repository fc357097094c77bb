import { distance } from '../../geometry/exact-math.ts';
import { marginOf, UNLIMITED } from '../margin.ts';
import { type MomentMeasure, targetOf } from '../predicate.ts';
import { sampled } from './sampled.ts';

/** How deep the axle's middle is in the berth where the run wants to arrive, mm. */
export const inBerth: MomentMeasure<'finish'> = {
  id: 'G-finish',
  signal(_wish, run, { sheet }) {
    const berth = targetOf(sheet, run);
    return sampled(run, (pose) =>
      marginOf('finish', 'mm', berth ? berth.r - distance(berth.at, pose) : -UNLIMITED),
    );
  },
};
