import type { Design, Line, Piece } from '../../shared/documents/design.ts';
import { acos, cos, norm, sin } from '../../shared/geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { lineIn, nodesOf, reshape, reshapeFreely, samePlace } from './lines.ts';
import { anyLine } from './marks.ts';
import { type EditContext, type Edited, refused } from './model.ts';

/** The most that a pulled piece may bend: a sweep of 300 degrees. */
const MOST_BULGE = 3.7;
/** Pulled back this near to its chord, a piece is straight again. */
const FLAT: Mm = 2;
/** Bulges of a quarter and a half circle, and how near a pull catches on them. */
const ROUND_BULGES = [Math.SQRT2 - 1, 1] as const;
const CATCH = 0.05;

const withPiece = (line: Line, index: number, piece: Piece): Line => ({
  ...line,
  pieces: line.pieces.map((other, i) => (i === index ? piece : other)),
});

export type BendCatch = 'straight' | 'quarter' | 'half' | null;

/** The bulge of an arc from `a` to `b` whose middle is pulled level with `p`, and what it caught on. */
export function bulgeThrough(
  a: PaperPoint,
  b: PaperPoint,
  p: PaperPoint,
  free = false,
): { bulge: number; caught: BendCatch } {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const chord = norm(dx, dy);
  // The left of the heading; a positive bulge bends to the right and so bows out to the left.
  const height = ((p.x - (a.x + b.x) / 2) * dy - (p.y - (a.y + b.y) / 2) * dx) / chord;
  if (!free && height < FLAT && height > -FLAT) return { bulge: 0, caught: 'straight' };
  const bulge = Math.max(-MOST_BULGE, Math.min(MOST_BULGE, height / (chord / 2)));
  const size = bulge < 0 ? -bulge : bulge;
  const round = free
    ? undefined
    : ROUND_BULGES.find((wanted) => size > wanted - CATCH && size < wanted + CATCH);
  if (round === undefined) return { bulge, caught: null };
  return { bulge: bulge < 0 ? -round : round, caught: round === 1 ? 'half' : 'quarter' };
}

/** Bends one piece of an own line. */
export function bend(design: Design, context: EditContext, id: string, index: number, bulge: number): Edited {
  const line = lineIn(design, id);
  const piece = line?.pieces[index];
  if (!line || !piece) return refused(anyLine(design, context, id) ? 'given' : 'not-there');
  return reshape(design, [withPiece(line, index, { ...piece, bulge })]);
}

/** The least radius that a corner is rounded to, and the step in which it grows. */
const ROUNDING = { least: 15, step: 5 } as const;
/** So much of a leg stays straight at least. */
const LEG_KEPT = 0.92;

/** Whether a node is a corner between two straights, so that it can be pulled round. */
export function canRound(line: Line, node: number): boolean {
  const [before, after] = [line.pieces[node - 1], line.pieces[node]];
  return before?.bulge === 0 && after?.bulge === 0;
}

/**
 * Rounds a corner between two straights by an arc that touches both, as far as `p` has been pulled
 * from it. Radii grow in steps of 5 mm from 15 mm on; pulled back to the corner it stays sharp.
 */
export function roundCorner(
  design: Design,
  context: EditContext,
  id: string,
  node: number,
  p: PaperPoint,
): Edited {
  const line = lineIn(design, id);
  if (!line) return refused(anyLine(design, context, id) ? 'given' : 'not-there');
  if (!canRound(line, node)) return refused('not-there');
  const nodes = nodesOf(line);
  const corner = nodes[node]!;
  const legs = [legOf(corner, nodes[node - 1]!), legOf(corner, nodes[node + 1]!)] as const;
  const half = acos(legs[0].x * legs[1].x + legs[0].y * legs[1].y) / 2;
  const tangent = sin(half) / cos(half);
  const pulled = norm(p.x - corner.x, p.y - corner.y);
  const most = Math.min(legs[0].length, legs[1].length) * LEG_KEPT * tangent;
  const wanted = (pulled * sin(half)) / Math.max(1 - sin(half), 0.02);
  const radius = Math.min(most, Math.floor(wanted / ROUNDING.step) * ROUNDING.step);
  if (radius < Math.min(ROUNDING.least, most)) return { ok: true, design, selection: null };
  const back = radius / tangent;
  const touch = legs.map((leg) => ({ x: corner.x + leg.x * back, y: corner.y + leg.y * back }));
  const turnsRight = legs[0].x * legs[1].y - legs[0].y * legs[1].x < 0;
  const quarter = (Math.PI / 2 - half) / 2;
  const bulge = (sin(quarter) / cos(quarter)) * (turnsRight ? 1 : -1);
  const rounded: Piece[] = [
    { to: touch[0]!, bulge: 0 },
    { to: touch[1]!, bulge },
  ];
  return replacePieces(design, line, node, rounded);
}

function legOf(corner: PaperPoint, other: PaperPoint) {
  const length = norm(other.x - corner.x, other.y - corner.y);
  return { x: (other.x - corner.x) / length, y: (other.y - corner.y) / length, length };
}

/** Shortens both legs of the corner and puts the arc between them. */
function replacePieces(design: Design, line: Line, node: number, rounded: readonly Piece[]): Edited {
  const pieces = [
    ...line.pieces.slice(0, node - 1),
    ...rounded,
    { ...line.pieces[node]!, bulge: 0 },
    ...line.pieces.slice(node + 1),
  ];
  return reshapeFreely(design, { ...line, pieces });
}

/** Moves an end or corner, with every other own line that has an end or corner in the same place. */
export function moveNode(
  design: Design,
  context: EditContext,
  id: string,
  node: number,
  to: PaperPoint,
): Edited {
  const line = lineIn(design, id);
  const place = line && nodesOf(line)[node];
  if (!line || !place) return refused(anyLine(design, context, id) ? 'given' : 'not-there');
  const changed = design.drawing.lines
    .filter((other) => nodesOf(other).some((p) => samePlace(p, place)))
    .map((other) => movedWhere(other, (p) => samePlace(p, place), to));
  return reshape(design, changed);
}

function movedWhere(line: Line, here: (p: PaperPoint) => boolean, to: PaperPoint): Line {
  const moved = (p: PaperPoint) => (here(p) ? to : p);
  return {
    ...line,
    from: moved(line.from),
    pieces: line.pieces.map((piece) => ({ ...piece, to: moved(piece.to) })),
  };
}
