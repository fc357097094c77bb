import { type PieceShape, pieceAt, pieceFoot } from '../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import type { Picture, PictureBand } from '../../shared/picture/shapes.ts';
import { COLOUR, hatchColour } from './colours.ts';
import { type Painter, strokeGhost, tracePieces, tracePoints } from './painter.ts';

type Context = CanvasRenderingContext2D;

/** Lines and bands as they lie on the sheet. */
export const paintInk =
  (picture: Picture): Painter =>
  (ctx, pixel) => {
    ctx.lineCap = 'round';
    ctx.lineJoin = 'round';
    for (const stroke of picture.strokes) {
      ctx.beginPath();
      tracePieces(ctx, stroke.pieces);
      ctx.lineWidth = stroke.width;
      ctx.strokeStyle = stroke.role === 'given' ? COLOUR.given : COLOUR.ink;
      ctx.stroke();
    }
    for (const band of picture.bands) paintBand(ctx, band, pixel);
  };

/** Colour, hatch and a rim of ink: three ways to tell a band. */
export function paintBand(ctx: Context, band: PictureBand, pixel: Mm): void {
  ctx.lineJoin = 'miter';
  ctx.beginPath();
  tracePoints(ctx, band.outline, true);
  ctx.fillStyle = band.color;
  ctx.fill();
  paintHatch(ctx, band);
  ctx.beginPath();
  tracePoints(ctx, band.outline, true);
  ctx.lineWidth = Math.max(0.35, pixel);
  ctx.strokeStyle = COLOUR.ink;
  ctx.stroke();
}

function paintHatch(ctx: Context, band: PictureBand): void {
  const colour = hatchColour(band.color);
  ctx.beginPath();
  for (const stroke of band.hatchStrokes) tracePoints(ctx, stroke);
  ctx.lineWidth = 0.4;
  ctx.lineCap = 'butt';
  ctx.strokeStyle = colour;
  ctx.stroke();
  ctx.fillStyle = colour;
  for (const dot of band.hatchDots) {
    ctx.beginPath();
    ctx.arc(dot.x, dot.y, 0.55, 0, 2 * Math.PI);
    ctx.fill();
  }
}

/** A stroke in progress, as the finger goes. */
export const paintSamples =
  (samples: readonly PaperPoint[], width: Mm): Painter =>
  (ctx) => {
    if (samples.length === 0) return;
    ctx.beginPath();
    tracePoints(ctx, samples.length === 1 ? [samples[0]!, samples[0]!] : samples);
    ctx.lineCap = 'round';
    ctx.lineJoin = 'round';
    ctx.lineWidth = width;
    ctx.strokeStyle = COLOUR.ink;
    ctx.stroke();
  };

/** What is chosen glows in the accent, under its ink. */
export const paintGlow =
  (runs: readonly (readonly PieceShape[])[], width: Mm): Painter =>
  (ctx, pixel) => {
    ctx.lineCap = 'round';
    ctx.lineJoin = 'round';
    ctx.strokeStyle = COLOUR.accent;
    ctx.globalAlpha = 0.28;
    ctx.lineWidth = width + 12 * pixel;
    ctx.beginPath();
    for (const pieces of runs) tracePieces(ctx, pieces);
    ctx.stroke();
  };

/** Round handles that can be taken hold of. */
export const paintHandles =
  (points: readonly PaperPoint[]): Painter =>
  (ctx, pixel) => {
    for (const p of points) {
      ctx.beginPath();
      ctx.arc(p.x, p.y, 7 * pixel, 0, 2 * Math.PI);
      ctx.fillStyle = COLOUR.sheet;
      ctx.fill();
      ctx.lineWidth = 3 * pixel;
      ctx.strokeStyle = COLOUR.accent;
      ctx.stroke();
    }
  };

/** The handle that has been taken hold of. */
export const paintChosenHandle =
  (at: PaperPoint | undefined): Painter =>
  (ctx, pixel) => {
    if (!at) return;
    ctx.beginPath();
    ctx.arc(at.x, at.y, 9 * pixel, 0, 2 * Math.PI);
    ctx.fillStyle = COLOUR.accent;
    ctx.fill();
    ctx.lineWidth = 3 * pixel;
    ctx.strokeStyle = COLOUR.sheet;
    ctx.stroke();
  };

/** The outline round all bands of one mark: their left sides, and back along their right sides. */
function blockOutline(bands: readonly PictureBand[]): PaperPoint[] {
  const left = bands.flatMap(({ outline }) => outline.slice(0, outline.length / 2));
  const right = bands.flatMap(({ outline }) => outline.slice(outline.length / 2).reverse());
  return [...left, ...right.reverse()];
}

/** A frame around a chosen mark. */
export const paintMarkFrame =
  (bands: readonly PictureBand[]): Painter =>
  (ctx, pixel) => {
    ctx.lineJoin = 'round';
    ctx.strokeStyle = COLOUR.accent;
    ctx.lineWidth = 11 * pixel;
    ctx.beginPath();
    tracePoints(ctx, blockOutline(bands), true);
    ctx.stroke();
    ctx.strokeStyle = COLOUR.sheet;
    ctx.lineWidth = 5 * pixel;
    ctx.stroke();
    for (const band of bands) paintBand(ctx, band, pixel);
  };

/** A ghost piece this near to ink, all along, shows nothing new. */
const SAME_PLACE: Mm = 0.3;

/** What a mended drawing would change: dashed accent lines, and marks as dashed blocks. */
export function paintGhost(ghost: Picture, now: Picture): Painter {
  const inked = now.strokes.flatMap((stroke) => stroke.pieces);
  const isNew = (piece: PieceShape) =>
    [0, 0.25, 0.5, 0.75, 1].some((share) => {
      const p = pieceAt(piece, piece.length * share);
      return inked.every((other) => pieceFoot(other, p).distance > SAME_PLACE);
    });
  const pieces = ghost.strokes.flatMap((stroke) => stroke.pieces.filter(isNew));
  const before = new Set(now.bands.map((band) => JSON.stringify(band.outline)));
  const bands = ghost.bands.filter((band) => !before.has(JSON.stringify(band.outline)));
  const marks = new Set(bands.map((band) => band.mark));
  return (ctx, pixel) => {
    ctx.beginPath();
    for (const piece of pieces) tracePieces(ctx, [piece]);
    for (const mark of marks) tracePoints(ctx, blockOutline(bands.filter((b) => b.mark === mark)), true);
    strokeGhost(ctx, pixel);
  };
}
