import type { Kit } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import { norm } from '../geometry/exact-math.ts';
import { type PieceEnds, type PieceShape, pieceFoot } from '../geometry/piece.ts';
import type { Mm } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';
import { type BandPart, bandParts } from './band-paint.ts';
import {
  INK_REACH,
  PIXELS_PER_MM,
  type Stroke,
  TILE,
  TILE_BITS,
  TILE_PIXELS,
  TILE_ROW,
  TILE_WORDS,
} from './coverage.ts';
import { inkReflectance, type Reflectance, WHITE } from './reflectance.ts';
import { type InkedTile, newEasel, paintTile, WHITE_BYTE } from './tile-paint.ts';

/**
 * The sheet's reflectance as a sensor's footprint sees it, 255 being 1. Only tiles near ink are stored:
 * a contest course on a sheet of 4 m takes 20 MB. Colour is stored near bands only; elsewhere the three
 * channels equal the grey one.
 */
export interface InkField {
  readonly width: Mm;
  readonly height: Mm;
  /** Tiles in a row. */
  readonly across: number;
  /**
   * For each tile, what takes row · TILE_ROW + column of a pixel on the sheet to its place in `grey`. Tiles
   * without ink share the white one, which comes first.
   */
  readonly tiles: Int32Array;
  /** For each pixel its byte, and above that the byte of the pixel below. */
  readonly grey: Uint16Array;
  /** For each tile, where its pixels begin in `color`, three bytes a pixel; −1 without bands near. */
  readonly colorTiles: Int32Array;
  readonly color: Uint8Array;
  /** What shows on the stored tiles, by their places. */
  readonly inked: ReadonlyMap<number, InkedTile>;
}

/** Four pixels of bare paper, as `lightIn` takes them. */
export const PAPER = (WHITE_BYTE * 0x01010101) | 0;

/**
 * What a sensor sees between four neighbouring pixels, given as the word of the left two and above it that
 * of the right two: `right` and `down` are its place between them, 0 to 1. Never outside of the four bytes.
 */
export function lightIn(pixels: number, right: number, down: number): number {
  const left = pixels & 255;
  const upper = left + (((pixels >> 16) & 255) - left) * right;
  const below = (pixels >> 8) & 255;
  const lower = below + ((pixels >>> 24) - below) * right;
  return upper + (lower - upper) * down;
}

/** The grey light at a place over the sheet in pixels, 0 to 255. The step has this written out for its sensors. */
export function lightAt({ grey, tiles, across }: InkField, u: number, v: number): number {
  const column = Math.floor(u);
  const row = Math.floor(v);
  const at = tiles[(row >> TILE_BITS) * across + (column >> TILE_BITS)]! + row * TILE_ROW + column;
  return lightIn(grey[at]! | (grey[at + 1]! << 16), u - column, v - row);
}

const TILE_SIDE: Mm = TILE / PIXELS_PER_MM;

interface TileGrid {
  readonly across: number;
  readonly down: number;
}

/**
 * Rasters the ink of a drawing, 3 pixels a mm, blurred by the sensors' footprint. Bands take the place
 * of the black line; the gap between two bands of a mark is white; overlapping bands multiply. Tiles that
 * show the same ink as in `before`, of the same sheet and kit, are copied from there: the field is the same,
 * bit for bit, and what one change costs is what it touches.
 */
export function buildInkField(layout: Layout, sheet: Sheet, kit: Kit, before?: InkField): InkField {
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
    grey: new Uint16Array((inked.size + 1) * TILE_WORDS),
    colorTiles: new Int32Array(grid.across * grid.down).fill(-1),
    color: new Uint8Array(withBands * 3 * TILE_PIXELS),
    inked,
  };
  field.grey.fill(WHITE_BYTE | (WHITE_BYTE << 8), 0, TILE_WORDS);
  field.tiles.forEach((_, index) => {
    field.tiles[index] = -cornerOf(field, index);
  });
  fillTiles(field, before);
  return field;
}

/** Row · TILE_ROW + column of a tile's first pixel. */
const cornerOf = ({ across }: { readonly across: number }, index: number): number =>
  Math.floor(index / across) * TILE_WORDS + (index % across) * TILE;

function fillTiles(field: InkField, before: InkField | undefined): void {
  const easel = newEasel();
  let grey = TILE_WORDS;
  let color = 0;
  for (const [index, tile] of field.inked) {
    const greyHere = field.grey.subarray(grey, grey + TILE_WORDS);
    const colorHere = field.color.subarray(color, color + 3 * TILE_PIXELS);
    const last = before?.inked.get(index);
    if (before && last && showsSame(tile, last)) {
      copyTile(before, index, greyHere, colorHere);
    } else {
      const left = (index % field.across) * TILE_SIDE;
      const top = Math.floor(index / field.across) * TILE_SIDE;
      paintTile(easel, tile, left, top, colorHere);
      for (let i = 0; i < TILE_WORDS; i++) greyHere[i] = easel.grey[i]! | (easel.grey[i + TILE_ROW]! << 8);
    }
    field.tiles[index] = grey - cornerOf(field, index);
    grey += TILE_WORDS;
    if (tile.bands.length === 0) continue;
    field.colorTiles[index] = color;
    color += 3 * TILE_PIXELS;
  }
}

function copyTile(from: InkField, index: number, grey: Uint16Array, color: Uint8Array): void {
  const greyAt = from.tiles[index]! + cornerOf(from, index);
  const colorAt = from.colorTiles[index]!;
  grey.set(from.grey.subarray(greyAt, greyAt + TILE_WORDS));
  if (colorAt >= 0) color.set(from.color.subarray(colorAt, colorAt + 3 * TILE_PIXELS));
}

/** Where lines are and how they are called matters only under bands. */
function showsSame(a: InkedTile, b: InkedTile): boolean {
  if (a.strokes.length !== b.strokes.length || a.bands.length !== b.bands.length) return false;
  const banded = a.bands.length > 0;
  return (
    a.strokes.every((stroke, i) => isSameStroke(stroke, b.strokes[i]!, banded)) &&
    a.bands.every((part, i) => isSameBand(part, b.bands[i]!))
  );
}

const isSameStroke = (a: Stroke, b: Stroke, banded: boolean): boolean =>
  a.half === b.half &&
  isSamePiece(a.piece, b.piece) &&
  (!banded || (a.line === b.line && a.start === b.start));

const isSameBand = (a: BandPart, b: BandPart): boolean =>
  a.line === b.line &&
  a.half === b.half &&
  a.from === b.from &&
  a.to === b.to &&
  a.start === b.start &&
  a.tint.every((share, channel) => share === b.tint[channel]) &&
  isSamePiece(a.piece, b.piece);

const isSamePiece = (a: PieceEnds, b: PieceEnds): boolean =>
  a === b ||
  (a.bulge === b.bulge &&
    a.from.x === b.from.x &&
    a.from.y === b.from.y &&
    a.to.x === b.to.x &&
    a.to.y === b.to.y);

function inkedTiles(grid: TileGrid, layout: Layout, kit: Kit): Map<number, InkedTile> {
  const inked = new Map<number, { strokes: Stroke[]; bands: BandPart[] }>();
  const tileAt = (index: number) => {
    const known = inked.get(index);
    if (known) return known;
    const tile = { strokes: [], bands: [] };
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

function tilesNear(grid: TileGrid, piece: PieceShape, half: Mm): number[] {
  const reach = half + INK_REACH;
  const { minX, minY, maxX, maxY } = piece.box;
  // A band that sticks out past an arc goes on round it.
  const margin = piece.kind === 'arc' ? reach + TILE_REACH : reach;
  const clamp = (value: Mm, most: number): number =>
    Math.min(Math.max(Math.floor(value / TILE_SIDE), 0), most - 1);
  const lastColumn = clamp(maxX + margin, grid.across);
  const lastRow = clamp(maxY + margin, grid.down);
  const near: number[] = [];
  for (let row = clamp(minY - margin, grid.down); row <= lastRow; row++) {
    for (let column = clamp(minX - margin, grid.across); column <= lastColumn; column++) {
      const index = row * grid.across + column;
      if (pieceFoot(piece, tileCenter(grid, index)).distance <= reach + TILE_REACH) near.push(index);
    }
  }
  return near;
}

/** Whether a tile near a part's piece is near the part itself. A part may stick out past the piece's ends. */
function nearBand(grid: TileGrid, index: number, part: BandPart): boolean {
  const s = pieceFoot(part.piece, tileCenter(grid, index)).s + part.start;
  const reach = part.half + INK_REACH + 2 * TILE_REACH;
  return s >= part.from - reach && s <= part.to + reach;
}
