import type { Mm, PaperPoint } from './units.ts';

/** An upright rectangle on the sheet. */
export interface Box {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}

/** The least upright box around points; at least one is needed. */
export function boxOf(points: readonly PaperPoint[]): Box {
  const first = points[0];
  if (!first) throw new RangeError('a box needs at least one point');
  let { x: minX, y: minY } = first;
  let { x: maxX, y: maxY } = first;
  for (const { x, y } of points) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** The least upright box around boxes; at least one is needed. */
export const boxAround = (boxes: readonly Box[]): Box =>
  boxOf(
    boxes.flatMap(({ minX, minY, maxX, maxY }) => [
      { x: minX, y: minY },
      { x: maxX, y: maxY },
    ]),
  );

export function boxesMeet(a: Box, b: Box, apart: Mm = 0): boolean {
  return (
    a.minX <= b.maxX + apart &&
    b.minX <= a.maxX + apart &&
    a.minY <= b.maxY + apart &&
    b.minY <= a.maxY + apart
  );
}

/** The square of the distance between two boxes, 0 where they meet. */
export function boxGapSquared(a: Box, b: Box): number {
  const dx = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const dy = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return dx * dx + dy * dy;
}
