import { pointAt } from '../../shared/geometry/path.ts';
import type { Mm, ScreenPoint } from '../../shared/geometry/units.ts';
import { labelledIn, type Picture, type PictureLabel } from '../../shared/picture/shapes.ts';
import type { Layout } from '../../shared/track/layout.ts';
import { toScreen, type View } from './view.ts';

const EVERY: Mm = 5;

/** Samples along all ink, and the names and rims of berths: what a callout should not cover. */
export function clearPoints(layout: Layout, picture: Picture, view: View, textSize: number): ScreenPoint[] {
  const ink = layout.lines.flatMap(({ path }) => {
    const steps = Math.max(1, Math.ceil(path.length / EVERY));
    return Array.from({ length: steps + 1 }, (_, i) => pointAt(path, (path.length * i) / steps));
  });
  const berths = picture.berths.flatMap((berth) => [...berth.hull, ...berth.bow.flat()]);
  const places = [...ink, ...berths].map((p) => toScreen(view, p));
  return [...places, ...labelledIn(picture).flatMap(({ label }) => namePoints(label, view, textSize))];
}

/** Mean width of a letter, in text sizes. */
const LETTER = 0.55;
const SIDE = { left: 0.5, middle: 0, right: -0.5 } as const;
const LEVEL = { top: 0.5, middle: 0, bottom: -0.5 } as const;

/** Points along a name, as close as it is high: it should rather not be covered. */
function namePoints({ text, at, align, baseline }: PictureLabel, view: View, size: number): ScreenPoint[] {
  const width = text.length * size * LETTER;
  const { px, py } = toScreen(view, at);
  const middle = { px: px + SIDE[align] * width, py: py + LEVEL[baseline] * size };
  const steps = Math.max(1, Math.ceil(width / size));
  return Array.from({ length: steps + 1 }, (_, i) => ({
    px: middle.px + (i / steps - 0.5) * width,
    py: middle.py,
  }));
}
