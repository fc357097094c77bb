import { boxesMeet } from './box.ts';
import { atan2 } from './exact-math.ts';
import { type Intersection, type Meeting, pieceIntersections } from './intersections.ts';
import { type Path, pieceIndexAt } from './path.ts';
import { type Direction, type PieceShape, pieceDirection } from './piece.ts';
import { TOLERANCE } from './tolerances.ts';
import type { Mm } from './units.ts';

/** Whether a path ends where it begins. */
export function isClosed(path: Path): boolean {
  const from = path.pieces[0]!.from;
  const to = path.pieces.at(-1)!.to;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return dx * dx + dy * dy <= TOLERANCE.samePoint * TOLERANCE.samePoint;
}

/**
 * All places where two paths meet, in order of the way along `a`, each once: a place at a joint of
 * pieces is found with every piece there. `end` means an end of a whole path.
 */
export function pathIntersections(a: Path, b: Path): Intersection[] {
  const found: Intersection[] = [];
  for (let i = 0; i < a.pieces.length; i++) {
    for (let j = 0; j < b.pieces.length; j++) {
      if (meetable(a.pieces[i]!, b.pieces[j]!)) found.push(...shifted(a, i, b, j));
    }
  }
  return tidied(found, a, b);
}

/**
 * All places where a path meets itself, `a` before `b`, in order of `a`. The end that neighbouring
 * pieces have in common is left out, also the one where a closed path joins up.
 */
export function selfIntersections(path: Path): Intersection[] {
  const found: Intersection[] = [];
  const closed = isClosed(path);
  const atJoint = (m: Intersection): boolean =>
    m.kind !== 'shared' &&
    (m.b - m.a <= 2 * TOLERANCE.samePoint || (closed && m.a + path.length - m.b <= 2 * TOLERANCE.samePoint));
  for (let i = 0; i < path.pieces.length; i++) {
    const piece = path.pieces[i]!;
    for (let j = i + 1; j < path.pieces.length; j++) {
      const other = path.pieces[j]!;
      if (!meetable(piece, other) || (j === i + 1 && runsOn(piece, other))) continue;
      found.push(...shifted(path, i, path, j).filter((m) => !atJoint(m)));
    }
  }
  const tidy = tidied(found, path, path);
  // On a closed path a place at the seam is found from its beginning and from its end.
  return tidy.filter(
    (m, i) => !tidy.slice(0, i).some((n) => sameWay(path, m.a, n.b) && sameWay(path, m.b, n.a)),
  );
}

const meetable = (a: PieceShape, b: PieceShape): boolean => boxesMeet(a.box, b.box, TOLERANCE.samePoint);

/**
 * Whether two pieces have nothing but their joint in common, for sure: both run ahead all the way, seen in
 * the direction in which the path goes over the joint. Most neighbours do, and need no closer look.
 */
function runsOn(a: PieceShape, b: PieceShape): boolean {
  const before = pieceDirection(a, a.length);
  const after = pieceDirection(b, 0);
  const ahead = { x: before.x + after.x, y: before.y + after.y };
  return runsAhead(a, ahead) && runsAhead(b, ahead);
}

/** Under half a circle every direction lies between those of the two ends. */
function runsAhead(piece: PieceShape, ahead: Direction): boolean {
  if (piece.bulge <= -1 || piece.bulge >= 1) return false;
  const isAhead = ({ x, y }: Direction): boolean => x * ahead.x + y * ahead.y > AHEAD;
  return isAhead(pieceDirection(piece, 0)) && isAhead(pieceDirection(piece, piece.length));
}

/** Of at most 2: far from running square to it. */
const AHEAD = 0.5;

function shifted(a: Path, i: number, b: Path, j: number): Intersection[] {
  const shift = (m: Meeting): Meeting => ({
    a: m.a + a.starts[i]!,
    b: m.b + b.starts[j]!,
    point: m.point,
  });
  return pieceIntersections(a.pieces[i]!, b.pieces[j]!).map((m) =>
    m.kind === 'shared'
      ? { ...shift(m), kind: m.kind, until: shift(m.until) }
      : { ...shift(m), kind: m.kind === 'end' ? kindAtJoint(a, shift(m).a, b, shift(m).b) : m.kind },
  );
}

function tidied(found: readonly Intersection[], a: Path, b: Path): Intersection[] {
  if (found.length === 0) return [];
  const ordered = [...found].sort((m, n) => m.a - n.a || m.b - n.b);
  const shared = joinedStretches(ordered, a, b);
  const tidy: Intersection[] = [...shared];
  for (const m of ordered) {
    if (m.kind === 'shared' || shared.some((s) => onStretch(s, m))) continue;
    if (!tidy.some((n) => samePlace(n, m, a, b))) tidy.push(m);
  }
  return tidy.sort((m, n) => m.a - n.a || m.b - n.b);
}

type Stretch = Extract<Intersection, { kind: 'shared' }>;

function joinedStretches(ordered: readonly Intersection[], a: Path, b: Path): Stretch[] {
  const stretches: Stretch[] = [];
  for (const m of ordered) {
    if (m.kind !== 'shared') continue;
    const before = stretches.findIndex((s) => samePlace(s.until, m, a, b));
    if (before < 0) stretches.push(m);
    else stretches[before] = { ...stretches[before]!, until: m.until };
  }
  return stretches;
}

function onStretch(stretch: Stretch, m: Meeting): boolean {
  const slack = 2 * TOLERANCE.samePoint;
  const [b0, b1] = stretch.b < stretch.until.b ? [stretch.b, stretch.until.b] : [stretch.until.b, stretch.b];
  const onA = m.a >= stretch.a - slack && m.a <= stretch.until.a + slack;
  return onA && m.b >= b0 - slack && m.b <= b1 + slack;
}

function samePlace(m: Meeting, n: Meeting, a: Path, b: Path): boolean {
  return sameWay(a, m.a, n.a) && sameWay(b, m.b, n.b);
}

function sameWay(path: Path, s: Mm, t: Mm): boolean {
  const gap = Math.abs(s - t);
  const slack = 2 * TOLERANCE.samePoint;
  return gap <= slack || (gap >= path.length - slack && isClosed(path));
}

/** Directions in which a path leaves the place at way `s`; one at a loose end, else two. */
function armsAt(path: Path, s: Mm): Direction[] {
  const slack = 2 * TOLERANCE.samePoint;
  const closed = isClosed(path);
  const back = s > slack ? s : closed ? path.length : undefined;
  const ahead = s < path.length - slack ? s : closed ? 0 : undefined;
  const arms: Direction[] = [];
  if (back !== undefined) {
    const i = pieceIndexAt(path, back - slack);
    const piece = path.pieces[i]!;
    const d = pieceDirection(piece, Math.min(back - path.starts[i]!, piece.length));
    arms.push({ x: -d.x, y: -d.y });
  }
  if (ahead !== undefined) {
    const i = pieceIndexAt(path, ahead + slack);
    arms.push(pieceDirection(path.pieces[i]!, Math.max(ahead - path.starts[i]!, 0)));
  }
  return arms;
}

/** At a joint inside both paths: they cross where the arms of one part the arms of the other. */
function kindAtJoint(a: Path, sA: Mm, b: Path, sB: Mm): 'cross' | 'touch' | 'end' {
  const [a0, a1] = armsAt(a, sA);
  const [b0, b1] = armsAt(b, sB);
  if (!a0 || !a1 || !b0 || !b1) return 'end';
  const gap = turnFrom(a0, a1);
  const turns = [turnFrom(a0, b0), turnFrom(a0, b1)];
  const onArm = (turn: number): boolean =>
    turn < TOLERANCE.tangent ||
    turn > 2 * Math.PI - TOLERANCE.tangent ||
    Math.abs(turn - gap) < TOLERANCE.tangent;
  if (turns.some(onArm)) return 'touch';
  return turns[0]! < gap !== turns[1]! < gap ? 'cross' : 'touch';
}

/** Angle in [0, 2π) from `d` round to `e`. */
function turnFrom(d: Direction, e: Direction): number {
  const angle = atan2(d.x * e.y - d.y * e.x, d.x * e.x + d.y * e.y);
  return angle < 0 ? angle + 2 * Math.PI : angle;
}
