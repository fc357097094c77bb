import { distance } from '../exact-math.ts';
import { distanceToSegment } from '../polygon.ts';
import type { PaperPoint } from '../units.ts';
import type { CleanStroke } from './clean.ts';
import { FITTING } from './settings.ts';

/** What a fit aims at. */
export interface Targets {
  /** Where its pieces may end, one for each cleaned sample. */
  readonly points: readonly PaperPoint[];
  /** Positions of corners in the points, and of the corners of the stroke that each stands for. */
  readonly corners: readonly { readonly at: number; readonly of: readonly number[] }[];
}

/** Corners where they were drawn. */
export const asDrawn = ({ points, corners }: CleanStroke): Targets => ({
  points,
  corners: corners.map((at) => ({ at, of: [at] })),
});

/**
 * Points for the pieces of a fit to end at. A hand rounds its corners and samples miss their tips; where
 * the stroke's two sides, drawn on, meet close to such a corner, the points there move onto these sides.
 * Two corners close together become one where that holds for both.
 */
export function sharpened({ points, step, corners }: CleanStroke): Targets {
  const moved = [...points];
  const kept: { at: number; of: number[] }[] = [];
  const steps = (way: number): number => Math.max(Math.round(way / step), 1);
  const stops = [0, ...corners, points.length - 1];
  for (let k = 1; k < stops.length - 1; k++) {
    const low = stops[k]!;
    const next = stops[k + 1]!;
    const pair = k + 1 < stops.length - 1 && next - low <= steps(FITTING.pairApart);
    const before = stops[k - 1]!;
    if (pair && moveTip(moved, points, [before, low, next, stops[k + 2]!], steps)) {
      kept.push({ at: (low + next) >> 1, of: [low, next] });
      k++;
      continue;
    }
    moveTip(moved, points, [before, low, low, next], steps);
    kept.push({ at: low, of: [low] });
  }
  return { points: moved, corners: kept };
}

type Reach = readonly [before: number, low: number, high: number, after: number];

function moveTip(
  moved: PaperPoint[],
  points: readonly PaperPoint[],
  [before, low, high, after]: Reach,
  steps: (way: number) => number,
): boolean {
  const skip = steps(FITTING.tipSkip);
  const span = steps(FITTING.tipSpan);
  const near = low - skip;
  const past = high + skip;
  const first = Math.max(near - span, before);
  const last = Math.min(past + span, after);
  if (near - first < span / 2 || last - past < span / 2) return false;
  const [a, b] = [points[near]!, points[past]!];
  const tip = meetingOf(points[first]!, a, points[last]!, b);
  if (!tip) return false;
  let beyond = Number.POSITIVE_INFINITY;
  for (let i = near; i <= past; i++) {
    const p = points[i]!;
    if (Math.min(distanceToSegment(p, a, tip), distanceToSegment(p, tip, b)) > FITTING.tipStray) return false;
    beyond = Math.min(beyond, distance(p, tip));
  }
  if (beyond > FITTING.tipBeyond) return false;
  const middle = (low + high) >> 1;
  for (let i = near; i <= past; i++) {
    const t = i <= middle ? (i - near) / (middle - near) : (past - i) / (past - middle);
    const side = i <= middle ? a : b;
    moved[i] = { x: side.x + t * (tip.x - side.x), y: side.y + t * (tip.y - side.y) };
  }
  return true;
}

/** Where the straight from `a0` on through `a` meets the one from `b0` on through `b`, beyond both. */
function meetingOf(a0: PaperPoint, a: PaperPoint, b0: PaperPoint, b: PaperPoint): PaperPoint | undefined {
  const [ax, ay] = [a.x - a0.x, a.y - a0.y];
  const [bx, by] = [b.x - b0.x, b.y - b0.y];
  const cross = ax * by - ay * bx;
  if (Math.abs(cross) < FITTING.tipSine * distance(a0, a) * distance(b0, b)) return undefined;
  const t = ((b.x - a.x) * by - (b.y - a.y) * bx) / cross;
  const u = ((b.x - a.x) * ay - (b.y - a.y) * ax) / cross;
  return t >= 0 && u >= 0 ? { x: a.x + t * ax, y: a.y + t * ay } : undefined;
}
