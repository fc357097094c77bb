import { directionAt, pathFoot, pointAt } from '../geometry/path.ts';
import type { Mm, PaperPoint, Seconds } from '../geometry/units.ts';
import type { FastPart, Replay, ReplayAct } from './replay.ts';
import { polylinePath } from './svg.ts';

/** What a run leaves on its sheet from a time on: dashes beside what was driven fast, ticks where marks act. */
export interface RunMark {
  readonly t: Seconds;
  readonly kind: 'dash' | 'tick';
  /** An SVG path in mm, to be stroked. */
  readonly d: string;
}

/** From the edge of the line to the dashes beside it. */
const EDGE: Mm = 4.5;
const DASH = { length: 5, gap: 3.2 } as const;
/** Places along a dash that bends with its line. */
const EVERY: Mm = 1.3;
/** Inside a corner, what would come this much nearer to the line is left out. */
const NEARER: Mm = 0.4;

/** All marks of a run, in the order in which they come. */
export const runMarks = (replay: Replay): RunMark[] =>
  [...replay.fast.flatMap(dashesOf), ...replay.acts.map(tickOf)].sort((a, b) => a.t - b.t);

/** The dashes beside one part, each there when the axle has passed it. */
function dashesOf({ line, t, s }: FastPart): RunMark[] {
  const [low, high] = [Math.min(...s), Math.max(...s)];
  const forth = s.at(-1)! >= s[0]!;
  const off = line.width / 2 + EDGE;
  const count = Math.ceil((high - low) / (DASH.length + DASH.gap));
  return Array.from({ length: count }, (_, k): RunMark => {
    const near = k * (DASH.length + DASH.gap);
    const far = Math.min(near + DASH.length, high - low);
    const [from, to] = forth ? [low + near, low + far] : [high - far, high - near];
    const passed = s.findIndex((at) => (forth ? at >= to : at <= from));
    const sides = [-1, 1].map((side) => beside(line.path, from, to, side * off));
    const d = sides.map((points) => (points.length > 1 ? polylinePath(points) : '')).join('');
    return { t: t[passed] ?? t.at(-1)!, kind: 'dash', d };
  });
}

/** A run of points beside a line. */
function beside(path: FastPart['line']['path'], from: Mm, to: Mm, off: Mm): PaperPoint[] {
  const steps = Math.max(1, Math.ceil((to - from) / EVERY));
  const points = Array.from({ length: steps + 1 }, (_, i): PaperPoint => {
    const s = from + ((to - from) * i) / steps;
    const [at, along] = [pointAt(path, s), directionAt(path, s)];
    return { x: at.x - along.y * off, y: at.y + along.x * off };
  });
  return points.filter((p) => pathFoot(path, p).distance >= Math.abs(off) - NEARER);
}

/** Across the line on both sides of it, with a foot at each end. */
function tickOf({ t, at, along }: ReplayAct): RunMark {
  const place = (across: Mm, far: Mm): PaperPoint => ({
    x: at.x - along.y * across + along.x * far,
    y: at.y + along.x * across + along.y * far,
  });
  const d = [-1, 1].flatMap((side) => [
    polylinePath([place(3.4 * side, 0), place(6.5 * side, 0)]),
    polylinePath([place(6.5 * side, -1.6), place(6.5 * side, 1.6)]),
  ]);
  return { t, kind: 'tick', d: d.join('') };
}
