import type { Design, Line, Mark, Piece } from '../../../shared/documents/design.ts';
import type { Mm, PaperPoint } from '../../../shared/geometry/units.ts';

/** The file form holds 0.01 mm and bulges of six places; drawings hold the same numbers at once. */
const HUNDREDTHS = 100;
const MILLIONTHS = 1e6;
/** The schema's own limit: a sweep of 341 degrees. */
const MOST_BULGE = 12;

/** Rounds like the file form; never "-0", so that equal drawings are equal bytes. */
export const roundLength = (mm: Mm): Mm => Math.round(mm * HUNDREDTHS) / HUNDREDTHS + 0;
export const roundPoint = (p: PaperPoint): PaperPoint => ({ x: roundLength(p.x), y: roundLength(p.y) });
export const roundBulge = (bulge: number): number =>
  Math.round(Math.max(-MOST_BULGE, Math.min(MOST_BULGE, bulge)) * MILLIONTHS) / MILLIONTHS + 0;

const roundPiece = (piece: Piece): Piece => ({ to: roundPoint(piece.to), bulge: roundBulge(piece.bulge) });

/** A line in file precision; pieces that became length zero are left out. */
export function roundLine(line: Line): Line {
  let at = roundPoint(line.from);
  const pieces = line.pieces.map(roundPiece).filter((piece) => {
    const somewhere = piece.to.x !== at.x || piece.to.y !== at.y;
    if (somewhere) at = piece.to;
    return somewhere;
  });
  return { ...line, from: roundPoint(line.from), pieces };
}

export const roundMark = (mark: Mark): Mark => ({ ...mark, at: roundLength(Math.max(0, mark.at)) });

export const designOf = (lines: readonly Line[], marks: readonly Mark[]): Design => ({
  version: 1,
  drawing: { lines: lines.map(roundLine), marks: marks.map(roundMark) },
});
