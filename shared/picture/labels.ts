import type { Gate } from '../documents/sheet.ts';
import { type Box, boxesMeet, boxOf } from '../geometry/box.ts';
import { type Path, pathFoot } from '../geometry/path.ts';
import type { Polygon } from '../geometry/polygon.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { PictureLabel } from './shapes.ts';

/** How names are set, mm of paper. */
export interface NameSize {
  /** Height of a row of letters. */
  readonly row: Mm;
  /** Half the width of what drives along the lines: names keep out of its way where they find room. */
  readonly driven: Mm;
}

/** About what a drawer does who does not say, and nothing drives. */
export const USUAL_NAMES: NameSize = { row: 9, driven: 0 };
/** Half the width of a letter, in rows. */
const HALF_LETTER = 0.256;
/** White beside a name. */
const GAP: Mm = 2.5;

/** From the middle of a row to the middle of a line that does not touch it. */
const clearOf = (row: Mm): Mm => row / 2 + 3.5;

/** What a name keeps off, on a sheet of this size, and how it is set where that is known. */
export interface Paper {
  readonly w: Mm;
  readonly h: Mm;
  readonly lines: readonly Path[];
  readonly size?: NameSize | undefined;
}

/**
 * The name of an area stands in its middle. Where a line runs through that, it stands in the first free place
 * among: higher or lower in the area, above it, below it.
 */
export function areaLabel(text: string, polygon: Polygon, paper: Paper): PictureLabel {
  return freest(text, placesFor(text, polygon, paper), paper);
}

/** From the corner of a box to its name: a hand that has taken hold of the corner does not hide it. */
const PAST_CORNER: Mm = 6;

/**
 * The name of a box for marks stands outside it, over or under its left or right end: a line runs through most
 * boxes. Where there is no free place, also at the top inside. Other names matter less than lines.
 */
export function boxLabel(
  text: string,
  polygon: Polygon,
  paper: Paper,
  names: readonly PictureLabel[],
): PictureLabel {
  const { lines, size = USUAL_NAMES } = paper;
  const places = boxPlaces(text, polygon, paper);
  const taken = names.map((name) => boxOfName(name, paper.size));
  const apart = places.filter((place) => {
    const own = boxOfName({ text, ...place }, paper.size);
    const room = roomAround(place.row, halfOf(text, size), lines);
    return room >= clearOf(size.row) && !taken.some((other) => boxesMeet(own, other));
  });
  return freest(text, apart.length > 0 ? apart : places, paper);
}

/** About how large names are on a board, where they are largest. */
const LARGEST = { height: 14, halfLetter: 4 } as const;
const TO_LEFT = { left: 0, middle: 0.5, right: 1 } as const;
const ABOVE = { top: 0, middle: 0.5, bottom: 1 } as const;

function boxOfName({ text, at, align, baseline }: PictureLabel, size: NameSize | undefined): Box {
  const { height, halfLetter } = size ? { height: size.row, halfLetter: size.row * HALF_LETTER } : LARGEST;
  const width = 2 * text.length * halfLetter;
  const minX = at.x - TO_LEFT[align] * width;
  const minY = at.y - ABOVE[baseline] * height;
  return { minX, minY, maxX: minX + width, maxY: minY + height };
}

function boxPlaces(text: string, polygon: Polygon, { w, h, size = USUAL_NAMES }: Paper): Place[] {
  const { minX, minY, maxX, maxY } = boxOf(polygon);
  const half = halfOf(text, size);
  const needed = size.row + GAP;
  const [left, right] = [minX + PAST_CORNER, maxX - PAST_CORNER];
  const rows = [
    ...(minY > needed ? [{ y: minY - GAP, baseline: 'bottom', away: -1 } as const] : []),
    ...(h - maxY > needed ? [{ y: maxY + GAP, baseline: 'top', away: 1 } as const] : []),
  ];
  const ends = [
    ...(left + 2 * half <= w ? [{ x: left, align: 'left', aside: half } as const] : []),
    ...(right - 2 * half >= 0 ? [{ x: right, align: 'right', aside: -half } as const] : []),
  ];
  const outside = rows.flatMap(({ y, baseline, away }) =>
    ends.map(({ x, align, aside }): Place => {
      const row = { x: x + aside, y: y + (away * size.row) / 2 };
      return { at: { x, y }, align, baseline, row };
    }),
  );
  const top = { x: (minX + maxX) / 2, y: minY + size.row / 2 + GAP };
  const inside: Place = { at: top, row: top, align: 'middle', baseline: 'middle' };
  return [...outside, inside];
}

/** From a post to its name. */
const OFF_POST: Mm = 3;
/** Nearer to the left edge a name begins at its post. */
const NEAR_EDGE: Mm = 25;

/** A gate's name stands past its upper post, or past the lower one where that is free and the upper one is not. */
export function gateLabel(text: string, { a, b }: Pick<Gate, 'a' | 'b'>, paper: Paper): PictureLabel {
  const { row } = paper.size ?? USUAL_NAMES;
  const [upper, lower] = a.y <= b.y ? [a, b] : [b, a];
  const align = upper.x < NEAR_EDGE ? 'left' : 'middle';
  const aside = align === 'left' ? halfOf(text, { row }) : 0;
  const past = ({ x, y }: PaperPoint, baseline: 'top' | 'bottom', away: -1 | 1): Place => ({
    at: { x, y: y + away * OFF_POST },
    row: { x: x + aside, y: y + away * (OFF_POST + row / 2) },
    align,
    baseline,
  });
  const places = [past(upper, 'bottom', -1)];
  if (paper.h - lower.y > OFF_POST + row) places.push(past(lower, 'top', 1));
  return freest(text, places, paper);
}

const halfOf = (text: string, { row }: Pick<NameSize, 'row'>): Mm => text.length * row * HALF_LETTER;

/** In the first place that nothing drives over, else that no line crosses, else in the one with most room. */
function freest(text: string, places: readonly Place[], { lines, size = USUAL_NAMES }: Paper): PictureLabel {
  const half = halfOf(text, size);
  const rooms = places.map((place) => roomAround(place.row, half, lines));
  const wanted = [Math.max(clearOf(size.row), size.row / 2 + size.driven), clearOf(size.row)];
  const free = wanted.map((least) => rooms.findIndex((room) => room >= least)).find((place) => place >= 0);
  const { at, align, baseline } = places[free ?? rooms.indexOf(Math.max(...rooms))]!;
  return { text, at, align, baseline };
}

interface Place extends Omit<PictureLabel, 'text'> {
  /** The middle of the row of letters. */
  readonly row: PaperPoint;
}

function placesFor(text: string, polygon: Polygon, { w, h, size = USUAL_NAMES }: Paper): Place[] {
  const { row } = size;
  const half = halfOf(text, size);
  const box = boxOf(polygon);
  const mean = (key: 'x' | 'y') => polygon.reduce((sum, p) => sum + p[key], 0) / polygon.length;
  // On the sheet, however near its edge the area lies.
  const x = Math.max(half + GAP, Math.min(mean('x'), w - half - GAP));
  const align = 'middle';
  const inside = (y: Mm): Place => ({ at: { x, y }, row: { x, y }, align, baseline: 'middle' });
  const outside = (y: Mm, baseline: 'top' | 'bottom', away: -1 | 1): Place => ({
    at: { x, y },
    row: { x, y: y + (away * row) / 2 },
    align,
    baseline,
  });
  const edge = row / 2 + GAP;
  const places = [inside(mean('y')), inside(box.minY + edge), inside(box.maxY - edge)];
  const needed = row + GAP;
  if (box.minY > needed) places.push(outside(box.minY - GAP, 'bottom', -1));
  if (h - box.maxY > needed) places.push(outside(box.maxY + GAP, 'top', 1));
  return places;
}

/** How far lines keep from a row of letters. */
function roomAround(row: PaperPoint, half: Mm, lines: readonly Path[]): Mm {
  const along = [-1, -0.5, 0, 0.5, 1].map((share) => ({ x: row.x + share * half, y: row.y }));
  return Math.min(...lines.flatMap((path) => along.map((p) => pathFoot(path, p).distance)));
}
