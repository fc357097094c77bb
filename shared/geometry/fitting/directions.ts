import { distance } from '../exact-math.ts';
import type { Direction } from '../piece.ts';
import { distanceToSegment } from '../polygon.ts';
import type { PaperPoint } from '../units.ts';
import { FITTING } from './settings.ts';

/** An evenly spaced, smoothed part of a stroke between two corners. */
export interface Section {
  /** Where pieces may end. */
  readonly points: readonly PaperPoint[];
  /** What they are held against, one for each point. */
  readonly samples: readonly PaperPoint[];
  readonly step: number;
}

const towards = (a: PaperPoint, b: PaperPoint): Direction => {
  const size = distance(a, b);
  return size === 0 ? { x: 1, y: 0 } : { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
};

/** Directions that a fit may take at point `i`: that of the stroke there, and of long straights from or to it. */
export function directionsAt({ points, step }: Section, i: number): Direction[] {
  const reach = Math.max(Math.round(FITTING.tangentReach / step), 1);
  const around = Math.min(reach, Math.max(i, 1), Math.max(points.length - 1 - i, 1));
  const low = Math.max(i - around, 0);
  const high = Math.min(i + around, points.length - 1);
  const found = [towards(points[low]!, points[high]!)];
  const ahead = straightEnd(points, step, i, 1);
  if (ahead !== i) found.push(towards(points[i]!, points[ahead]!));
  const behind = straightEnd(points, step, i, -1);
  if (behind !== i) found.push(towards(points[behind]!, points[i]!));
  return found;
}

/** How far the stroke runs straight from `i`, within limits; `i` itself where that is not far. */
function straightEnd(points: readonly PaperPoint[], step: number, i: number, sense: 1 | -1): number {
  const stride = Math.max(Math.round(FITTING.straightStride / step), 1) * sense;
  const most = Math.max(Math.round(FITTING.straightMost / step), 1);
  let end = i;
  for (let j = i + stride; j >= 0 && j < points.length && Math.abs(j - i) <= most; j += stride) {
    for (let k = i + stride; k !== j; k += stride) {
      if (distanceToSegment(points[k]!, points[i]!, points[j]!) > FITTING.straightStray) {
        return farEnough(step, i, end);
      }
    }
    end = j;
  }
  return farEnough(step, i, end);
}

const farEnough = (step: number, i: number, end: number): number =>
  Math.abs(end - i) * step >= FITTING.straightLeast ? end : i;
