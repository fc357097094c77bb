import { norm } from '../exact-math.ts';
import type { Direction, PieceEnds } from '../piece.ts';
import type { PaperPoint } from '../units.ts';

/** A place with the direction in which the line passes it. */
export interface Pose {
  readonly at: PaperPoint;
  readonly along: Direction;
}

const directionOf = (a: PaperPoint, b: PaperPoint): Direction => {
  const size = norm(b.x - a.x, b.y - a.y);
  return { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
};

/** The widest arc that a fit may use, as cos of half its sweep: 300 degrees. */
const WIDEST = -0.866;

/** The arc that leaves `from` along its direction and ends at `to`; undefined where it would go round. */
export function arcTo(from: Pose, to: PaperPoint): PieceEnds | undefined {
  if (from.at.x === to.x && from.at.y === to.y) return undefined;
  const chord = directionOf(from.at, to);
  const cosine = from.along.x * chord.x + from.along.y * chord.y;
  const sine = from.along.x * chord.y - from.along.y * chord.x;
  if (cosine < WIDEST) return undefined;
  return { from: from.at, to, bulge: sine / (1 + cosine) };
}

/** The direction in which a piece ends, found from its bulge alone. */
export function endDirection(piece: PieceEnds): Direction {
  return turned(directionOf(piece.from, piece.to), piece.bulge);
}

/** The direction in which a piece begins. */
export function startDirection(piece: PieceEnds): Direction {
  return turned(directionOf(piece.from, piece.to), -piece.bulge);
}

/** `d` turned by half the sweep of a piece of this bulge: rational in tan(sweep/4). */
function turned(d: Direction, bulge: number): Direction {
  const c = (1 - bulge * bulge) / (1 + bulge * bulge);
  const s = (2 * bulge) / (1 + bulge * bulge);
  return { x: d.x * c - d.y * s, y: d.x * s + d.y * c };
}

/** Two arcs from pose to pose, both tangents kept, with equal tangent lengths; undefined where none fit. */
export function twoArcs(from: Pose, to: Pose): PieceEnds[] | undefined {
  const vx = to.at.x - from.at.x;
  const vy = to.at.y - from.at.y;
  const tx = from.along.x + to.along.x;
  const ty = from.along.y + to.along.y;
  const square = vx * vx + vy * vy;
  const spread = 2 * (1 - (from.along.x * to.along.x + from.along.y * to.along.y));
  const vt = vx * tx + vy * ty;
  // d²·spread + 2·d·(v·t)/… = |v|², the positive root, in the form that stays exact as spread nears 0.
  const root = vt + Math.sqrt(vt * vt + spread * square);
  if (!(root > 0)) return undefined;
  const d = square / root;
  const joint = {
    x: (from.at.x + to.at.x + d * (from.along.x - to.along.x)) / 2,
    y: (from.at.y + to.at.y + d * (from.along.y - to.along.y)) / 2,
  };
  const first = arcTo(from, joint);
  const last = arcTo({ at: to.at, along: { x: -to.along.x, y: -to.along.y } }, joint);
  return first && last && [first, { from: joint, to: to.at, bulge: -last.bulge }];
}

/** A straight and an arc, in the order that fits, from pose to pose; undefined where they can't. */
export function straightAndArc(from: Pose, to: Pose): PieceEnds[] | undefined {
  const cross = from.along.x * to.along.y - from.along.y * to.along.x;
  if (cross > -0.02 && cross < 0.02) return undefined;
  const vx = to.at.x - from.at.x;
  const vy = to.at.y - from.at.y;
  // The tangents meet at from + d·along = to − e·along.
  const d = (vx * to.along.y - vy * to.along.x) / cross;
  const e = (from.along.x * vy - from.along.y * vx) / cross;
  if (d <= 0 || e <= 0) return undefined;
  const gap = d - e;
  const turn = gap > 0 ? beyond(from, gap) : beyond(to, gap);
  const arc = gap > 0 ? arcTo({ at: turn, along: from.along }, to.at) : arcTo(from, turn);
  if (!arc) return undefined;
  const straight = gap > 0 ? { from: from.at, to: turn, bulge: 0 } : { from: turn, to: to.at, bulge: 0 };
  return gap > 0 ? [straight, arc] : [arc, straight];
}

const beyond = ({ at, along }: Pose, way: number): PaperPoint => ({
  x: at.x + way * along.x,
  y: at.y + way * along.y,
});
