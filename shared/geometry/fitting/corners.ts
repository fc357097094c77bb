import { atan2 } from '../exact-math.ts';
import type { Mm, PaperPoint, Rad } from '../units.ts';
import { smoothed } from './sampling.ts';
import { FITTING } from './settings.ts';

/**
 * Positions of corners in an evenly spaced stroke: where it turns by much more within a short way than
 * the curves on both sides of that way would. A tight curve turns on evenly and has none.
 */
export function cornersOf(points: readonly PaperPoint[], step: Mm): number[] {
  const light = smoothed(points, step, [], FITTING.cornerWindow);
  const near = Math.max(Math.round(FITTING.cornerReach / step), 2);
  const least = Math.max(Math.round(FITTING.hook / step), 2);
  const sharp: { i: number; excess: Rad }[] = [];
  for (let i = least; i < light.length - least; i++) {
    const excess = excessAt(light, i, near);
    if (excess >= FITTING.cornerTurn) sharp.push({ i, excess });
  }
  sharp.sort((p, q) => q.excess - p.excess || p.i - q.i);
  const apart = Math.round(FITTING.cornersApart / step);
  const corners: number[] = [];
  for (const { i } of sharp) if (!corners.some((c) => Math.abs(c - i) < apart)) corners.push(i);
  return corners.sort((a, b) => a - b);
}

function excessAt(points: readonly PaperPoint[], i: number, reach: number): Rad {
  const turn = turnAt(points, i, reach);
  const sense = turn < 0 ? -1 : 1;
  const flank = (k: number): Rad =>
    k < reach || k >= points.length - reach ? 0 : Math.max(sense * turnAt(points, k, reach), 0);
  return sense * turn - (flank(i - 2 * reach) + flank(i + 2 * reach)) / 2;
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
