import { type Box, boxOf } from './box.ts';
import { atan, atan2, cos, norm, sin } from './exact-math.ts';
import { TOLERANCE } from './tolerances.ts';
import type { Mm, PaperPoint, PerMm, Rad } from './units.ts';

/**
 * A straight or a circular arc. `bulge` is tan(sweep/4) (the open DXF convention), positive where the
 * angle grows from +x towards +y: on the sheet, where the piece bends to the right of travel.
 */
export interface PieceEnds {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly bulge: number;
}

/** A unit vector. */
export interface Direction {
  readonly x: number;
  readonly y: number;
}

interface Common extends PieceEnds {
  readonly length: Mm;
  /** Signed: 0 on a straight. */
  readonly curvature: PerMm;
  /** The least upright box around it; on an arc it holds the extremes, not only the ends. */
  readonly box: Box;
}

export interface Straight extends Common {
  readonly kind: 'straight';
  readonly along: Direction;
}

export interface Arc extends Common {
  readonly kind: 'arc';
  readonly center: PaperPoint;
  readonly radius: Mm;
  /** Angle of `from` seen from the centre. */
  readonly start: Rad;
  /** Signed angle from `from` to `to`. */
  readonly sweep: Rad;
}

export type PieceShape = Straight | Arc;

/** Lengths, centre and directions of a piece. The two ends must differ. */
export function shapeOf(ends: PieceEnds): PieceShape {
  const dx = ends.to.x - ends.from.x;
  const dy = ends.to.y - ends.from.y;
  const chord = norm(dx, dy);
  if (chord === 0) throw new RangeError('a piece must have two different ends');
  const along = { x: dx / chord, y: dy / chord };
  const b = ends.bulge;
  if (b < TOLERANCE.straightBulge && b > -TOLERANCE.straightBulge) {
    return {
      kind: 'straight',
      from: ends.from,
      to: ends.to,
      bulge: b,
      length: chord,
      curvature: 0,
      box: boxOf([ends.from, ends.to]),
      along,
    };
  }
  const offset = (chord * (1 - b * b)) / (4 * b);
  const center = {
    x: (ends.from.x + ends.to.x) / 2 - along.y * offset,
    y: (ends.from.y + ends.to.y) / 2 + along.x * offset,
  };
  const radius = (chord * (1 + b * b)) / (4 * (b < 0 ? -b : b));
  const sweep = 4 * atan(b);
  return {
    kind: 'arc',
    from: ends.from,
    to: ends.to,
    bulge: b,
    length: radius * (sweep < 0 ? -sweep : sweep),
    curvature: (sweep < 0 ? -1 : 1) / radius,
    box: arcBox(ends, along, center, radius),
    center,
    radius,
    start: atan2(ends.from.y - center.y, ends.from.x - center.x),
    sweep,
  };
}

/** A direction belongs to an arc where it is within half the sweep of the arc's middle: of the bulge that is rational. */
function arcBox({ from, to, bulge }: PieceEnds, along: Direction, center: PaperPoint, radius: Mm): Box {
  const side = bulge < 0 ? -1 : 1;
  const middle = { x: side * along.y, y: -side * along.x };
  const least = (1 - bulge * bulge) / (1 + bulge * bulge);
  return {
    minX: -middle.x >= least ? center.x - radius : Math.min(from.x, to.x),
    minY: -middle.y >= least ? center.y - radius : Math.min(from.y, to.y),
    maxX: middle.x >= least ? center.x + radius : Math.max(from.x, to.x),
    maxY: middle.y >= least ? center.y + radius : Math.max(from.y, to.y),
  };
}

/** The point at way `s` along the piece; `s` outside the piece goes on straight or round. */
export function pieceAt(piece: PieceShape, s: Mm): PaperPoint {
  if (piece.kind === 'straight') {
    return { x: piece.from.x + piece.along.x * s, y: piece.from.y + piece.along.y * s };
  }
  const angle = piece.start + s * piece.curvature;
  return {
    x: piece.center.x + piece.radius * cos(angle),
    y: piece.center.y + piece.radius * sin(angle),
  };
}

/** Direction of travel at way `s`. */
export function pieceDirection(piece: PieceShape, s: Mm): Direction {
  if (piece.kind === 'straight') return piece.along;
  const angle = piece.start + s * piece.curvature;
  const sign = piece.sweep < 0 ? -1 : 1;
  return { x: -sign * sin(angle), y: sign * cos(angle) };
}

export interface Foot {
  /** Way along to the nearest point. */
  readonly s: Mm;
  readonly point: PaperPoint;
  readonly distance: Mm;
}

/** The nearest point of the piece. */
export function pieceFoot(piece: PieceShape, p: PaperPoint): Foot {
  const s = piece.kind === 'straight' ? straightFoot(piece, p) : arcFoot(piece, p);
  const point = s <= 0 ? piece.from : s >= piece.length ? piece.to : pieceAt(piece, s);
  return { s, point, distance: norm(p.x - point.x, p.y - point.y) };
}

function straightFoot(piece: Straight, p: PaperPoint): Mm {
  const s = (p.x - piece.from.x) * piece.along.x + (p.y - piece.from.y) * piece.along.y;
  return s < 0 ? 0 : Math.min(s, piece.length);
}

function arcFoot(piece: Arc, p: PaperPoint): Mm {
  const turned = angleAlong(piece, p);
  const size = piece.sweep < 0 ? -piece.sweep : piece.sweep;
  if (turned <= size) return turned * piece.radius;
  const toFrom = norm(p.x - piece.from.x, p.y - piece.from.y);
  const toTo = norm(p.x - piece.to.x, p.y - piece.to.y);
  return toFrom <= toTo ? 0 : piece.length;
}

/** Angle in [0, 2π) from the arc's start, in the arc's own sense, to the direction of `p`. */
export function angleAlong(piece: Arc, p: PaperPoint): Rad {
  const angle = atan2(p.y - piece.center.y, p.x - piece.center.x);
  const turned = piece.sweep < 0 ? piece.start - angle : angle - piece.start;
  const full = 2 * Math.PI;
  return turned - full * Math.floor(turned / full);
}

/** The part of a piece between two ways, as a piece. Requires 0 ≤ s0 < s1 ≤ length. */
export function piecePart(piece: PieceShape, s0: Mm, s1: Mm): PieceEnds {
  const from = s0 <= 0 ? piece.from : pieceAt(piece, s0);
  const to = s1 >= piece.length ? piece.to : pieceAt(piece, s1);
  if (piece.kind === 'straight') return { from, to, bulge: 0 };
  const quarter = ((s1 - s0) * piece.curvature) / 4;
  return { from, to, bulge: sin(quarter) / cos(quarter) };
}
