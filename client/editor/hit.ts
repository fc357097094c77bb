import type { Design, Line } from '../../shared/documents/design.ts';
import { distance } from '../../shared/geometry/exact-math.ts';
import { pathFoot, pointAt } from '../../shared/geometry/path.ts';
import { type PieceShape, pieceAt } from '../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { markLength, markMiddle } from './attach.ts';
import { nodesOf } from './lines.ts';
import { anyLine } from './marks.ts';
import { drawsLines, type EditContext } from './model.ts';
import { linePath } from './paths.ts';
import { gripsOf } from './sections.ts';

/** What is under a finger. */
export type Hit =
  | { readonly kind: 'mark'; readonly mark: string; readonly given: boolean }
  | { readonly kind: 'node'; readonly line: string; readonly node: number }
  /** The middle of an arc, by which it is bent. */
  | { readonly kind: 'middle'; readonly line: string; readonly piece: number }
  | {
      readonly kind: 'line';
      readonly line: string;
      readonly given: boolean;
      readonly s: Mm;
      readonly piece: number;
    };

/** The nearest mark within reach, own ones first. */
export function markAt(p: PaperPoint, design: Design, context: EditContext, reach: Mm): Hit | undefined {
  const own = design.drawing.marks.map((mark) => ({ mark, given: false }));
  const all = [...own, ...context.sheet.given.marks.map((mark) => ({ mark, given: true }))];
  let best: { hit: Hit; distance: Mm } | undefined;
  for (const { mark, given } of all) {
    const line = anyLine(design, context, mark.line);
    if (!line) continue;
    const away = distance(p, pointAt(linePath(line), markMiddle(mark))) - markLength(mark) / 2;
    if (away <= reach && away < (best?.distance ?? reach + 1))
      best = { hit: { kind: 'mark', mark: mark.id, given }, distance: away };
  }
  return best?.hit;
}

/** The nearest end or corner of an own line within reach. */
export function nodeAtPoint(p: PaperPoint, design: Design, reach: Mm): (Hit & { kind: 'node' }) | undefined {
  let best: { line: string; node: number; distance: Mm } | undefined;
  for (const line of design.drawing.lines) {
    const nodes = nodesOf(line);
    for (const node of gripsOf(line)) {
      const away = distance(p, nodes[node]!);
      if (away <= (best?.distance ?? reach)) best = { line: line.id, node, distance: away };
    }
  }
  return best && { kind: 'node', line: best.line, node: best.node };
}

/** The nearest line within reach, own ones before given ones where both are equally near. */
export function lineAt(
  p: PaperPoint,
  design: Design,
  context: EditContext,
  reach: Mm,
): (Hit & { kind: 'line' }) | undefined {
  const own = design.drawing.lines.map((line) => ({ line, given: !drawsLines(context.play) }));
  const all = [...own, ...context.sheet.given.lines.map((line) => ({ line, given: true }))];
  let best: { hit: Hit & { kind: 'line' }; distance: Mm } | undefined;
  for (const { line, given } of all) {
    const foot = pathFoot(linePath(line), p);
    if (
      foot.distance > reach + line.width / 2 ||
      foot.distance >= (best?.distance ?? Number.POSITIVE_INFINITY)
    )
      continue;
    best = {
      hit: { kind: 'line', line: line.id, given, s: foot.s, piece: foot.piece },
      distance: foot.distance,
    };
  }
  return best?.hit;
}

/** Shorter arcs, as freehand lines have many, are not bent by their middles. */
const LEAST_PULLED: Mm = 25;

/** The middles of a line's pieces that are long enough to be pulled there. */
export const middlesOf = (line: Line, counts: (piece: PieceShape) => boolean = () => true): PaperPoint[] =>
  linePath(line)
    .pieces.filter((piece) => piece.length > LEAST_PULLED && counts(piece))
    .map((piece) => pieceAt(piece, piece.length / 2));

/** The nearest middle of an arc of one's own within reach. */
function middleAt(p: PaperPoint, design: Design, reach: Mm): (Hit & { kind: 'middle' }) | undefined {
  let best: { line: string; piece: number; distance: Mm } | undefined;
  for (const line of design.drawing.lines) {
    for (const [i, piece] of linePath(line).pieces.entries()) {
      if (piece.kind === 'straight' || piece.length < LEAST_PULLED) continue;
      const away = distance(p, pieceAt(piece, piece.length / 2));
      if (away <= (best?.distance ?? reach)) best = { line: line.id, piece: i, distance: away };
    }
  }
  return best && { kind: 'middle', line: best.line, piece: best.piece };
}

/** A mark, else an end or corner, else an arc's middle, else a line. Lines that are not the team's to draw are whole. */
export const hitAt = (p: PaperPoint, design: Design, context: EditContext, reach: Mm): Hit | undefined =>
  markAt(p, design, context, reach * 0.7) ??
  (drawsLines(context.play)
    ? (nodeAtPoint(p, design, reach) ?? middleAt(p, design, reach * 0.7))
    : undefined) ??
  lineAt(p, design, context, reach);
