import type { Design, Line } from '../../../shared/documents/design.ts';
import { distance, norm } from '../../../shared/geometry/exact-math.ts';
import { pathFoot, pathOf } from '../../../shared/geometry/path.ts';
import type { Direction } from '../../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../../shared/geometry/units.ts';
import { endOf, samePlace } from './lines.ts';
import type { EditContext } from './model.ts';

/** Where a point caught, and why: shown while the finger is down. */
export interface Snap {
  readonly at: PaperPoint;
  readonly why: 'end' | 'berth' | 'line' | 'angle' | 'grid' | 'free';
  /** For `angle`: degrees from the paper's edge, 0, 45 or 90. */
  readonly degrees?: 0 | 45 | 90;
}

export interface SnapQuery {
  readonly design: Design;
  readonly context: EditContext;
  /** How near counts as "there", mm on the paper: a finger's width at the sheet's scale. */
  readonly reach: Mm;
  /** The other end of the straight that is being drawn, or the neighbours of the corner being moved. */
  readonly from?: readonly PaperPoint[];
  /** Places that don't count, because they move along. */
  readonly without?: readonly PaperPoint[];
  /** Lines that don't count, because they move along. */
  readonly withoutLines?: readonly string[];
}

const GRID: Mm = 5;
/** A direction this near to a multiple of 45 degrees catches: the tangent of 7 degrees. */
const ANGLE_CATCH = 0.123;

/** The place that a finger at `p` means. */
export function snap(p: PaperPoint, query: SnapQuery): Snap {
  return (
    nearest(p, endsOf(query), query.reach, 'end') ??
    nearest(p, berthsOf(query), query.reach, 'berth') ??
    onLine(p, query) ??
    onAngle(p, query) ?? { at: onGrid(p), why: 'grid' }
  );
}

/** The same for the ends of a freehand stroke, which catch on ends, berths and lines only. */
export function snapEnd(p: PaperPoint, query: SnapQuery): Snap {
  return (
    nearest(p, endsOf(query), query.reach, 'end') ??
    nearest(p, berthsOf(query), query.reach, 'berth') ??
    onLine(p, query) ?? { at: p, why: 'free' }
  );
}

const linesOf = ({ design, context, withoutLines = [] }: SnapQuery): Line[] =>
  [...design.drawing.lines, ...context.sheet.given.lines].filter((line) => !withoutLines.includes(line.id));

const allowed = (query: SnapQuery, p: PaperPoint): boolean =>
  ![...(query.from ?? []), ...(query.without ?? [])].some((other) => samePlace(p, other));

const endsOf = (query: SnapQuery): PaperPoint[] =>
  linesOf(query).flatMap((line) => [line.from, endOf(line)].filter((p) => allowed(query, p)));

const berthsOf = (query: SnapQuery): PaperPoint[] => {
  const { start, finish } = query.context.sheet;
  return [start.at, ...(finish ? [finish.at] : [])].filter((p) => allowed(query, p));
};

function nearest(
  p: PaperPoint,
  places: readonly PaperPoint[],
  reach: Mm,
  why: Snap['why'],
): Snap | undefined {
  let best: PaperPoint | undefined;
  for (const place of places) if (distance(p, place) <= (best ? distance(p, best) : reach)) best = place;
  return best && { at: best, why };
}

/** A line's middle catches less far than its end, so that a near parallel line can still be drawn. */
function onLine(p: PaperPoint, query: SnapQuery): Snap | undefined {
  let best: { at: PaperPoint; distance: Mm } | undefined;
  for (const line of linesOf(query)) {
    const foot = pathFoot(pathOf(line), p);
    const near = Math.min(query.reach * 0.6, line.width);
    if (foot.distance <= near && foot.distance < (best?.distance ?? near + 1) && allowed(query, foot.point))
      best = { at: foot.point, distance: foot.distance };
  }
  return best && { at: best.at, why: 'line' };
}

const D = Math.SQRT1_2;
const DIRECTIONS: readonly (Direction & { degrees: 0 | 45 | 90 })[] = [
  { x: 1, y: 0, degrees: 0 },
  { x: 0, y: 1, degrees: 90 },
  { x: D, y: D, degrees: 45 },
  { x: D, y: -D, degrees: 45 },
];

/** On a multiple of 45 degrees from the other end, in steps of the grid. */
function onAngle(p: PaperPoint, { from = [] }: SnapQuery): Snap | undefined {
  for (const start of from) {
    const dx = p.x - start.x;
    const dy = p.y - start.y;
    const length = norm(dx, dy);
    if (length < GRID) continue;
    for (const { x, y, degrees } of DIRECTIONS) {
      const along = dx * x + dy * y;
      const off = (dx * y - dy * x) / length;
      if (off > ANGLE_CATCH || off < -ANGLE_CATCH) continue;
      const step = degrees === 45 ? GRID / D : GRID;
      const way = Math.round(along / step) * step;
      return { at: { x: start.x + x * way, y: start.y + y * way }, why: 'angle', degrees };
    }
  }
  return undefined;
}

export const onGrid = (p: PaperPoint): PaperPoint => ({
  x: Math.round(p.x / GRID) * GRID,
  y: Math.round(p.y / GRID) * GRID,
});
