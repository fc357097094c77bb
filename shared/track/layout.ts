import { type Drawing, type Line, type Mark, wordOf } from '../documents/design.ts';
import type { Sheet } from '../documents/sheet.ts';
import { type Path, pathOf } from '../geometry/path.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';

/** A band is so much wider than its line on each side: half of the 0.4 mm that inks spread. */
export const BAND_SPREAD: Mm = 0.2;

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

/**
 * Lays out the given and the drawn lines and marks. A mark whose line is missing is left out. A line that
 * lies where one of `before` lies takes over its path.
 */
export function layOut(sheet: Sheet, drawing: Drawing, before?: Layout): Layout {
  const known = pathsByBeginning(before);
  const lines = [
    ...sheet.given.lines.map((line) => layLine(line, true, known)),
    ...drawing.lines.map((line) => layLine(line, false, known)),
  ];
  const ids = new Set(lines.map((line) => line.id));
  const marks = [
    ...sheet.given.marks.map((mark) => layMark(mark, true)),
    ...drawing.marks.map((mark) => layMark(mark, false)),
  ].filter((mark) => ids.has(mark.line));
  return { lines, marks };
}

/** Paths that may be taken over, each by one line only. */
type KnownPaths = Map<string, Path[]>;

const placeKey = ({ x, y }: PaperPoint): string => `${x} ${y}`;

function pathsByBeginning(layout: Layout | undefined): KnownPaths {
  const known: KnownPaths = new Map();
  for (const { path } of layout?.lines ?? []) {
    const key = placeKey(path.pieces[0]!.from);
    known.set(key, [...(known.get(key) ?? []), path]);
  }
  return known;
}

const layLine = (line: Line, given: boolean, known: KnownPaths): LaidLine => ({
  id: line.id,
  given,
  width: line.width,
  path: takenOver(line, known) ?? pathOf(line),
});

function takenOver(line: Line, known: KnownPaths): Path | undefined {
  const paths = known.get(placeKey(line.from)) ?? [];
  const at = paths.findIndex((path) => liesOn(line, path));
  return at < 0 ? undefined : paths.splice(at, 1)[0];
}

const liesOn = ({ pieces }: Line, path: Path): boolean =>
  pieces.length === path.pieces.length &&
  pieces.every(({ to, bulge }, i) => {
    const piece = path.pieces[i]!;
    return piece.to.x === to.x && piece.to.y === to.y && piece.bulge === bulge;
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
    word: wordOf(mark),
  };
}
