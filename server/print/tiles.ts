import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { crossesOf, type Part, partsOf, type Tiling, tilingOf } from '../../shared/picture/tiles.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { RULER, ruler } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize, type Size, type Stroke } from './page.ts';
import { line, rectangle, text } from './shapes.ts';

/** White around a part of a large sheet: more than any usual printer leaves blank by itself. */
const MARGIN: Mm = 14;
/** A sheet that is larger than its paper by no more than this is still one page. */
const SAME: Mm = 0.5;
const CUT: Stroke = { color: COLORS.ink, width: 0.2, square: true };

type PrintWords = Wording['print'];

/** The sheet on paper of one size, upright or lying, whichever takes fewer pages. */
export function onPaper(items: readonly Item[], sheet: Size, paper: PaperName, words: PrintWords): Page[] {
  const ways = [sheet.w >= sheet.h, sheet.w < sheet.h].map((lies) => {
    const size = paperSize(paper, lies);
    return { size, tiling: tilingOn(sheet, size) };
  });
  const [first, second] = ways as [(typeof ways)[0], (typeof ways)[0]];
  const pages = ({ tiling }: (typeof ways)[0]) => tiling.across * tiling.down;
  const { size, tiling } = pages(second) < pages(first) ? second : first;
  if (tiling.across * tiling.down === 1) return [wholePage(items, sheet, size, words)];
  const joined = [...items, ...crossesOf(tiling).flatMap(cross)];
  return partsOf(tiling).map((part) => tilePage(joined, { tiling, size, part }, words));
}

function tilingOn(sheet: Size, paper: Size): Tiling {
  if (sheet.w <= paper.w + SAME && sheet.h <= paper.h + SAME)
    return { sheet, net: paper, across: 1, down: 1 };
  return tilingOf(sheet, { w: paper.w - 2 * MARGIN, h: paper.h - 2 * MARGIN });
}

/** A sheet in the middle of its paper; where the paper is larger, strokes at the corners show where to cut. */
function wholePage(items: readonly Item[], sheet: Size, size: Size, words: PrintWords): Page {
  const [x, y] = [(size.w - sheet.w) / 2, (size.h - sheet.h) / 2];
  const cut = x > 3 || y > 3;
  const roomBelow = y >= MARGIN && size.w >= RULER + 40;
  return {
    ...size,
    items: [
      { kind: 'group', x, y, scale: 1, clip: rectangle(0, 0, sheet.w, sheet.h), items },
      ...(cut ? cornerCuts({ x, y, w: sheet.w, h: sheet.h }) : []),
      ...(roomBelow ? ruler({ x: 10, y: size.h - 6 }, words.measure) : []),
    ],
  };
}

interface Tile {
  readonly tiling: Tiling;
  readonly size: Size;
  readonly part: Part;
}

function tilePage(items: readonly Item[], { tiling, size, part }: Tile, words: PrintWords): Page {
  const { number, row, column } = part;
  const foot = size.h - 6;
  return {
    ...size,
    items: [
      {
        kind: 'group',
        x: MARGIN - part.x,
        y: MARGIN - part.y,
        scale: 1,
        clip: rectangle(part.x, part.y, part.w, part.h),
        items,
      },
      ...cornerCuts({ x: MARGIN, y: MARGIN, w: part.w, h: part.h }),
      text(
        words.tile(number, tiling.across * tiling.down, row + 1, column + 1),
        { x: MARGIN + 3, y: 6 },
        { size: 3, bold: true },
      ),
      text(words.joining(column > 0, row > 0), { x: MARGIN + 3, y: 10 }, { size: 2.7, color: COLORS.quiet }),
      ...ruler({ x: MARGIN, y: foot }, words.measure),
    ],
  };
}

/** Strokes outside a rectangle that point at its corners. */
function cornerCuts({ x, y, w, h }: Size & { x: Mm; y: Mm }): Item[] {
  const [long, off] = [3, 1];
  return [
    [x, -1],
    [x + w, 1],
  ].flatMap(([cx, sx]) =>
    [
      [y, -1],
      [y + h, 1],
    ].flatMap(([cy, sy]) => [
      line({ x: cx! + sx! * off, y: cy! }, { x: cx! + sx! * (off + long), y: cy! }, CUT),
      line({ x: cx!, y: cy! + sy! * off }, { x: cx!, y: cy! + sy! * (off + long) }, CUT),
    ]),
  );
}

/** How thin and pale crosses are that must lie upon each other; a robot does not take them for a line. */
const CROSS: Stroke = { color: '#B0B0B0', width: 0.25, square: true };
const CROSS_ARM: Mm = 4;

const cross = ({ x, y }: PaperPoint): Item[] => [
  line({ x: x - CROSS_ARM, y }, { x: x + CROSS_ARM, y }, CROSS),
  line({ x, y: y - CROSS_ARM }, { x, y: y + CROSS_ARM }, CROSS),
];
