import type { Kit } from '../documents/kit.ts';
import type { Area, Gate, Sheet } from '../documents/sheet.ts';
import { type Locale, type Texts, textIn } from '../documents/values.ts';
import type { Mm } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';
import { pictureBands } from './bands.ts';
import { pictureBerth } from './berths.ts';
import { areaLabel } from './labels.ts';
import { pictureBoxes } from './mark-boxes.ts';
import type { Picture, PictureGate, PictureGrid, PicturePolygon, PictureStroke } from './shapes.ts';

export interface PictureSource {
  readonly sheet: Sheet;
  readonly layout: Layout;
  readonly kit: Kit;
  readonly language?: Locale | undefined;
  /** The drawing does not change any more: names of areas keep off its lines too, not only off given ones. */
  readonly still?: boolean;
}

const GRID = { fine: 5, coarse: 50 } as const;

/** Lists what a sheet shows with the lines and marks of `layout` on it. */
export function pictureOf({ sheet, layout, kit, language = 'en', still = false }: PictureSource): Picture {
  const name = (texts: Texts) => textIn(texts, language);
  const berths = [pictureBerth('start', sheet.start, name(sheet.start.name), sheet)];
  if (sheet.finish) berths.push(pictureBerth('finish', sheet.finish, name(sheet.finish.name), sheet));
  const strokes = layout.lines.map(
    (line): PictureStroke => ({
      id: line.id,
      role: line.given ? 'given' : 'line',
      width: line.width,
      pieces: line.path.pieces,
    }),
  );
  const kept = layout.lines.filter((line) => still || line.given).map((line) => line.path);
  const polygonOf = ({ id, polygon, name: texts }: Area): PicturePolygon => ({
    id,
    polygon,
    label: areaLabel(name(texts), polygon, kept, sheet),
  });
  const { w, h, boxes = [] } = sheet;
  const areas = sheet.areas.map(polygonOf);
  const keepOut = sheet.keepOut.map(polygonOf);
  const gates = sheet.gates.map((gate) => gateOf(gate, name(gate.name)));
  const names = [...areas, ...keepOut, ...gates, ...berths].map(({ label }) => label);
  return {
    w,
    h,
    grid: gridOf(w, h),
    areas,
    keepOut,
    boxes: pictureBoxes(boxes, name, { w, h, lines: kept, names }),
    gates,
    berths,
    strokes,
    bands: pictureBands(layout, kit),
  };
}

/** Ways of the grid lines inside the sheet; a coarse line is not also a fine one. */
function gridOf(w: Mm, h: Mm): PictureGrid {
  const every = (step: Mm, end: Mm) => {
    const ways: Mm[] = [];
    for (let way = step; way < end; way += step) ways.push(way);
    return ways;
  };
  const fine = (end: Mm) => every(GRID.fine, end).filter((way) => way % GRID.coarse !== 0);
  return {
    fine: { xs: fine(w), ys: fine(h) },
    coarse: { xs: every(GRID.coarse, w), ys: every(GRID.coarse, h) },
  };
}

/** A gate's name stands past its upper post, or beside the left one where the gate lies flat. */
function gateOf(gate: Gate, text: string): PictureGate {
  const { a, b } = gate;
  const upper = a.y <= b.y ? a : b;
  const at = { x: upper.x, y: upper.y - 3 };
  const align = at.x < 25 ? 'left' : 'middle';
  return { id: gate.id, a, b, label: { text, at, align, baseline: 'bottom' } };
}
