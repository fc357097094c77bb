import { type Box, boxesMeet, boxOf } from '../../shared/geometry/box.ts';
import { pathFoot } from '../../shared/geometry/path.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { labelledIn, type Picture, type PictureLabel } from '../../shared/picture/shapes.ts';
import type { Layout } from '../../shared/track/layout.ts';
import type { Size } from './page.ts';

/** How far a block keeps from what a robot reads, and from everything else; and the step of the search. */
const FROM_LINES: Mm = 14;
const FROM_THINGS: Mm = 3;
const STEP: Mm = 5;
/** About how large a name is. */
const NAME = { height: 5, halfLetter: 1.3 } as const;

/**
 * The top left corner of a free rectangle on the sheet, the nearest to a corner of the paper, `edge` mm
 * inside it. Undefined where lines, berths and areas leave no room.
 */
export function freeSpot(block: Size, picture: Picture, layout: Layout, edge: Mm): PaperPoint | undefined {
  const taken = thingsOf(picture);
  const isFree = (at: PaperPoint): boolean => {
    const box = { minX: at.x, minY: at.y, maxX: at.x + block.w, maxY: at.y + block.h };
    if (taken.some((thing) => boxesMeet(box, thing, FROM_THINGS))) return false;
    const points = gridIn(box);
    return layout.lines.every(({ path }) => points.every((p) => pathFoot(path, p).distance >= FROM_LINES));
  };
  return placesFor(block, picture, edge).find(isFree);
}

/** All places on a grid, those near a corner of the paper first. */
function placesFor(block: Size, { w, h }: Size, edge: Mm): PaperPoint[] {
  const [mostX, mostY] = [w - edge - block.w, h - edge - block.h];
  const far = ({ x, y }: PaperPoint): Mm => Math.min(x - edge, mostX - x) + Math.min(y - edge, mostY - y);
  const places: PaperPoint[] = [];
  for (let y = edge; y <= mostY; y += STEP) for (let x = edge; x <= mostX; x += STEP) places.push({ x, y });
  return places.sort((a, b) => far(a) - far(b));
}

/** Boxes around everything that is not a line. */
function thingsOf(picture: Picture): Box[] {
  const { areas, keepOut, boxes, gates, berths } = picture;
  return [
    ...labelledIn(picture).map(({ label }) => boxOfLabel(label)),
    ...[...areas, ...keepOut, ...boxes].map((area) => boxOf(area.polygon)),
    ...gates.map(({ a, b }) => boxOf([a, b])),
    ...berths.map(({ at: { x, y }, r }) => ({ minX: x - r, minY: y - r, maxX: x + r, maxY: y + r })),
  ];
}

function boxOfLabel({ text, at, align, baseline }: PictureLabel): Box {
  const w = text.length * 2 * NAME.halfLetter;
  const minX = at.x - (align === 'left' ? 0 : align === 'middle' ? w / 2 : w);
  const minY = at.y - (baseline === 'top' ? 0 : baseline === 'middle' ? NAME.height / 2 : NAME.height);
  return { minX, minY, maxX: minX + w, maxY: minY + NAME.height };
}

/** Points on and in a box, so close that no line as far off as it must be slips between them. */
function gridIn({ minX, minY, maxX, maxY }: Box): PaperPoint[] {
  const ways = (from: Mm, to: Mm) => {
    const parts = Math.max(1, Math.ceil((to - from) / FROM_LINES));
    return Array.from({ length: parts + 1 }, (_, i) => from + ((to - from) * i) / parts);
  };
  return ways(minY, maxY).flatMap((y) => ways(minX, maxX).map((x) => ({ x, y })));
}
