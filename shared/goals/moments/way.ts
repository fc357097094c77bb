import type { MomentMeasure } from '../predicate.ts';
import { wayMargin } from '../predicates/way.ts';
import { sampled } from './sampled.ts';

/** Way along the drawing until now, mm. */
export const waySoFar: MomentMeasure<'way'> = {
  id: 'G-way',
  signal: (wish, run) => sampled(run, (_pose, i) => wayMargin(wish, run.samples.way[i]!)),
};
