import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { COLOUR } from './colours.ts';
import { type Painter, paintLabel, tracePoints } from './painter.ts';

/** What a question is about: a place to look at, an area, or ends of lines with their letters. */
export interface Pointed {
  readonly at: PaperPoint | null;
  readonly area: readonly PaperPoint[] | null;
  readonly letters: readonly { readonly letter: string; readonly at: PaperPoint }[];
}

/** CSS pixels. */
const RING = 30;
const LETTER = 20;

/** Points with a ring, a dashed edge or letters, over the sheet; each with a rim of paper. */
export const paintPointed =
  ({ at, area, letters }: Pointed): Painter =>
  (ctx, pixel) => {
    if (area) {
      ctx.beginPath();
      tracePoints(ctx, area, true);
      strokeTwice(ctx, pixel, 4);
    }
    if (at) {
      ctx.beginPath();
      ctx.arc(at.x, at.y, RING * pixel, 0, 2 * Math.PI);
      strokeTwice(ctx, pixel, 4);
    }
    for (const { letter, at: end } of letters) paintLetter(ctx, pixel, letter, end);
  };

function strokeTwice(ctx: CanvasRenderingContext2D, pixel: Mm, width: number): void {
  ctx.strokeStyle = COLOUR.sheet;
  ctx.lineWidth = (width + 4) * pixel;
  ctx.stroke();
  ctx.strokeStyle = COLOUR.accent;
  ctx.lineWidth = width * pixel;
  ctx.stroke();
}

function paintLetter(ctx: CanvasRenderingContext2D, pixel: Mm, letter: string, at: PaperPoint): void {
  ctx.beginPath();
  ctx.arc(at.x, at.y, 0.8 * LETTER * pixel, 0, 2 * Math.PI);
  ctx.fillStyle = COLOUR.sheet;
  ctx.fill();
  strokeTwice(ctx, pixel, 2.5);
  paintLabel(ctx, { text: letter, at, align: 'middle', baseline: 'middle' }, LETTER, pixel, COLOUR.accent);
}
