import { pointAt } from '../../shared/geometry/path.ts';
import type { Mm, ScreenPoint } from '../../shared/geometry/units.ts';
import type { Picture } from '../../shared/picture/shapes.ts';
import type { Layout } from '../../shared/track/layout.ts';
import { toScreen, type View } from './view.ts';

const EVERY: Mm = 5;

/** Samples along all ink, and the names and rims of berths: what a callout should not cover. */
export function clearPoints(layout: Layout, picture: Picture, view: View): ScreenPoint[] {
  const ink = layout.lines.flatMap(({ path }) => {
    const steps = Math.max(1, Math.ceil(path.length / EVERY));
    return Array.from({ length: steps + 1 }, (_, i) => pointAt(path, (path.length * i) / steps));
  });
  const berths = picture.berths.flatMap((berth) => [berth.label.at, ...berth.hull]);
  return [...ink, ...berths].map((p) => toScreen(view, p));
}
