import type { Drawing, Mark } from '../documents/design.ts';
import { chainsOf, uniqueLines } from './chains.ts';
import { type InkLine, type InkMark, inkOf, withoutFirstGap } from './ink-lines.ts';
import { compareLists, numbersOf, smallestForm } from './line-form.ts';

/**
 * The canonical form of a drawing: whatever the order, the directions and the pieces in which its ink
 * was drawn, the form is the same.
 *
 * - Lines of one width whose ends meet in a point, where nothing else ends or bends, are one line, with
 *   or without a corner there: the ink is the same. At a point where three or more arms meet, every
 *   line ends, unless a mark lies over the point.
 * - Pieces that go on in the same straight or circle are one piece. A line drawn twice is one line.
 * - A line runs in the direction, and a ring from the vertex, that gives the smaller list of numbers.
 * - Lines are ordered by their numbers and called `line-1`, …; marks keep their ids, are ordered by line
 *   and way, and read backwards where their line was turned round.
 *
 * An arc that was cut in two comes back with its bulge to within the rounding of the two. Given lines
 * are not touched, and marks on them stay as they are. Refuses nothing.
 */
export function canonicalDrawing(drawing: Drawing, given: Drawing): Drawing {
  const forms = inOrder(
    uniqueLines(chainsOf(inkOf(drawing)).map(({ line, isRing }) => smallestForm(line, isRing))),
  );
  const prefix = freePrefix(given);
  const lines = forms.map(({ width, from, pieces }, i) => ({
    id: `${prefix}${i + 1}`,
    width,
    from,
    pieces: [...pieces],
  }));
  const marks = forms.flatMap((form, i) => orderedMarks(form.marks).map((m) => markOn(lines[i]!.id, m)));
  const own = new Set(drawing.lines.map((line) => line.id));
  const elsewhere = drawing.marks
    .filter((mark) => !own.has(mark.line))
    .map((mark) => ({ ...mark, bands: withoutFirstGap(mark.bands) }))
    .sort((a, b) => compareText(a.line, b.line) || a.at - b.at || compareText(a.id, b.id));
  return { lines, marks: [...marks, ...elsewhere] };
}

const inOrder = (forms: readonly InkLine[]): InkLine[] =>
  forms
    .map((form) => ({ form, numbers: numbersOf(form) }))
    .sort((a, b) => compareLists(a.numbers, b.numbers))
    .map(({ form }) => form);

/** Lines of the sheet keep their names, so drawn ones take others. */
function freePrefix(given: Drawing): string {
  let prefix = 'line-';
  while (given.lines.some((line) => line.id.startsWith(prefix))) prefix = `x${prefix}`;
  return prefix;
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const orderedMarks = (marks: readonly InkMark[]): InkMark[] =>
  [...marks].sort((a, b) => a.at - b.at || compareText(a.id, b.id));

const markOn = (line: string, { id, at, bands }: InkMark): Mark => ({ id, line, at, bands: [...bands] });
