import {
  DESIGN_LIMITS,
  type Design,
  type Line,
  type Mark,
  type Piece,
} from '../../shared/documents/design.ts';
import { distance } from '../../shared/geometry/exact-math.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { carryMarks, nearestMarks, reverseMarks, shiftMarks } from './attach.ts';
import { drawsLines, type EditContext, type Edited, refused } from './model.ts';
import { linePath } from './paths.ts';
import { designOf, roundLine, roundPoint } from './quantise.ts';

/** Two ends closer than this are one: half a step of the file form. */
const SAME = 0.006;
/** A line shorter than this is a slip of the finger. */
const SHORTEST = 3;

export const samePlace = (a: PaperPoint, b: PaperPoint): boolean => distance(a, b) < SAME;
export const endOf = (line: Pick<Line, 'from' | 'pieces'>): PaperPoint => line.pieces.at(-1)?.to ?? line.from;
export const nodesOf = (line: Line): PaperPoint[] => [line.from, ...line.pieces.map((piece) => piece.to)];
export const lineIn = (design: Design, id: string): Line | undefined =>
  design.drawing.lines.find((line) => line.id === id);

/** Where an end or corner lies. */
export function nodeOf(
  design: Design,
  { line, node }: { readonly line: string; readonly node: number },
): PaperPoint | undefined {
  const found = lineIn(design, line);
  return found && nodesOf(found)[node];
}

/** The first free id with this letter, over drawn and given things. */
export function freeId(letter: 'l' | 'm', taken: readonly { readonly id: string }[]): string {
  const ids = new Set(taken.map((thing) => thing.id));
  let n = 1;
  while (ids.has(`${letter}${n}`)) n++;
  return `${letter}${n}`;
}

export const freeLineId = (lines: readonly Line[], context: EditContext): string =>
  freeId('l', [...lines, ...context.sheet.given.lines]);

/** The same line, drawn from its other end. */
export function reverseLine(line: Line): Line {
  const nodes = nodesOf(line).reverse();
  const bulges = line.pieces.map((piece) => -piece.bulge + 0).reverse();
  const pieces = bulges.map((bulge, i): Piece => ({ to: nodes[i + 1]!, bulge }));
  return { ...line, from: nodes[0]!, pieces };
}

interface Drawn {
  readonly lines: readonly Line[];
  readonly marks: readonly Mark[];
}

/** Adds a run of pieces; where it begins or ends at the only end of an own line, the two become one. */
export function addRun(
  design: Design,
  context: EditContext,
  from: PaperPoint,
  pieces: readonly Piece[],
): Edited {
  if (!drawsLines(context.play)) return refused('only-marks');
  const { lines, marks } = design.drawing;
  const line = roundLine({
    id: freeLineId(lines, context),
    width: context.kit.rules.lineWidth.nominal,
    from,
    pieces: [...pieces],
  });
  if (line.pieces.length === 0 || linePath(line).length < SHORTEST) return refused('too-short');
  const all = [...lines, line];
  if (tooMuch(all)) return refused('drawing-full');
  const joined = joinAt(joinAt({ lines: all, marks }, context, line.from), context, endOf(line));
  return { ok: true, design: designOf(joined.lines, joined.marks), selection: null };
}

export const tooMuch = (lines: readonly Line[]): boolean =>
  lines.length > DESIGN_LIMITS.lines ||
  lines.reduce((sum, line) => sum + line.pieces.length, 0) > DESIGN_LIMITS.pieces;

/** Makes one line of two own ones of the same width whose ends alone meet at `at`. */
function joinAt(drawn: Drawn, context: EditContext, at: PaperPoint): Drawn {
  const place = roundPoint(at);
  const ends = drawn.lines.flatMap((line) => [
    ...(samePlace(line.from, place) ? [{ line, first: true }] : []),
    ...(samePlace(endOf(line), place) ? [{ line, first: false }] : []),
  ]);
  const given = context.sheet.given.lines.some(
    (line) => samePlace(line.from, place) || samePlace(endOf(line), place),
  );
  const [one, two] = ends;
  if (given || ends.length !== 2 || !one || !two || one.line === two.line) return drawn;
  if (one.line.width !== two.line.width) return drawn;
  return joinPair(drawn, one, two);
}

interface LineEnd {
  readonly line: Line;
  readonly first: boolean;
}

/** The older line keeps its id and its direction. */
function joinPair({ lines, marks }: Drawn, older: LineEnd, newer: LineEnd): Drawn {
  // The newer line has to run on from the older one's end, or into its beginning.
  const runsOn = older.first ? !newer.first : newer.first;
  const length = linePath(newer.line).length;
  const other = runsOn ? newer.line : reverseLine(newer.line);
  const turnedMarks = runsOn ? [...marks] : reverseMarks(marks, newer.line.id, length);
  const [head, tail] = older.first ? [other, older.line] : [older.line, other];
  const joined: Line = { ...older.line, from: head.from, pieces: [...head.pieces, ...tail.pieces] };
  const headLength = linePath(head).length;
  const moved = older.first
    ? shiftMarks(
        shiftMarks(turnedMarks, older.line.id, older.line.id, headLength),
        newer.line.id,
        older.line.id,
        0,
      )
    : shiftMarks(turnedMarks, newer.line.id, older.line.id, headLength);
  return {
    lines: lines.filter((line) => line !== newer.line).map((line) => (line === older.line ? joined : line)),
    marks: moved,
  };
}

/** Makes one line of each two that meet in an end of one of these lines, and in no other one's. */
export function joinEnds(design: Design, context: EditContext, ids: readonly string[]): Design {
  const ends = ids.flatMap((id) => {
    const line = lineIn(design, id);
    return line ? [line.from, endOf(line)] : [];
  });
  const { lines, marks } = ends.reduce<Drawn>((drawn, at) => joinAt(drawn, context, at), design.drawing);
  return lines === design.drawing.lines ? design : designOf(lines, marks);
}

/** Puts reshaped lines in the place of those with the same ids; marks stay on their pieces. */
export function reshape(design: Design, changed: readonly Line[]): Edited {
  const now = new Map(changed.map((line) => [line.id, roundKept(line)]));
  if ([...now.values()].some((line) => line === null)) return refused('too-short');
  const { lines, marks } = design.drawing;
  const carriedMarks = lines.reduce<readonly Mark[]>((kept, line) => {
    const after = now.get(line.id);
    return after ? carryMarks(kept, line, after) : kept;
  }, marks);
  const after = lines.map((line) => now.get(line.id) ?? line);
  return { ok: true, design: designOf(after, carriedMarks), selection: null };
}

/**
 * Puts a line with another number of pieces in the place of the one with its id. Each mark stays as near
 * to its old place as the new line comes.
 */
export function reshapeFreely(design: Design, changed: Line): Edited {
  const before = lineIn(design, changed.id);
  const after = roundLine(changed);
  if (!before || after.pieces.length === 0) return refused('too-short');
  const { lines, marks } = design.drawing;
  const all = lines.map((line) => (line === before ? after : line));
  if (tooMuch(all)) return refused('drawing-full');
  return { ok: true, design: designOf(all, nearestMarks(marks, before, after)), selection: null };
}

/** In file precision, or null where a piece would lose its length. */
function roundKept(line: Line): Line | null {
  const rounded = roundLine(line);
  return rounded.pieces.length === line.pieces.length ? rounded : null;
}
