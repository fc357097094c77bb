import type { Box } from '../../shared/geometry/box.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { COLOUR } from './colours.ts';
import { type Painter, tracePoints } from './painter.ts';

const cornersOf = ({ minX, minY, maxX, maxY }: Box): PaperPoint[] => [
  { x: minX, y: minY },
  { x: maxX, y: minY },
  { x: maxX, y: maxY },
  { x: minX, y: maxY },
];

/** A box that is being drawn to choose what lies in it. */
export const paintChoosing =
  (box: Box): Painter =>
  (ctx, pixel) => {
    ctx.beginPath();
    tracePoints(ctx, cornersOf(box), true);
    ctx.globalAlpha = 0.12;
    ctx.fillStyle = COLOUR.accent;
    ctx.fill();
    ctx.globalAlpha = 1;
    ctx.setLineDash([6 * pixel, 4 * pixel]);
    ctx.lineWidth = 2 * pixel;
    ctx.strokeStyle = COLOUR.accent;
    ctx.stroke();
  };

/** Free pixels between what is chosen and the frame around it. */
const RIM = 14;

/** A frame around what is chosen, and the handle above it that turns it. */
export const paintChosen =
  (box: Box, handle: PaperPoint): Painter =>
  (ctx, pixel) => {
    const rim = RIM * pixel;
    ctx.strokeStyle = COLOUR.accent;
    ctx.lineWidth = 2 * pixel;
    ctx.beginPath();
    ctx.moveTo(handle.x, handle.y);
    ctx.lineTo(handle.x, box.minY - rim);
    ctx.stroke();
    ctx.setLineDash([6 * pixel, 4 * pixel]);
    ctx.beginPath();
    const { minX, minY, maxX, maxY } = box;
    tracePoints(
      ctx,
      cornersOf({ minX: minX - rim, minY: minY - rim, maxX: maxX + rim, maxY: maxY + rim }),
      true,
    );
    ctx.stroke();
    ctx.setLineDash([]);
    ctx.beginPath();
    ctx.arc(handle.x, handle.y, 11 * pixel, 0, 2 * Math.PI);
    ctx.fillStyle = COLOUR.sheet;
    ctx.fill();
    ctx.lineWidth = 3 * pixel;
    ctx.stroke();
    // Three quarters of a circle with a head: it goes round.
    ctx.lineWidth = 2 * pixel;
    ctx.beginPath();
    ctx.arc(handle.x, handle.y, 5 * pixel, 0, 1.5 * Math.PI);
    ctx.lineTo(handle.x + 3.5 * pixel, handle.y - 5 * pixel);
    ctx.stroke();
  };

/** Stems beside the line with a knob each, by which the ends of bands are pulled. */
export const paintBandHandles =
  (handles: readonly { readonly at: PaperPoint; readonly foot: PaperPoint }[]): Painter =>
  (ctx, pixel) => {
    ctx.strokeStyle = COLOUR.accent;
    for (const { at, foot } of handles) {
      ctx.lineWidth = 2 * pixel;
      ctx.beginPath();
      tracePoints(ctx, [foot, at]);
      ctx.stroke();
      ctx.lineWidth = 3 * pixel;
      ctx.beginPath();
      ctx.arc(at.x, at.y, 6 * pixel, 0, 2 * Math.PI);
      ctx.fillStyle = COLOUR.sheet;
      ctx.fill();
      ctx.stroke();
    }
  };

/** So far beyond the caught place a guide goes on, CSS pixels. */
const BEYOND = 60;

/** Why a straight caught in its direction: a dashed line along it, and the straight that it runs beside. */
export const paintGuide =
  (from: PaperPoint, to: PaperPoint, like?: readonly [PaperPoint, PaperPoint]): Painter =>
  (ctx, pixel) => {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const length = Math.sqrt(dx * dx + dy * dy) || 1;
    const beyond = (BEYOND * pixel) / length;
    ctx.strokeStyle = COLOUR.accent;
    ctx.lineWidth = 1.5 * pixel;
    ctx.setLineDash([5 * pixel, 5 * pixel]);
    ctx.beginPath();
    tracePoints(ctx, [
      { x: from.x - dx * beyond, y: from.y - dy * beyond },
      { x: to.x + dx * beyond, y: to.y + dy * beyond },
    ]);
    ctx.stroke();
    if (!like) return;
    ctx.setLineDash([]);
    ctx.globalAlpha = 0.4;
    ctx.lineCap = 'round';
    ctx.lineWidth = 14 * pixel;
    ctx.beginPath();
    tracePoints(ctx, like);
    ctx.stroke();
  };
