import type { PaperPoint, Rad } from './units.ts';

/**
 * Functions whose bits agree on every JavaScript engine: only + − × ÷, sqrt, floor and comparisons,
 * which IEEE 754 and ECMAScript define exactly. Math.sin and its relatives differ between engines.
 */

const HALF_PI = Math.PI / 2;
/** π/2 in two parts, so that the reduction keeps the low bits (Cody and Waite's method). */
const HALF_PI_HIGH = 1.5707963267341256;
const HALF_PI_LOW = 6.077100506506192e-11;

/** Terms of the two power series, (−1)ⁿ/(2n + 1)! and (−1)ⁿ/(2n)!, written out: loops take five times as long. */
const S3 = -1 / 6;
const S5 = 1 / 120;
const S7 = -1 / 5040;
const S9 = 1 / 362_880;
const S11 = -1 / 39_916_800;
const S13 = 1 / 6_227_020_800;
const S15 = -1 / 1_307_674_368_000;
const C4 = 1 / 24;
const C6 = -1 / 720;
const C8 = 1 / 40_320;
const C10 = -1 / 3_628_800;
const C12 = 1 / 479_001_600;
const C14 = -1 / 87_178_291_200;
const C16 = 1 / 20_922_789_888_000;

const sinSeries = (r: number, z: number): number =>
  r * (1 + z * (S3 + z * (S5 + z * (S7 + z * (S9 + z * (S11 + z * (S13 + z * S15)))))));

const cosSeries = (z: number): number =>
  1 + z * (-0.5 + z * (C4 + z * (C6 + z * (C8 + z * (C10 + z * (C12 + z * (C14 + z * C16)))))));

function quarterTurns(angle: Rad, shift: 0 | 1): number {
  const turns = Math.floor(angle / HALF_PI + 0.5);
  const r = angle - turns * HALF_PI_HIGH - turns * HALF_PI_LOW;
  const z = r * r;
  const quadrant = (((turns + shift) % 4) + 4) % 4;
  if (quadrant === 0) return sinSeries(r, z);
  if (quadrant === 1) return cosSeries(z);
  return quadrant === 2 ? -sinSeries(r, z) : -cosSeries(z);
}

/** Sine, error under 1e-15 for |angle| up to 1e5. */
export const sin = (angle: Rad): number => quarterTurns(angle, 0);
/** Cosine, error under 1e-15 for |angle| up to 1e5. */
export const cos = (angle: Rad): number => quarterTurns(angle, 1);

/** Arctangent, error under 1e-14. Halvings of the angle bring it under 0.2, where eleven terms are enough. */
export function atan(value: number): Rad {
  // Of the reciprocal beyond 1, so that squares of large values don't overflow.
  if (value > 1) return HALF_PI - atan(1 / value);
  if (value < -1) return -HALF_PI - atan(1 / value);
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
  return atan2(Math.sqrt((1 - c) * (1 + c)), c);
}

/** exp(−x) for x ≥ 0, relative error under 1e-12 up to x = 100; 0 from 745 on, as in any double. */
export function expMinus(x: number): number {
  if (x >= 745) return 0;
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

/** The mean of at least one point. */
export function meanOf(points: readonly PaperPoint[]): PaperPoint {
  let x = 0;
  let y = 0;
  for (const p of points) {
    x += p.x;
    y += p.y;
  }
  return { x: x / points.length, y: y / points.length };
}

export const distance = (a: PaperPoint, b: PaperPoint): number => norm(b.x - a.x, b.y - a.y);

export const degrees = (angle: Rad): number => (angle * 180) / Math.PI;
export const radians = (angle: number): Rad => (angle * Math.PI) / 180;
