import { marginOf } from '../margin.ts';
import { areaDepth, type MomentMeasure } from '../predicate.ts';
import { sampled } from './sampled.ts';

/** How deep the axle's middle is in the area, mm. */
export const inArea: MomentMeasure<'in-area'> = {
  id: 'G-in-area',
  signal: (wish, run, { sheet }) =>
    sampled(run, (pose) => marginOf('in-area', 'mm', areaDepth(sheet, wish.area, pose))),
};
