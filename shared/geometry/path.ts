import {
  type Direction,
  type Foot,
  type PieceEnds,
  type PieceShape,
  pieceAt,
  pieceDirection,
  pieceFoot,
  piecePart,
  shapeOf,
} from './piece.ts';
import { TOLERANCE } from './tolerances.ts';
import type { Mm, PaperPoint } from './units.ts';

/** A polyline of straights and arcs with its lengths worked out once. */
export interface Path {
  readonly pieces: readonly PieceShape[];
  /** Way along at which each piece begins. */
  readonly starts: readonly Mm[];
  readonly length: Mm;
}

export interface PathSource {
  readonly from: PaperPoint;
  readonly pieces: readonly { readonly to: PaperPoint; readonly bulge: number }[];
}

/** Builds the path of a drawn line. No piece may have length zero (documents refuse those). */
export function pathOf(line: PathSource): Path {
  let from = line.from;
  return pathFrom(
    line.pieces.map((piece) => {
      const ends = { from, to: piece.to, bulge: piece.bulge };
      from = piece.to;
      return ends;
    }),
  );
}

export function pathFrom(ends: readonly PieceEnds[]): Path {
  const pieces = ends.map(shapeOf);
  const starts: Mm[] = [];
  let length = 0;
  for (const piece of pieces) {
    starts.push(length);
    length += piece.length;
  }
  return { pieces, starts, length };
}

/** Index of the piece that holds way `s`; ends are clamped. */
export function pieceIndexAt(path: Path, s: Mm): number {
  let low = 0;
  let high = path.pieces.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (path.starts[middle]! <= s) low = middle;
    else high = middle - 1;
  }
  return low;
}

export function pointAt(path: Path, s: Mm): PaperPoint {
  const i = pieceIndexAt(path, s);
  return pieceAt(path.pieces[i]!, s - path.starts[i]!);
}

/** Direction of travel at way `s`; at a corner, that of the piece that begins there. */
export function directionAt(path: Path, s: Mm): Direction {
  const i = pieceIndexAt(path, s);
  return pieceDirection(path.pieces[i]!, s - path.starts[i]!);
}

export interface PathFoot extends Foot {
  readonly piece: number;
}

/** The nearest point of the path, with its way along the whole path. */
export function pathFoot(path: Path, p: PaperPoint): PathFoot {
  let best: PathFoot | undefined;
  for (let i = 0; i < path.pieces.length; i++) {
    const foot = pieceFoot(path.pieces[i]!, p);
    if (!best || foot.distance < best.distance) best = { ...foot, s: foot.s + path.starts[i]!, piece: i };
  }
  if (!best) throw new RangeError('a path has at least one piece');
  return best;
}

/** The pieces between two ways along the path, 0 ≤ s0 < s1 ≤ length; slivers under 0.001 mm are left out. */
export function pathPart(path: Path, s0: Mm, s1: Mm): PieceEnds[] {
  const parts: PieceEnds[] = [];
  for (let i = 0; i < path.pieces.length; i++) {
    const piece = path.pieces[i]!;
    const start = path.starts[i]!;
    const low = Math.max(0, s0 - start);
    const high = Math.min(piece.length, s1 - start);
    if (high - low > TOLERANCE.samePoint) parts.push(piecePart(piece, low, high));
  }
  return parts;
}
