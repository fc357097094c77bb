import jsQR from 'jsqr';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drivingPages } from '../../server/print/driving.ts';
import { pdfOf } from '../../server/print/pdf.ts';
import { printTools } from '../../server/print/tools.ts';
import { storedDesign } from '../../server/rooms/documents.ts';
import { readyNamed } from '../../server/rooms/ready.ts';
import { directionAt, pointAt } from '../../shared/geometry/path.ts';
import type { Direction } from '../../shared/geometry/piece.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { type LaidLine, layOut } from '../../shared/track/layout.ts';
import { lookAt, type Raster, rasterOf } from '../printed.ts';

/**
 * A printed sheet as pixels of 1/600 in, made by another PDF library than the one that wrote it, and
 * measured like paper with a ruler. A pixel is 0.042 mm.
 */
const DPI = 600;
const WITHIN = 0.1;

const { title, challenge } = readyNamed('one-fast-stretch')!;
const design = challenge.model!;
const { id } = storedDesign(design);
const layout = layOut(challenge.sheet, design.drawing);
const DARK = 90;

let fine: Raster;
let coarse: Raster;

beforeAll(async () => {
  const sheet = { challenge, title, id, drawing: design.drawing, emblem: 'sailboat' };
  const pages = drivingPages(sheet, { paper: 'A4', lines: 'ink', marks: 'colour' }, await printTools());
  const bytes = await pdfOf(title, [() => pages]);
  [fine, coarse] = await lookAt(bytes, async ([page]) => [
    await rasterOf(page!, DPI),
    await rasterOf(page!, 150),
  ]);
}, 120_000);
afterAll(() => {
  fine = coarse;
});

const isDark = ([red, green, blue]: readonly [number, number, number]) =>
  red < DARK && green < DARK && blue < DARK;

/** Where it is dark along a straight way of `long` mm: beginnings and ends in mm from `from`. */
function darkRuns(from: PaperPoint, along: Direction, long: number): { from: number; to: number }[] {
  const step = 0.01;
  const runs: { from: number; to: number }[] = [];
  let began: number | undefined;
  for (let s = 0; s <= long; s += step) {
    const dark = isDark(fine.at(from.x + along.x * s, from.y + along.y * s));
    if (dark && began === undefined) began = s;
    if (!dark && began !== undefined) {
      runs.push({ from: began, to: s });
      began = undefined;
    }
  }
  return runs;
}
const middle = (run: { from: number; to: number }) => (run.from + run.to) / 2;

describe('a sheet printed on A4, at 600 dpi', () => {
  it('has a ruler whose ends are 100 mm apart, with a stroke every 5 mm', () => {
    const [left, length] = [6, 106];
    // The shortest strokes are 1.2 mm high and stand on a line 7.4 mm above the paper's lower edge.
    const ticks = darkRuns({ x: left, y: 210 - 7.4 - 0.7 }, { x: 1, y: 0 }, length);
    expect(ticks).toHaveLength(21);
    expect(Math.abs(middle(ticks.at(-1)!) - middle(ticks[0]!) - 100)).toBeLessThanOrEqual(WITHIN);
    for (const [i, tick] of ticks.entries())
      expect(Math.abs(middle(tick) - middle(ticks[0]!) - 5 * i)).toBeLessThanOrEqual(WITHIN);
  });

  it('has lines as wide as the design says, their middles within 0.1 mm of it', () => {
    for (const line of layout.lines) {
      for (const { at, across } of plainPlaces(line)) {
        const start = { x: at.x - across.x * 6, y: at.y - across.y * 6 };
        const [run, ...others] = darkRuns(start, across, 12);
        expect(others).toEqual([]);
        expect(Math.abs(run!.to - run!.from - line.width)).toBeLessThanOrEqual(WITHIN);
        expect(Math.abs(middle(run!) - 6)).toBeLessThanOrEqual(WITHIN);
      }
    }
  });

  it('has bands as long as the design says, in the kit’s colours, without rim', () => {
    const [mark] = layout.marks;
    const line = layout.lines.find((each) => each.id === mark!.line)!;
    for (const { ink, from, to } of mark!.bands) {
      const color = challenge.kit.inks.find((each) => each.id === ink)!.color;
      const wanted = [1, 3, 5].map((i) => Number.parseInt(color.slice(i, i + 2), 16));
      const isInk = (s: number) => {
        const p = pointAt(line.path, s);
        return fine.at(p.x, p.y).every((value, i) => Math.abs(value - wanted[i]!) <= 2);
      };
      let [first, last] = [(from + to) / 2, (from + to) / 2];
      while (isInk(first)) first -= 0.01;
      while (isInk(last)) last += 0.01;
      expect(Math.abs(last - first - (to - from))).toBeLessThanOrEqual(WITHIN);
      expect(Math.abs(first - from)).toBeLessThanOrEqual(WITHIN);
    }
  });

  it('carries a code that a reader of QR codes reads as the id of the design', () => {
    expect(jsQR(coarse.data, coarse.width, coarse.height)?.data).toBe(id);
  });
});

/** Places every 3 mm where nothing but the line itself is near. */
function plainPlaces(line: LaidLine): { at: PaperPoint; across: Direction }[] {
  const marks = layout.marks.filter((mark) => mark.line === line.id);
  const places: { at: PaperPoint; across: Direction }[] = [];
  for (let s = 10; s < line.path.length - 10; s += 3) {
    if (marks.some(({ from, to }) => s > from - 2 && s < to + 2)) continue;
    const along = directionAt(line.path, s);
    places.push({ at: pointAt(line.path, s), across: { x: -along.y, y: along.x } });
  }
  return places;
}
