import type { Design, Line } from '../../shared/documents/design.ts';
import { distance, norm } from '../../shared/geometry/exact-math.ts';
import { directionAt, pathFoot } from '../../shared/geometry/path.ts';
import type { Direction } from '../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { endOf, samePlace } from './lines.ts';
import type { EditContext } from './model.ts';
import { linePath } from './paths.ts';

/** Where a point caught, and why: shown while the finger is down. */
export interface Snap {
  readonly at: PaperPoint;
  readonly why: SnapWhy;
  /** For `angle`: degrees from the paper's edge, 0, 45 or 90. */
  readonly degrees?: 0 | 45 | 90;
  /** For directions: where the straight comes from, and for `parallel` the piece that it runs beside. */
  readonly guide?: { readonly from: PaperPoint; readonly like?: readonly [PaperPoint, PaperPoint] };
}

export type SnapWhy = 'end' | 'berth' | 'line' | 'tangent' | 'angle' | 'parallel' | 'grid' | 'free';

/** Whether it caught on something that was there before. */
export const isPlace = ({ why }: Snap): boolean => why === 'end' || why === 'berth' || why === 'line';

export interface SnapQuery {
  readonly design: Design;
  readonly context: EditContext;
  /** How near counts as "there", mm on the paper: a finger's width at the sheet's scale. */
  readonly reach: Mm;
  /** Nothing catches: the place is the finger's own. */
  readonly free?: boolean | undefined;
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
  if (query.free) return { at: p, why: 'free' };
  return (
    nearest(p, endsOf(query), query.reach, 'end') ??
    nearest(p, berthsOf(query), query.reach, 'berth') ??
    onLine(p, query) ??
    onDirection(p, query) ?? { at: onGrid(p), why: 'grid' }
  );
}

/** The same for the ends of a freehand stroke, which catch on ends, berths and lines only. */
export function snapEnd(p: PaperPoint, query: SnapQuery): Snap {
  if (query.free) return { at: p, why: 'free' };
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
    const foot = pathFoot(linePath(line), p);
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

/** A direction that a straight may take: the nearest one within its catch wins. */
interface Wanted {
  readonly along: Direction;
  readonly catches: number;
  readonly step: Mm;
  readonly snap: Omit<Snap, 'at'>;
}

/** Another line's direction catches less far than the paper's own: the tangent of 4 degrees. */
const LINE_CATCH = 0.07;
/** So much nearer than it is, straight on from a line's end counts as. */
const FAVOUR = 0.5;

/** In a direction that something gives, in steps of the grid from the other end. */
function onDirection(p: PaperPoint, query: SnapQuery): Snap | undefined {
  for (const from of query.from ?? []) {
    const [dx, dy] = [p.x - from.x, p.y - from.y];
    const length = norm(dx, dy);
    if (length < GRID) continue;
    let best: { wanted: Wanted; off: number } | undefined;
    for (const wanted of directionsFrom(from, query)) {
      const signed = (dx * wanted.along.y - dy * wanted.along.x) / length;
      const off = signed < 0 ? -signed : signed;
      if (off > wanted.catches) continue;
      const counts = wanted.snap.why === 'tangent' ? off * FAVOUR : off;
      if (!best || counts < best.off) best = { wanted, off: counts };
    }
    if (!best) continue;
    const { along, step, snap } = best.wanted;
    const way = Math.round((dx * along.x + dy * along.y) / step) * step;
    return { at: { x: from.x + along.x * way, y: from.y + along.y * way }, ...snap };
  }
  return undefined;
}

function directionsFrom(from: PaperPoint, query: SnapQuery): Wanted[] {
  const lines = linesOf(query);
  const upright = DIRECTIONS.map(
    ({ x, y, degrees }): Wanted => ({
      along: { x, y },
      catches: ANGLE_CATCH,
      step: degrees === 45 ? GRID / D : GRID,
      snap: { why: 'angle', degrees, guide: { from } },
    }),
  );
  const onwards = lines
    .flatMap((line) => endsOn(line, from))
    .map(
      (along): Wanted => ({
        along,
        catches: LINE_CATCH,
        step: GRID,
        snap: { why: 'tangent', guide: { from } },
      }),
    );
  return [...onwards, ...upright, ...lines.flatMap((line) => besideOf(line, from))];
}

/** Where a line would go on past its ends that lie here. */
function endsOn(line: Line, here: PaperPoint): Direction[] {
  const atFrom = samePlace(line.from, here);
  const atEnd = samePlace(endOf(line), here);
  if (!atFrom && !atEnd) return [];
  const path = linePath(line);
  const out = directionAt(path, 0);
  return [...(atFrom ? [{ x: -out.x, y: -out.y }] : []), ...(atEnd ? [directionAt(path, path.length)] : [])];
}

/** Shorter straights are not taken for a direction. */
const LEAST_LIKE: Mm = 20;

/** Beside each slanting straight of a line; level and upright ones are directions of the paper already. */
function besideOf(line: Line, from: PaperPoint): Wanted[] {
  return linePath(line).pieces.flatMap((piece): Wanted[] => {
    if (piece.kind !== 'straight' || piece.length < LEAST_LIKE) return [];
    const { along } = piece;
    if (DIRECTIONS.some(({ x, y }) => parallel(along, { x, y }))) return [];
    const guide = { from, like: [piece.from, piece.to] as const };
    return [{ along, catches: LINE_CATCH, step: GRID, snap: { why: 'parallel', guide } }];
  });
}

function parallel(a: Direction, b: Direction): boolean {
  const across = a.x * b.y - a.y * b.x;
  return across < 1e-3 && across > -1e-3;
}

/**
 * How far a shift has to differ so that one of these ends meets an end or berth within reach; what it
 * meets is said.
 */
export function snapShift(
  ends: readonly PaperPoint[],
  query: SnapQuery,
): { by: PaperPoint; snap: Snap } | null {
  if (query.free) return null;
  let best: { by: PaperPoint; snap: Snap; far: Mm } | null = null;
  for (const end of ends) {
    const caught =
      nearest(end, endsOf(query), query.reach, 'end') ?? nearest(end, berthsOf(query), query.reach, 'berth');
    if (!caught) continue;
    const far = distance(end, caught.at);
    if (!best || far < best.far)
      best = { by: { x: caught.at.x - end.x, y: caught.at.y - end.y }, snap: caught, far };
  }
  return best;
}

export const onGrid = (p: PaperPoint): PaperPoint => ({
  x: Math.round(p.x / GRID) * GRID,
  y: Math.round(p.y / GRID) * GRID,
});
