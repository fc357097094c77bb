import type { Design, Line } from '../../shared/documents/design.ts';
import { acos } from '../../shared/geometry/exact-math.ts';
import { type Path, pathFoot, pathPart } from '../../shared/geometry/path.ts';
import { pathIntersections, selfIntersections } from '../../shared/geometry/path-intersections.ts';
import { pieceDirection } from '../../shared/geometry/piece.ts';
import type { Mm, Rad } from '../../shared/geometry/units.ts';
import { markMiddle } from './attach.ts';
import { endOf, freeLineId, lineIn } from './lines.ts';
import { anyLine } from './marks.ts';
import { type EditContext, type Edited, refused } from './model.ts';
import { linePath } from './paths.ts';
import { designOf } from './quantise.ts';

/** A turn of more than this is a corner that can be taken hold of (20 degrees). */
const CORNER: Rad = 0.35;
/** An end this near to a line touches it. */
const TOUCH: Mm = 3;

/** How much the line turns at the end of piece `i`. */
function turnAfter(path: Path, i: number): Rad {
  const before = path.pieces[i]!;
  const a = pieceDirection(before, before.length);
  const b = pieceDirection(path.pieces[i + 1]!, 0);
  return acos(a.x * b.x + a.y * b.y);
}

/** The nodes that can be taken hold of: both ends and every corner. */
export function gripsOf(line: Line): number[] {
  const path = linePath(line);
  const corners = path.pieces.slice(1).flatMap((_, i) => (turnAfter(path, i) > CORNER ? [i + 1] : []));
  return [0, ...corners, line.pieces.length];
}

/** Ways along a line at which it can be cut: its ends, its corners, and where lines meet it. */
function cutsOf(line: Line, design: Design, context: EditContext): Mm[] {
  const path = linePath(line);
  const corners = gripsOf(line)
    .slice(1, -1)
    .map((node) => path.starts[node]!);
  const others = [...design.drawing.lines, ...context.sheet.given.lines].filter(
    (other) => other.id !== line.id,
  );
  const touching = others
    .flatMap((other) => [other.from, endOf(other)])
    .map((end) => pathFoot(path, end))
    .filter((foot) => foot.distance < TOUCH)
    .map((foot) => foot.s);
  const crossings = [
    ...others.flatMap((other) => pathIntersections(path, linePath(other)).map((meeting) => meeting.a)),
    ...selfIntersections(path).flatMap((meeting) => [meeting.a, meeting.b]),
  ];
  const inside = [...corners, ...touching, ...crossings].filter((s) => s > TOUCH && s < path.length - TOUCH);
  return [0, ...inside.sort((a, b) => a - b), path.length];
}

/** The part between two cuts that holds way `s`. */
function sectionAt(
  design: Design,
  context: EditContext,
  id: string,
  s: Mm,
): { readonly from: Mm; readonly to: Mm } | undefined {
  const line = lineIn(design, id);
  if (!line) return undefined;
  const cuts = cutsOf(line, design, context);
  const next = cuts.findIndex((cut, i) => i > 0 && cut >= s);
  const to = next < 0 ? cuts.length - 1 : next;
  return { from: cuts[to - 1]!, to: cuts[to]! };
}

/** Takes the part of a line that holds way `s` away, with the marks on it. */
export function rubSection(design: Design, context: EditContext, id: string, s: Mm): Edited {
  const line = lineIn(design, id);
  const section = sectionAt(design, context, id, s);
  if (!line || !section) return refused(anyLine(design, context, id) ? 'given' : 'not-there');
  const path = linePath(line);
  const before = section.from > 0 ? partOf(line, path, 0, section.from, id) : null;
  const others = design.drawing.lines.filter((other) => other.id !== id);
  const tailId = before ? freeLineId(design.drawing.lines, context) : id;
  const after = section.to < path.length ? partOf(line, path, section.to, path.length, tailId) : null;
  const marks = design.drawing.marks.flatMap((mark) => {
    if (mark.line !== id) return [mark];
    const middle = markMiddle(mark);
    if (before && middle < section.from) return [mark];
    return after && middle > section.to
      ? [{ ...mark, line: after.id, at: Math.max(0, mark.at - section.to) }]
      : [];
  });
  const kept = [before, after].filter((part): part is Line => part !== null);
  return { ok: true, design: designOf([...others, ...kept], marks), selection: null };
}

function partOf(line: Line, path: Path, from: Mm, to: Mm, id: string): Line {
  const pieces = pathPart(path, from, to);
  return {
    ...line,
    id,
    from: pieces[0]!.from,
    pieces: pieces.map((piece) => ({ to: piece.to, bulge: piece.bulge })),
  };
}

/** Takes a whole line of one's own away, with the marks on it. */
export function rubLine(design: Design, context: EditContext, id: string): Edited {
  if (!lineIn(design, id)) return refused(anyLine(design, context, id) ? 'given' : 'not-there');
  const { lines, marks } = design.drawing;
  return {
    ok: true,
    design: designOf(
      lines.filter((line) => line.id !== id),
      marks.filter((mark) => mark.line !== id),
    ),
    selection: null,
  };
}
