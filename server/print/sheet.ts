import type { Kit } from '../../shared/documents/kit.ts';
import { directionAt, pathFoot, pointAt } from '../../shared/geometry/path.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { markGround } from '../../shared/picture/bands.ts';
import {
  labelledIn,
  type Picture,
  type PictureBand,
  type PictureLabel,
  type PicturePolygon,
} from '../../shared/picture/shapes.ts';
import type { LaidMark, Layout } from '../../shared/track/layout.ts';
import type { LineLook, MarkLook } from '../../shared/wire/print.ts';
import { COLORS, type Item, type Stroke } from './page.ts';
import { circle, filled, line, path, pieces, polygon, polyline, text } from './shapes.ts';

export interface DrivenLook {
  readonly driven: true;
  readonly lines: LineLook;
  readonly marks: MarkLook;
  readonly grid: boolean;
  /** What is drawn on the sheet is still to be changed: dots, whatever given lines look like. */
  readonly begun: boolean;
  /** Without numbers and letters beside marks, where bands may be shorter than letters. */
  readonly bare?: true;
}

/** How a sheet is printed: `driven` by a robot, or only looked at, with names and letters so much larger. */
export type SheetLook = DrivenLook | { readonly driven: false; readonly larger: number };

/**
 * Everything near a line that is not line: so thin and pale that a sensor's footprint, which blurs it
 * with the white beside it, reads less than the robot takes for a line.
 */
export const FAINT: Stroke = { color: '#B0B0B0', width: 0.25 };
const GRID: Stroke = { color: '#CFCFCF', width: 0.15 };
const GRID_COARSE: Stroke = { color: '#C4C4C4', width: 0.2 };
/** The middle of a line that is still to be drawn. */
const DOTS: Stroke = { color: '#A8A8A8', width: 0.9, dash: [0, 3] };
const CLEAR: Stroke = { color: COLORS.quiet, width: 0.4 };

/** Beside a line, what is printed dark from here on is out of every sensor's sight. */
export const outOfSight = (kit: Kit): Mm => 2 * kit.robot.sensorPitch + 3;

/** A dotted line's marks are painted as well: there is no line yet that a band could lie on. */
export const marksOf = (look: DrivenLook): MarkLook =>
  look.lines === 'dots' || look.begun ? 'paint' : look.marks;

/** What lies on the sheet, in the sheet's own frame. */
export function sheetItems(picture: Picture, layout: Layout, kit: Kit, look: SheetLook): Item[] {
  const thin = look.driven ? FAINT : CLEAR;
  return [
    ...(look.driven && look.grid ? gridItems(picture) : []),
    ...picture.areas.map((area) => path(polygon(area.polygon), { ...thin, dash: [2, 1.6] })),
    ...picture.keepOut.flatMap((area) => keepOutItems(area, thin)),
    ...picture.boxes.flatMap(({ polygon: frame, angles }) => [
      path(polygon(frame), { ...thin, dash: [0.8, 1.6] }),
      ...angles.map((angle) => path(polyline(angle), thin)),
    ]),
    ...picture.gates.flatMap(({ a, b }) => [
      line(a, b, { ...thin, dash: [1, 1.6] }),
      ...[a, b].map((post) => filled(circle(post, 1.2), look.driven ? FAINT.color : COLORS.quiet)),
    ]),
    ...picture.berths.flatMap((berth) => [
      path(polyline(berth.hull), { ...thin, dash: [2.4, 1.6] }),
      ...berth.bow.map(([a, b]) => line(a, b, thin)),
    ]),
    ...labels(picture, look),
    ...lineItems(picture, kit, look),
    ...layout.marks.flatMap((mark) => {
      const on = layout.lines.find(({ id }) => id === mark.line);
      return on ? [filled(polygon(markGround(mark, on)), COLORS.white)] : [];
    }),
    ...picture.bands.flatMap((band) => bandItems(band, look)),
    ...(look.driven && look.bare
      ? []
      : layout.marks.flatMap((mark, i) => besideMark(mark, i + 1, layout, kit, look))),
  ];
}

function gridItems({ grid, w, h }: Picture): Item[] {
  const lines = ({ xs, ys }: Picture['grid']['fine'], stroke: Stroke): Item[] => [
    ...xs.map((x) => line({ x, y: 0 }, { x, y: h }, stroke)),
    ...ys.map((y) => line({ x: 0, y }, { x: w, y }, stroke)),
  ];
  return [...lines(grid.fine, GRID), ...lines(grid.coarse, GRID_COARSE)];
}

const HATCH_STEP: Mm = 5;

/** An outline with slanted strokes inside, thin and far apart. */
function keepOutItems({ polygon: corners }: PicturePolygon, thin: Stroke): Item[] {
  const outline = polygon(corners);
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const high = bottom - top;
  const strokes: Item[] = [];
  for (let x = left - high; x < right; x += HATCH_STEP)
    strokes.push(line({ x, y: bottom }, { x: x + high, y: top }, { ...thin, width: thin.width * 0.7 }));
  return [{ kind: 'group', x: 0, y: 0, scale: 1, clip: outline, items: strokes }, path(outline, thin)];
}

const NAME: Mm = 4;
const NAME_DRIVEN = '#8A8A8A';

function labels(picture: Picture, look: SheetLook): Item[] {
  const [color, size] = look.driven ? [NAME_DRIVEN, NAME] : [COLORS.ink, NAME * look.larger];
  return labelledIn(picture).map(({ label }) => labelItem(label, color, size));
}

function labelItem({ text: words, at, align, baseline }: PictureLabel, color: string, size: Mm): Item {
  const down = baseline === 'top' ? 0.72 : baseline === 'middle' ? 0.34 : 0;
  return text(words, { x: at.x, y: at.y + down * size }, { size, align, color });
}

function lineItems({ strokes }: Picture, kit: Kit, look: SheetLook): Item[] {
  return strokes.map(({ pieces: shapes, width, role }) => {
    const dotted = look.driven && (look.lines === 'dots' || (look.begun && role === 'line'));
    return path(pieces(shapes), dotted ? DOTS : { color: kit.line.color, width });
  });
}

/**
 * On paper that a robot drives on, a band is plain colour: no rim, no hatch, no letter. Where it is to be
 * painted, its place is left white.
 */
function bandItems(band: PictureBand, look: SheetLook): Item[] {
  const outline = polygon(band.outline);
  if (look.driven) return marksOf(look) === 'paint' ? [] : [filled(outline, band.color)];
  const ink: Stroke = { color: COLORS.ink, width: 0.35 };
  return [
    filled(outline, band.color),
    ...band.hatchStrokes.map(([a, b]) => line(a, b, ink)),
    ...band.hatchDots.map((p) => filled(circle(p, 0.45), COLORS.ink)),
    path(outline, ink),
  ];
}

const LETTER: Mm = 3.4;
/** How large the ring around a number is, in heights of a letter. */
const RING = 0.68;
/** The other side of a line has to be so much freer before letters change over. */
const FREER: Mm = 1;
/** Rungs begin beside the line and are short. */
const RUNG = { gap: 0.8, length: 3 } as const;

/** Beside a mark: rungs where its bands begin and end, and out of sight its number and letters. */
function besideMark(mark: LaidMark, number: number, layout: Layout, kit: Kit, look: SheetLook): Item[] {
  const on = layout.lines.find(({ id }) => id === mark.line);
  if (!on) return [];
  const beside = (way: Mm, right: Mm): PaperPoint => {
    const [p, d] = [pointAt(on.path, way), directionAt(on.path, way)];
    return { x: p.x - d.y * right, y: p.y + d.x * right };
  };
  const letter = LETTER * (look.driven ? 1 : look.larger);
  const away = outOfSight(kit) + letter * RING;
  const middle = (mark.from + mark.to) / 2;
  const room = (right: Mm) =>
    Math.min(...layout.lines.map(({ path: other }) => pathFoot(other, beside(middle, right)).distance));
  const side = room(-away) > room(away) + FREER ? -away : away;
  const written = (words: string, way: Mm, bold: boolean): Item => {
    const at = beside(way, side);
    return text(words, { x: at.x, y: at.y + letter * 0.34 }, { size: letter, bold, align: 'middle' });
  };
  const before = mark.from - 2.1 - letter;
  const ring = beside(before, side);
  return [
    ...(look.driven && marksOf(look) === 'paint' ? rungs(mark, on.width, beside) : []),
    ...mark.bands.map((band) => written(band.ink, (band.from + band.to) / 2, true)),
    path(circle(ring, letter * RING), { color: COLORS.ink, width: 0.25 }),
    written(String(number), before, false),
  ];
}

function rungs(mark: LaidMark, width: Mm, beside: (way: Mm, right: Mm) => PaperPoint): Item[] {
  const ways = [...new Set(mark.bands.flatMap(({ from, to }) => [from, to]))];
  const inner = width / 2 + RUNG.gap;
  return ways.flatMap((way) =>
    [1, -1].map((side) =>
      line(beside(way, side * inner), beside(way, side * (inner + RUNG.length)), { ...FAINT, square: true }),
    ),
  );
}
