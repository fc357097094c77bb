import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Drawing, EMPTY_DRAWING } from '../../shared/documents/design.ts';
import type { Choice } from '../../shared/documents/question.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { layOut } from '../../shared/track/layout.ts';
import { COLORS, type Item, type Page, type Size, type Stroke } from './page.ts';
import { circle, filled, group, line, path, rectangle, text } from './shapes.ts';
import { sheetItems } from './sheet.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

/** White at the sides of a page. */
export const SIDE: Mm = 18;
const BODY: Mm = 4.2;
const RULE: Stroke = { color: COLORS.ink, width: 0.25 };

/** A piece of a page: how high it is, and its things when it stands at `y`. */
export interface Block {
  readonly high: Mm;
  readonly at: (y: Mm) => readonly Item[];
}

/** Blocks one below the other, on as many pages as they need. */
export function flow(size: Size, blocks: readonly Block[]): Page[] {
  const pages: Item[][] = [[]];
  let y = SIDE;
  for (const block of blocks) {
    if (y > SIDE && y + block.high > size.h - SIDE) {
      pages.push([]);
      y = SIDE;
    }
    pages.at(-1)!.push(...block.at(y));
    y += block.high;
  }
  return pages.map((items) => ({ ...size, items }));
}

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
): Block {
  const rows = wrapped(words, w - 2 * SIDE - indent, size, bold);
  const step = size * 1.4;
  return {
    high: rows.length * step + after,
    at: (y) =>
      rows.map((row, i) => text(row, { x: SIDE + indent, y: y + size + i * step }, { size, bold, color })),
  };
}

export const writingLines = (count: number, w: Mm, indent = 0): Block => ({
  high: count * 9 + 2,
  at: (y) =>
    Array.from({ length: count }, (_, i) =>
      line(
        { x: SIDE + indent, y: y + 8 + i * 9 },
        { x: w - SIDE, y: y + 8 + i * 9 },
        { color: COLORS.quiet, width: 0.25 },
      ),
    ),
});

const MOST_PICTURE: Mm = 104;

export interface Pictured {
  readonly challenge: Pick<Challenge, 'sheet' | 'kit'>;
  readonly drawing?: Drawing;
  /** Loose ends that may be answered have their letter. */
  readonly ends?: readonly Choice[];
  /** A place to look at. */
  readonly ring?: PaperPoint | undefined;
  /** The highest that it may be. */
  readonly most?: Mm;
}

/** The sheet as a smaller picture, to look at. */
export function pictureBlock(
  { challenge, drawing = EMPTY_DRAWING, ends = [], ring, most = MOST_PICTURE }: Pictured,
  w: Mm,
  tools: PrintTools,
): Block {
  const { sheet, kit } = challenge;
  const layout = layOut(sheet, drawing);
  const picture = pictureOf({ sheet, kit, layout, language: tools.locale, still: true });
  const scale = Math.min((w - 2 * SIDE) / sheet.w, most / sheet.h);
  const left = (w - sheet.w * scale) / 2;
  const items = [
    ...sheetItems(picture, layout, kit, { driven: false, larger: 1.4 }),
    ...ends.flatMap((end) => (end.kind === 'loose-end' ? endItems(end.letter, end.at) : [])),
    ...(ring ? ringItems(ring) : []),
    path(rectangle(0, 0, sheet.w, sheet.h), RULE),
  ];
  return { high: sheet.h * scale + 6, at: (y) => [group(left, y, items, scale)] };
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
