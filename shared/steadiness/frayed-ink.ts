import type { Cause, Interval, Stray } from '../documents/outlook.ts';
import { pathFoot, pathPart, pointAt } from '../geometry/path.ts';
import type { PieceEnds } from '../geometry/piece.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';
import { wilsonInterval } from './statistics.ts';

/** A stretch of a line at which robots left what the undisturbed one does. */
export interface FrayedStretch {
  /** The line in the layout, and ways along it. */
  readonly line: string;
  readonly from: Mm;
  readonly to: Mm;
  /** The stretch itself, to be drawn, and its middle. */
  readonly pieces: readonly PieceEnds[];
  readonly at: PaperPoint;
  /** How many robots, why, and what that says of all robots. */
  readonly left: number;
  readonly causes: readonly { readonly cause: Cause; readonly left: number }[];
  readonly interval: Interval;
}

/** Where ink frays: what many robots have shown, along the drawing. */
export interface FrayedInk {
  readonly same: number;
  readonly of: number;
  readonly interval: Interval;
  /** Most robots first. */
  readonly stretches: readonly FrayedStretch[];
}

/** Robots that leave within one stretch leave at one place: as long as a robot's bar is wide, and a little. */
const STRETCH: Mm = 20;

/** Gathers where robots left the drawing, by the nearest line; `of` robots were driven in all. */
export function frayedInk(layout: Layout, strays: readonly Stray[], of: number): FrayedInk {
  const places = new Map<string, { line: string; index: number; strays: Stray[] }>();
  for (const stray of strays) {
    const spot = nearestSpot(layout, stray.at);
    if (!spot) continue;
    const index = Math.floor(spot.way / STRETCH);
    const key = `${index} ${spot.line}`;
    const place = places.get(key) ?? { line: spot.line, index, strays: [] };
    place.strays.push(stray);
    places.set(key, place);
  }
  const stretches = [...places.values()]
    .map(({ line, index, strays: here }) => stretchOf(layout, line, index, here, of))
    .sort((a, b) => b.left - a.left || (a.line < b.line ? -1 : a.line > b.line ? 1 : a.from - b.from));
  const same = of - strays.length;
  return { same, of, interval: wilsonInterval(same, of), stretches };
}

function stretchOf(
  layout: Layout,
  id: string,
  index: number,
  strays: readonly Stray[],
  of: number,
): FrayedStretch {
  const { path } = layout.lines.find((line) => line.id === id)!;
  const from = index * STRETCH;
  const to = Math.min(from + STRETCH, path.length);
  const causes = [...new Set(strays.map((stray) => stray.cause))]
    .map((cause) => ({ cause, left: strays.filter((stray) => stray.cause === cause).length }))
    .sort((a, b) => b.left - a.left);
  const left = strays.length;
  return {
    line: id,
    from,
    to,
    pieces: pathPart(path, from, to),
    at: pointAt(path, (from + to) / 2),
    left,
    causes,
    interval: wilsonInterval(left, of),
  };
}

function nearestSpot(layout: Layout, at: PaperPoint): { line: string; way: Mm } | undefined {
  let best: { line: string; way: Mm; distance: Mm } | undefined;
  for (const { id, path } of layout.lines) {
    const foot = pathFoot(path, at);
    if (!best || foot.distance < best.distance) best = { line: id, way: foot.s, distance: foot.distance };
  }
  return best;
}
