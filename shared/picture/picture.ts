import type { Kit } from '../documents/kit.ts';
import type { Area, Sheet } from '../documents/sheet.ts';
import { type Locale, type Texts, textIn } from '../documents/values.ts';
import type { Mm } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';
import { pictureBands } from './bands.ts';
import { pictureBerth } from './berths.ts';
import { areaLabel, gateLabel, type NameSize, type Paper } from './labels.ts';
import { pictureBoxes } from './mark-boxes.ts';
import type { Picture, PictureGate, PictureGrid, PicturePolygon, PictureStroke } from './shapes.ts';

export interface PictureSource {
  readonly sheet: Sheet;
  readonly layout: Layout;
  readonly kit: Kit;
  readonly language?: Locale | undefined;
  /** The drawing does not change any more: names of areas keep off its lines too, not only off given ones. */
  readonly still?: boolean;
  /** How names are set, where that is known. */
  readonly names?: NameSize | undefined;
}

const GRID = { fine: 5, coarse: 50 } as const;

/** Lists what a sheet shows with the lines and marks of `layout` on it. */
export function pictureOf({
  sheet,
  layout,
  kit,
  language = 'en',
  still = false,
  names,
}: PictureSource): Picture {
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
  const { w, h, boxes = [] } = sheet;
  const paper: Paper = { w, h, lines: kept, size: names };
  const polygonOf = ({ id, polygon, name: texts }: Area): PicturePolygon => ({
    id,
    polygon,
    label: areaLabel(name(texts), polygon, paper),
  });
  const areas = sheet.areas.map(polygonOf);
  const keepOut = sheet.keepOut.map(polygonOf);
  const gates = sheet.gates.map(
    ({ id, a, b, name: texts }): PictureGate => ({
      id,
      a,
      b,
      label: gateLabel(name(texts), { a, b }, paper),
    }),
  );
  const labels = [...areas, ...keepOut, ...gates, ...berths].map(({ label }) => label);
  return {
    w,
    h,
    grid: gridOf(w, h),
    areas,
    keepOut,
    boxes: pictureBoxes(boxes, name, paper, labels),
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
