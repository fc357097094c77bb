import { meanOf, norm } from '../exact-math.ts';
import { TOLERANCE } from '../tolerances.ts';
import type { Mm, PaperPoint } from '../units.ts';

export interface Circle {
  readonly center: PaperPoint;
  readonly radius: Mm;
}

/**
 * The circle with the least sum of squared distances to the points (Gander, Golub and Strebel 1994,
 * section 3): a quick algebraic fit (Kåsa's), then Gauss and Newton's steps. Undefined where the points
 * lie on a straight or are fewer than three.
 */
export function circleFit(points: readonly PaperPoint[], steps = 20): Circle | undefined {
  let circle = quickCircle(points);
  for (let i = 0; circle && i < steps; i++) {
    const better = closerCircle(points, circle);
    if (!better) return circle;
    const moved = norm(better.center.x - circle.center.x, better.center.y - circle.center.y);
    circle = better;
    if (moved < TOLERANCE.shareOfRadius * circle.radius) break;
  }
  return circle;
}

/** Kåsa's fit: least squares of x² + y² = 2ax + 2by + c. Small circles come out too small on short arcs. */
export function quickCircle(points: readonly PaperPoint[]): Circle | undefined {
  if (points.length < 3) return undefined;
  const mean = meanOf(points);
  let [xx, xy, yy, xz, yz, zz] = [0, 0, 0, 0, 0, 0];
  for (const p of points) {
    const x = p.x - mean.x;
    const y = p.y - mean.y;
    const z = x * x + y * y;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
    zz += z;
  }
  const det = 2 * (xx * yy - xy * xy);
  if (det <= TOLERANCE.flat * zz * zz) return undefined;
  const a = (yy * xz - xy * yz) / det;
  const b = (xx * yz - xy * xz) / det;
  const radius = Math.sqrt(a * a + b * b + zz / points.length);
  return { center: { x: mean.x + a, y: mean.y + b }, radius };
}

function closerCircle(points: readonly PaperPoint[], { center, radius }: Circle): Circle | undefined {
  let [ux, uy, uxx, uxy, uyy, e0, ex, ey] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (const p of points) {
    const dx = p.x - center.x;
    const dy = p.y - center.y;
    const size = norm(dx, dy);
    if (size === 0) return undefined;
    const x = dx / size;
    const y = dy / size;
    const error = size - radius;
    ux += x;
    uy += y;
    uxx += x * x;
    uxy += x * y;
    uyy += y * y;
    e0 += error;
    ex += error * x;
    ey += error * y;
  }
  // Normal equations for the shift of centre and radius; the radius is eliminated first.
  const n = points.length;
  const axx = uxx - (ux * ux) / n;
  const axy = uxy - (ux * uy) / n;
  const ayy = uyy - (uy * uy) / n;
  const bx = ex - (ux * e0) / n;
  const by = ey - (uy * e0) / n;
  const det = axx * ayy - axy * axy;
  if (!(det > 0)) return undefined;
  const shiftX = (ayy * bx - axy * by) / det;
  const shiftY = (axx * by - axy * bx) / det;
  const grown = (e0 - ux * shiftX - uy * shiftY) / n;
  return { center: { x: center.x + shiftX, y: center.y + shiftY }, radius: radius + grown };
}
