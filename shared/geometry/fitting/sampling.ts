import { distance } from '../exact-math.ts';
import type { Mm, PaperPoint } from '../units.ts';

/** Length of a polyline. */
export function lengthOf(points: readonly PaperPoint[]): Mm {
  let length = 0;
  for (let i = 1; i < points.length; i++) length += distance(points[i - 1]!, points[i]!);
  return length;
}

/** `steps` + 1 points at even ways along the polyline; the first and last are its ends. */
export function evenly(points: readonly PaperPoint[], step: Mm, steps: number): PaperPoint[] {
  const even: PaperPoint[] = [points[0]!];
  let along = 0;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!;
    const b = points[i]!;
    const length = distance(a, b);
    while (even.length < steps && even.length * step <= along + length) {
      const t = (even.length * step - along) / length;
      even.push({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
    }
    along += length;
  }
  even.push(points.at(-1)!);
  return even;
}

/** Moving average between fixed places; near one the window narrows, so that it stays where it is. */
export function smoothed(
  points: readonly PaperPoint[],
  step: Mm,
  fixed: readonly number[],
  window: Mm,
): PaperPoint[] {
  const half = Math.max(Math.round(window / 2 / step), 1);
  const stops = [0, ...fixed, points.length - 1];
  const result: PaperPoint[] = [points[0]!];
  for (let k = 1; k < stops.length; k++) {
    const low = stops[k - 1]!;
    const high = stops[k]!;
    for (let i = low + 1; i < high; i++)
      result.push(meanAround(points, i, Math.min(half, i - low, high - i)));
    result.push(points[high]!);
  }
  return result;
}

function meanAround(points: readonly PaperPoint[], i: number, reach: number): PaperPoint {
  let x = 0;
  let y = 0;
  for (let k = i - reach; k <= i + reach; k++) {
    x += points[k]!.x;
    y += points[k]!.y;
  }
  return { x: x / (2 * reach + 1), y: y / (2 * reach + 1) };
}
