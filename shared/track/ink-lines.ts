import { type Band, type Drawing, type Line, lengthOfBands, type Mark } from '../documents/design.ts';
import { type Path, pathOf } from '../geometry/path.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';

/** A line of a drawing with the marks on it, as the canonical form cuts, joins and turns it. */
export interface InkLine {
  readonly width: Mm;
  readonly from: PaperPoint;
  readonly pieces: Line['pieces'];
  /** Worked out when it is first asked for: most lines on their way to the form are not. */
  readonly path: Path;
  readonly marks: readonly InkMark[];
}

export interface InkMark {
  readonly id: string;
  readonly at: Mm;
  readonly to: Mm;
  readonly bands: readonly Band[];
}

/** The steps of the file form in a length: what is compared and keyed. */
export const steps = (mm: Mm): number => Math.round(mm / TOLERANCE.step);
const stepped = (mm: Mm): Mm => Math.round(mm * 100) / 100;

export const keyOf = (p: PaperPoint): string => `${steps(p.x)},${steps(p.y)}`;

export function inkLine(
  width: Mm,
  from: PaperPoint,
  pieces: Line['pieces'],
  marks: readonly InkMark[],
): InkLine {
  let path: Path | undefined;
  return {
    width,
    from,
    pieces,
    get path() {
      path ??= pathOf({ from, pieces });
      return path;
    },
    marks,
  };
}

export const inkOf = (drawing: Drawing): InkLine[] =>
  drawing.lines.map(({ id, width, from, pieces }) => {
    const marks = drawing.marks.filter((mark) => mark.line === id);
    return inkLine(width, from, pieces, marks.map(inkMark));
  });

function inkMark({ id, at, bands }: Mark): InkMark {
  return { id, at, to: at + lengthOfBands(bands), bands: withoutFirstGap(bands) };
}

/** Before the first band there is nothing to leave white: its gap says nothing. */
export const withoutFirstGap = (bands: readonly Band[]): Band[] =>
  bands.map((band, i) => (i === 0 ? { ...band, gap: 0 } : band));

const backwards = (bands: readonly Band[]): Band[] =>
  bands.map((_, i) => {
    const band = bands[bands.length - 1 - i]!;
    return { ...band, gap: i === 0 ? 0 : bands[bands.length - i]!.gap };
  });

const movedMark = (mark: InkMark, by: Mm): InkMark => {
  const at = stepped(mark.at + by);
  return { ...mark, at, to: at + lengthOfBands(mark.bands) };
};

const movedMarks = (marks: readonly InkMark[], by: Mm): InkMark[] => marks.map((m) => movedMark(m, by));

export function turnedRound(line: InkLine): InkLine {
  const { from, pieces } = line;
  const ends = [from, ...pieces.map((piece) => piece.to)];
  const back = pieces.map((_, i) => {
    const piece = pieces.length - 1 - i;
    return { to: ends[piece]!, bulge: 0 - pieces[piece]!.bulge };
  });
  const marks = line.marks.map((mark) =>
    movedMark({ ...mark, at: line.path.length - mark.to, bands: backwards(mark.bands) }, 0),
  );
  return inkLine(line.width, ends.at(-1)!, back, marks);
}

/** One line after the other; the second begins where the first ends. */
export function joinedLine(a: InkLine, b: InkLine): InkLine {
  const marks = b.marks.length > 0 ? movedMarks(b.marks, a.path.length) : [];
  return inkLine(a.width, a.from, [...a.pieces, ...b.pieces], [...a.marks, ...marks]);
}

/** The parts of a line between the inner vertices `at` (1 is the end of the first piece), ascending. */
export function cutLine(line: InkLine, at: readonly number[]): InkLine[] {
  const bounds = [0, ...at, line.pieces.length];
  return bounds.slice(1).map((end, i) => {
    const begin = bounds[i]!;
    const from = begin === 0 ? line.from : line.pieces[begin - 1]!.to;
    const low = begin === 0 ? 0 : line.path.starts[begin]!;
    const high = end === line.pieces.length ? Number.POSITIVE_INFINITY : line.path.starts[end]!;
    const marks = line.marks.filter((m) => (m.at + m.to) / 2 >= low && (m.at + m.to) / 2 < high);
    return inkLine(line.width, from, line.pieces.slice(begin, end), movedMarks(marks, -low));
  });
}

/** Whether a mark lies over a way of the line; ends that touch it don't. */
export const isUnderMark = (line: InkLine, way: Mm): boolean =>
  line.marks.some((m) => m.at < way - TOLERANCE.step && m.to > way + TOLERANCE.step);

/** Whether a mark hangs over the line's end: such a line can be neither turned round nor continued. */
export const hasOverhang = (line: InkLine): boolean =>
  line.marks.some((m) => m.to > line.path.length + TOLERANCE.step);

/** A ring that begins at another vertex, which no mark may cover. */
export function rotatedRing(ring: InkLine, vertex: number): InkLine {
  if (vertex === 0) return ring;
  const [first, second] = cutLine(ring, [vertex]);
  return joinedLine(second!, first!);
}
