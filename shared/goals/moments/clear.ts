import { polygonSignedDistance } from '../../geometry/polygon.ts';
import { edgeDistance, outlineOf } from '../../run/clearances.ts';
import { marginOf, UNLIMITED } from '../margin.ts';
import type { MomentMeasure } from '../predicate.ts';
import { sampled } from './sampled.ts';

/** Distance of the robot's outline to the nearest keep-out area, mm. */
export const clearOfAreas: MomentMeasure<'keep-out'> = {
  id: 'G-keep-out',
  signal: (_wish, run, { sheet, robot }) =>
    sampled(run, (pose) => {
      const outline = outlineOf(pose, robot);
      const distances = sheet.keepOut.map((area) => polygonSignedDistance(area.polygon, outline));
      return marginOf('keep-out', 'mm', Math.min(UNLIMITED, ...distances));
    }),
};

/** Distance of the robot's outline to the paper's edge, mm. */
export const clearOfEdge: MomentMeasure<'stay-on-paper'> = {
  id: 'G-stay-on-paper',
  signal: (_wish, run, { sheet, robot }) =>
    sampled(run, (pose) => marginOf('stay-on-paper', 'mm', edgeDistance(sheet, pose, robot))),
};
