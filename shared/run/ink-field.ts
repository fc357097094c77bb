import type { Kit } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import { norm } from '../geometry/exact-math.ts';
import { type PieceShape, pieceFoot } from '../geometry/piece.ts';
import type { Mm } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';
import { addBandPart, type BandPart, bandParts, newBandLayer } from './band-paint.ts';
import { coverTile, INK_REACH, PIXELS_PER_MM, type Stroke, TILE, TILE_PIXELS } from './coverage.ts';
import { BLACK, greyOf, inkReflectance, type Reflectance, WHITE } from './reflectance.ts';

/**
 * The sheet's reflectance as a sensor's footprint sees it, 255 being 1. Only tiles near ink are stored:
 * a contest course on a sheet of 4 m takes 10 MB. Colour is stored near bands only; elsewhere the three
 * channels equal the grey one.
 */
export interface InkField {
  readonly width: Mm;
  readonly height: Mm;
  /** Tiles in a row. */
  readonly across: number;
  /** For each tile, where its pixels begin in `grey`. Tiles without ink share the white one at 0. */
  readonly tiles: Int32Array;
  readonly grey: Uint8Array;
  /** For each tile, where its pixels begin in `color`, three bytes a pixel; −1 without bands near. */
  readonly colorTiles: Int32Array;
  readonly color: Uint8Array;
}

/** One byte a channel. */
export const FULL = 255;
const TILE_SIDE: Mm = TILE / PIXELS_PER_MM;
/** A stroke of the same line nearer than this to a band, along the line, is the line that the band is drawn into. */
const OWN_LINE: Mm = 15;

interface TileGrid {
  readonly across: number;
  readonly down: number;
}

interface InkedTile {
  readonly strokes: Stroke[];
  readonly bands: BandPart[];
}

/**
 * Rasters the ink of a drawing, 3 pixels a mm, blurred by the sensors' footprint. Bands take the place
 * of the black line; the gap between two bands of a mark is white; overlapping bands multiply.
 */
export function buildInkField(layout: Layout, sheet: Sheet, kit: Kit): InkField {
  const grid = {
    across: Math.floor(sheet.w / TILE_SIDE) + 1,
    down: Math.floor(sheet.h / TILE_SIDE) + 1,
  };
  const inked = inkedTiles(grid, layout, kit);
  const withBands = [...inked.values()].filter((tile) => tile.bands.length > 0).length;
  const field: InkField = {
    width: sheet.w,
    height: sheet.h,
    across: grid.across,
    tiles: new Int32Array(grid.across * grid.down),
    grey: new Uint8Array((inked.size + 1) * TILE_PIXELS),
    colorTiles: new Int32Array(grid.across * grid.down).fill(-1),
    color: new Uint8Array(withBands * 3 * TILE_PIXELS),
  };
  field.grey.fill(byteOf(WHITE), 0, TILE_PIXELS);
  paintTiles(field, inked);
  return field;
}

/** Grey of a stored byte; rounds to the nearest. */
const byteOf = (reflectance: number): number => Math.floor(reflectance * FULL + 0.5);

function inkedTiles(grid: TileGrid, layout: Layout, kit: Kit): Map<number, InkedTile> {
  const inked = new Map<number, InkedTile>();
  const tileAt = (index: number): InkedTile => {
    const known = inked.get(index);
    if (known) return known;
    const tile: InkedTile = { strokes: [], bands: [] };
    inked.set(index, tile);
    return tile;
  };
  for (const stroke of strokesOf(layout)) {
    for (const index of tilesNear(grid, stroke.piece, stroke.half)) tileAt(index).strokes.push(stroke);
  }
  for (const part of bandParts(layout, tintsOf(kit))) {
    for (const index of tilesNear(grid, part.piece, part.half)) {
      if (nearBand(grid, index, part)) tileAt(index).bands.push(part);
    }
  }
  return inked;
}

const strokesOf = (layout: Layout): Stroke[] =>
  layout.lines.flatMap((line, index) =>
    line.path.pieces.map((piece, i) => ({
      line: index,
      piece,
      half: line.width / 2,
      start: line.path.starts[i]!,
    })),
  );

/** Share of white that comes back from each ink of the kit. */
function tintsOf(kit: Kit): Map<string, Reflectance> {
  return new Map(
    kit.inks.map((ink) => {
      const [red, green, blue] = inkReflectance(ink.color);
      return [ink.id, [red / WHITE, green / WHITE, blue / WHITE] as const];
    }),
  );
}

/** Half of a tile's diagonal, with its overlapping pixel. */
const TILE_REACH: Mm = norm(TILE_SIDE, TILE_SIDE) / 2 + 1 / PIXELS_PER_MM;

const tileCenter = (grid: TileGrid, index: number) => ({
  x: ((index % grid.across) + 0.5) * TILE_SIDE,
  y: (Math.floor(index / grid.across) + 0.5) * TILE_SIDE,
});

function* tilesNear(grid: TileGrid, piece: PieceShape, half: Mm): Generator<number> {
  const reach = half + INK_REACH;
  const bulge = piece.kind === 'arc' ? piece.center : undefined;
  const r = piece.kind === 'arc' ? piece.radius : 0;
  const xs = bulge ? [bulge.x - r, bulge.x + r] : [piece.from.x, piece.to.x];
  const ys = bulge ? [bulge.y - r, bulge.y + r] : [piece.from.y, piece.to.y];
  const clamp = (value: Mm, most: number): number =>
    Math.min(Math.max(Math.floor(value / TILE_SIDE), 0), most - 1);
  const lastColumn = clamp(Math.max(...xs) + reach, grid.across);
  const lastRow = clamp(Math.max(...ys) + reach, grid.down);
  for (let row = clamp(Math.min(...ys) - reach, grid.down); row <= lastRow; row++) {
    for (let column = clamp(Math.min(...xs) - reach, grid.across); column <= lastColumn; column++) {
      const index = row * grid.across + column;
      if (pieceFoot(piece, tileCenter(grid, index)).distance <= reach + TILE_REACH) yield index;
    }
  }
}

/** Whether a tile near a part's piece is near the part itself. A part may stick out past the piece's ends. */
function nearBand(grid: TileGrid, index: number, part: BandPart): boolean {
  const s = pieceFoot(part.piece, tileCenter(grid, index)).s + part.start;
  const reach = part.half + INK_REACH + 2 * TILE_REACH;
  return s >= part.from - reach && s <= part.to + reach;
}

function paintTiles(field: InkField, inked: ReadonlyMap<number, InkedTile>): void {
  const coverage = new Float64Array(TILE_PIXELS);
  let grey = TILE_PIXELS;
  let color = 0;
  for (const [index, tile] of inked) {
    const left = (index % field.across) * TILE_SIDE;
    const top = Math.floor(index / field.across) * TILE_SIDE;
    coverage.fill(0);
    for (const stroke of tile.strokes) coverTile(coverage, left, top, stroke);
    for (let pixel = 0; pixel < TILE_PIXELS; pixel++) {
      field.grey[grey + pixel] = byteOf(WHITE + (BLACK - WHITE) * coverage[pixel]!);
    }
    field.tiles[index] = grey;
    if (tile.bands.length > 0) {
      const light = bandedLight(coverage, left, top, tile);
      storeColor(field, light, grey, color);
      field.colorTiles[index] = color;
      color += 3 * TILE_PIXELS;
    }
    grey += TILE_PIXELS;
  }
}

/** The three channels of a tile with bands: first its black lines, then the bands of one line after another. */
function bandedLight(coverage: Float64Array, left: Mm, top: Mm, tile: InkedTile): Float64Array {
  const light = new Float64Array(3 * TILE_PIXELS);
  for (let pixel = 0, i = 0; pixel < TILE_PIXELS; pixel++) {
    const plain = WHITE + (BLACK - WHITE) * coverage[pixel]!;
    light[i++] = plain;
    light[i++] = plain;
    light[i++] = plain;
  }
  for (const line of new Set(tile.bands.map((part) => part.line))) {
    const parts = tile.bands.filter((part) => part.line === line);
    const layer = newBandLayer();
    for (const part of parts) addBandPart(layer, left, top, part);
    const crossing = coverageBeside(parts, left, top, tile.strokes);
    for (let pixel = 0; pixel < TILE_PIXELS; pixel++) {
      if (layer.share[pixel] === 0) continue;
      const share = Math.min(layer.share[pixel]!, 1);
      const excess = layer.share[pixel]! > 1 ? 1 / layer.share[pixel]! : 1;
      const shade = 1 + (BLACK / WHITE - 1) * crossing[pixel]!;
      for (let i = 3 * pixel; i < 3 * pixel + 3; i++) {
        light[i] = (1 - share) * light[i]! + layer.light[i]! * excess * shade;
      }
    }
  }
  return light;
}

/** Black of lines that run across or beside the bands, which stays black under them. */
function coverageBeside(
  parts: readonly BandPart[],
  left: Mm,
  top: Mm,
  strokes: readonly Stroke[],
): Float64Array {
  const coverage = new Float64Array(TILE_PIXELS);
  const own = (stroke: Stroke): boolean =>
    parts.some(
      (part) =>
        part.line === stroke.line &&
        stroke.start <= part.to + OWN_LINE &&
        stroke.start + stroke.piece.length >= part.from - OWN_LINE,
    );
  for (const stroke of strokes) if (!own(stroke)) coverTile(coverage, left, top, stroke);
  return coverage;
}

function storeColor(field: InkField, light: Float64Array, grey: number, color: number): void {
  for (let pixel = 0; pixel < TILE_PIXELS; pixel++) {
    const red = light[3 * pixel]!;
    const green = light[3 * pixel + 1]!;
    const blue = light[3 * pixel + 2]!;
    field.grey[grey + pixel] = byteOf(greyOf(red, green, blue));
    field.color[color + 3 * pixel] = byteOf(red);
    field.color[color + 3 * pixel + 1] = byteOf(green);
    field.color[color + 3 * pixel + 2] = byteOf(blue);
  }
}
