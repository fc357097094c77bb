import { type Box, boxesMeet, boxOf } from '../geometry/box.ts';
import { type Path, pathFoot } from '../geometry/path.ts';
import type { Polygon } from '../geometry/polygon.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { PictureLabel } from './shapes.ts';

/** About how large a drawer makes names: height of a row, half the width of a letter, white beside it. */
const NAME = { height: 9, halfLetter: 2.3, gap: 2.5 } as const;

/** From the middle of a row to the middle of a line that does not touch it. */
const CLEAR: Mm = NAME.height / 2 + 3.5;

/**
 * The name of an area stands in its middle. Where a given line runs through that, it stands in the
 * first free place among: higher or lower in the area, above it, below it.
 */
export function areaLabel(
  text: string,
  polygon: Polygon,
  given: readonly Path[],
  sheet: { readonly h: Mm },
): PictureLabel {
  return labelAt(firstFree(placesFor(polygon, sheet.h), text, given), text);
}

/** From the corner of a box to its name: a hand that has taken hold of the corner does not hide it. */
const PAST_CORNER: Mm = 6;

/** What a name keeps off, on a sheet of this size. */
export interface Around {
  readonly w: Mm;
  readonly h: Mm;
  readonly lines: readonly Path[];
  readonly names: readonly PictureLabel[];
}

/**
 * The name of a box for marks stands outside it, over or under its left or right end: a line runs through most
 * boxes. Where there is no free place, also at the top inside. Other names matter less than lines.
 */
export function boxLabel(text: string, polygon: Polygon, { w, h, lines, names }: Around): PictureLabel {
  const places = boxPlaces(text, polygon, { w, h });
  const taken = names.map(largestBox);
  const apart = places.filter((place) => {
    const own = largestBox(labelAt(place, text));
    return roomAround(place.row, text, lines) >= CLEAR && !taken.some((other) => boxesMeet(own, other));
  });
  return labelAt(firstFree(apart.length > 0 ? apart : places, text, lines), text);
}

/** About how large names are on a board, where they are largest. */
const LARGEST = { height: 14, halfLetter: 4 } as const;
const TO_LEFT = { left: 0, middle: 0.5, right: 1 } as const;
const ABOVE = { top: 0, middle: 0.5, bottom: 1 } as const;

function largestBox({ text, at, align, baseline }: PictureLabel): Box {
  const width = 2 * text.length * LARGEST.halfLetter;
  const minX = at.x - TO_LEFT[align] * width;
  const minY = at.y - ABOVE[baseline] * LARGEST.height;
  return { minX, minY, maxX: minX + width, maxY: minY + LARGEST.height };
}

function boxPlaces(text: string, polygon: Polygon, { w, h }: Pick<Around, 'w' | 'h'>): Place[] {
  const { minX, minY, maxX, maxY } = boxOf(polygon);
  const half = text.length * NAME.halfLetter;
  const needed = NAME.height + NAME.gap;
  const [left, right] = [minX + PAST_CORNER, maxX - PAST_CORNER];
  const rows = [
    ...(minY > needed ? [{ y: minY - NAME.gap, baseline: 'bottom', away: -1 } as const] : []),
    ...(h - maxY > needed ? [{ y: maxY + NAME.gap, baseline: 'top', away: 1 } as const] : []),
  ];
  const ends = [
    ...(left + 2 * half <= w ? [{ x: left, align: 'left', aside: half } as const] : []),
    ...(right - 2 * half >= 0 ? [{ x: right, align: 'right', aside: -half } as const] : []),
  ];
  const outside = rows.flatMap(({ y, baseline, away }) =>
    ends.map(({ x, align, aside }): Place => {
      const row = { x: x + aside, y: y + (away * NAME.height) / 2 };
      return { at: { x, y }, align, baseline, row };
    }),
  );
  const top = { x: (minX + maxX) / 2, y: minY + CLEAR - 1 };
  const inside: Place = { at: top, row: top, align: 'middle', baseline: 'middle' };
  return [...outside, inside];
}

const labelAt = ({ at, align, baseline }: Place, text: string): PictureLabel => ({
  text,
  at,
  align,
  baseline,
});

/** The first place that lines keep off, or else the one that they keep off furthest. */
function firstFree(places: readonly Place[], text: string, given: readonly Path[]): Place {
  const rooms = places.map(({ row }) => roomAround(row, text, given));
  const free = rooms.findIndex((room) => room >= CLEAR);
  return places[free >= 0 ? free : rooms.indexOf(Math.max(...rooms))]!;
}

interface Place extends Pick<PictureLabel, 'at' | 'align' | 'baseline'> {
  /** The middle of the row of letters. */
  readonly row: PaperPoint;
}

function placesFor(polygon: Polygon, h: Mm): Place[] {
  const box = boxOf(polygon);
  const n = polygon.length;
  const middle = {
    x: polygon.reduce((sum, p) => sum + p.x, 0) / n,
    y: polygon.reduce((sum, p) => sum + p.y, 0) / n,
  };
  const align = 'middle';
  const inside = (y: Mm): Place => ({
    at: { ...middle, y },
    row: { ...middle, y },
    align,
    baseline: 'middle',
  });
  const outside = (y: Mm, baseline: 'top' | 'bottom', away: -1 | 1): Place => ({
    at: { ...middle, y },
    align,
    row: { ...middle, y: y + (away * NAME.height) / 2 },
    baseline,
  });
  const places = [inside(middle.y), inside(box.minY + CLEAR - 1), inside(box.maxY - CLEAR + 1)];
  const needed = NAME.height + NAME.gap;
  if (box.minY > needed) places.push(outside(box.minY - NAME.gap, 'bottom', -1));
  if (h - box.maxY > needed) places.push(outside(box.maxY + NAME.gap, 'top', 1));
  return places;
}

/** How far given lines keep from a row of letters. */
function roomAround(row: PaperPoint, text: string, given: readonly Path[]): Mm {
  const half = text.length * NAME.halfLetter;
  const along = [-1, -0.5, 0, 0.5, 1].map((share) => ({ x: row.x + share * half, y: row.y }));
  return Math.min(...given.flatMap((path) => along.map((p) => pathFoot(path, p).distance)));
}
