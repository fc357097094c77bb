import type { Mm, PaperPoint } from '../geometry/units.ts';

/** How far two neighbouring parts of a large sheet show the same. */
export const OVERLAP: Mm = 10;
/** How far crosses stand from the ends of an overlap. */
const CROSS_INSET: Mm = 15;

interface Size {
  readonly w: Mm;
  readonly h: Mm;
}

/** A sheet in parts of at most `net`, each of which shows `OVERLAP` of its neighbours. */
export interface Tiling {
  readonly sheet: Size;
  readonly net: Size;
  readonly across: number;
  readonly down: number;
}

/** What one part shows of the sheet; rows and columns count from 0, numbers from 1. */
export interface Part extends Size {
  readonly number: number;
  readonly row: number;
  readonly column: number;
  readonly x: Mm;
  readonly y: Mm;
}

/** As few parts as will do. `net` is longer than the overlap either way. */
export function tilingOf(sheet: Size, net: Size): Tiling {
  const parts = (long: Mm, side: Mm) => Math.max(1, Math.ceil((long - OVERLAP) / (side - OVERLAP)));
  return { sheet, net, across: parts(sheet.w, net.w), down: parts(sheet.h, net.h) };
}

/** The same number of parts, all of one size, so that none is a narrow strip. */
export function evened({ sheet, across, down }: Tiling): Tiling {
  const side = (long: Mm, count: number) => (long + (count - 1) * OVERLAP) / count;
  return { sheet, net: { w: side(sheet.w, across), h: side(sheet.h, down) }, across, down };
}

/** All parts, row by row. */
export function partsOf({ sheet, net, across, down }: Tiling): readonly Part[] {
  return Array.from({ length: across * down }, (_, i) => {
    const [row, column] = [Math.floor(i / across), i % across];
    const [x, y] = [column * (net.w - OVERLAP), row * (net.h - OVERLAP)];
    const [w, h] = [Math.min(net.w, sheet.w - x), Math.min(net.h, sheet.h - y)];
    return { number: i + 1, row, column, x, y, w, h };
  });
}

/** Crosses in the middle of every overlap, at both its ends: they show on both neighbours. */
export function crossesOf({ sheet, net, across, down }: Tiling): readonly PaperPoint[] {
  const seams = (count: number, step: Mm) =>
    Array.from({ length: count - 1 }, (_, i) => (i + 1) * (step - OVERLAP) + OVERLAP / 2);
  const steps = (count: number, step: Mm, long: Mm) =>
    Array.from({ length: count }, (_, i) => [
      i * (step - OVERLAP) + CROSS_INSET,
      Math.min(i * (step - OVERLAP) + step, long) - CROSS_INSET,
    ]).flat();
  const ys = steps(down, net.h, sheet.h);
  const xs = steps(across, net.w, sheet.w);
  return [
    ...seams(across, net.w).flatMap((x) => ys.map((y) => ({ x, y }))),
    ...seams(down, net.h).flatMap((y) => xs.map((x) => ({ x, y }))),
  ];
}
