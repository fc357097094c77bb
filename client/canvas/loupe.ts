import type { ScreenPoint } from '../../shared/geometry/units.ts';
import { COLOUR } from './colours.ts';
import type { Box } from './view.ts';

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
  /** From the lowest to the highest, each with `ratio` pixels a CSS pixel. */
  readonly layers: readonly HTMLCanvasElement[];
  readonly ratio: number;
  /** The sheet in CSS pixels of the box; the layers show only what is on it. */
  readonly paper: {
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  };
}

/** Shows on `canvas` what lies around a finger, in the middle what is under it. */
export function drawLoupe(canvas: HTMLCanvasElement, finger: ScreenPoint, source: LoupeSource): void {
  const ctx = canvas.getContext('2d');
  if (!ctx) return;
  const { layers, ratio, paper } = source;
  const size = Math.round(LOUPE * ratio);
  if (canvas.width !== size) {
    canvas.width = size;
    canvas.height = size;
  }
  const across = LOUPE / LARGER;
  const [left, top] = [finger.px - across / 2, finger.py - across / 2];
  const scale = size / across;
  ctx.fillStyle = COLOUR.table;
  ctx.fillRect(0, 0, size, size);
  ctx.fillStyle = COLOUR.sheet;
  ctx.fillRect(
    (paper.left - left) * scale,
    (paper.top - top) * scale,
    paper.width * scale,
    paper.height * scale,
  );
  for (const layer of layers)
    ctx.drawImage(layer, left * ratio, top * ratio, across * ratio, across * ratio, 0, 0, size, size);
}
