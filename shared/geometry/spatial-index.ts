import Flatbush from 'flatbush';
import type { Box } from './box.ts';
import type { PieceShape } from './piece.ts';
import type { Mm, PaperPoint } from './units.ts';

/** Finds things by their boxes. Answers are positions in the list that was indexed, in ascending order. */
export interface SpatialIndex {
  readonly size: number;
  /** Those whose box meets `box`, edges included. */
  within(box: Box): number[];
  /** Those whose box comes within `radius` of `p`. */
  near(p: PaperPoint, radius: Mm): number[];
}

export function boxIndex(boxes: readonly Box[]): SpatialIndex {
  if (boxes.length === 0) return { size: 0, within: () => [], near: () => [] };
  const tree = new Flatbush(boxes.length);
  for (const box of boxes) tree.add(box.minX, box.minY, box.maxX, box.maxY);
  tree.finish();
  // The order inside the tree is the library's own; a sorted answer is the same on every machine.
  const ascending = (found: number[]): number[] => found.sort((a, b) => a - b);
  return {
    size: boxes.length,
    within: (box) => ascending(tree.search(box.minX, box.minY, box.maxX, box.maxY)),
    near: ({ x, y }, radius) =>
      ascending(
        tree.search(x - radius, y - radius, x + radius, y + radius, (_, minX, minY, maxX, maxY) => {
          const dx = Math.max(0, minX - x, x - maxX);
          const dy = Math.max(0, minY - y, y - maxY);
          return dx * dx + dy * dy <= radius * radius;
        }),
      ),
  };
}

/** An index over pieces of lines; an answer still has to be measured against the piece itself. */
export const pieceIndex = (pieces: readonly PieceShape[]): SpatialIndex =>
  boxIndex(pieces.map((piece) => piece.box));
