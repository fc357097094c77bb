import type { PaperPoint, Rad } from './units.ts';

/**
 * Functions whose bits agree on every JavaScript engine: only + − × ÷, sqrt, floor and comparisons,
 * which IEEE 754 and ECMAScript define exactly. Math.sin and its relatives differ between engines.
 */

const HALF_PI = Math.PI / 2;
/** π/2 in two parts, so that the reduction keeps the low bits (Cody and Waite's method). */
const HALF_PI_HIGH = 1.5707963267341256;
const HALF_PI_LOW = 6.077100506506192e-11;

const sinSeries = (r: number, z: number): number =>
  r *
  (1 +
    z *
      (-1 / 6 +
        z * (1 / 120 + z * (-1 / 5040 + z * (1 / 362880 + z * (-1 / 39916800 + z * (1 / 6227020800)))))));

const cosSeries = (z: number): number =>
  1 + z * (-0.5 + z * (1 / 24 + z * (-1 / 720 + z * (1 / 40320 + z * (-1 / 3628800 + z * (1 / 479001600))))));

function quarterTurns(angle: Rad, shift: 0 | 1): number {
  const turns = Math.floor(angle / HALF_PI + 0.5);
  const r = angle - turns * HALF_PI_HIGH - turns * HALF_PI_LOW;
  const z = r * r;
  const quadrant = (((turns + shift) % 4) + 4) % 4;
  if (quadrant === 0) return sinSeries(r, z);
  if (quadrant === 1) return cosSeries(z);
  return quadrant === 2 ? -sinSeries(r, z) : -cosSeries(z);
}

/** Sine, error under 1e-12 for |angle| up to 1e5. */
export const sin = (angle: Rad): number => quarterTurns(angle, 0);
/** Cosine, error under 1e-12 for |angle| up to 1e5. */
export const cos = (angle: Rad): number => quarterTurns(angle, 1);

/** Arctangent: three halvings of the angle bring it under π/16, where eleven terms are enough. */
export function atan(value: number): Rad {
  let x = value;
  let factor = 1;
  while (x > 0.2 || x < -0.2) {
    x = x / (1 + Math.sqrt(1 + x * x));
    factor *= 2;
  }
  const z = x * x;
  let sum = 0;
  for (let n = 21; n >= 1; n -= 2) sum = (n % 4 === 1 ? 1 : -1) / n + z * sum;
  return factor * x * sum;
}

/** Angle of the vector (x, y) in (−π, π]; 0 for the zero vector. */
export function atan2(y: number, x: number): Rad {
  if (x > 0) return atan(y / x);
  if (x < 0) return y >= 0 ? atan(y / x) + Math.PI : atan(y / x) - Math.PI;
  if (y > 0) return HALF_PI;
  return y < 0 ? -HALF_PI : 0;
}

/** Arc cosine of a value that is clamped to [−1, 1]. */
export function acos(value: number): Rad {
  const c = value > 1 ? 1 : Math.max(value, -1);
  return atan2(Math.sqrt(1 - c * c), c);
}

/** exp(−x) for x ≥ 0. */
export function expMinus(x: number): number {
  let rest = x;
  let halvings = 0;
  while (rest > 0.05) {
    rest *= 0.5;
    halvings++;
  }
  let term = 1;
  let sum = 1;
  for (let n = 1; n <= 10; n++) {
    term *= -rest / n;
    sum += term;
  }
  for (; halvings > 0; halvings--) sum *= sum;
  return sum;
}

/** Length of the vector (x, y). */
export const norm = (x: number, y: number): number => Math.sqrt(x * x + y * y);

export const distance = (a: PaperPoint, b: PaperPoint): number => norm(b.x - a.x, b.y - a.y);

export const degrees = (angle: Rad): number => (angle * 180) / Math.PI;
export const radians = (angle: number): Rad => (angle * Math.PI) / 180;
