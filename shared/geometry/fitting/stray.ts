import { norm } from '../exact-math.ts';
import type { PieceEnds } from '../piece.ts';
import { distanceToSegment } from '../polygon.ts';
import { TOLERANCE } from '../tolerances.ts';
import type { Mm, PaperPoint } from '../units.ts';

/** How far samples lie from pieces that should replace them. */
export interface Stray {
  readonly most: Mm;
  readonly squares: number;
}

const TOO_FAR: Stray = { most: Number.POSITIVE_INFINITY, squares: Number.POSITIVE_INFINITY };

/**
 * Distances of the points `low` to `high` (every `stride`th) from the nearest of a few pieces. Gives up
 * with an infinite answer as soon as one exceeds `limit`; the middle is asked first, it tells most.
 */
export function strayOf(
  pieces: readonly PieceEnds[],
  points: readonly PaperPoint[],
  [low, high, stride]: readonly [number, number, number],
  limit: Mm,
): Stray {
  if (low > high) return { most: 0, squares: 0 };
  const gauges = pieces.map(gaugeOf);
  if (leastOf(gauges, points[(low + high) >> 1]!) > limit) return TOO_FAR;
  let most = 0;
  let squares = 0;
  for (let i = low; i <= high; i += stride) {
    const d = leastOf(gauges, points[i]!);
    if (d > limit) return TOO_FAR;
    most = Math.max(most, d);
    squares += d * d;
  }
  return { most, squares };
}

type Gauge = (p: PaperPoint) => Mm;

function leastOf(gauges: readonly Gauge[], p: PaperPoint): Mm {
  let least = Number.POSITIVE_INFINITY;
  for (const gauge of gauges) least = Math.min(least, gauge(p));
  return least;
}

const gaugeOf = (piece: PieceEnds): Gauge =>
  Math.abs(piece.bulge) < TOLERANCE.straightBulge
    ? (p) => distanceToSegment(p, piece.from, piece.to)
    : arcGauge(piece);

/** As `pieceFoot`, but without an arctangent: the two ends' directions tell which points face the arc. */
function arcGauge({ from, to, bulge }: PieceEnds): Gauge {
  const [ex, ey] = [to.x - from.x, to.y - from.y];
  const offset = (1 - bulge * bulge) / (4 * bulge);
  const [cx, cy] = [(from.x + to.x) / 2 - ey * offset, (from.y + to.y) / 2 + ex * offset];
  const [fx, fy] = [from.x - cx, from.y - cy];
  const [tx, ty] = [to.x - cx, to.y - cy];
  const radius = norm(fx, fy);
  const sign = bulge < 0 ? -1 : 1;
  const wide = bulge * sign > 1;
  return (p) => {
    const x = p.x - cx;
    const y = p.y - cy;
    const afterFrom = sign * (fx * y - fy * x) >= 0;
    const beforeTo = sign * (x * ty - y * tx) >= 0;
    if (wide ? afterFrom || beforeTo : afterFrom && beforeTo) return Math.abs(norm(x, y) - radius);
    return Math.min(norm(x - fx, y - fy), norm(x - tx, y - ty));
  };
}
