import type { Box } from '../geometry/box.ts';
import { angleAlong, type PieceShape, pieceAt } from '../geometry/piece.ts';
import type { Mm } from '../geometry/units.ts';
import { BAND_SPREAD, type LaidBand, type LaidMark, type Layout } from '../track/layout.ts';
import { shareInside } from './blur.ts';
import {
  columnFrom,
  columnTo,
  FOOTPRINT,
  INK_REACH,
  PIXELS_PER_MM,
  shareOnStrip,
  TILE_ROW,
} from './coverage.ts';
import { type Reflectance, WHITE } from './reflectance.ts';

/** A stretch of line that is not the marker's black: bands, or the white between two of them. */
export interface BandPart {
  readonly line: number;
  readonly piece: PieceShape;
  readonly half: Mm;
  /** Ways along the line. */
  readonly from: Mm;
  readonly to: Mm;
  /** Way along the line to the beginning of the piece. */
  readonly start: Mm;
  /** What comes back in each channel, as a share of white paper. */
  readonly tint: Reflectance;
}

const NO_INK: Reflectance = [1, 1, 1];

/** All bands and gaps of a layout, cut at ends of pieces; where bands overlap their inks multiply. */
export function bandParts(layout: Layout, tints: ReadonlyMap<string, Reflectance>): BandPart[] {
  return layout.lines.flatMap((line, index) => {
    const marks = layout.marks.filter((mark) => mark.line === line.id);
    return tintedStretches(marks, tints).flatMap((stretch) =>
      line.path.pieces.flatMap((piece, i): BandPart[] => {
        const start = line.path.starts[i]!;
        const last = i === line.path.pieces.length - 1;
        const from = i === 0 ? stretch.from : Math.max(stretch.from, start);
        const to = last ? stretch.to : Math.min(stretch.to, start + piece.length);
        if (from >= to) return [];
        return [
          { line: index, piece, half: line.width / 2 + BAND_SPREAD, from, to, start, tint: stretch.tint },
        ];
      }),
    );
  });
}

interface Stretch {
  readonly from: Mm;
  readonly to: Mm;
  readonly tint: Reflectance;
}

function tintedStretches(marks: readonly LaidMark[], tints: ReadonlyMap<string, Reflectance>): Stretch[] {
  const bands = marks.flatMap((mark) => mark.bands);
  const ends = bands.flatMap((band) => [band.from, band.to]).sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let i = 0; i + 1 < ends.length; i++) {
    const from = ends[i]!;
    const to = ends[i + 1]!;
    const middle = (from + to) / 2;
    if (to <= from || !marks.some((mark) => mark.from < middle && middle < mark.to)) continue;
    stretches.push({ from, to, tint: mixedTint(bands, middle, tints) });
  }
  return stretches;
}

function mixedTint(
  bands: readonly LaidBand[],
  way: Mm,
  tints: ReadonlyMap<string, Reflectance>,
): Reflectance {
  let [red, green, blue] = NO_INK;
  for (const band of bands) {
    if (way < band.from || way > band.to) continue;
    const ink = tints.get(band.ink) ?? NO_INK;
    red *= ink[0];
    green *= ink[1];
    blue *= ink[2];
  }
  return [red, green, blue];
}

/** Scratch of one tile: how much of a footprint lies on bands, and what comes back from there. */
export interface BandLayer {
  readonly share: Float64Array;
  readonly light: Float64Array;
}

/** Adds one part to the layer of a tile. */
export function addBandPart(layer: BandLayer, left: Mm, top: Mm, part: BandPart): void {
  const place: { along: Mm; across: Mm } = { along: 0, across: 0 };
  const { minX, minY, maxX, maxY } = reachOf(part);
  const [firstColumn, lastColumn] = [columnFrom(minX - left), columnTo(maxX - left)];
  const [firstRow, lastRow] = [columnFrom(minY - top), columnTo(maxY - top)];
  for (let row = firstRow; row <= lastRow; row++) {
    const y = top + row / PIXELS_PER_MM;
    for (let column = firstColumn; column <= lastColumn; column++) {
      if (!locate(part, left + column / PIXELS_PER_MM, y, place)) continue;
      const share =
        shareInside((place.along - part.from) / FOOTPRINT) - shareInside((place.along - part.to) / FOOTPRINT);
      if (share <= 0) continue;
      const inked = shareOnStrip(place.across < 0 ? -place.across : place.across, part.half);
      const pixel = row * TILE_ROW + column;
      layer.share[pixel]! += share;
      for (let channel = 0; channel < 3; channel++) {
        layer.light[3 * pixel + channel]! += share * WHITE * (1 + (part.tint[channel]! - 1) * inked);
      }
    }
  }
}

const EVERYWHERE: Box = {
  minX: Number.NEGATIVE_INFINITY,
  minY: Number.NEGATIVE_INFINITY,
  maxX: Number.POSITIVE_INFINITY,
  maxY: Number.POSITIVE_INFINITY,
};

/** A box outside of which a part can't be seen; on arcs, which marks should keep off, the whole sheet. */
function reachOf({ piece, half, from, to, start }: BandPart): Box {
  if (piece.kind === 'arc') return EVERYWHERE;
  const one = pieceAt(piece, from - INK_REACH - start);
  const other = pieceAt(piece, to + INK_REACH - start);
  const reach = half + INK_REACH;
  return {
    minX: Math.min(one.x, other.x) - reach,
    minY: Math.min(one.y, other.y) - reach,
    maxX: Math.max(one.x, other.x) + reach,
    maxY: Math.max(one.y, other.y) + reach,
  };
}

/** Way along the line and distance across it of a point near the part's piece; false where it is too far off. */
function locate(part: BandPart, x: Mm, y: Mm, place: { along: Mm; across: Mm }): boolean {
  const { piece } = part;
  const reach = part.half + INK_REACH;
  if (piece.kind === 'straight') {
    const dx = x - piece.from.x;
    const dy = y - piece.from.y;
    place.across = dy * piece.along.x - dx * piece.along.y;
    place.along = part.start + dx * piece.along.x + dy * piece.along.y;
    return place.across <= reach && place.across >= -reach;
  }
  const dx = x - piece.center.x;
  const dy = y - piece.center.y;
  place.across = Math.sqrt(dx * dx + dy * dy) - piece.radius;
  // The angle is the dear part, and most pixels of a tile are far from the line.
  if (place.across > reach || place.across < -reach) return false;
  const turned = angleAlong(piece, { x, y });
  const size = piece.length / piece.radius;
  const behind = turned - size > 2 * Math.PI - turned;
  place.along = part.start + (behind ? turned - 2 * Math.PI : turned) * piece.radius;
  return true;
}
