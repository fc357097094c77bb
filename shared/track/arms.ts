import type { Way } from '../documents/kit.ts';
import { atan2, norm } from '../geometry/exact-math.ts';
import { type Path, pieceIndexAt, pointAt } from '../geometry/path.ts';
import { type Direction, pieceDirection } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, Rad } from '../geometry/units.ts';
import { type Arm, type Track, type TrackNode, twin } from './track.ts';

/** Direction in which the path leaves way `s`, onwards or back. */
export function leavingDirection(path: Path, s: Mm, along: boolean): Direction {
  const slack = TOLERANCE.samePoint;
  const i = pieceIndexAt(path, along ? s + slack : s - slack);
  const piece = path.pieces[i]!;
  const within = Math.min(Math.max(s - path.starts[i]!, 0), piece.length);
  const d = pieceDirection(piece, within);
  return along ? d : { x: -d.x, y: -d.y };
}

/** Direction from way `s` to the place `reach` further, onwards or back. */
export function sightDirection(path: Path, s: Mm, along: boolean, reach: Mm): Direction {
  const from = pointAt(path, s);
  const to = pointAt(path, along ? s + reach : s - reach);
  const length = norm(to.x - from.x, to.y - from.y);
  if (length <= TOLERANCE.samePoint) return leavingDirection(path, s, along);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** Signed angle from `d` to `e` in (−π, π], positive to the right. */
export const turnBetween = (d: Direction, e: Direction): Rad =>
  atan2(d.x * e.y - d.y * e.x, d.x * e.x + d.y * e.y);

export interface Exit {
  readonly edge: number;
  readonly way: Way;
  /** Signed angle from ahead, positive to the right. */
  readonly turn: Rad;
}

/**
 * The ways on from the end of a directed edge, from left to right, without the way back. Straight is
 * an arm within 20 degrees of ahead; of several only the nearest to ahead.
 */
export function exitsOf(track: Track, edge: number): Exit[] {
  const node = track.nodes[track.edges[edge]!.to]!;
  const back = twin(edge);
  const arrival = node.arms.find((arm) => arm.edge === back);
  if (!arrival) return [];
  const ahead = { x: -arrival.heading.x, y: -arrival.heading.y };
  const turns = node.arms
    .filter((arm) => arm.edge !== back)
    .map((arm) => ({ edge: arm.edge, turn: turnBetween(ahead, arm.heading) }))
    .sort((a, b) => a.turn - b.turn || a.edge - b.edge);
  const straight = nearestAhead(turns);
  return turns.map(({ edge, turn }) => ({
    edge,
    turn,
    way: edge === straight ? 'straight' : turn < 0 ? 'left' : 'right',
  }));
}

function nearestAhead(turns: readonly { edge: number; turn: Rad }[]): number | undefined {
  let best: { edge: number; turn: Rad } | undefined;
  for (const t of turns) {
    const size = Math.abs(t.turn);
    if (size <= TOLERANCE.ahead && (!best || size < Math.abs(best.turn))) best = t;
  }
  return best?.edge;
}

/** The arm that "take left", "straight on" or "take right" means: of several the one nearest to ahead. */
export function exitFor(exits: readonly Exit[], way: Way): Exit | undefined {
  const of = exits.filter((exit) => exit.way === way);
  return way === 'left' ? of.at(-1) : of[0];
}

/** The angle between two arms as the line leaves the node, 0 to π. */
export const angleBetween = (a: Arm, b: Arm): Rad => Math.abs(turnBetween(a.tangent, b.tangent));

/** The inner angle of a corner. */
export function cornerAngle(node: TrackNode): Rad {
  const [a, b] = node.arms;
  if (!a || !b) throw new RangeError('a corner has two arms');
  return angleBetween(a, b);
}

/** What rounding the ends of the shortest of these arms to the file form can do to an angle between them. */
export const roundingOfAngle = ({ edges }: Track, arms: readonly Arm[]): Rad =>
  (2 * TOLERANCE.step) / Math.min(...arms.map((arm) => edges[arm.edge]!.bends[0]!.to));
