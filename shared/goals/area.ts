import { distance } from '../geometry/exact-math.ts';
import { pieceFoot, shapeOf } from '../geometry/piece.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';

/** How deep a point lies in a closed polygon: distance to its nearest edge, negative outside. */
export function depthIn(polygon: readonly PaperPoint[], p: PaperPoint): Mm {
  let inside = false;
  let nearest = Number.POSITIVE_INFINITY;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    nearest = Math.min(nearest, edgeDistance(a, b, p));
    // Crossing count of a ray towards +x; each edge owns its lower end only, so that corners count once.
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y)) inside = !inside;
  });
  return inside ? nearest : -nearest;
}

function edgeDistance(a: PaperPoint, b: PaperPoint, p: PaperPoint): Mm {
  if (a.x === b.x && a.y === b.y) return distance(a, p);
  return pieceFoot(shapeOf({ from: a, to: b, bulge: 0 }), p).distance;
}
