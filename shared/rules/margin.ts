import { PACES } from '../documents/kit.ts';
import { distance } from '../geometry/exact-math.ts';
import { type Direction, type PieceShape, pieceFoot } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { LaidLine } from '../track/layout.ts';
import { type TrackNode, twin } from '../track/track.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, pointPlace } from './findings.ts';

/** Lines keep off the paper's edge; a loose end does not aim at a near edge at pace fast. */
export const margin: Rule = {
  id: 'R-margin',
  check: (view) => [
    ...view.layout.lines.filter((line) => !line.given).flatMap((line) => checkLine(view, line)),
    ...view.track.nodes.filter((node) => node.kind === 'end').flatMap((node) => checkEnd(view, node)),
  ],
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
    const at = nearestTo(side, line.path.pieces);
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

function checkEnd(view: RuleView, node: TrackNode): Draft[] {
  const { track, travel, kit, sheet } = view;
  const arm = node.arms[0];
  if (!arm || track.lines[track.edges[arm.edge]!.line]!.line.given) return [];
  const pace = PACES[travel.paceAtEnd[twin(arm.edge)]!];
  const atHome = sheet.finish && distance(sheet.finish.at, node.at) <= sheet.finish.r;
  if (pace !== 'fast' || atHome) return [];
  const gap = toPaperEdge(node.at, { x: -arm.tangent.x, y: -arm.tangent.y }, sheet.w, sheet.h);
  const allowed = kit.rules.actionReady.fast;
  if (gap >= allowed - TOLERANCE.samePoint) return [];
  const finding = findingAt('R-margin', pointPlace(node.at), {
    variant: 'loose-end',
    severity: 'untidy',
    ...lengths(gap, allowed),
    remedy: 'slow-down',
  });
  return [{ finding }];
}

/** From `p` straight along `d` to where the paper ends. */
function toPaperEdge(p: PaperPoint, d: Direction, w: Mm, h: Mm): Mm {
  const toX = d.x > 0 ? (w - p.x) / d.x : d.x < 0 ? p.x / -d.x : Number.POSITIVE_INFINITY;
  const toY = d.y > 0 ? (h - p.y) / d.y : d.y < 0 ? p.y / -d.y : Number.POSITIVE_INFINITY;
  return Math.min(toX, toY);
}
