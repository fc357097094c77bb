import { norm } from './exact-math.ts';
import { type Arc, angleAlong, type Direction, type PieceShape, pieceAt, pieceFoot } from './piece.ts';
import { TOLERANCE } from './tolerances.ts';
import type { Mm, PaperPoint, PerMm } from './units.ts';

/** A place common to two pieces (or paths), with the way along each. */
export interface Meeting {
  readonly a: Mm;
  readonly b: Mm;
  readonly point: PaperPoint;
}

/**
 * `cross`: one passes to the other's other side. `touch`: they come together and part on the same side.
 * `end`: an end of one lies on the other. `shared`: they lie on one another from this place to `until`.
 */
export type Intersection =
  | (Meeting & { readonly kind: 'cross' | 'touch' | 'end' })
  | (Meeting & { readonly kind: 'shared'; readonly until: Meeting });

interface Candidate extends Meeting {
  readonly of: 'root' | 'double' | 'end';
}

/** Straight or circle in one form: k/2·|p − from|² − n·(p − from) = 0, which stays exact as k nears 0. */
interface Curve {
  readonly from: PaperPoint;
  readonly n: Direction;
  readonly k: PerMm;
}

/**
 * All places where two pieces meet, in order of the way along `a`. What lies closer than
 * `TOLERANCE.samePoint` is together: a near miss is a touch, a dip not deeper than that is one touch,
 * and collinear or co-circular pieces give one `shared` part.
 */
export function pieceIntersections(a: PieceShape, b: PieceShape): Intersection[] {
  const found = [...rootCandidates(a, b), ...endCandidates(a, b)].sort((p, q) => p.a - q.a || p.b - q.b);
  const groups: Candidate[][] = [];
  for (const candidate of found) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (group && last && togetherBetween(a, b, last.a, candidate.a)) group.push(candidate);
    else groups.push([candidate]);
  }
  return groups.map((group) => intersectionOf(a, b, group));
}

function togetherBetween(a: PieceShape, b: PieceShape, s0: Mm, s1: Mm): boolean {
  return pieceFoot(b, pieceAt(a, (s0 + s1) / 2)).distance <= TOLERANCE.samePoint;
}

function intersectionOf(a: PieceShape, b: PieceShape, group: readonly Candidate[]): Intersection {
  const ends = group.filter((candidate) => candidate.of === 'end');
  const first = group[0]!;
  const last = group.at(-1)!;
  if (first.of === 'end' && last.of === 'end' && last.a - first.a > TOLERANCE.samePoint) {
    return { ...meetingOf(first), kind: 'shared', until: meetingOf(last) };
  }
  if (ends[0]) return { ...meetingOf(ends[0]), kind: 'end' };
  if (group.length === 1) return { ...meetingOf(first), kind: first.of === 'double' ? 'touch' : 'cross' };
  const middle = (first.a + last.a) / 2;
  const point = pieceAt(a, middle);
  return { a: middle, b: pieceFoot(b, point).s, point, kind: 'touch' };
}

const meetingOf = ({ a, b, point }: Meeting): Meeting => ({ a, b, point });

function endCandidates(a: PieceShape, b: PieceShape): Candidate[] {
  const found: Candidate[] = [];
  for (const [s, point] of endsOf(a)) {
    const foot = pieceFoot(b, point);
    if (foot.distance <= TOLERANCE.samePoint) found.push({ a: s, b: foot.s, point, of: 'end' });
  }
  for (const [s, point] of endsOf(b)) {
    const foot = pieceFoot(a, point);
    if (foot.distance <= TOLERANCE.samePoint) found.push({ a: foot.s, b: s, point, of: 'end' });
  }
  return found;
}

const endsOf = (piece: PieceShape): [Mm, PaperPoint][] => [
  [0, piece.from],
  [piece.length, piece.to],
];

function rootCandidates(a: PieceShape, b: PieceShape): Candidate[] {
  const found: Candidate[] = [];
  for (const { point, double } of commonPoints(a, b)) {
    const onA = wayOn(a, point);
    const onB = wayOn(b, point);
    if (onA === undefined || onB === undefined) continue;
    found.push({ a: onA, b: onB, point: pieceAt(a, onA), of: double ? 'double' : 'root' });
  }
  return found;
}

/** Way along to a point known to lie on the piece's straight or circle; undefined beyond its ends. */
function wayOn(piece: PieceShape, p: PaperPoint): Mm | undefined {
  const s =
    piece.kind === 'straight'
      ? (p.x - piece.from.x) * piece.along.x + (p.y - piece.from.y) * piece.along.y
      : wayRound(piece, p);
  if (s < -TOLERANCE.samePoint || s > piece.length + TOLERANCE.samePoint) return undefined;
  return Math.min(Math.max(s, 0), piece.length);
}

function wayRound(arc: Arc, p: PaperPoint): Mm {
  const turned = angleAlong(arc, p);
  const size = arc.length / arc.radius;
  // A direction in the open part of the circle belongs to the nearer end.
  return (turned - size > 2 * Math.PI - turned ? turned - 2 * Math.PI : turned) * arc.radius;
}

interface CommonPoint {
  readonly point: PaperPoint;
  readonly double: boolean;
}

function commonPoints(a: PieceShape, b: PieceShape): CommonPoint[] {
  if (a.kind === 'straight') return onStraight(a.from, a.along, b);
  if (b.kind === 'straight') return onStraight(b.from, b.along, a);
  return circleCircle(a, b);
}

function curveOf(piece: PieceShape): Curve {
  const { from, to } = piece;
  const chord = norm(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / chord, y: (to.y - from.y) / chord };
  if (piece.kind === 'straight') return { from, n: { x: -along.y, y: along.x }, k: 0 };
  // The tangent at `from` lies half the sweep before the chord; of tan(sweep/4) that is rational.
  const b = piece.bulge;
  const c = (1 - b * b) / (1 + b * b);
  const s = (2 * b) / (1 + b * b);
  const t = { x: along.x * c + along.y * s, y: along.y * c - along.x * s };
  return { from, n: { x: -t.y, y: t.x }, k: (4 * b) / (chord * (1 + b * b)) };
}

/** Points of the endless straight through `q` along `d` on the piece's straight or circle. */
function onStraight(q: PaperPoint, d: Direction, piece: PieceShape): CommonPoint[] {
  const { from, n, k } = curveOf(piece);
  const qx = q.x - from.x;
  const qy = q.y - from.y;
  const half = k * (d.x * qx + d.y * qy) - (n.x * d.x + n.y * d.y);
  const c = (k / 2) * (qx * qx + qy * qy) - (n.x * qx + n.y * qy);
  const square = half * half - 2 * k * c;
  const at = (t: number, double: boolean): CommonPoint => ({
    point: { x: q.x + t * d.x, y: q.y + t * d.y },
    double,
  });
  if (square <= 0) {
    const gap = k === 0 ? Number.POSITIVE_INFINITY : Math.abs(square / (2 * k));
    return gap <= TOLERANCE.samePoint ? [at(-half / k, true)] : [];
  }
  // The larger root first, the other through their product: nothing cancels. A straight has only one.
  const sum = -(half + (half < 0 ? -1 : 1) * Math.sqrt(square));
  return k === 0 ? [at((2 * c) / sum, false)] : [at(sum / k, false), at((2 * c) / sum, false)];
}

function circleCircle(a: Arc, b: Arc): CommonPoint[] {
  const one = curveOf(a);
  const two = curveOf(b);
  const gx = two.from.x - one.from.x;
  const gy = two.from.y - one.from.y;
  // Subtracting the two equations leaves the straight through the common points, N·p = C.
  const nx = one.k * two.n.x - two.k * one.n.x + one.k * two.k * gx;
  const ny = one.k * two.n.y - two.k * one.n.y + one.k * two.k * gy;
  const size = norm(nx, ny);
  const apart = size / Math.abs(one.k * two.k);
  if (apart <= TOLERANCE.samePoint) return [];
  const c = one.k * ((two.k * (gx * gx + gy * gy)) / 2 + two.n.x * gx + two.n.y * gy);
  const q = { x: one.from.x + (nx * c) / (size * size), y: one.from.y + (ny * c) / (size * size) };
  const crossing = onStraight(q, { x: -ny / size, y: nx / size }, a).filter((found) => !found.double);
  return crossing.length > 0 ? crossing : touchOfCircles(a, b);
}

/** Where two circles that don't cross come within the tolerance: on the straight through their centres. */
function touchOfCircles(a: Arc, b: Arc): CommonPoint[] {
  const dx = b.center.x - a.center.x;
  const dy = b.center.y - a.center.y;
  const apart = norm(dx, dy);
  const outside = Math.abs(apart - a.radius - b.radius);
  const inside = Math.abs(apart - Math.abs(a.radius - b.radius));
  if (Math.min(outside, inside) > TOLERANCE.samePoint) return [];
  const towards = outside <= inside || a.radius > b.radius ? 1 : -1;
  const reach = (towards * a.radius) / apart;
  return [{ point: { x: a.center.x + dx * reach, y: a.center.y + dy * reach }, double: true }];
}
