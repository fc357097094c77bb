import type { Drawing, Line } from '../documents/design.ts';
import type { DesignRefusal } from '../documents/refusal.ts';
import type { Sheet } from '../documents/sheet.ts';
import { pieceIntersections } from '../geometry/intersections.ts';
import { pathOf } from '../geometry/path.ts';
import type { PieceShape } from '../geometry/piece.ts';
import { pieceIndex } from '../geometry/spatial-index.ts';
import type { Mm } from '../geometry/units.ts';

/**
 * What a sheet can hold at the most. A drawing that is far from any that could be driven must not cost
 * more of the judge's time than others do: what the engine does grows with the ink and with the places
 * where lines meet.
 */
export const CROWD_LIMITS = {
  /** Half of what two lines need between their middles: so close, all of a sheet is ink. */
  lineSpace: 5.5,
  meetings: 100,
  /** Pairs of pieces that are near enough to be looked at. */
  pairs: 10_000,
} as const satisfies Record<string, number | Mm>;

interface LaidPiece {
  readonly shape: PieceShape;
  readonly line: number;
  readonly place: number;
}

/** The first way in which the lines of sheet and drawing together are too many for the sheet, or undefined. */
export function crowdRefusal(sheet: Sheet, drawing: Drawing): DesignRefusal | undefined {
  const lines = [...sheet.given.lines, ...drawing.lines];
  const path = ['drawing', 'lines'];
  const measured = lines.reduce((sum, line) => sum + spaceOf(line), 0);
  const allowed = (sheet.w * sheet.h) / CROWD_LIMITS.lineSpace;
  if (measured > allowed) return { code: 'too-much-line', path, measured, allowed };
  if (meetMoreOften(lines)) return { code: 'too-many-meetings', path, allowed: CROWD_LIMITS.meetings };
  return undefined;
}

/** The length of a line; of one that is wider than its space, of so many beside one another. */
const spaceOf = (line: Line): Mm => pathOf(line).length * Math.max(1, line.width / CROWD_LIMITS.lineSpace);

function meetMoreOften(lines: readonly Line[]): boolean {
  const pieces = lines.flatMap((line, i) =>
    pathOf(line).pieces.map((shape, place): LaidPiece => ({ shape, line: i, place })),
  );
  const index = pieceIndex(pieces.map((piece) => piece.shape));
  const ends = endCounts(pieces);
  let meetings = 0;
  let pairs = 0;
  for (const [i, piece] of pieces.entries()) {
    for (const j of index.within(piece.shape.box)) {
      const other = pieces[j]!;
      if (j <= i || goesOn(piece, other, ends)) continue;
      meetings += pieceIntersections(piece.shape, other.shape).length;
      if (++pairs > CROWD_LIMITS.pairs || meetings > CROWD_LIMITS.meetings) return true;
    }
  }
  return false;
}

const endsOf = ({ shape: { from, to } }: LaidPiece): string[] => [from, to].map(({ x, y }) => `${x} ${y}`);

/** How many pieces end in each place in which any does. */
function endCounts(pieces: readonly LaidPiece[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const end of pieces.flatMap(endsOf)) counts.set(end, (counts.get(end) ?? 0) + 1);
  return counts;
}

/** Whether one piece goes on where the other ends, in one stroke or in two: that is no meeting. */
function goesOn(a: LaidPiece, b: LaidPiece, ends: ReadonlyMap<string, number>): boolean {
  if (a.line === b.line && b.place === a.place + 1) return true;
  const others = endsOf(b);
  return endsOf(a).some((end) => ends.get(end) === 2 && others.includes(end));
}
