import type { Line, Mark } from '../../shared/documents/design.ts';
import { actionOf, type Kit } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import { cos, radians, sin } from '../../shared/geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { bandsTried, CORNERS_TRIED } from '../../shared/prep/fit-limits.ts';
import { layOut } from '../../shared/track/layout.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { ruler } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize, type Size } from './page.ts';
import { pointer, text } from './shapes.ts';
import { outOfSight, sheetItems } from './sheet.ts';
import { wordsToTry } from './strip.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

/** The strip of limits: corners that get sharper, and marks whose bands get shorter. */

const SIDE: Mm = 15;
const HEAD: Mm = 58;
const FOOT: Mm = 14;

export function limitPages(kit: Kit, paper: PaperName, tools: PrintTools): Page[] {
  const size = paperSize(paper, false);
  const [word] = wordsToTry(kit, 1);
  return [cornersPage(kit, size, tools), ...(word === undefined ? [] : [bandsPage(word, kit, size, tools)])];
}

const ACROSS = 3;
/** Of a corner: long enough for a robot to stand on, and to be on its way again. */
const LEG: Mm = 45;

function cornersPage(kit: Kit, size: Size, tools: PrintTools): Page {
  const wide = (size.w - 2 * SIDE) / ACROSS;
  const high = (size.h - HEAD - FOOT) / Math.ceil(CORNERS_TRIED.length / ACROSS);
  const corners = CORNERS_TRIED.map((degrees, i) => ({
    degrees,
    at: {
      x: SIDE + (i % ACROSS) * wide + (wide - LEG) / 2,
      y: HEAD + Math.floor(i / ACROSS) * high + LEG + 2,
    },
  }));
  const lines = corners.map(({ degrees, at }, i) => cornerLine(`l${i}`, at, radians(degrees), kit));
  const { cornersTitle, cornersHow } = tools.words.print.fit;
  return {
    ...size,
    items: [
      ...headOf(cornersTitle, cornersHow, size.w),
      ...driven(lines, [], size, kit),
      ...corners.flatMap(({ degrees, at }) => {
        const below = at.y + outOfSight(kit) + 2.5;
        return [
          pointer({ x: at.x + 4, y: below }, 1, 0, 4, COLORS.ink),
          text(`${degrees}°`, { x: at.x + 7, y: below + 1.8 }, { size: 5, bold: true }),
        ];
      }),
      ...ruler({ x: SIDE, y: size.h - 8 }, tools.words.print.measure),
    ],
  };
}

/** To the right, and back upwards so that the lines hold this angle between them. */
function cornerLine(id: string, from: PaperPoint, angle: number, kit: Kit): Line {
  const tip = { x: from.x + LEG, y: from.y };
  const end = { x: tip.x - LEG * cos(angle), y: tip.y - LEG * sin(angle) };
  const pieces = [tip, end].map((to) => ({ to, bulge: 0 }));
  return { id, width: kit.rules.lineWidth.nominal, from, pieces };
}

function bandsPage(word: string, kit: Kit, size: Size, tools: PrintTools): Page {
  const lengths = bandsTried(kit);
  const high = (size.h - HEAD - FOOT) / lengths.length;
  const y = (row: number) => HEAD + row * high + 10;
  const lines = lengths.map(
    (_, i): Line => ({
      id: `l${i}`,
      width: kit.rules.lineWidth.nominal,
      from: { x: SIDE + 6, y: y(i) },
      pieces: [{ to: { x: size.w - SIDE, y: y(i) }, bulge: 0 }],
    }),
  );
  const marks = lengths.map(
    (length, i): Mark => ({
      id: `m${i}`,
      line: `l${i}`,
      at: kit.robot.length + kit.rules.beforeMark,
      bands: [...word].map((ink) => ({ ink, length, gap: 0 })),
    }),
  );
  const { words } = tools;
  const { bandsTitle, bandsHow } = words.print.fit;
  const action = actionOf(kit, word);
  const how = bandsHow(action ? words.actions.name(action) : words.actions.unknown);
  return {
    ...size,
    items: [
      ...headOf(bandsTitle, how, size.w),
      ...driven(lines, marks, size, kit),
      ...lengths.flatMap((length, i) => [
        pointer({ x: SIDE + 3, y: y(i) }, 1, 0, 4, COLORS.ink),
        text(
          words.numbers.length(length, 1),
          { x: size.w - SIDE, y: y(i) - outOfSight(kit) + 2 },
          { size: 4.4, bold: true, align: 'right' },
        ),
      ]),
      ...ruler({ x: SIDE, y: size.h - 8 }, words.print.measure),
    ],
  };
}

const headOf = (title: string, how: string, w: Mm): Item[] => [
  text(title, { x: SIDE, y: 20 }, { size: 7.5, bold: true }),
  ...wrapped(how, w - 2 * SIDE, 3.6).map((row, i) =>
    text(row, { x: SIDE, y: 27 + i * 5 }, { size: 3.6, color: COLORS.quiet }),
  ),
];

/** Lines and marks as on any sheet that a robot drives on, without berths. */
function driven(lines: Line[], marks: Mark[], size: Size, kit: Kit): Item[] {
  const start = { name: { en: ' ' }, at: lines[0]!.from, heading: 0, r: 15 };
  const sheet: Sheet = { ...size, start, gates: [], areas: [], keepOut: [], given: { lines, marks } };
  const layout = layOut(sheet, { lines: [], marks: [] });
  const picture = { ...pictureOf({ sheet, layout, kit }), berths: [] };
  const look = {
    driven: true,
    lines: 'ink',
    marks: 'colour',
    grid: false,
    begun: false,
    bare: true,
  } as const;
  return sheetItems(picture, layout, kit, look);
}
