import { boxGapSquared } from '../shared/geometry/box.ts';
import { type LeastDistance, pieceDistance } from '../shared/geometry/distances.ts';
import type { Path } from '../shared/geometry/path.ts';

/** The least distance of two paths, ways measured along the whole paths. */
export function pathDistance(a: Path, b: Path): LeastDistance {
  let best: LeastDistance | undefined;
  for (let i = 0; i < a.pieces.length; i++) {
    const piece = a.pieces[i]!;
    for (let j = 0; j < b.pieces.length; j++) {
      const other = b.pieces[j]!;
      if (best && boxGapSquared(piece.box, other.box) >= best.distance * best.distance) continue;
      const found = pieceDistance(piece, other);
      if (best && found.distance >= best.distance) continue;
      best = { ...found, a: found.a + a.starts[i]!, b: found.b + b.starts[j]! };
    }
  }
  if (!best) throw new RangeError('a path has at least one piece');
  return best;
}
