import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Drawing, EMPTY_DRAWING } from '../../shared/documents/design.ts';
import type { Choice } from '../../shared/documents/question.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { layOut } from '../../shared/track/layout.ts';
import { type Laid, SIDE } from './flow.ts';
import { emblemItem } from './furniture.ts';
import { COLORS, type Item, type Size, type Stroke } from './page.ts';
import { circle, filled, group, line, path, rectangle, text } from './shapes.ts';
import { sheetItems } from './sheet.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

const BODY: Mm = 4.2;
const RULE: Stroke = { color: COLORS.ink, width: 0.25 };

/** Pieces of pages that are laid out for a page `w` wide. */

interface Look {
  readonly size?: Mm;
  readonly bold?: boolean;
  readonly color?: string;
  readonly indent?: Mm;
  readonly after?: Mm;
}

export function paragraph(
  words: string,
  w: Mm,
  { size = BODY, bold = false, color = COLORS.ink, indent = 0, after = 2 }: Look = {},
): Laid {
  const rows = wrapped(words, w - 2 * SIDE - indent, size, bold);
  const step = size * 1.4;
  return {
    kind: 'laid',
    high: rows.length * step + after,
    items: rows.map((row, i) => text(row, { x: SIDE + indent, y: size + i * step }, { size, bold, color })),
  };
}

export const writingLines = (count: number, w: Mm, indent = 0): Laid => ({
  kind: 'laid',
  high: count * 9 + 2,
  items: Array.from({ length: count }, (_, i) =>
    line(
      { x: SIDE + indent, y: 8 + i * 9 },
      { x: w - SIDE, y: 8 + i * 9 },
      { color: COLORS.quiet, width: 0.25 },
    ),
  ),
});

/** A strong stroke over the whole width, below a title. */
export const strongRule = (w: Mm): Laid => ({
  kind: 'laid',
  high: 5,
  items: [line({ x: SIDE, y: 0 }, { x: w - SIDE, y: 0 }, { color: COLORS.ink, width: 1.2 })],
});

/** An emblem in the right corner, beside what follows. */
export const badge = (emblem: string, size: Mm, w: Mm, { emblems }: PrintTools): Laid => ({
  kind: 'laid',
  high: 0,
  items: emblemItem(emblems, emblem, { x: w - SIDE - size, y: -3 }, size),
});

const MOST_PICTURE: Mm = 104;

export interface Pictured {
  readonly challenge: Pick<Challenge, 'sheet' | 'kit'>;
  readonly drawing?: Drawing | undefined;
  /** Loose ends that may be answered have their letter. */
  readonly ends?: readonly Choice[];
  /** A place to look at. */
  readonly ring?: PaperPoint | undefined;
  /** Places with a number each. */
  readonly counted?: readonly CountedPlace[];
  /** The highest that it may be. */
  readonly most?: Mm;
}

export interface CountedPlace {
  readonly at: PaperPoint;
  readonly count: number;
}

/** How large a picture of the sheet can be on a page. */
export const pictureScale = ({ w: wide, h: high }: Size, w: Mm, most = MOST_PICTURE): number =>
  Math.min((w - 2 * SIDE) / wide, most / high);

/** The sheet as a smaller picture, to look at. */
export function pictureBlock(
  { challenge, drawing = EMPTY_DRAWING, ends = [], ring, counted = [], most }: Pictured,
  w: Mm,
  tools: PrintTools,
): Laid {
  const { sheet, kit } = challenge;
  const layout = layOut(sheet, drawing);
  const picture = pictureOf({ sheet, kit, layout, language: tools.locale, still: true });
  const scale = pictureScale(sheet, w, most);
  const left = (w - sheet.w * scale) / 2;
  const items = [
    ...sheetItems(picture, layout, kit, { driven: false, larger: 1.4 }),
    ...ends.flatMap((end) => (end.kind === 'loose-end' ? endItems(end.letter, end.at) : [])),
    ...(ring ? ringItems(ring) : []),
    ...counted.flatMap((place) => countItems(place, scale)),
    path(rectangle(0, 0, sheet.w, sheet.h), RULE),
  ];
  return { kind: 'laid', high: sheet.h * scale + 6, items: [group(left, 0, items, scale)] };
}

/** Of a ring around a number, on the page. */
export const COUNT_RADIUS: Mm = 2.9;

/** A number in a ring that stands out of lines of any ink, as large on the page whatever the sheet's size. */
function countItems({ at, count }: CountedPlace, scale: number): Item[] {
  const size = 3.6 / scale;
  const ring = circle(at, COUNT_RADIUS / scale);
  return [
    filled(ring, COLORS.white),
    path(ring, { color: COLORS.ink, width: 0.6 / scale }),
    text(String(count), { x: at.x, y: at.y + 0.35 * size }, { size, bold: true, align: 'middle' }),
  ];
}

const endItems = (letter: string, { x, y }: { x: Mm; y: Mm }): Item[] => [
  filled(circle({ x, y: y - 8 }, 4), COLORS.white),
  path(circle({ x, y: y - 8 }, 4), { color: COLORS.ink, width: 0.4 }),
  text(letter, { x, y: y - 6.2 }, { size: 5, bold: true, align: 'middle' }),
];

const ringItems = (at: PaperPoint): Item[] => [
  path(circle(at, 9), { color: COLORS.white, width: 3 }),
  path(circle(at, 9), { color: COLORS.ink, width: 1.2 }),
];
