import { type Box, boxAround, boxesMeet } from '../geometry/box.ts';
import type { Intersection } from '../geometry/intersections.ts';
import type { Path } from '../geometry/path.ts';
import { pathIntersections, selfIntersections } from '../geometry/path-intersections.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { LaidLine } from './layout.ts';

/**
 * Where the paths of a layout meet themselves and, earlier lines with later ones, one another. By paths and
 * not by lines: for two paths that are taken over into the next layout this is known already.
 */
export type Pairs = ReadonlyMap<Path, ReadonlyMap<Path, readonly Intersection[]>>;

const boxOfPath = ({ pieces }: Path): Box => boxAround(pieces.map((piece) => piece.box));

/** Looks for meetings of each two paths that `before` does not tell of. */
export function pairsOf(lines: readonly LaidLine[], before?: Pairs): Pairs {
  const boxes = lines.map(({ path }) => boxOfPath(path));
  return new Map(
    lines.map(({ path }, i) => {
      const known = before?.get(path);
      const own = new Map<Path, readonly Intersection[]>();
      own.set(path, known?.get(path) ?? selfIntersections(path));
      for (let j = i + 1; j < lines.length; j++) {
        const other = lines[j]!.path;
        if (!boxesMeet(boxes[i]!, boxes[j]!, TOLERANCE.samePoint)) continue;
        own.set(other, known?.get(other) ?? pathIntersections(path, other));
      }
      return [path, own] as const;
    }),
  );
}

/** Of one line with itself or with a later one. */
export const meetingsBetween = (pairs: Pairs, a: LaidLine, b: LaidLine): readonly Intersection[] =>
  pairs.get(a.path)?.get(b.path) ?? [];
