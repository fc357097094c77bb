import type { PieceShape } from '../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import type { PictureLabel } from '../../shared/picture/shapes.ts';
import { COLOUR, FACE } from './colours.ts';
import type { View } from './view.ts';

/**
 * Paints on a canvas whose unit is 1 mm of paper. `pixel` is the size of one CSS pixel in mm, for
 * hairlines and letters that keep their size on the screen.
 */
export type Painter = (ctx: CanvasRenderingContext2D, pixel: Mm) => void;

/** Paints a sheet as it lies in its box, on a context whose unit is 1 CSS pixel. */
export function paintIn(ctx: CanvasRenderingContext2D, { left, top, scale }: View, painter: Painter): void {
  ctx.save();
  ctx.translate(left, top);
  ctx.scale(scale, scale);
  painter(ctx, 1 / scale);
  ctx.restore();
}

/** Adds straights and arcs to the current path. */
export function tracePieces(ctx: CanvasRenderingContext2D, pieces: readonly PieceShape[]): void {
  const first = pieces[0];
  if (!first) return;
  ctx.moveTo(first.from.x, first.from.y);
  for (const piece of pieces) {
    if (piece.kind === 'straight') ctx.lineTo(piece.to.x, piece.to.y);
    else {
      const { center, radius, start, sweep } = piece;
      ctx.arc(center.x, center.y, radius, start, start + sweep, sweep < 0);
    }
  }
}

/** Adds a run of straight steps to the current path. */
export function tracePoints(
  ctx: CanvasRenderingContext2D,
  points: readonly PaperPoint[],
  closed = false,
): void {
  points.forEach((p, i) => {
    if (i === 0) ctx.moveTo(p.x, p.y);
    else ctx.lineTo(p.x, p.y);
  });
  if (closed) ctx.closePath();
}

/** Strokes the current path as something that is not there yet: dashes of the accent on a rim of paper. */
export function strokeGhost(ctx: CanvasRenderingContext2D, pixel: Mm): void {
  ctx.strokeStyle = COLOUR.sheet;
  ctx.lineWidth = 6 * pixel;
  ctx.stroke();
  ctx.setLineDash([9 * pixel, 6 * pixel]);
  ctx.strokeStyle = COLOUR.accent;
  ctx.lineWidth = 3 * pixel;
  ctx.stroke();
}

/**
 * A name on the sheet, with a rim of paper so that grid lines don't cut its letters. Set in CSS pixels:
 * letters of a few units, enlarged, would be spaced by whole units. Of size 0 it is left out.
 */
export function paintLabel(
  ctx: CanvasRenderingContext2D,
  label: PictureLabel,
  size: number,
  pixel: Mm,
  colour: string = COLOUR.ink,
  weight = 650,
): void {
  if (size === 0) return;
  ctx.save();
  ctx.translate(label.at.x, label.at.y);
  ctx.scale(pixel, pixel);
  ctx.font = `${weight} ${size}px ${FACE}`;
  ctx.textAlign = label.align === 'middle' ? 'center' : label.align;
  ctx.textBaseline = label.baseline === 'middle' ? 'middle' : label.baseline === 'top' ? 'top' : 'alphabetic';
  ctx.lineJoin = 'round';
  ctx.lineWidth = size / 4;
  ctx.strokeStyle = COLOUR.sheet;
  ctx.strokeText(label.text, 0, 0);
  ctx.fillStyle = colour;
  ctx.fillText(label.text, 0, 0);
  ctx.restore();
}

/** One after another. */
export const together =
  (...painters: readonly (Painter | null | undefined)[]): Painter =>
  (ctx, pixel) => {
    for (const painter of painters) {
      if (!painter) continue;
      ctx.save();
      painter(ctx, pixel);
      ctx.restore();
    }
  };
