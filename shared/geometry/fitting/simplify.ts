import { distanceToSegment } from '../polygon.ts';
import type { Mm, PaperPoint } from '../units.ts';

/**
 * Positions of the points that Ramer, Douglas and Peucker's method keeps: no point left out is farther
 * than `tolerance` from the chord that replaces it. Distances are to the chord as a segment, so a
 * closed line works too.
 */
export function simplified(points: readonly PaperPoint[], tolerance: Mm): number[] {
  const kept = new Set([0, points.length - 1]);
  const open: [number, number][] = [[0, points.length - 1]];
  for (let span = open.pop(); span; span = open.pop()) {
    const [low, high] = span;
    let worst = tolerance;
    let at = -1;
    for (let i = low + 1; i < high; i++) {
      const d = distanceToSegment(points[i]!, points[low]!, points[high]!);
      if (d > worst) {
        worst = d;
        at = i;
      }
    }
    if (at < 0) continue;
    kept.add(at);
    open.push([low, at], [at, high]);
  }
  return [...kept].sort((a, b) => a - b);
}
