import type { PaperPoint } from '../../shared/geometry/units.ts';
import { COLOUR } from './colours.ts';
import { type Painter, paintLabel, tracePoints } from './painter.ts';
import type { ReadingNote } from './reading-notes.ts';
import { toPaper, type View } from './view.ts';

/** Half an arrow, and its head, CSS pixels. */
const HALF = 9;
const HEAD = 4.5;

/** Beside each mark an arrow for either traveller, and in words what it tells them. */
export const paintNotes =
  (notes: readonly ReadingNote[], view: View, size: number): Painter =>
  (ctx, pixel) => {
    ctx.strokeStyle = COLOUR.quiet;
    ctx.lineWidth = 1.8 * pixel;
    ctx.lineCap = 'round';
    ctx.lineJoin = 'round';
    for (const { at, along } of notes) {
      const place = (ahead: number, right: number): PaperPoint => ({
        x: at.x + (along.x * ahead - along.y * right) * pixel,
        y: at.y + (along.y * ahead + along.x * right) * pixel,
      });
      ctx.beginPath();
      tracePoints(ctx, [place(-HALF, 0), place(HALF, 0)]);
      tracePoints(ctx, [place(HALF - HEAD, -HEAD), place(HALF, 0), place(HALF - HEAD, HEAD)]);
      ctx.stroke();
    }
    for (const { text } of notes) {
      if (!text) continue;
      const { said, align } = text;
      const label = { text: said, at: toPaper(view, text.at), align, baseline: 'middle' } as const;
      paintLabel(ctx, label, size, pixel, COLOUR.quiet, 600);
    }
  };
