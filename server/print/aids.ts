import { type Kit, patchOf } from '../../shared/documents/kit.ts';
import { cos, radians, sin } from '../../shared/geometry/exact-math.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { emblemItem, ruler } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize, type Size, type Stroke } from './page.ts';
import { circle, filled, group, line, path, rectangle, text } from './shapes.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

const CUT: Stroke = { color: COLORS.quiet, width: 0.25, dash: [2, 1.5] };
const SIDE: Mm = 15;

/** As many of one thing as a sheet holds, with a head above and a ruler below. */
function manyOf(
  size: Size,
  each: Size,
  head: readonly Item[],
  one: readonly Item[],
  tools: PrintTools,
): Page {
  const top = 52;
  const across = Math.max(1, Math.floor((size.w - 2 * SIDE) / each.w));
  const down = Math.max(1, Math.floor((size.h - top - 18) / each.h));
  const left = (size.w - across * each.w) / 2;
  const places = Array.from({ length: across * down }, (_, i) =>
    group(left + (i % across) * each.w, top + Math.floor(i / across) * each.h, one),
  );
  return {
    ...size,
    items: [...head, ...places, ...ruler({ x: SIDE, y: size.h - 8 }, tools.words.print.measure)],
  };
}

function headOf(title: string, said: string, w: Mm): Item[] {
  const rows = wrapped(said, w - 2 * SIDE, 3.8);
  return [
    text(title, { x: SIDE, y: 22 }, { size: 7.5, bold: true }),
    ...rows.map((row, i) => text(row, { x: SIDE, y: 30 + i * 5.2 }, { size: 3.8, color: COLORS.quiet })),
  ];
}

/** Cards to hold against a drawing: line width, plain line before a mark, one band, a corner. */
export function gaugePage(kit: Kit, paper: PaperName, tools: PrintTools): Page {
  const size = paperSize(paper, false);
  const { title, how } = tools.words.print.gauge;
  return manyOf(size, GAUGE, headOf(title, how, size.w), gaugeCard(kit, tools), tools);
}

const GAUGE: Size = { w: 90, h: 52 };
export const NOTCH_DEGREES = 60;
const NOTCH_DEEP: Mm = 16;

function gaugeCard({ rules, robot, line: { color } }: Kit, { words }: PrintTools): Item[] {
  const said = words.print.gauge;
  const bar = (y: Mm, width: Mm, note: string): Item[] => [
    line({ x: 5, y }, { x: 23, y }, { color, width, square: true }),
    text(note, { x: 25, y: y + 1.1 }, { size: 3 }),
  ];
  const { least, nominal, most } = rules.lineWidth;
  const half = radians(NOTCH_DEGREES / 2);
  const mouth = NOTCH_DEEP * (sin(half) / cos(half));
  const tip = { x: GAUGE.w - NOTCH_DEEP, y: 33 };
  const fine: Stroke = { color: COLORS.ink, width: 0.3, square: true };
  const from = 5;
  return [
    path(rectangle(0, 0, GAUGE.w, GAUGE.h), CUT),
    ...bar(6, least, said.width(words.numbers.length(least), 'least')),
    ...bar(13.5, nominal, said.width(words.numbers.length(nominal), 'nominal')),
    ...bar(22, most, said.width(words.numbers.length(most), 'most')),
    filled(rectangle(from, 28.5, robot.bandUnit, nominal + 0.4), COLORS.quiet),
    text(said.band(words.numbers.length(robot.bandUnit)), { x: 25, y: 32.3 }, { size: 3 }),
    line({ x: from, y: 41 }, { x: from + rules.beforeMark, y: 41 }, { ...fine, width: 0.6 }),
    ...[0, rules.beforeMark].map((x) => line({ x: from + x, y: 38.5 }, { x: from + x, y: 43.5 }, fine)),
    text(said.plain(words.numbers.length(rules.beforeMark)), { x: from, y: 48 }, { size: 3 }),
    line({ x: GAUGE.w, y: tip.y - mouth }, tip, fine),
    line(tip, { x: GAUGE.w, y: tip.y + mouth }, fine),
    text(`${NOTCH_DEGREES}°`, { x: tip.x - 1.5, y: tip.y + 1.2 }, { size: 3.6, bold: true, align: 'right' }),
    ...said.corner.map((row, i) =>
      text(row, { x: GAUGE.w - 3, y: 8 + i * 4 }, { size: 2.8, align: 'right', color: COLORS.quiet }),
    ),
  ];
}

/** What robots are calibrated on: the kit's patch of line ink beside bare paper. */
export function patchPage(kit: Kit, paper: PaperName, tools: PrintTools): Page {
  const size = paperSize(paper, false);
  const { shape, size: side, note } = patchOf(kit);
  const { title, how, paper: bare } = tools.words.print.patch;
  const shapeAt = (x: Mm) =>
    shape === 'square' ? rectangle(x, 3, side, side) : circle({ x: x + side / 2, y: 3 + side / 2 }, side / 2);
  const one: Item[] = [
    filled(shapeAt(3), kit.line.color),
    path(shapeAt(6 + side), { ...CUT, color: COLORS.rule }),
    text(bare, { x: 6 + side * 1.5, y: 4 + side / 2 }, { size: 3, align: 'middle', color: COLORS.quiet }),
  ];
  const each = { w: 2 * side + 9, h: side + 8 };
  return manyOf(size, each, headOf(title, note === undefined ? how : `${how} ${note}`, size.w), one, tools);
}

const SLIP_HIGH: Mm = 62;

/** Slips to be filled in by hand: what a team thinks, what the robot did, and why. */
export function slipsPage(paper: PaperName, emblem: string | undefined, tools: PrintTools): Page {
  const size = paperSize(paper, false);
  const count = Math.floor((size.h - 16) / SLIP_HIGH);
  return {
    ...size,
    items: Array.from({ length: count }, (_, i) => group(0, 8 + i * SLIP_HIGH, slip(size.w, emblem, tools))),
  };
}

function slip(w: Mm, emblem: string | undefined, { words, emblems }: PrintTools): Item[] {
  const columns = words.print.slips.columns;
  const wide = (w - 2 * SIDE) / columns.length;
  const [top, bottom] = [14, SLIP_HIGH - 6];
  const rule: Stroke = { color: COLORS.ink, width: 0.4 };
  const name = emblem === undefined ? '' : words.emblems.name(emblem);
  return [
    ...emblemItem(emblems, emblem ?? '', { x: SIDE, y: 4.5 }, 7),
    text(name, { x: SIDE + 9, y: 10 }, { size: 4.4, bold: true }),
    text(words.print.slips.challenge, { x: SIDE + 2 * wide, y: 10 }, { size: 3.6, color: COLORS.quiet }),
    path(rectangle(SIDE, top, w - 2 * SIDE, bottom - top), rule),
    ...columns.flatMap((column, i) => [
      text(column, { x: SIDE + i * wide + 3, y: top + 6 }, { size: 4.4, bold: true }),
      ...(i === 0 ? [] : [line({ x: SIDE + i * wide, y: top }, { x: SIDE + i * wide, y: bottom }, rule)]),
      ...[0, 1, 2].map((row) =>
        line(
          { x: SIDE + i * wide + 3, y: top + 16 + row * 10 },
          { x: SIDE + (i + 1) * wide - 3, y: top + 16 + row * 10 },
          { color: COLORS.rule, width: 0.3 },
        ),
      ),
    ]),
    line({ x: 0, y: SLIP_HIGH }, { x: w, y: SLIP_HIGH }, CUT),
  ];
}
