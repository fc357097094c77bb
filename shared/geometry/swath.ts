import { type Box, boxAround, boxOf } from './box.ts';
import { type Path, pathPart, pointAt } from './path.ts';
import { type PieceShape, shapeOf } from './piece.ts';
import type { Mm } from './units.ts';

/**
 * The least upright box around a stretch of a path that is drawn `half` to either side, its ends square.
 * What would lie past the ends of the path is left out; of nothing the box is a point.
 */
export function swathBox(path: Path, from: Mm, to: Mm, half: Mm): Box {
  const parts = pathPart(path, from, to);
  if (parts.length === 0) return boxOf([pointAt(path, from)]);
  return boxAround(parts.map((part) => boxBeside(shapeOf(part), half)));
}

function boxBeside(piece: PieceShape, half: Mm): Box {
  const { minX, maxX, minY, maxY } = piece.box;
  const [left, right] = reachOf(piece, 'x', minX, maxX, half);
  const [top, bottom] = reachOf(piece, 'y', minY, maxY, half);
  return { minX: left, maxX: right, minY: top, maxY: bottom };
}

/**
 * How far it reaches along an axis. Beside an arc that is the way from its centre and the share of the width
 * that lies along the axis, which grow together: one of the two ends of the middle line's own reach decides.
 */
function reachOf(piece: PieceShape, axis: 'x' | 'y', least: Mm, most: Mm, half: Mm): [Mm, Mm] {
  const across = axis === 'x' ? 'y' : 'x';
  const aside = (at: Mm): Mm =>
    half * Math.abs(piece.kind === 'arc' ? (at - piece.center[axis]) / piece.radius : piece.along[across]);
  const [low, high] = [aside(least), aside(most)];
  return [Math.min(least - low, most - high), Math.max(least + low, most + high)];
}
