import type { Mm } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { RULER, ruler } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize, type Size, type Stroke } from './page.ts';
import { line, rectangle, text } from './shapes.ts';

/** White around a part of a large sheet: more than any usual printer leaves blank by itself. */
const MARGIN: Mm = 14;
/** How far two neighbouring parts show the same. */
export const OVERLAP: Mm = 10;
/** A sheet that is larger than its paper by no more than this is still one page. */
const SAME: Mm = 0.5;
const CUT: Stroke = { color: COLORS.ink, width: 0.2, square: true };

type PrintWords = Wording['print'];

/** The sheet on paper of one size, upright or lying, whichever takes fewer pages. */
export function onPaper(items: readonly Item[], sheet: Size, paper: PaperName, words: PrintWords): Page[] {
  const ways = [sheet.w >= sheet.h, sheet.w < sheet.h].map((lies) => {
    const size = paperSize(paper, lies);
    return { size, ...partsOn(sheet, size) };
  });
  const [first, second] = ways as [(typeof ways)[0], (typeof ways)[0]];
  const { size, across, down } = second.across * second.down < first.across * first.down ? second : first;
  if (across * down === 1) return [wholePage(items, sheet, size, words)];
  return Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (__, column) =>
      tilePage(items, { sheet, size, across, down, row, column }, words),
    ),
  ).flat();
}

function partsOn(sheet: Size, paper: Size): { across: number; down: number } {
  if (sheet.w <= paper.w + SAME && sheet.h <= paper.h + SAME) return { across: 1, down: 1 };
  const parts = (long: Mm, side: Mm) =>
    Math.max(1, Math.ceil((long - OVERLAP) / (side - 2 * MARGIN - OVERLAP)));
  return { across: parts(sheet.w, paper.w), down: parts(sheet.h, paper.h) };
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
  readonly sheet: Size;
  readonly size: Size;
  readonly across: number;
  readonly down: number;
  readonly row: number;
  readonly column: number;
}

function tilePage(items: readonly Item[], tile: Tile, words: PrintWords): Page {
  const { sheet, size, across, down, row, column } = tile;
  const net = { w: size.w - 2 * MARGIN, h: size.h - 2 * MARGIN };
  const [left, top] = [column * (net.w - OVERLAP), row * (net.h - OVERLAP)];
  const part = { x: left, y: top, w: Math.min(net.w, sheet.w - left), h: Math.min(net.h, sheet.h - top) };
  const number = row * across + column + 1;
  const foot = size.h - 6;
  return {
    ...size,
    items: [
      {
        kind: 'group',
        x: MARGIN - left,
        y: MARGIN - top,
        scale: 1,
        clip: rectangle(part.x, part.y, part.w, part.h),
        items: [...items, ...joins(tile, net)],
      },
      ...cornerCuts({ x: MARGIN, y: MARGIN, w: part.w, h: part.h }),
      text(
        words.tile(number, across * down, row + 1, column + 1),
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

/** A cross in the middle of every overlap, at both its ends: they show on both neighbours. */
function joins({ sheet, across, down }: Tile, net: Size): Item[] {
  const seams = (count: number, step: Mm) =>
    Array.from({ length: count - 1 }, (_, i) => (i + 1) * (step - OVERLAP) + OVERLAP / 2);
  const steps = (count: number, step: Mm, long: Mm) =>
    Array.from({ length: count }, (_, i) => [
      i * (step - OVERLAP) + 15,
      Math.min(i * (step - OVERLAP) + step, long) - 15,
    ]).flat();
  const xs = seams(across, net.w);
  const ys = seams(down, net.h);
  return [
    ...xs.flatMap((x) => steps(down, net.h, sheet.h).flatMap((y) => cross(x, y))),
    ...ys.flatMap((y) => steps(across, net.w, sheet.w).flatMap((x) => cross(x, y))),
  ];
}

const cross = (x: Mm, y: Mm): Item[] => [
  line({ x: x - CROSS_ARM, y }, { x: x + CROSS_ARM, y }, CROSS),
  line({ x, y: y - CROSS_ARM }, { x, y: y + CROSS_ARM }, CROSS),
];
