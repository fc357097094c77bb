import { boxesMeet } from './box.ts';
import { norm } from './exact-math.ts';
import { type Meeting, pieceIntersections } from './intersections.ts';
import { type Arc, type PieceShape, pieceFoot } from './piece.ts';
import { TOLERANCE } from './tolerances.ts';
import type { Mm, PaperPoint } from './units.ts';

/** The least distance of two pieces, with the way along each where it is attained. */
export interface LeastDistance {
  readonly distance: Mm;
  readonly a: Mm;
  readonly b: Mm;
  readonly pointA: PaperPoint;
  readonly pointB: PaperPoint;
}

/** The least distance of two pieces; 0 at their first meeting along `a` where they meet. */
export function pieceDistance(a: PieceShape, b: PieceShape): LeastDistance {
  // Each of the two may end by the tolerance before their meeting.
  const meeting = boxesMeet(a.box, b.box, 2 * TOLERANCE.samePoint) && pieceIntersections(a, b)[0];
  if (meeting) return together(meeting);
  let best: LeastDistance | undefined;
  const offer = (found: LeastDistance): void => {
    if (!best || found.distance < best.distance) best = found;
  };
  // Apart from the ends, a least distance stands square on both pieces: on a straight through a centre.
  for (const point of placesToTry(a, b)) offer(fromA(a, b, point));
  for (const point of placesToTry(b, a)) offer(swapped(fromA(b, a, point)));
  return best!;
}

const together = ({ a, b, point }: Meeting): LeastDistance => ({
  distance: 0,
  a,
  b,
  pointA: point,
  pointB: point,
});

const swapped = (d: LeastDistance): LeastDistance => ({
  distance: d.distance,
  a: d.b,
  b: d.a,
  pointA: d.pointB,
  pointB: d.pointA,
});

function fromA(a: PieceShape, b: PieceShape, near: PaperPoint): LeastDistance {
  const onA = pieceFoot(a, near);
  const onB = pieceFoot(b, onA.point);
  return { distance: onB.distance, a: onA.s, b: onB.s, pointA: onA.point, pointB: onB.point };
}

function placesToTry(a: PieceShape, b: PieceShape): PaperPoint[] {
  const places = [a.from, a.to];
  if (b.kind === 'straight') {
    if (a.kind === 'arc') places.push(...squareOn(a, b.along.y, -b.along.x));
    return places;
  }
  if (a.kind === 'straight') return [...places, b.center];
  return [...places, ...squareOn(a, b.center.x - a.center.x, b.center.y - a.center.y)];
}

/** The two places of a circle where it runs square to the direction (x, y). */
function squareOn(arc: Arc, x: number, y: number): PaperPoint[] {
  const size = norm(x, y);
  if (size === 0) return [];
  const dx = (x / size) * arc.radius;
  const dy = (y / size) * arc.radius;
  return [
    { x: arc.center.x + dx, y: arc.center.y + dy },
    { x: arc.center.x - dx, y: arc.center.y - dy },
  ];
}
