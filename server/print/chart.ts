import { actionOf, type Kit, reversed } from '../../shared/documents/kit.ts';
import { textIn } from '../../shared/documents/values.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { shownMark } from './marks-shown.ts';
import { COLORS, type Item, type Page, paperSize } from './page.ts';
import { line, pointer, text } from './shapes.ts';
import type { PrintTools } from './tools.ts';
import { widthOf, wrapped } from './type.ts';

/** A word of the chart, once for both of its sides. */
const wordsOf = ({ chart }: Kit): string[] =>
  chart.map(({ word }) => word).filter((word, i, all) => !all.slice(0, i).includes(reversed(word)));

/** Rows lower than this can't be read across a room; more of them go on the next page. */
const LEAST_ROW: Mm = 17;
const MOST_ROW: Mm = 34;

/** The chart for the wall, one row a mark with both of its ends named. */
export function chartPages(kit: Kit, paper: PaperName, tools: PrintTools): Page[] {
  const size = paperSize(paper, false);
  const scale = size.w / 210;
  const [head, foot] = [46 * scale, 26 * scale];
  const words = wordsOf(kit);
  const most = Math.max(1, Math.floor((size.h - head - foot) / (LEAST_ROW * scale)));
  const pages = Math.max(1, Math.ceil(words.length / most));
  const each = Math.ceil(words.length / pages);
  return Array.from({ length: pages }, (_, page) => {
    const rows = words.slice(page * each, (page + 1) * each);
    const high = Math.min(MOST_ROW * scale, (size.h - head - foot) / Math.max(1, rows.length));
    return {
      ...size,
      items: [
        ...headItems(size.w, scale, tools),
        ...rows.flatMap((word, i) => rowItems(word, head + i * high, high, size.w, kit, tools)),
        ...footItems(kit, size.h - foot + 8 * scale, size.w, scale, tools),
      ],
    };
  });
}

function headItems(w: Mm, scale: number, { words }: PrintTools): Item[] {
  const left = 16 * scale;
  return [
    text(words.print.chart.title, { x: left, y: 24 * scale }, { size: 11 * scale, bold: true }),
    text(words.print.chart.how, { x: left, y: 34 * scale }, { size: 4.1 * scale, color: COLORS.quiet }),
    line(
      { x: left, y: 39 * scale },
      { x: w - left, y: 39 * scale },
      { color: COLORS.ink, width: 1.2 * scale },
    ),
  ];
}

function rowItems(word: string, top: Mm, high: Mm, w: Mm, kit: Kit, { words }: PrintTools): Item[] {
  const band = high * 0.62;
  const middle = top + high / 2;
  const left = w / 2 - (word.length * band) / 2;
  const right = w - left;
  const arrow = band * 0.36;
  const named = (each: string): string => {
    const action = actionOf(kit, each);
    return action ? words.actions.name(action) : words.actions.unknown;
  };
  const room = left - 16 - 2.2 * arrow;
  const said = [named(word), named(reversed(word))] as const;
  const most = Math.min(high * 0.4, 12);
  const size = most * Math.min(1, room / Math.max(...said.map((each) => widthOf(each, most, true))));
  const y = middle + size * 0.34;
  return [
    ...shownMark(word, { x: left, y: middle - band / 2 }, kit, { size: band, hatch: true }),
    pointer({ x: left - arrow * 0.5, y: middle }, 1, 0, arrow, COLORS.ink),
    pointer({ x: right + arrow * 0.5, y: middle }, -1, 0, arrow, COLORS.ink),
    text(said[0], { x: left - 2 * arrow, y }, { size, bold: true, align: 'right' }),
    text(said[1], { x: right + 2 * arrow, y }, { size, bold: true }),
    line({ x: 16, y: top + high }, { x: w - 16, y: top + high }, { color: COLORS.rule, width: 0.3 }),
  ];
}

function footItems(kit: Kit, y: Mm, w: Mm, scale: number, { words, locale }: PrintTools): Item[] {
  const inks = kit.inks.map((ink) => `${ink.id} ${textIn(ink.name, locale)}`);
  const size = 3.8 * scale;
  const said = words.print.chart.foot(inks, kit.name);
  return wrapped(said, w - 32 * scale, size).map((row, i) =>
    text(row, { x: 16 * scale, y: y + i * size * 1.4 }, { size, color: COLORS.quiet }),
  );
}
