import { atan2 } from '../exact-math.ts';
import type { Mm, PaperPoint, Rad } from '../units.ts';
import { smoothed } from './sampling.ts';
import { FITTING } from './settings.ts';

/**
 * Positions of corners in an evenly spaced stroke: where it turns sharply within a short way while it
 * is calmer before and after. A tight curve turns on over a longer way and is none.
 */
export function cornersOf(points: readonly PaperPoint[], step: Mm): number[] {
  const light = smoothed(points, step, [], FITTING.cornerWindow);
  const near = Math.max(Math.round(FITTING.cornerNear / step), 2);
  const far = Math.max(Math.round(FITTING.cornerFar / step), 4);
  const least = Math.max(Math.round(FITTING.hook / step), 2);
  const turns = light.map((_, i) =>
    i < least || i >= light.length - least ? 0 : Math.abs(turnAt(light, i, near)),
  );
  const apart = Math.round(FITTING.cornersApart / step);
  const byTurn = turns.map((turn, i) => ({ turn, i })).filter(({ turn }) => turn >= FITTING.cornerTurn);
  byTurn.sort((p, q) => q.turn - p.turn || p.i - q.i);
  const corners: number[] = [];
  for (const { turn, i } of byTurn) {
    if (corners.some((c) => Math.abs(c - i) < apart)) continue;
    if (turn >= FITTING.cornerShare * Math.abs(turnAt(light, i, far))) corners.push(i);
  }
  return corners.sort((a, b) => a - b);
}

/** The angle between the chords of `reach` steps before and after point `i`; shorter near the ends. */
function turnAt(points: readonly PaperPoint[], i: number, reach: number): Rad {
  const p = points[i]!;
  const before = points[Math.max(i - reach, 0)]!;
  const after = points[Math.min(i + reach, points.length - 1)]!;
  const [ax, ay] = [p.x - before.x, p.y - before.y];
  const [bx, by] = [after.x - p.x, after.y - p.y];
  return atan2(ax * by - ay * bx, ax * bx + ay * by);
}
