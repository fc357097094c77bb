import { cos, sin } from '../geometry/exact-math.ts';
import type { Arc, PieceShape, Straight } from '../geometry/piece.ts';
import type { Mm } from '../geometry/units.ts';
import { FOOTPRINT_REACH, shareInside } from './blur.ts';

/** Chosen, mm: deviation of a sensor's footprint on the paper, a Gaussian. */
export const FOOTPRINT: Mm = 0.8;
/** How far from an edge of ink a sensor still sees it, mm. */
export const INK_REACH: Mm = FOOTPRINT_REACH * FOOTPRINT;

/** Raster: pixels a mm, pixels a tile's side, and stored pixels a side: one more, for looking up between. */
export const PIXELS_PER_MM = 3;
export const TILE_BITS = 5;
export const TILE = 1 << TILE_BITS;
export const TILE_ROW = TILE + 1;
export const TILE_PIXELS = TILE_ROW * TILE_ROW;
/** Words of grey a tile: the last row has its place in those of the row above. */
export const TILE_WORDS = TILE * TILE_ROW;

/** One byte a channel, this being 1. */
export const FULL = 255;

/** A piece of line as wide as its marker. */
export interface Stroke {
  readonly line: number;
  readonly piece: PieceShape;
  readonly half: Mm;
  /** Way along its line to its beginning. */
  readonly start: Mm;
}

/**
 * Share of the footprint that lies on a strip of half width `half` at `across` from its middle: exact
 * beside a straight, and on a curve good to the curvature of the strip within the footprint.
 */
export function shareOnStrip(across: Mm, half: Mm): number {
  return shareInside((half - across) / FOOTPRINT) - shareInside((-half - across) / FOOTPRINT);
}

/** Adds a stroke to a tile's coverage (0 to 1 a pixel), keeping the larger where strokes overlap. */
export function coverTile(coverage: Float64Array, left: Mm, top: Mm, stroke: Stroke): void {
  if (stroke.piece.kind === 'straight') coverStraight(coverage, left, top, stroke.piece, stroke.half);
  else coverArc(coverage, left, top, stroke.piece, stroke.half);
}

/** Takes a pixel by the square of its distance from the middle of a stroke. */
function raise(coverage: Float64Array, pixel: number, square: number, half: Mm): void {
  const reach = half + INK_REACH;
  if (square >= reach * reach) return;
  const share = shareOnStrip(Math.sqrt(square), half);
  if (share > coverage[pixel]!) coverage[pixel] = share;
}

/** Columns of a tile between two places from its left side: a pixel more on each side, so that rounding leaves none out. */
export const columnFrom = (x: Mm): number => Math.max(0, Math.floor(x * PIXELS_PER_MM) - 1);
export const columnTo = (x: Mm): number => Math.min(TILE_ROW - 1, Math.ceil(x * PIXELS_PER_MM) + 1);

/** Across a row of pixels the distance from a straight changes evenly: only some columns can be near. */
function coverStraight(coverage: Float64Array, left: Mm, top: Mm, piece: Straight, half: Mm): void {
  const { from, along, length } = piece;
  const reach = half + INK_REACH;
  for (let row = 0; row < TILE_ROW; row++) {
    const y = top + row / PIXELS_PER_MM - from.y;
    const across = y * along.x - (left - from.x) * along.y;
    const one = (across - reach) / along.y;
    const other = (across + reach) / along.y;
    const first = columnFrom(Math.min(one, other));
    const last = columnTo(Math.max(one, other));
    for (let column = first; column <= last; column++) {
      const x = left + column / PIXELS_PER_MM - from.x;
      const way = x * along.x + y * along.y;
      const s = way < 0 ? 0 : Math.min(way, length);
      const dx = x - s * along.x;
      const dy = y - s * along.y;
      raise(coverage, row * TILE_ROW + column, dx * dx + dy * dy, half);
    }
  }
}

function coverArc(coverage: Float64Array, left: Mm, top: Mm, piece: Arc, half: Mm): void {
  const { center, radius } = piece;
  const inner = Math.max(radius - half - INK_REACH, 0);
  const outer = radius + half + INK_REACH;
  // A point belongs to the arc where its direction is within half the sweep of the arc's middle.
  const middle = piece.start + piece.sweep / 2;
  const mx = cos(middle);
  const my = sin(middle);
  const least = cos(piece.sweep / 2);
  for (let row = 0; row < TILE_ROW; row++) {
    const y = top + row / PIXELS_PER_MM - center.y;
    const chord = Math.sqrt(Math.max(outer * outer - y * y, 0));
    const first = columnFrom(center.x - chord - left);
    const last = columnTo(center.x + chord - left);
    for (let column = first; column <= last; column++) {
      const x = left + column / PIXELS_PER_MM - center.x;
      const square = x * x + y * y;
      if (square < inner * inner || square > outer * outer) continue;
      const out = Math.sqrt(square);
      const off = out - radius;
      const beside = x * mx + y * my >= least * out;
      const fromMiddle = beside ? off * off : squareToEnds(piece, x + center.x, y + center.y);
      raise(coverage, row * TILE_ROW + column, fromMiddle, half);
    }
  }
}

function squareToEnds({ from, to }: Arc, x: Mm, y: Mm): number {
  const toFrom = (x - from.x) * (x - from.x) + (y - from.y) * (y - from.y);
  const toTo = (x - to.x) * (x - to.x) + (y - to.y) * (y - to.y);
  return Math.min(toFrom, toTo);
}
