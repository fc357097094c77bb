import { boxesMeet, boxOf, type Box as PaperBox } from '../../shared/geometry/box.ts';
import type { Mm, ScreenPoint } from '../../shared/geometry/units.ts';
import type { Picture } from '../../shared/picture/shapes.ts';
import { COLOUR } from './colours.ts';
import type { Painter } from './painter.ts';
import { type Box, toPaper, type View } from './view.ts';

/** Across, CSS pixels. */
export const LOUPE = 136;
/** How much larger it shows what lies under the finger. */
const LARGER = 1.5;
/** From the finger's middle to the loupe's: past the fingertip and what it hides. */
const AWAY = 126;
const RIM = 6;

/** Ways from the finger to the loupe: above it, else to a side, slanting or level. */
const WAYS = [
  [0, -1],
  [-0.8, -0.6],
  [0.8, -0.6],
  [-1, 0],
  [1, 0],
] as const;

/**
 * The middle of the loupe for a finger in a box: above it, and near the top edge beside it, away from the
 * nearer side. It never covers what is under the finger.
 */
export function loupePlace(finger: ScreenPoint, { width, height }: Box): ScreenPoint {
  const half = LOUPE / 2 + RIM;
  const places = WAYS.map(([x, y]) => ({ px: finger.px + x * AWAY, py: finger.py + y * AWAY }));
  const fits = ({ px, py }: ScreenPoint) =>
    px >= half && py >= half && px <= width - half && py <= height - half;
  const within = places.find(fits);
  if (within) return within;
  // In a corner only a slanting way down is left.
  const side = finger.px < width / 2 ? 1 : -1;
  return { px: finger.px + side * 0.8 * AWAY, py: finger.py + 0.6 * AWAY };
}

export interface LoupeSource {
  readonly view: View;
  readonly box: Box;
  /** Canvas pixels a CSS pixel. */
  readonly ratio: number;
  readonly picture: Picture;
  /** Everything that the sheet shows, with the ink of a picture. */
  readonly paint: (picture: Picture) => Painter;
}

/** What of a picture's ink comes near a part of the paper: a loupe is drawn anew at every move. */
function inkIn(picture: Picture, part: PaperBox): Picture {
  const near = (box: PaperBox, width: Mm) => boxesMeet(box, part, width);
  return {
    ...picture,
    strokes: picture.strokes.filter(({ pieces, width }) => pieces.some((piece) => near(piece.box, width))),
    bands: picture.bands.filter((band) => near(boxOf(band.outline), 0)),
  };
}

/** Shows on `canvas` what lies around a finger, larger and as sharp, in the middle what is under it. */
export function drawLoupe(canvas: HTMLCanvasElement, finger: ScreenPoint, source: LoupeSource): void {
  const ctx = canvas.getContext('2d');
  if (!ctx) return;
  const { view, box, ratio, picture, paint } = source;
  const { px, py } = loupePlace(finger, box);
  canvas.style.transform = `translate(${px - LOUPE / 2}px, ${py - LOUPE / 2}px)`;
  const size = Math.round(LOUPE * ratio);
  if (canvas.width !== size) {
    canvas.width = size;
    canvas.height = size;
  }
  const at = toPaper(view, finger);
  const scale = view.scale * LARGER;
  const half = LOUPE / 2 / scale;
  const part = { minX: at.x - half, maxX: at.x + half, minY: at.y - half, maxY: at.y + half };
  ctx.resetTransform();
  ctx.fillStyle = COLOUR.table;
  ctx.fillRect(0, 0, size, size);
  ctx.scale(scale * ratio, scale * ratio);
  ctx.translate(-part.minX, -part.minY);
  ctx.fillStyle = COLOUR.sheet;
  ctx.fillRect(0, 0, picture.w, picture.h);
  paint(inkIn(picture, part))(ctx, 1 / scale);
}
