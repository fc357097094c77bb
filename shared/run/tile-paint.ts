import type { Mm } from '../geometry/units.ts';
import { addBandPart, type BandLayer, type BandPart } from './band-paint.ts';
import { coverTile, FULL, type Stroke, TILE_PIXELS } from './coverage.ts';
import { BLACK, greyOf, WHITE } from './reflectance.ts';

/** All that shows on one tile, in the order of the layout. */
export interface InkedTile {
  readonly strokes: readonly Stroke[];
  readonly bands: readonly BandPart[];
}

/** The stored byte of a reflectance; rounds to the nearest. */
const byteOf = (reflectance: number): number => (reflectance * FULL + 0.5) | 0;
export const WHITE_BYTE = byteOf(WHITE);
export const BLACK_BYTE = byteOf(BLACK);

/** Scratch for one tile after another. */
export interface Easel {
  readonly coverage: Float64Array;
  readonly beside: Float64Array;
  readonly layer: BandLayer;
  readonly light: Float64Array;
  /** The grey pixels of the tile that was painted last. */
  readonly grey: Uint8Array;
}

export const newEasel = (): Easel => ({
  coverage: new Float64Array(TILE_PIXELS),
  beside: new Float64Array(TILE_PIXELS),
  layer: { share: new Float64Array(TILE_PIXELS), light: new Float64Array(3 * TILE_PIXELS) },
  light: new Float64Array(3 * TILE_PIXELS),
  grey: new Uint8Array(TILE_PIXELS),
});

/** Paints a tile whose top left corner is given: the easel's grey pixels, and where it has bands its colours. */
export function paintTile(
  { coverage, beside, layer, light, grey }: Easel,
  tile: InkedTile,
  left: Mm,
  top: Mm,
  color: Uint8Array,
): void {
  coverage.fill(0);
  for (const stroke of tile.strokes) coverTile(coverage, left, top, stroke);
  if (tile.bands.length === 0) {
    for (let pixel = 0; pixel < TILE_PIXELS; pixel++) {
      const share = coverage[pixel]!;
      grey[pixel] = share === 0 ? WHITE_BYTE : byteOf(WHITE + (BLACK - WHITE) * share);
    }
    return;
  }
  blacken(light, coverage);
  for (const line of new Set(tile.bands.map((part) => part.line))) {
    const parts = tile.bands.filter((part) => part.line === line);
    layer.share.fill(0);
    layer.light.fill(0);
    for (const part of parts) addBandPart(layer, left, top, part);
    beside.fill(0);
    for (const stroke of tile.strokes) if (!isUnder(stroke, parts)) coverTile(beside, left, top, stroke);
    layOver(light, layer, beside);
  }
  storeLight(light, grey, color);
}

/** The three channels of a tile before its bands are painted. */
function blacken(light: Float64Array, coverage: Float64Array): void {
  for (let pixel = 0, i = 0; pixel < TILE_PIXELS; pixel++) {
    const plain = WHITE + (BLACK - WHITE) * coverage[pixel]!;
    light[i++] = plain;
    light[i++] = plain;
    light[i++] = plain;
  }
}

/** A stroke of the same line nearer than this to a band, along the line, is the line that the band is drawn into. */
const OWN_LINE: Mm = 15;

const isUnder = ({ line, start, piece }: Stroke, parts: readonly BandPart[]): boolean =>
  parts.some(
    (part) =>
      part.line === line && start <= part.to + OWN_LINE && start + piece.length >= part.from - OWN_LINE,
  );

/** Lays the bands of one line over the tile. Black of lines across or beside them stays black under them. */
function layOver(light: Float64Array, layer: BandLayer, beside: Float64Array): void {
  for (let pixel = 0; pixel < TILE_PIXELS; pixel++) {
    if (layer.share[pixel] === 0) continue;
    const share = Math.min(layer.share[pixel]!, 1);
    const excess = layer.share[pixel]! > 1 ? 1 / layer.share[pixel]! : 1;
    const shade = 1 + (BLACK / WHITE - 1) * beside[pixel]!;
    for (let i = 3 * pixel; i < 3 * pixel + 3; i++) {
      light[i] = (1 - share) * light[i]! + layer.light[i]! * excess * shade;
    }
  }
}

function storeLight(light: Float64Array, grey: Uint8Array, color: Uint8Array): void {
  for (let pixel = 0; pixel < TILE_PIXELS; pixel++) {
    const red = light[3 * pixel]!;
    const green = light[3 * pixel + 1]!;
    const blue = light[3 * pixel + 2]!;
    grey[pixel] = byteOf(greyOf(red, green, blue));
    color[3 * pixel] = byteOf(red);
    color[3 * pixel + 1] = byteOf(green);
    color[3 * pixel + 2] = byteOf(blue);
  }
}
