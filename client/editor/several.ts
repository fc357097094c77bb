import { DESIGN_LIMITS, type Design, type Line, type Mark } from '../../shared/documents/design.ts';
import { type Box, boxAround } from '../../shared/geometry/box.ts';
import { cos, sin } from '../../shared/geometry/exact-math.ts';
import { directionAt, pointAt } from '../../shared/geometry/path.ts';
import type { Mm, PaperPoint, Rad } from '../../shared/geometry/units.ts';
import { markMiddle } from './attach.ts';
import { freeId, freeLineId, lineIn, reshape, tooMuch } from './lines.ts';
import { anyLine, markOnLine, mostMarks, slideMark } from './marks.ts';
import { drawsLines, type EditContext, type Edited, refused, type Selection } from './model.ts';
import { linePath } from './paths.ts';
import { designOf } from './quantise.ts';

/** Lines of one's own, with all that is on them, and marks that were chosen without their line. */
export interface Several {
  readonly lines: readonly string[];
  readonly marks: readonly string[];
}

/** What is chosen, where it can be moved, turned, mirrored and copied as a whole. */
export function severalOf(selection: Selection | null): Several | null {
  if (selection?.kind === 'several') return selection;
  return selection?.kind === 'line' ? { lines: [selection.line], marks: [] } : null;
}

/** One line is chosen as a line, none as nothing. */
export function selectionOf({ lines, marks }: Several): Selection | null {
  if (lines.length + marks.length === 0) return null;
  const [line] = lines;
  if (line !== undefined && lines.length === 1 && marks.length === 0) return { kind: 'line', line };
  return { kind: 'several', lines, marks };
}

const STEP: Mm = 4;
/** A line counts as caught when this share of it lies in the box. */
const SHARE = 0.5;

const holds = (box: Box, { x, y }: PaperPoint): boolean =>
  x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;

function isCaught(line: Line, box: Box): boolean {
  const path = linePath(line);
  const steps = Math.max(2, Math.ceil(path.length / STEP));
  let inside = 0;
  for (let i = 0; i <= steps; i++) if (holds(box, pointAt(path, (path.length * i) / steps))) inside++;
  return inside >= SHARE * (steps + 1);
}

/** What a box drawn on the paper catches: lines that lie mostly in it, and marks on other lines. */
export function caughtIn(box: Box, design: Design, context: EditContext): Several {
  const { drawing } = design;
  const lines = drawsLines(context.play) ? drawing.lines.filter((line) => isCaught(line, box)) : [];
  const ids = lines.map((line) => line.id);
  const marks = drawing.marks.filter((mark) => {
    const line = anyLine(design, context, mark.line);
    return line && !ids.includes(mark.line) && holds(box, pointAt(linePath(line), markMiddle(mark)));
  });
  return { lines: ids, marks: marks.map((mark) => mark.id) };
}

/** A tap adds a line or mark to what is chosen, or takes it away again. */
export function toggled(
  several: Several,
  thing: { readonly line: string } | { readonly mark: string },
): Several {
  const without = (ids: readonly string[], id: string) => ids.filter((other) => other !== id);
  if ('mark' in thing) {
    const { mark } = thing;
    const marks = several.marks.includes(mark) ? without(several.marks, mark) : [...several.marks, mark];
    return { ...several, marks };
  }
  const { line } = thing;
  const lines = several.lines.includes(line) ? without(several.lines, line) : [...several.lines, line];
  return { ...several, lines };
}

const linesOf = ({ lines }: Several, design: Design): Line[] =>
  lines.flatMap((id) => lineIn(design, id) ?? []);

/** The least upright box around the chosen lines; null without one. */
export function boundsOf(several: Several, design: Design): Box | null {
  const boxes = linesOf(several, design).flatMap((line) => linePath(line).pieces.map((piece) => piece.box));
  return boxes.length > 0 ? boxAround(boxes) : null;
}

export const middleOfBox = ({ minX, minY, maxX, maxY }: Box): PaperPoint => ({
  x: (minX + maxX) / 2,
  y: (minY + maxY) / 2,
});

/** From the top of what is chosen to the handle that turns it, CSS pixels. */
const HANDLE_OFF = 34;

export function turnHandle(
  several: Several,
  design: Design,
  pixel: Mm,
): { readonly at: PaperPoint; readonly about: PaperPoint } | null {
  const box = boundsOf(several, design);
  if (!box) return null;
  const about = middleOfBox(box);
  return { at: { x: about.x, y: box.minY - HANDLE_OFF * pixel }, about };
}

/** First mirrored left to right, then turned clockwise, both about a place, then shifted. */
export interface Motion {
  readonly about: PaperPoint;
  readonly mirrored?: boolean;
  readonly turned?: Rad;
  readonly by?: PaperPoint;
}

function inMotion(line: Line, { about, mirrored = false, turned = 0, by = { x: 0, y: 0 } }: Motion): Line {
  const [c, s] = [cos(turned), sin(turned)];
  const moved = (p: PaperPoint): PaperPoint => {
    const [dx, dy] = [mirrored ? about.x - p.x : p.x - about.x, p.y - about.y];
    return { x: about.x + c * dx - s * dy + by.x, y: about.y + s * dx + c * dy + by.y };
  };
  const pieces = line.pieces.map(({ to, bulge }) => ({ to: moved(to), bulge: mirrored ? -bulge : bulge }));
  return { ...line, from: moved(line.from), pieces };
}

/** Moves what is chosen. Marks chosen without their line slide along it, and only in a shift. */
export function moveSeveral(design: Design, context: EditContext, several: Several, motion: Motion): Edited {
  const lines = linesOf(several, design);
  if (lines.length + several.marks.length === 0) return refused('not-there');
  const shaped = reshape(
    design,
    lines.map((line) => inMotion(line, motion)),
  );
  if (!shaped.ok) return shaped;
  const { by } = motion;
  const slid = several.marks.reduce((now, id) => (by ? slidBy(now, context, id, by) : now), shaped.design);
  return { ok: true, design: slid, selection: selectionOf(several) };
}

function slidBy(design: Design, context: EditContext, id: string, by: PaperPoint): Design {
  const found = markOnLine(design, context, id);
  if (!found) return design;
  const { mark, line } = found;
  const middle = markMiddle(mark);
  const along = directionAt(linePath(line), middle);
  const edited = slideMark(design, context, id, {
    line: line.id,
    s: middle + along.x * by.x + along.y * by.y,
  });
  return edited.ok ? edited.design : design;
}

/** So far beside the first one a copy lies, mm: two steps of the grid. */
const BESIDE: Mm = 10;

/** Copies the chosen lines with their marks; the copy is chosen then. */
export function copySeveral(design: Design, context: EditContext, several: Several): Edited {
  const { drawing } = design;
  const { given } = context.sheet;
  const lines: Line[] = [...drawing.lines];
  const marks: Mark[] = [...drawing.marks];
  const copies: string[] = [];
  for (const line of linesOf(several, design)) {
    const id = freeLineId(lines, context);
    lines.push({ ...inMotion(line, { about: line.from, by: { x: BESIDE, y: BESIDE } }), id });
    copies.push(id);
    for (const mark of drawing.marks.filter((each) => each.line === line.id))
      marks.push({ ...mark, id: freeId('m', [...marks, ...given.marks]), line: id });
  }
  if (copies.length === 0) return refused('not-there');
  if (tooMuch(lines)) return refused('drawing-full');
  const most = mostMarks(context);
  if (marks.length > Math.max(most, drawing.marks.length) || marks.length > DESIGN_LIMITS.marks)
    return { ok: false, refusal: { code: 'no-marks-left', most } };
  return { ok: true, design: designOf(lines, marks), selection: selectionOf({ lines: copies, marks: [] }) };
}

/** Takes all that is chosen away, with the marks on it. */
export function rubSeveral(design: Design, several: Several): Edited {
  const { lines, marks } = design.drawing;
  return {
    ok: true,
    design: designOf(
      lines.filter((line) => !several.lines.includes(line.id)),
      marks.filter((mark) => !several.marks.includes(mark.id) && !several.lines.includes(mark.line)),
    ),
    selection: null,
  };
}
