import { distance, norm } from './exact-math.ts';
import type { Direction } from './piece.ts';
import { TOLERANCE } from './tolerances.ts';
import type { Mm, PaperPoint } from './units.ts';

/** Corners in order, either way round; the last joins the first. At least three. */
export type Polygon = readonly PaperPoint[];

export interface SegmentCrossing {
  /** Share of the first segment, 0 to 1, at the crossing. */
  readonly t: number;
  /** Share of the second. */
  readonly u: number;
  /** 1 where the first passes from the left of the second to its right, else −1. */
  readonly side: 1 | -1;
}

/**
 * Where the move a → b passes the segment c → d. A chain of moves that passes once is counted once,
 * also where one of its points lies on the segment; moves along the segment don't pass it.
 */
export function segmentCrossing(
  a: PaperPoint,
  b: PaperPoint,
  c: PaperPoint,
  d: PaperPoint,
): SegmentCrossing | undefined {
  const before = sideOf(c, d, a);
  const after = sideOf(c, d, b);
  if (before >= 0 === after >= 0) return undefined;
  const t = before / (before - after);
  const x = a.x + t * (b.x - a.x) - c.x;
  const y = a.y + t * (b.y - a.y) - c.y;
  const ex = d.x - c.x;
  const ey = d.y - c.y;
  const u = (x * ex + y * ey) / (ex * ex + ey * ey);
  return u >= 0 && u <= 1 ? { t, u, side: after >= 0 ? 1 : -1 } : undefined;
}

/** Positive to the right of c → d, as everywhere on the sheet. */
const sideOf = (c: PaperPoint, d: PaperPoint, p: PaperPoint): number =>
  (d.x - c.x) * (p.y - c.y) - (d.y - c.y) * (p.x - c.x);

export function distanceToSegment(p: PaperPoint, a: PaperPoint, b: PaperPoint): Mm {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / square;
  const near = Math.min(Math.max(t, 0), 1);
  return norm(p.x - a.x - near * dx, p.y - a.y - near * dy);
}

/** Whether `p` is inside by the even-odd rule; of points on the boundary some count as inside. */
export function isInside(polygon: Polygon, p: PaperPoint): boolean {
  let inside = false;
  eachEdge(polygon, (a, b) => {
    if (a.y > p.y === b.y > p.y) return;
    if (p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  });
  return inside;
}

/** Distance from `p` to the boundary, negative inside. */
export function signedDistance(polygon: Polygon, p: PaperPoint): Mm {
  let least = Number.POSITIVE_INFINITY;
  eachEdge(polygon, (a, b) => {
    least = Math.min(least, distanceToSegment(p, a, b));
  });
  return isInside(polygon, p) ? -least : least;
}

/**
 * The least signed distance of any point of the segment a → b: how far it stays away, or, negative,
 * how deep it gets, found to `TOLERANCE.depth`.
 */
export function segmentSignedDistance(polygon: Polygon, a: PaperPoint, b: PaperPoint): Mm {
  let least = Number.POSITIVE_INFINITY;
  eachEdge(polygon, (c, d) => {
    least = Math.min(least, segmentsApart(a, b, c, d));
  });
  return least === 0 || isInside(polygon, a) ? deepest(polygon, a, b) : least;
}

/** The least distance of two segments, 0 where they meet. */
function segmentsApart(a: PaperPoint, b: PaperPoint, c: PaperPoint, d: PaperPoint): Mm {
  const parted = sideOf(c, d, a) * sideOf(c, d, b) > 0 || sideOf(a, b, c) * sideOf(a, b, d) > 0;
  const ends = Math.min(
    distanceToSegment(a, c, d),
    distanceToSegment(b, c, d),
    distanceToSegment(c, a, b),
    distanceToSegment(d, a, b),
  );
  const collinear = sideOf(c, d, a) === 0 && sideOf(c, d, b) === 0;
  return parted || collinear ? ends : 0;
}

function deepest(polygon: Polygon, a: PaperPoint, b: PaperPoint): Mm {
  const length = distance(a, b);
  const at = (t: number): { t: number; d: Mm } => ({
    t,
    d: signedDistance(polygon, { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) }),
  });
  const [first, last] = [at(0), at(1)];
  let least = Math.min(first.d, last.d);
  // A signed distance changes no faster than the place: halving leaves out what can't be the least.
  const open = [{ from: first, to: last }];
  for (let span = open.pop(); span; span = open.pop()) {
    const { from, to } = span;
    const bound = (from.d + to.d - (to.t - from.t) * length) / 2;
    if (bound >= least - TOLERANCE.depth) continue;
    const middle = at((from.t + to.t) / 2);
    least = Math.min(least, middle.d);
    open.push({ from, to: middle }, { from: middle, to });
  }
  return least;
}

/** The least signed distance of outline `q` to `polygon`: apart, or, negative, how deep it reaches in. */
export function polygonSignedDistance(polygon: Polygon, q: Polygon): Mm {
  let least = Number.POSITIVE_INFINITY;
  eachEdge(q, (a, b) => {
    least = Math.min(least, segmentSignedDistance(polygon, a, b));
  });
  // An area that lies wholly inside the outline meets none of its edges.
  for (const corner of polygon) if (isInside(q, corner)) least = Math.min(least, signedDistance(q, corner));
  return least;
}

function eachEdge(polygon: Polygon, visit: (a: PaperPoint, b: PaperPoint) => void): void {
  let a = polygon.at(-1);
  for (const b of polygon) {
    if (a) visit(a, b);
    a = b;
  }
}

/** A rectangle that reaches `ahead` of and `behind` `origin` along `heading`, and `half` to each side. */
export function rectangleAt(
  origin: PaperPoint,
  heading: Direction,
  size: { readonly ahead: Mm; readonly behind: Mm; readonly half: Mm },
): Polygon {
  const at = (forward: Mm, right: Mm): PaperPoint => ({
    x: origin.x + forward * heading.x - right * heading.y,
    y: origin.y + forward * heading.y + right * heading.x,
  });
  const { ahead, behind, half } = size;
  return [at(ahead, -half), at(ahead, half), at(-behind, half), at(-behind, -half)];
}
