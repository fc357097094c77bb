import type { ScreenPoint } from '../../shared/geometry/units.ts';
import type { Box } from './view.ts';

/** A rectangle in CSS pixels of the canvas box. */
export interface Place extends Box {
  readonly left: number;
  readonly top: number;
}

export interface PlaceQuery {
  /** The place that the box speaks of. */
  readonly about: ScreenPoint;
  readonly size: Box;
  readonly within: Box;
  /** Points that should stay visible: samples along the ink, middles of names. */
  readonly clear: readonly ScreenPoint[];
  /** Free pixels between the place and the box. */
  readonly gap: number;
  /** The least distance from the edges of `within`. */
  readonly margin?: number;
}

const DIRECTIONS = [
  [0, -1],
  [1, 0],
  [-1, 0],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
] as const;
const STEPS = [0, 24, 56, 100, 160, 240];
/** A covered sample of ink is as bad as this many pixels of distance. */
const COVERED = 60;
const RIM = 8;

/** Where a box stands nearest to its place while covering as little ink as can be. */
export function placeBeside(query: PlaceQuery): Place {
  const { about, size, within, gap, margin = 8 } = query;
  let best: Place | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const step of STEPS) {
    for (const [dx, dy] of DIRECTIONS) {
      const reach = gap + step;
      const left = about.px + dx * (reach + size.width / 2) - size.width / 2;
      const top = about.py + dy * (reach + size.height / 2) - size.height / 2;
      const place = {
        ...size,
        left: clamp(left, margin, within.width - size.width - margin),
        top: clamp(top, margin, within.height - size.height - margin),
      };
      const cost = costOf(place, query) + step + (dx !== 0 && dy !== 0 ? 10 : 0);
      if (cost < least) {
        least = cost;
        best = place;
      }
    }
  }
  return best ?? { ...size, left: margin, top: margin };
}

const clamp = (value: number, low: number, high: number) => Math.max(low, Math.min(value, high));

/** Whether a point lies in the place or in a rim around it. */
export const covers = (place: Place, at: ScreenPoint, rim: number): boolean =>
  at.px > place.left - rim &&
  at.px < place.left + place.width + rim &&
  at.py > place.top - rim &&
  at.py < place.top + place.height + rim;

/** Points all over a place, for other boxes to keep clear of. */
export function pointsOf({ left, top, width, height }: Place): ScreenPoint[] {
  const shares = [0, 1 / 3, 2 / 3, 1];
  return shares.flatMap((x) => shares.map((y) => ({ px: left + x * width, py: top + y * height })));
}

function costOf(place: Place, { about, clear, gap }: PlaceQuery): number {
  const hidden = clear.filter((point) => covers(place, point, RIM)).length;
  const overPlace = covers(place, about, gap * 0.6) ? 40 : 0;
  const dx = place.left + place.width / 2 - about.px;
  const dy = place.top + place.height / 2 - about.py;
  return COVERED * (hidden + overPlace) + Math.sqrt(dx * dx + dy * dy) * 0.5;
}
