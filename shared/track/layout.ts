import type { Drawing, Line, Mark } from '../documents/design.ts';
import type { Sheet } from '../documents/sheet.ts';
import { type Path, pathOf } from '../geometry/path.ts';
import type { Mm } from '../geometry/units.ts';

/** Where everything drawn or given lies: lines with their paths, marks with the ways of their bands. */
export interface Layout {
  readonly lines: readonly LaidLine[];
  readonly marks: readonly LaidMark[];
}

export interface LaidLine {
  readonly id: string;
  readonly given: boolean;
  readonly width: Mm;
  readonly path: Path;
}

export interface LaidBand {
  readonly ink: string;
  /** Ways along the line; `from` < `to`. */
  readonly from: Mm;
  readonly to: Mm;
}

export interface LaidMark {
  readonly id: string;
  readonly given: boolean;
  readonly line: string;
  readonly bands: readonly LaidBand[];
  /** Way along the line of the first band's beginning and the last band's end. */
  readonly from: Mm;
  readonly to: Mm;
  /** Inks in the direction of the line, one letter a band. */
  readonly word: string;
}

/** Lays out the given and the drawn lines and marks. A mark whose line is missing is left out. */
export function layOut(sheet: Sheet, drawing: Drawing): Layout {
  const lines = [
    ...sheet.given.lines.map((line) => layLine(line, true)),
    ...drawing.lines.map((line) => layLine(line, false)),
  ];
  const known = new Set(lines.map((line) => line.id));
  const marks = [
    ...sheet.given.marks.map((mark) => layMark(mark, true)),
    ...drawing.marks.map((mark) => layMark(mark, false)),
  ].filter((mark) => known.has(mark.line));
  return { lines, marks };
}

const layLine = (line: Line, given: boolean): LaidLine => ({
  id: line.id,
  given,
  width: line.width,
  path: pathOf(line),
});

function layMark(mark: Mark, given: boolean): LaidMark {
  let way = mark.at;
  const bands = mark.bands.map((band, i) => {
    const from = i === 0 ? way : way + band.gap;
    way = from + band.length;
    return { ink: band.ink, from, to: way };
  });
  return {
    id: mark.id,
    given,
    line: mark.line,
    bands,
    from: mark.at,
    to: way,
    word: mark.bands.map((band) => band.ink).join(''),
  };
}
