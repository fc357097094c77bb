import type { Line, Mark } from '../../shared/documents/design.ts';
import { type Action, actionOf, type Kit, reversed } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { layOut } from '../../shared/track/layout.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { ruler } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize } from './page.ts';
import { pointer, text } from './shapes.ts';
import { sheetItems } from './sheet.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

const LEFT: Mm = 24;
const RIGHT: Mm = 20;
const FIRST: Mm = 66;
const ROW: Mm = 30;
/** From the line's beginning to its mark: the robot's length and plain line enough. */
const LEAD: Mm = 62;

/** What a robot does at once and everybody sees; choices at junctions are not among them. */
const SEEN_AT_ONCE: readonly Action['kind'][] = [
  'wait',
  'signal',
  'park',
  'turn-back',
  'pace-by',
  'pace-to',
  'pace-for',
];

/** Words that show each ink, in each place: those with an action to be seen first. */
export function wordsToTry({ chart }: Kit, most: number): string[] {
  const rank = (word: string, action: Action) =>
    SEEN_AT_ONCE.includes(action.kind)
      ? SEEN_AT_ONCE.indexOf(action.kind)
      : SEEN_AT_ONCE.length + word.length;
  return [...chart]
    .sort((a, b) => rank(a.word, a.action) - rank(b.word, b.action))
    .map(({ word }) => word)
    .filter((word, i, all) => !all.slice(0, i).includes(reversed(word)))
    .slice(0, most);
}

/** Short lines with one printed mark each: whether robots read this printer's colours at all. */
export function stripPage(kit: Kit, paper: PaperName, tools: PrintTools): Page {
  const size = paperSize(paper, false);
  const words = wordsToTry(kit, Math.floor((size.h - FIRST - 34) / ROW) + 1);
  const y = (row: number) => FIRST + row * ROW;
  const width = kit.rules.lineWidth.nominal;
  const lines = words.map(
    (_, row): Line => ({
      id: `l${row}`,
      width,
      from: { x: LEFT, y: y(row) },
      pieces: [{ to: { x: size.w - RIGHT, y: y(row) }, bulge: 0 }],
    }),
  );
  const marks = words.map(
    (word, row): Mark => ({
      id: `m${row}`,
      line: `l${row}`,
      at: LEAD,
      bands: [...word].map((ink) => ({ ink, length: kit.robot.bandUnit, gap: 0 })),
    }),
  );
  const start = { name: { en: ' ' }, at: { x: LEFT, y: y(0) }, heading: 0, r: 15 };
  const sheet: Sheet = { ...size, start, gates: [], areas: [], keepOut: [], given: { lines, marks } };
  const layout = layOut(sheet, { lines: [], marks: [] });
  const picture = { ...pictureOf({ sheet, layout, kit }), berths: [] };
  const look = { driven: true, lines: 'ink', marks: 'colour', grid: false, begun: false } as const;
  return {
    ...size,
    items: [
      ...headItems(size.w, tools),
      ...sheetItems(picture, layout, kit, look),
      ...words.flatMap((word, row) => besideLine(word, y(row), size.w, kit, tools)),
      ...ruler({ x: 15, y: size.h - 8 }, tools.words.print.measure),
    ],
  };
}

function headItems(w: Mm, { words }: PrintTools): Item[] {
  const { title, how } = words.print.strip;
  return [
    text(title, { x: 15, y: 20 }, { size: 7.5, bold: true }),
    ...wrapped(how, w - 30, 3.6).map((row, i) =>
      text(row, { x: 15, y: 27 + i * 5 }, { size: 3.6, color: COLORS.quiet }),
    ),
  ];
}

/** Out of sight of the robot: where it starts, and what it should do. */
function besideLine(word: string, y: Mm, w: Mm, kit: Kit, { words }: PrintTools): Item[] {
  const action = actionOf(kit, word);
  const does = action ? words.actions.name(action) : words.actions.unknown;
  return [
    pointer({ x: LEFT - 4, y }, 1, 0, 5, COLORS.ink),
    text(
      words.print.strip.should(does),
      { x: w - RIGHT, y: y - 12 },
      { size: 3.8, bold: true, align: 'right' },
    ),
  ];
}
