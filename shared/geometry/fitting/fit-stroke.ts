import { distance } from '../exact-math.ts';
import type { PathSource } from '../path.ts';
import type { PieceEnds } from '../piece.ts';
import { TOLERANCE } from '../tolerances.ts';
import type { Mm, PaperPoint } from '../units.ts';
import { type CleanStroke, cleanStroke } from './clean.ts';
import { endDirection, startDirection } from './joins.ts';
import { fitSection } from './section.ts';
import { FITTING } from './settings.ts';
import { simplified } from './simplify.ts';
import { strayOf } from './stray.ts';

export interface FitOptions {
  /** How far the line may lie from the cleaned samples; `TOLERANCE.fit` unless told. */
  readonly tolerance?: Mm;
}

/**
 * A line of few straights and arcs for a raw stroke: within the tolerance of its cleaned samples,
 * tangent-continuous except at its corners, no arc tighter than 15 mm unless the stroke is. Coordinates
 * in steps of 0.01 mm, bulges of 10⁻⁶, at most 200 pieces (an endless scribble is fitted more coarsely).
 * Null where the stroke is a tap.
 */
export function fitStroke(samples: readonly PaperPoint[], options: FitOptions = {}): PathSource | null {
  const stroke = cleanStroke(samples);
  return stroke && fitCleaned(stroke, options.tolerance ?? TOLERANCE.fit);
}

/** As `fitStroke`, for a stroke that was cleaned before. */
export function fitCleaned(stroke: CleanStroke, tolerance: Mm = TOLERANCE.fit): PathSource | null {
  // The file form's rounding may move a line by this much.
  const allowed = tolerance - 0.01;
  let corners = stroke.corners;
  let pieces = fitBetween(stroke, corners, allowed);
  const real = realCorners(corners, pieces);
  if (real.length < corners.length) {
    corners = real;
    pieces = fitBetween(stroke, corners, allowed);
  }
  const flat = pieces.flat();
  if (flat.length > FITTING.mostPieces) return fitCleaned(stroke, tolerance * 1.5);
  return quantised(flat);
}

/** The pieces of each part between corners. */
function fitBetween({ points, step }: CleanStroke, corners: readonly number[], tolerance: Mm): PieceEnds[][] {
  const stops = [0, ...corners, points.length - 1];
  return stops.slice(1).map((high, k) => {
    const part = points.slice(stops[k]!, high + 1);
    const fitted = fitSection({ points: part, step }, tolerance);
    if (fitted && strayOf(fitted, part, [0, part.length - 1, 1], tolerance).most <= tolerance) return fitted;
    return chords(part, tolerance);
  });
}

/** The last resort: straights with corners, as Ramer, Douglas and Peucker's method keeps them. */
function chords(points: readonly PaperPoint[], tolerance: Mm): PieceEnds[] {
  const kept = simplified(points, tolerance);
  return kept.slice(1).map((i, k) => ({ from: points[kept[k]!]!, to: points[i]!, bulge: 0 }));
}

/** Those corners at which the fitted parts really turn. */
function realCorners(corners: readonly number[], parts: readonly PieceEnds[][]): number[] {
  return corners.filter((_, k) => {
    const before = endDirection(parts[k]!.at(-1)!);
    const after = startDirection(parts[k + 1]![0]!);
    return before.x * after.x + before.y * after.y < FITTING.cornerCosine;
  });
}

const hundredth = (value: number): number => Math.round(value * 100) / 100;
const millionth = (value: number): number => Math.round(value * 1e6) / 1e6;

function quantised(pieces: readonly PieceEnds[]): PathSource | null {
  const from = onGrid(pieces[0]!.from);
  const rounded: { to: PaperPoint; bulge: number }[] = [];
  let last = from;
  for (const piece of pieces) {
    const to = onGrid(piece.to);
    if (distance(last, to) === 0) continue;
    rounded.push({ to, bulge: millionth(piece.bulge) });
    last = to;
  }
  return rounded.length > 0 ? { from, pieces: rounded } : null;
}

const onGrid = ({ x, y }: PaperPoint): PaperPoint => ({ x: hundredth(x), y: hundredth(y) });
