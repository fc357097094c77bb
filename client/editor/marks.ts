import { DESIGN_LIMITS, type Design, type Line, type Mark } from '../../shared/documents/design.ts';
import { distance } from '../../shared/geometry/exact-math.ts';
import type { Path } from '../../shared/geometry/path.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { markAround, markLength, turned } from './attach.ts';
import { freeId, lineIn } from './lines.ts';
import { type EditContext, type Edited, refused } from './model.ts';
import { linePath } from './paths.ts';
import { designOf } from './quantise.ts';

/** A line of the drawing or a given one. */
export const anyLine = (design: Design, context: EditContext, id: string) =>
  lineIn(design, id) ?? context.sheet.given.lines.find((line) => line.id === id);

export const markIn = (design: Design, id: string): Mark | undefined =>
  design.drawing.marks.find((mark) => mark.id === id);

/** A mark of one's own with the line that it is on. */
export function markOnLine(
  design: Design,
  context: EditContext,
  id: string,
): { readonly mark: Mark; readonly line: Line } | undefined {
  const mark = markIn(design, id);
  const line = mark && anyLine(design, context, mark.line);
  return mark && line && { mark, line };
}

/** How many marks of one's own there may be. */
export const mostMarks = (context: EditContext): number =>
  Math.min(context.mostMarks ?? DESIGN_LIMITS.marks, DESIGN_LIMITS.marks);

/**
 * Puts a word of the chart on a line with its middle at way `s`, so that a robot that comes from the
 * start berth meets the bands in the order of the word.
 */
export function placeMark(
  design: Design,
  context: EditContext,
  at: { readonly line: string; readonly s: Mm },
  word: string,
): Edited {
  const line = anyLine(design, context, at.line);
  if (!line) return refused('not-there');
  const { lines, marks } = design.drawing;
  const most = mostMarks(context);
  if (marks.length >= most) return { ok: false, refusal: { code: 'no-marks-left', most } };
  const path = linePath(line);
  const length = context.kit.robot.bandUnit;
  const drawn: Mark = {
    id: freeId('m', [...marks, ...context.sheet.given.marks]),
    line: line.id,
    at: 0,
    bands: [...word].map((ink) => ({ ink, length, gap: 0 })),
  };
  if (markLength(drawn) > path.length) return refused('line-too-short-for-mark');
  const facing = towardsEnd(path, context) ? drawn : turned(drawn);
  const mark = markAround(facing, at.s, path.length);
  const placed = designOf(lines, [...marks, mark]);
  return { ok: true, design: placed, selection: { kind: 'mark', mark: mark.id } };
}

/** Whether the start berth is nearer to the line's beginning than to its end. */
function towardsEnd(path: Path, context: EditContext): boolean {
  const start = context.sheet.start.at;
  const from = path.pieces[0]!.from;
  const to = path.pieces.at(-1)!.to;
  return distance(start, from) <= distance(start, to);
}

/** The same drawing with this mark as it is now, which is chosen then. */
export const withMark = (design: Design, mark: Mark): Edited => {
  const { lines, marks } = design.drawing;
  return {
    ok: true,
    design: designOf(
      lines,
      marks.map((other) => (other.id === mark.id ? mark : other)),
    ),
    selection: { kind: 'mark', mark: mark.id },
  };
};

/** Moves a mark along its own line, or onto another one, with its middle at way `s`. */
export function slideMark(
  design: Design,
  context: EditContext,
  id: string,
  to: { readonly line: string; readonly s: Mm },
): Edited {
  const mark = markIn(design, id);
  const line = anyLine(design, context, to.line);
  if (!mark || !line) return refused('not-there');
  const path = linePath(line);
  if (markLength(mark) > path.length) return refused('line-too-short-for-mark');
  return withMark(design, { ...markAround(mark, to.s, path.length), line: to.line });
}

/** Turns a mark round in its place. */
export function flipMark(design: Design, id: string): Edited {
  const mark = markIn(design, id);
  return mark ? withMark(design, turned(mark)) : refused('not-there');
}

export function rubMark(design: Design, id: string): Edited {
  if (!markIn(design, id)) return refused('not-there');
  const { lines, marks } = design.drawing;
  return {
    ok: true,
    design: designOf(
      lines,
      marks.filter((mark) => mark.id !== id),
    ),
    selection: null,
  };
}
