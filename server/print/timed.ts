import type { Line, Mark } from '../../shared/documents/design.ts';
import { type Kit, PACES, type Pace } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { TIMED_CIRCLES, TIMED_LINE } from '../../shared/prep/fit.ts';
import { layOut } from '../../shared/track/layout.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { ruler } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize, type Stroke } from './page.ts';
import { circle, line, path, pointer, text } from './shapes.ts';
import { FAINT, outOfSight, sheetItems } from './sheet.ts';
import { onPaper } from './tiles.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

/** What a stopwatch is held against: a line between two ticks for each pace, and a circle. */

const LEFT: Mm = 10;
const RIGHT: Mm = 8;
/** Line beyond the second tick, so that the robot is still on it there. */
const BEYOND: Mm = 45;
/** Between a pace being reached on paper and the first tick. */
const SETTLED: Mm = 15;
const FIRST: Mm = 52;
const ROW: Mm = 34;
const BELOW: Mm = 26;

/** Marks that bring a robot from its starting pace to this one; undefined where the chart has none. */
function wordsTo(pace: Pace, { chart, robot: { startPace } }: Kit): string[] | undefined {
  if (pace === startPace) return [];
  const steps = PACES.indexOf(pace) - PACES.indexOf(startPace);
  const by = (wanted: number) =>
    chart.find(({ action }) => action.kind === 'pace-by' && action.steps === wanted)?.word;
  const at = chart.find(({ action }) => action.kind === 'pace-to' && action.pace === pace)?.word ?? by(steps);
  if (at !== undefined) return [at];
  const one = by(steps < 0 ? -1 : 1);
  return one === undefined ? undefined : new Array<string>(Math.abs(steps)).fill(one);
}

interface TimedRow {
  readonly pace: Pace;
  readonly words: readonly string[];
  readonly y: Mm;
}

/** Where marks begin, in mm from the beginning of the line, and where the pace is sure to be reached. */
function waysOf({ pace, words }: TimedRow, { robot, rules }: Kit): { marks: Mm[]; ready: Mm } {
  const apart = Math.max(rules.beforeMark, rules.afterMark) + 3;
  const marks: Mm[] = [];
  let way = robot.length + rules.beforeMark;
  for (const word of words) {
    marks.push(way);
    way += word.length * robot.bandUnit + apart;
  }
  const acts = words.length === 0 ? 0 : rules.actionReady[pace] - apart;
  return { marks, ready: way + acts + SETTLED };
}

/** A straight line of 500 mm between two ticks for each pace that the chart can ask for, over as many pages as it takes. */
export function timedLinePages(kit: Kit, paper: PaperName, tools: PrintTools): Page[] {
  const rows = PACES.flatMap((pace) => {
    const words = wordsTo(pace, kit);
    return words ? [{ pace, words }] : [];
  }).map((row, i): TimedRow => ({ ...row, y: FIRST + i * ROW }));
  const from = LEFT + Math.max(...rows.map((row) => waysOf(row, kit).ready));
  const size = { w: from + TIMED_LINE + BEYOND + RIGHT, h: FIRST + (rows.length - 1) * ROW + BELOW };
  const ticks = rows.flatMap(({ y }) =>
    [from, from + TIMED_LINE].flatMap((x) => tickAt({ x, y }, { x: 0, y: 1 }, kit)),
  );
  const items = [
    ...lineItems(rows, size, kit),
    ...ticks,
    ...rows.flatMap((row) => besideRow(row, from, kit, tools)),
    ...headItems(from, kit, tools),
  ];
  return onPaper(items, size, paper, tools.words.print);
}

/** Lines and marks as on any sheet that a robot drives on. */
function lineItems(rows: readonly TimedRow[], size: { w: Mm; h: Mm }, kit: Kit): Item[] {
  const lines = rows.map(
    ({ pace, y }): Line => ({
      id: pace,
      width: kit.rules.lineWidth.nominal,
      from: { x: LEFT, y },
      pieces: [{ to: { x: size.w - RIGHT, y }, bulge: 0 }],
    }),
  );
  const marks = rows.flatMap((row): Mark[] =>
    row.words.map((word, i) => ({
      id: `${row.pace} ${i}`,
      line: row.pace,
      at: waysOf(row, kit).marks[i]!,
      bands: [...word].map((ink) => ({ ink, length: kit.robot.bandUnit, gap: 0 })),
    })),
  );
  const start = { name: { en: ' ' }, at: { x: LEFT, y: FIRST }, heading: 0, r: 15 };
  const sheet: Sheet = { ...size, start, gates: [], areas: [], keepOut: [], given: { lines, marks } };
  const layout = layOut(sheet, { lines: [], marks: [] });
  const picture = { ...pictureOf({ sheet, layout, kit }), berths: [] };
  const look = { driven: true, lines: 'ink', marks: 'colour', grid: false, begun: false } as const;
  return sheetItems(picture, layout, kit, look);
}

const TICK: Stroke = { color: COLORS.ink, width: 0.5, square: true };
const TICK_LONG: Mm = 6;

/** Across a line, to both its sides: faint where a robot might see it, dark where it can't. */
function tickAt(at: PaperPoint, across: PaperPoint, kit: Kit): Item[] {
  const inner = kit.rules.lineWidth.most / 2 + 1;
  const outer = outOfSight(kit);
  const off = (mm: Mm): PaperPoint => ({ x: at.x + across.x * mm, y: at.y + across.y * mm });
  return [1, -1].flatMap((side) => [
    line(off(side * inner), off(side * outer), FAINT),
    line(off(side * outer), off(side * (outer + TICK_LONG)), TICK),
  ]);
}

function besideRow({ pace, y }: TimedRow, from: Mm, kit: Kit, { words }: PrintTools): Item[] {
  const above = y - outOfSight(kit) - 1.5;
  const { start, stop, at } = words.print.fit;
  return [
    pointer({ x: LEFT - 3, y }, 1, 0, 4, COLORS.ink),
    text(at(words.actions.pace(pace)), { x: LEFT, y: above }, { size: 3.8, bold: true }),
    text(start, { x: from + 2, y: above }, { size: 3.4 }),
    text(stop, { x: from + TIMED_LINE - 2, y: above }, { size: 3.4, align: 'right' }),
  ];
}

function headItems(w: Mm, kit: Kit, { words }: PrintTools): Item[] {
  const { lineTitle, lineHow } = words.print.fit;
  const missing = PACES.filter((pace) => !wordsTo(pace, kit)).map(words.actions.pace);
  const how = missing.length === 0 ? lineHow : `${lineHow} ${words.print.fit.noMark(missing)}`;
  return [
    text(lineTitle, { x: LEFT, y: 12 }, { size: 6.5, bold: true }),
    ...wrapped(how, w - LEFT, 3.4).map((row, i) =>
      text(row, { x: LEFT, y: 18 + i * 4.5 }, { size: 3.4, color: COLORS.quiet }),
    ),
  ];
}

/** A circle whose radius is stated, to be driven round and round with a stopwatch. */
export function timedCirclePage(kit: Kit, paper: PaperName, tools: PrintTools): Page {
  const size = paperSize(paper, false);
  const { words } = tools;
  const { circleTitle, circleHow, radius, lap } = words.print.fit;
  const [small, large] = TIMED_CIRCLES;
  const r = paper === 'A4' || paper === 'Letter' ? small : large;
  const middle = { x: size.w / 2, y: size.h - r - 40 };
  const top = { x: middle.x, y: middle.y - r };
  const how = circleHow(words.actions.pace(kit.robot.startPace));
  return {
    ...size,
    items: [
      text(circleTitle, { x: 15, y: 20 }, { size: 7.5, bold: true }),
      ...wrapped(how, size.w - 30, 3.6).map((row, i) =>
        text(row, { x: 15, y: 27 + i * 5 }, { size: 3.6, color: COLORS.quiet }),
      ),
      path(circle(middle, r), { color: kit.line.color, width: kit.rules.lineWidth.nominal }),
      ...tickAt(top, { x: 0, y: 1 }, kit),
      pointer({ x: top.x + 14, y: top.y + outOfSight(kit) + 5 }, 1, 0, 5, COLORS.ink),
      text(lap, { x: top.x, y: top.y + outOfSight(kit) + 14 }, { size: 4, align: 'middle' }),
      text(radius(r), { ...middle, y: middle.y + 4 }, { size: 6, bold: true, align: 'middle' }),
      ...ruler({ x: 15, y: size.h - 8 }, words.print.measure),
    ],
  };
}
