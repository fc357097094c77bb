import type { Mm } from '../../shared/geometry/units.ts';
import type {
  Picture,
  PictureBerth,
  PictureBox,
  PictureGate,
  PicturePolygon,
} from '../../shared/picture/shapes.ts';
import { COLOUR } from './colours.ts';
import { type Painter, paintLabel, tracePoints } from './painter.ts';

type Context = CanvasRenderingContext2D;

/** What is printed on the paper before anybody draws. `textSize` in CSS pixels. */
export const paintSheet =
  (picture: Picture, textSize: number): Painter =>
  (ctx, pixel) => {
    paintGrid(ctx, picture, pixel);
    for (const area of picture.areas) paintArea(ctx, area, textSize, pixel);
    for (const area of picture.keepOut) paintKeepOut(ctx, area, textSize, pixel);
    for (const box of picture.boxes) paintBox(ctx, box, textSize, pixel);
    for (const gate of picture.gates) paintGate(ctx, gate, textSize, pixel);
    for (const berth of picture.berths) paintBerth(ctx, berth, textSize, pixel);
  };

function paintGrid(ctx: Context, { grid, w, h }: Picture, pixel: Mm): void {
  const lines = (ways: { readonly xs: readonly Mm[]; readonly ys: readonly Mm[] }, colour: string) => {
    ctx.beginPath();
    for (const x of ways.xs) {
      ctx.moveTo(x, 0);
      ctx.lineTo(x, h);
    }
    for (const y of ways.ys) {
      ctx.moveTo(0, y);
      ctx.lineTo(w, y);
    }
    ctx.strokeStyle = colour;
    ctx.stroke();
  };
  ctx.lineWidth = pixel;
  // On a sheet of some metres the fine grid would be a grey veil.
  if (pixel < 0.9) lines(grid.fine, COLOUR.gridFine);
  lines(grid.coarse, COLOUR.grid);
}

function paintArea(ctx: Context, area: PicturePolygon, size: number, pixel: Mm): void {
  ctx.beginPath();
  tracePoints(ctx, area.polygon, true);
  ctx.fillStyle = COLOUR.accentWash;
  ctx.fill();
  ctx.lineWidth = 1.5 * pixel;
  ctx.strokeStyle = COLOUR.accent;
  ctx.setLineDash([7 * pixel, 4 * pixel]);
  ctx.stroke();
  ctx.setLineDash([]);
  paintLabel(ctx, area.label, size, pixel, COLOUR.accent);
}

/** Shoal ground: washed, edged and hatched, so that it is no mere tint. */
function paintKeepOut(ctx: Context, area: PicturePolygon, size: number, pixel: Mm): void {
  const xs = area.polygon.map((p) => p.x);
  const ys = area.polygon.map((p) => p.y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  ctx.save();
  ctx.beginPath();
  tracePoints(ctx, area.polygon, true);
  ctx.fillStyle = COLOUR.cautionWash;
  ctx.fill();
  ctx.clip();
  ctx.beginPath();
  for (let x = left - (bottom - top); x < right; x += 6) {
    ctx.moveTo(x, bottom);
    ctx.lineTo(x + bottom - top, top);
  }
  ctx.lineWidth = 0.4;
  ctx.strokeStyle = COLOUR.caution;
  ctx.globalAlpha = 0.45;
  ctx.stroke();
  ctx.restore();
  ctx.beginPath();
  tracePoints(ctx, area.polygon, true);
  ctx.lineJoin = 'round';
  ctx.lineWidth = 2 * pixel;
  ctx.strokeStyle = COLOUR.caution;
  ctx.stroke();
  paintLabel(ctx, area.label, size, pixel, COLOUR.caution);
}

/** Two CSS pixels, or what keeps its share of the sheet on a big screen that is read from afar. */
const hairline = (pixel: Mm): Mm => Math.max(2 * pixel, 0.55);

/** No wash, so that it is no area, and corners that are whole, so that it is neither gate nor berth. */
function paintBox(ctx: Context, box: PictureBox, size: number, pixel: Mm): void {
  const hair = hairline(pixel);
  ctx.lineWidth = hair;
  ctx.lineCap = 'butt';
  ctx.strokeStyle = COLOUR.quiet;
  ctx.setLineDash([2 * hair, 2 * hair]);
  ctx.beginPath();
  tracePoints(ctx, box.polygon, true);
  ctx.stroke();
  ctx.setLineDash([]);
  ctx.lineJoin = 'miter';
  ctx.lineWidth = 1.25 * hair;
  ctx.beginPath();
  for (const angle of box.angles) tracePoints(ctx, angle);
  ctx.stroke();
  paintLabel(ctx, box.label, size, pixel, COLOUR.quiet);
}

function paintGate(ctx: Context, gate: PictureGate, size: number, pixel: Mm): void {
  const hair = hairline(pixel);
  ctx.beginPath();
  tracePoints(ctx, [gate.a, gate.b]);
  ctx.lineWidth = hair;
  ctx.strokeStyle = COLOUR.quiet;
  ctx.setLineDash([hair, 2.5 * hair]);
  ctx.lineCap = 'round';
  ctx.stroke();
  ctx.setLineDash([]);
  for (const post of [gate.a, gate.b]) {
    ctx.beginPath();
    ctx.arc(post.x, post.y, 2, 0, 2 * Math.PI);
    ctx.fillStyle = COLOUR.sheet;
    ctx.fill();
    ctx.lineWidth = hair;
    ctx.stroke();
  }
  paintLabel(ctx, gate.label, size, pixel);
}

function paintBerth(ctx: Context, berth: PictureBerth, size: number, pixel: Mm): void {
  const hair = hairline(pixel);
  ctx.lineWidth = hair;
  ctx.lineCap = 'butt';
  ctx.lineJoin = 'round';
  ctx.strokeStyle = COLOUR.quiet;
  ctx.setLineDash([3.5 * hair, 2.5 * hair]);
  ctx.beginPath();
  tracePoints(ctx, berth.hull);
  ctx.stroke();
  ctx.setLineDash([]);
  ctx.lineCap = 'round';
  ctx.lineWidth = 1.25 * hair;
  ctx.beginPath();
  for (const stroke of berth.bow) tracePoints(ctx, stroke);
  ctx.stroke();
  paintLabel(ctx, berth.label, size, pixel);
}
