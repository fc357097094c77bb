import { norm } from '../exact-math.ts';
import { type Arc, type PieceEnds, type PieceShape, shapeOf } from '../piece.ts';
import { distanceToSegment } from '../polygon.ts';
import type { Mm, PaperPoint } from '../units.ts';

/** How far samples lie from pieces that should replace them. */
export interface Stray {
  readonly most: Mm;
  readonly squares: number;
}

/**
 * Distances of the points `low` to `high` (every `stride`th) from the nearest of a few pieces. Gives up
 * with an infinite answer as soon as one exceeds `limit`.
 */
export function strayOf(
  pieces: readonly PieceEnds[],
  points: readonly PaperPoint[],
  [low, high, stride]: readonly [number, number, number],
  limit: Mm,
): Stray {
  const gauges = pieces.map((piece) => gaugeOf(shapeOf(piece)));
  let most = 0;
  let squares = 0;
  for (let i = low; i <= high; i += stride) {
    const p = points[i]!;
    let d = Number.POSITIVE_INFINITY;
    for (const gauge of gauges) d = Math.min(d, gauge(p));
    if (d > limit) return { most: Number.POSITIVE_INFINITY, squares: Number.POSITIVE_INFINITY };
    most = Math.max(most, d);
    squares += d * d;
  }
  return { most, squares };
}

type Gauge = (p: PaperPoint) => Mm;

const gaugeOf = (piece: PieceShape): Gauge =>
  piece.kind === 'straight' ? (p) => distanceToSegment(p, piece.from, piece.to) : arcGauge(piece);

/** As `pieceFoot`, but without an arctangent: the two ends' directions tell which points face the arc. */
function arcGauge(arc: Arc): Gauge {
  const { center, from, to, radius } = arc;
  const sign = arc.sweep < 0 ? -1 : 1;
  const wide = arc.sweep * sign > Math.PI;
  const [fx, fy] = [from.x - center.x, from.y - center.y];
  const [tx, ty] = [to.x - center.x, to.y - center.y];
  return (p) => {
    const x = p.x - center.x;
    const y = p.y - center.y;
    const afterFrom = sign * (fx * y - fy * x) >= 0;
    const beforeTo = sign * (x * ty - y * tx) >= 0;
    if (wide ? afterFrom || beforeTo : afterFrom && beforeTo) return Math.abs(norm(x, y) - radius);
    return Math.min(norm(x - fx, y - fy), norm(x - tx, y - ty));
  };
}
