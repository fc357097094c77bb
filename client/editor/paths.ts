import type { Line } from '../../shared/documents/design.ts';
import { type Path, pathOf } from '../../shared/geometry/path.ts';

const known = new WeakMap<Line, Path>();

/** The path of a line, worked out once: lines never change, and a finger asks for all of them each frame. */
export function linePath(line: Line): Path {
  const before = known.get(line);
  if (before) return before;
  const path = pathOf(line);
  known.set(line, path);
  return path;
}
