import { type Direction, type PieceShape, pieceFoot } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { LaidLine } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, pointPlace } from './findings.ts';

/** Lines keep off the paper's edge. */
export const margin: Rule = {
  id: 'R-margin',
  check: (view) =>
    view.track.layout.lines.filter((line) => !line.given).flatMap((line) => checkLine(view, line)),
};

interface Side {
  readonly out: Direction;
  readonly gap: (p: PaperPoint) => Mm;
}

const sidesOf = (w: Mm, h: Mm): Side[] => [
  { out: { x: -1, y: 0 }, gap: (p) => p.x },
  { out: { x: 1, y: 0 }, gap: (p) => w - p.x },
  { out: { x: 0, y: -1 }, gap: (p) => p.y },
  { out: { x: 0, y: 1 }, gap: (p) => h - p.y },
];

/** One finding for each edge of the paper that the line comes near. */
function checkLine(view: RuleView, line: LaidLine): Draft[] {
  const allowed = view.kit.rules.sheetMargin;
  return sidesOf(view.sheet.w, view.sheet.h).flatMap((side) => {
    const near = line.path.pieces.filter((piece) => boxGap(side, piece) < allowed);
    if (near.length === 0) return [];
    const at = nearestTo(side, near);
    const gap = side.gap(at);
    if (gap >= allowed - TOLERANCE.samePoint) return [];
    const finding = findingAt('R-margin', pointPlace(at), {
      severity: gap < 0 ? 'may-stop' : 'untidy',
      ...lengths(gap, allowed),
      remedy: 'move-inside',
    });
    return [{ finding }];
  });
}

const boxGap = ({ gap }: Side, { box }: PieceShape): Mm =>
  Math.min(gap({ x: box.minX, y: box.minY }), gap({ x: box.maxX, y: box.maxY }));

/** The nearest point to a side: an end of a piece, or where an arc faces the side. */
function nearestTo(side: Side, pieces: readonly PieceShape[]): PaperPoint {
  const points = pieces.flatMap((piece) => {
    if (piece.kind === 'straight') return [piece.from, piece.to];
    const { center, radius } = piece;
    const facing = { x: center.x + side.out.x * radius, y: center.y + side.out.y * radius };
    return [piece.from, piece.to, pieceFoot(piece, facing).point];
  });
  return points.reduce((best, p) => (side.gap(p) < side.gap(best) ? p : best));
}
