import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Drawing, EMPTY_DRAWING } from '../../shared/documents/design.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import type { Picture } from '../../shared/picture/shapes.ts';
import { type Layout, layOut } from '../../shared/track/layout.ts';
import type { LineLook, MarkLook, PaperName } from '../../shared/wire/print.ts';
import { textIn } from '../../shared/wording/wording.ts';
import { freeSpot } from './free-spot.ts';
import { codeOf, emblemItem, ruler } from './furniture.ts';
import { shownMark } from './marks-shown.ts';
import { COLORS, type Item, type Page, paperSize } from './page.ts';
import { filled, rectangle, text } from './shapes.ts';
import { type DrivenLook, marksOf, sheetItems } from './sheet.ts';
import { onPaper } from './tiles.ts';
import type { PrintTools } from './tools.ts';
import { widthOf, wrapped } from './type.ts';

/** What a robot is to drive on: a challenge's sheet, or with a drawing on it. */
export interface DrivingSheet {
  readonly challenge: Challenge;
  readonly title: string;
  readonly drawing?: Drawing | undefined;
  /** Of the design, or of the challenge where nothing is drawn; the code on the sheet says it. */
  readonly id: string;
  readonly emblem?: string | undefined;
  readonly entry?: number | undefined;
  /** The drawing is what teams begin with, and change. */
  readonly begun?: boolean;
}

export interface DrivingLook {
  readonly paper: PaperName;
  readonly lines: LineLook;
  readonly marks: MarkLook;
}

/** Where strips of small print lie: from here to there off the paper's edge, out of every sensor's sight. */
const STRIP = { from: 5, to: 11.5, side: 8 } as const;
/** A sheet narrower than this has no strip of its own. */
const LEAST_WIDTH: Mm = 190;
const SMALL: Mm = 2.7;
const CODE: Mm = 23;

/** The sheet at true size, over as many pages as it takes; what finds no room on it stands on a last page. */
export function drivingPages(sheet: DrivingSheet, look: DrivingLook, tools: PrintTools): Page[] {
  const { challenge, drawing } = sheet;
  const layout = layOut(challenge.sheet, drawing ?? EMPTY_DRAWING);
  const { kit } = challenge;
  const picture = pictureOf({ sheet: challenge.sheet, kit, layout, language: tools.locale, still: true });
  const grid = challenge.play === 'draw' && drawing === undefined;
  const full: DrivenLook = { driven: true, ...look, grid, begun: sheet.begun ?? false };
  const items = sheetItems(picture, layout, kit, full);
  const empty = marksOf(full) === 'paint';
  const around = surroundings({ sheet, picture, layout, empty }, tools);
  const pages = onPaper([...items, ...around.items], picture, look.paper, tools.words.print);
  return around.left.length === 0
    ? pages
    : [...pages, aboutPage(around.left, { sheet, picture, layout, empty }, look.paper, tools)];
}

interface Scene {
  readonly sheet: DrivingSheet;
  readonly picture: Picture;
  readonly layout: Layout;
  /** Marks are to be painted. */
  readonly empty: boolean;
}

/** What did not fit on the sheet itself. */
type LeftOver = 'code' | 'words' | 'strips';

/** Ruler, words of the marks, sentence, emblem and code, where no robot reads them. */
function surroundings(scene: Scene, tools: PrintTools): { items: Item[]; left: LeftOver[] } {
  const { sheet, picture, layout } = scene;
  const size = { w: CODE + 6, h: CODE + 9 };
  const spot = freeSpot(size, picture, layout, STRIP.to + 2);
  const code = spot ? codeItems(sheet, { x: spot.x + 3, y: spot.y + 3 }) : [];
  const left: LeftOver[] = spot ? [] : ['code'];
  if (picture.w < LEAST_WIDTH) return { items: code, left: [...left, 'strips', 'words'] };
  const words = wordStrip(scene);
  const room = picture.w - 3 * STRIP.side - words.width;
  return {
    items: [...code, ...words.items, ...sentence(scene, room, tools), ...bottomStrip(scene, tools)],
    left: words.whole ? left : [...left, 'words'],
  };
}

/** On white, also where the sheet has a grid: readers need it around the code. */
const codeItems = ({ id }: DrivingSheet, at: PaperPoint): Item[] => [
  filled(rectangle(at.x - 3, at.y - 3, CODE + 6, CODE + 9), COLORS.white),
  codeOf(id, at, CODE),
  text(
    id.slice(0, 8),
    { x: at.x + CODE / 2, y: at.y + CODE + 4 },
    { size: SMALL, align: 'middle', color: COLORS.quiet },
  ),
];

const BAND: Mm = 4.6;
const WORD_GAP: Mm = 4;

/** The wanted word of each mark, from the right end of the upper edge; at most over half of it. */
function wordStrip({ picture, layout, empty, sheet }: Scene) {
  const widths = layout.marks.map(({ bands }) => 5 + bands.length * BAND + WORD_GAP);
  const width = widths.reduce((sum, each) => sum + each, 0);
  if (width > picture.w / 2) return { items: [], width: 0, whole: false };
  let x = picture.w - STRIP.side - width + WORD_GAP;
  const items = layout.marks.flatMap((mark, i) => {
    const at = { x, y: STRIP.from + 0.6 };
    x += widths[i]!;
    return wordItems(i + 1, mark.word, at, sheet.challenge, empty);
  });
  return { items, width, whole: true };
}

const wordItems = (n: number, word: string, at: PaperPoint, { kit }: Challenge, empty: boolean): Item[] => [
  text(`${n}`, { x: at.x + 3.6, y: at.y + BAND * 0.76 }, { size: 3.4, align: 'right' }),
  ...shownMark(word, { x: at.x + 4.6, y: at.y }, kit, { size: BAND, empty }),
];

function sentence({ sheet }: Scene, room: Mm, { locale }: PrintTools): Item[] {
  const said = textIn(sheet.challenge.sentence, locale);
  const size = [3.6, 3.2, SMALL].find((each) => widthOf(said, each, true) <= room) ?? SMALL;
  const rows = wrapped(said, room, size, true).slice(0, 2);
  const first = rows.length === 1 ? STRIP.from + 4 : STRIP.from + 2.4;
  return rows.map((row, i) =>
    text(row, { x: STRIP.side, y: first + i * (size + 0.6) }, { size, bold: true }),
  );
}

function bottomStrip({ sheet, picture, layout, empty }: Scene, { words, emblems }: PrintTools): Item[] {
  const y = picture.h - STRIP.from;
  const end = picture.w - STRIP.side;
  const inks = !empty && layout.marks.length > 0;
  const name = sheet.emblem === undefined ? '' : words.emblems.name(sheet.emblem);
  const whose = sheet.entry === undefined ? name : `${name}, ${words.print.entry(sheet.entry)}`;
  const wide = widthOf(whose, 4, true);
  return [
    ...ruler({ x: STRIP.side, y: y - 2.4 }, words.print.measure),
    ...(inks
      ? [
          text(
            words.print.inksDiffer,
            { x: STRIP.side + 102.5, y: y + 0.6 },
            { size: 2.4, color: COLORS.quiet },
          ),
        ]
      : []),
    text(sheet.title, { x: end, y: y + 0.4 }, { size: SMALL, align: 'right', color: COLORS.quiet }),
    ...(sheet.emblem === undefined
      ? []
      : [
          text(whose, { x: end, y: y - 3 }, { size: 4, bold: true, align: 'right' }),
          ...emblemItem(emblems, sheet.emblem, { x: end - wide - 7, y: y - 7.2 }, 5.4),
        ]),
  ];
}

/** The page for the back: what found no room on the sheet. */
function aboutPage(left: readonly LeftOver[], scene: Scene, paper: PaperName, tools: PrintTools): Page {
  const { sheet, layout, empty } = scene;
  const { w, h } = paperSize(paper, false);
  const { words, emblems, locale } = tools;
  const perRow = Math.max(1, Math.floor((w - 40) / 40));
  const marks = layout.marks.flatMap((mark, i) => {
    const at = { x: 20 + (i % perRow) * 40, y: 95 + Math.floor(i / perRow) * 10 };
    return wordItems(i + 1, mark.word, at, sheet.challenge, empty);
  });
  const whose = sheet.emblem === undefined ? '' : words.emblems.name(sheet.emblem);
  return {
    w,
    h,
    items: [
      ...emblemItem(emblems, sheet.emblem ?? '', { x: 20, y: 20 }, 16),
      text(whose, { x: 40, y: 31 }, { size: 8, bold: true }),
      text(words.print.about(sheet.title), { x: 20, y: 46 }, { size: 5, bold: true }),
      ...wrapped(textIn(sheet.challenge.sentence, locale), w - 80, 4.2).map((row, i) =>
        text(row, { x: 20, y: 54 + i * 6 }, { size: 4.2 }),
      ),
      ...codeItems(sheet, { x: w - 20 - CODE, y: 20 }),
      ...(left.includes('words') ? marks : []),
      ...ruler({ x: 20, y: h - 15 }, words.print.measure),
    ],
  };
}
