import type { MarkBox } from '../documents/sheet.ts';
import { boxOf } from '../geometry/box.ts';
import { pathFoot } from '../geometry/path.ts';
import { swathBox } from '../geometry/swath.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { BAND_SPREAD, type LaidLine } from './layout.ts';

const hundredth = (value: Mm): Mm => Math.round(value * 100) / 100;

/** The corners of a box in steps of the file form, clockwise from its top left one. */
export function boxCorners({ at, w, h }: MarkBox): readonly [PaperPoint, PaperPoint, PaperPoint, PaperPoint] {
  const right = hundredth(at.x + w);
  const bottom = hundredth(at.y + h);
  return [at, { x: right, y: at.y }, { x: right, y: bottom }, { x: at.x, y: bottom }];
}

/**
 * How far bands between two ways of a line stay inside the box that holds them best; negative where they
 * reach out of each, by how much out of that one.
 */
export function roomInBoxes(boxes: readonly MarkBox[], { path, width }: LaidLine, from: Mm, to: Mm): Mm {
  const bands = swathBox(path, from, to, width / 2 + BAND_SPREAD);
  const rooms = boxes.map((box) => {
    const frame = boxOf(boxCorners(box));
    return Math.min(
      bands.minX - frame.minX,
      frame.maxX - bands.maxX,
      bands.minY - frame.minY,
      frame.maxY - bands.maxY,
    );
  });
  return Math.max(...rooms);
}

/** Ways from one to another, both included. */
export interface Span {
  readonly from: Mm;
  readonly to: Mm;
}

const EVERY: Mm = 1;

/**
 * Ways of a line at which bands of this length may begin so that they lie in a box, looked for every
 * millimetre and where a box's middle lies, and found to `TOLERANCE.step`.
 */
export function spansInBoxes(boxes: readonly MarkBox[], line: LaidLine, length: Mm): Span[] {
  const last = line.path.length - length;
  const fits = (way: Mm): boolean => roomInBoxes(boxes, line, way, way + length) >= -TOLERANCE.sameWay;
  const spans: { from: Mm; to: Mm }[] = [];
  let before: { way: Mm; fits: boolean } | undefined;
  for (const way of waysToLookAt(boxes, line, length)) {
    if (way < 0 || way > last) continue;
    const now = { way, fits: fits(way) };
    if (now.fits && !before?.fits)
      spans.push({ from: before ? lastThat(fits, way, before.way) : way, to: way });
    if (now.fits && before?.fits) spans.at(-1)!.to = way;
    if (!now.fits && before?.fits) spans.at(-1)!.to = lastThat(fits, before.way, way);
    before = now;
  }
  return spans;
}

function waysToLookAt(boxes: readonly MarkBox[], { path }: LaidLine, length: Mm): Mm[] {
  const last = path.length - length;
  const ways: Mm[] = [last];
  for (let way = 0; way < last; way += EVERY) ways.push(way);
  for (const { at, w, h } of boxes) {
    ways.push(pathFoot(path, { x: at.x + w / 2, y: at.y + h / 2 }).s - length / 2);
  }
  return ways.sort((a, b) => a - b);
}

/** Between a way that does and one that does not, the last that does. */
function lastThat(does: (way: Mm) => boolean, from: Mm, off: Mm): Mm {
  let inside = from;
  let outside = off;
  while (Math.abs(outside - inside) > TOLERANCE.step) {
    const middle = (inside + outside) / 2;
    if (does(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}
