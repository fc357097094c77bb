import { distance } from '../exact-math.ts';
import type { Mm, PaperPoint } from '../units.ts';
import { cornersOf } from './corners.ts';
import { evenly, lengthOf, smoothed } from './sampling.ts';
import { FITTING } from './settings.ts';

/** A stroke made ready for fitting: even steps, smoothed between its corners. */
export interface CleanStroke {
  /** At even steps of `step` along the stroke. */
  readonly points: readonly PaperPoint[];
  readonly step: Mm;
  /** Positions in `points` where the stroke has a corner; the two ends are not among them. */
  readonly corners: readonly number[];
}

/**
 * Takes hooks and repeats from a raw stroke, spaces it evenly, finds its corners, and only then smooths
 * it, each part between corners by itself, so that corners stay sharp. Null where the stroke has no
 * length to speak of (a tap). Points that are not numbers are left out.
 */
export function cleanStroke(samples: readonly PaperPoint[]): CleanStroke | null {
  const kept = withoutHooks(withoutRepeats(samples));
  const length = lengthOf(kept);
  if (length < FITTING.shortest) return null;
  const steps = Math.min(Math.max(Math.round(length / FITTING.step), 4), FITTING.mostSteps);
  const step = length / steps;
  const even = evenly(kept, step, steps);
  const corners = cornersOf(even, step);
  return { points: smoothed(even, step, corners, FITTING.window), step, corners };
}

export function withoutRepeats(samples: readonly PaperPoint[]): PaperPoint[] {
  const kept: PaperPoint[] = [];
  for (const { x, y } of samples) {
    if (!Number.isFinite(x) || !Number.isFinite(y)) continue;
    const last = kept.at(-1);
    if (!last || distance(last, { x, y }) >= FITTING.repeat) kept.push({ x, y });
  }
  return kept;
}

/** A hook is a short end that turns sharply away from where the stroke goes: a pen set down or lifted. */
export function withoutHooks(points: readonly PaperPoint[]): PaperPoint[] {
  const headless = points.slice(hookEnd(points));
  headless.reverse();
  const clean = headless.slice(hookEnd(headless));
  return clean.reverse();
}

function hookEnd(points: readonly PaperPoint[]): number {
  let end = 0;
  let along = 0;
  if (lengthOf(points) < 4 * FITTING.hook) return 0;
  for (let i = 1; i < points.length - 1; i++) {
    along += distance(points[i - 1]!, points[i]!);
    if (along >= FITTING.hook) break;
    const ahead = pointBeyond(points, i, FITTING.hook);
    const p = points[i]!;
    const first = points[end]!;
    const dot = (p.x - first.x) * (ahead.x - p.x) + (p.y - first.y) * (ahead.y - p.y);
    if (dot < FITTING.hookCosine * distance(first, p) * distance(p, ahead)) end = i;
  }
  return end;
}

function pointBeyond(points: readonly PaperPoint[], from: number, way: Mm): PaperPoint {
  let along = 0;
  for (let i = from + 1; i < points.length; i++) {
    along += distance(points[i - 1]!, points[i]!);
    if (along >= way) return points[i]!;
  }
  return points.at(-1)!;
}
