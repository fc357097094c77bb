import type { MarkBox } from '../documents/sheet.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidLine, Layout } from '../track/layout.ts';
import { spansInBoxes } from '../track/mark-boxes.ts';

/** The search places marks on this grid along each line. */
const GRID: Mm = 5;

/**
 * The ways along lines, by their index, at which the search puts marks of a length, in ascending order: a grid;
 * on a sheet with boxes what of it lies in them, and the middle of each stretch that the grid steps over.
 */
export function markPlaces(
  { lines }: Layout,
  boxes: readonly MarkBox[] | undefined,
): (line: number, length: Mm) => readonly Mm[] {
  const known = new Map<string, readonly Mm[]>();
  return (index, length) => {
    const key = `${index} ${length}`;
    let places = known.get(key);
    if (!places) {
      const line = lines[index]!;
      places = boxes ? boxedPlaces(boxes, line, length) : gridFrom(0, line.path.length - length);
      known.set(key, places);
    }
    return places;
  };
}

function gridFrom(least: Mm, most: Mm): Mm[] {
  const ways: Mm[] = [];
  for (let k = Math.max(0, Math.ceil(least / GRID)); k * GRID <= most; k++) ways.push(k * GRID);
  return ways;
}

const boxedPlaces = (boxes: readonly MarkBox[], line: LaidLine, length: Mm): Mm[] =>
  spansInBoxes(boxes, line, length).flatMap(({ from, to }) => {
    const onGrid = gridFrom(from - TOLERANCE.step, to + TOLERANCE.step);
    return onGrid.length > 0 ? onGrid : [Math.round((from + to) * 50) / 100];
  });
