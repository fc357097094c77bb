import type { Band, Design, Line, Mark, Piece } from '../../shared/documents/design.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';

/** The file form holds 0.01 mm and bulges of six places; drawings hold the same numbers at once. */
const HUNDREDTHS = 100;
const MILLIONTHS = 1e6;
/** The schema's own limit: a sweep of 341 degrees. */
const MOST_BULGE = 12;

/** Rounds like the file form; never "-0", so that equal drawings are equal bytes. */
export const roundLength = (mm: Mm): Mm => Math.round(mm * HUNDREDTHS) / HUNDREDTHS + 0;
export const roundPoint = (p: PaperPoint): PaperPoint => ({ x: roundLength(p.x), y: roundLength(p.y) });
const roundBulge = (bulge: number): number =>
  Math.round(Math.max(-MOST_BULGE, Math.min(MOST_BULGE, bulge)) * MILLIONTHS) / MILLIONTHS + 0;

const roundPiece = (piece: Piece): Piece => ({ to: roundPoint(piece.to), bulge: roundBulge(piece.bulge) });

const isRound = (p: PaperPoint): boolean => p.x === roundLength(p.x) && p.y === roundLength(p.y);

const isRoundLine = ({ from, pieces }: Line): boolean =>
  isRound(from) &&
  pieces.every(({ to, bulge }, i) => {
    const before = i === 0 ? from : pieces[i - 1]!.to;
    return isRound(to) && bulge === roundBulge(bulge) && (to.x !== before.x || to.y !== before.y);
  });

/**
 * A line in file precision; pieces that became length zero are left out. One that is so already is itself,
 * so that all steps of the way back share what they have in common.
 */
export function roundLine(line: Line): Line {
  if (isRoundLine(line)) return line;
  let at = roundPoint(line.from);
  const pieces = line.pieces.map(roundPiece).filter((piece) => {
    const somewhere = piece.to.x !== at.x || piece.to.y !== at.y;
    if (somewhere) at = piece.to;
    return somewhere;
  });
  return { ...line, from: roundPoint(line.from), pieces };
}

const isRoundBand = (band: Band): boolean =>
  band.length === roundLength(band.length) && band.gap === roundLength(band.gap);

/** A mark in file precision; one that is so already is itself. */
function roundMark(mark: Mark): Mark {
  const at = roundLength(Math.max(0, mark.at));
  if (at === mark.at && mark.bands.every(isRoundBand)) return mark;
  const bands = mark.bands.map(({ ink, length, gap }) => ({
    ink,
    length: roundLength(length),
    gap: roundLength(gap),
  }));
  return { ...mark, at, bands };
}

export const designOf = (lines: readonly Line[], marks: readonly Mark[]): Design => ({
  version: 1,
  drawing: { lines: lines.map(roundLine), marks: marks.map(roundMark) },
});
