import { type Line, lengthOfBands, type Mark } from '../../shared/documents/design.ts';
import { type Path, pathFoot, pieceIndexAt, pointAt } from '../../shared/geometry/path.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { linePath } from './paths.ts';

/** The way along a line that a mark's bands take up. */
export const markLength = (mark: Mark): Mm => lengthOfBands(mark.bands);

export const markMiddle = (mark: Mark): Mm => mark.at + markLength(mark) / 2;

/** The mark with its middle at way `s`, moved no further than to the ends of a line so long. */
export function markAround(mark: Mark, s: Mm, lineLength: Mm): Mark {
  const length = markLength(mark);
  const at = Math.max(0, Math.min(s - length / 2, lineLength - length));
  return { ...mark, at };
}

/**
 * Bands met from the other side, in the same place along the line. The white before a band becomes
 * the white after it.
 */
export function turned(mark: Mark): Mark {
  const { bands } = mark;
  const reversed = bands.map((_, i) => bands[bands.length - 1 - i]!);
  return {
    ...mark,
    bands: reversed.map((band, i) => ({ ...band, gap: i === 0 ? 0 : bands[bands.length - i]!.gap })),
  };
}

/** Where way `s` of the old path went when its pieces changed shape but not their number. */
function carried(before: Path, after: Path, s: Mm): Mm {
  const i = pieceIndexAt(before, s);
  const share = (s - before.starts[i]!) / before.pieces[i]!.length;
  return after.starts[i]! + share * after.pieces[i]!.length;
}

/** Marks of a reshaped line stay on their pieces; those on pieces that kept their shape stay in place. */
export function carryMarks(marks: readonly Mark[], before: Line, after: Line): Mark[] {
  const old = linePath(before);
  const now = linePath(after);
  return marks.map((mark) =>
    mark.line === before.id
      ? { ...markAround(mark, carried(old, now, markMiddle(mark)), now.length), line: after.id }
      : mark,
  );
}

/** Marks of a line that became the part [from, from + length] of another one, or lie on its reverse. */
export function shiftMarks(marks: readonly Mark[], line: string, to: string, by: Mm): Mark[] {
  return marks.map((mark) => (mark.line === line ? { ...mark, line: to, at: mark.at + by } : mark));
}

export function reverseMarks(marks: readonly Mark[], line: string, length: Mm): Mark[] {
  return marks.map((mark) =>
    mark.line === line ? turned({ ...mark, at: Math.max(0, length - mark.at - markLength(mark)) }) : mark,
  );
}

/** Marks of a line that got other pieces go to the nearest place on it. */
export function nearestMarks(marks: readonly Mark[], before: Line, after: Line): Mark[] {
  const old = linePath(before);
  const now = linePath(after);
  return marks.map((mark) =>
    mark.line === before.id
      ? markAround(mark, pathFoot(now, pointAt(old, markMiddle(mark))).s, now.length)
      : mark,
  );
}
