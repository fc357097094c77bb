import { TOLERANCE } from '../geometry/tolerances.ts';

/** One measurement: what was set, in one or two columns, and what came. */
export interface Row {
  readonly x: readonly number[];
  readonly y: number;
}

export interface Fitted {
  readonly coefficients: readonly number[];
  /** Of the coefficients; null where there are no more rows than coefficients, so that nothing is left to tell it by. */
  readonly covariance: readonly (readonly number[])[] | null;
  /** Rows beyond the coefficients. */
  readonly freedom: number;
}

/**
 * Ordinary least squares of y on one or two columns, without a constant: b = (XᵀX)⁻¹Xᵀy, with the covariance
 * s²(XᵀX)⁻¹, s² being the squares of the residuals over n − p (normal equations, in any textbook; the
 * NIST/SEMATECH e-Handbook of Statistical Methods has them in 4.1.4.1 and 5.5.9). Undefined where the columns
 * tell nothing apart: no rows, only zeros, or two columns in one proportion throughout.
 */
export function leastSquares(rows: readonly Row[]): Fitted | undefined {
  const inverse = inverseOf(rows);
  if (!inverse) return undefined;
  const moments = inverse.map((_, i) => sum(rows, ({ x, y }) => x[i]! * y));
  const coefficients = inverse.map((row) => dot(row, moments));
  const freedom = rows.length - coefficients.length;
  if (freedom < 1) return { coefficients, covariance: null, freedom };
  const variance = sum(rows, ({ x, y }) => square(y - dot(x, coefficients))) / freedom;
  const covariance = inverse.map((row) => row.map((value) => value * variance));
  return { coefficients, covariance, freedom };
}

/** (XᵀX)⁻¹ of one or two columns. */
function inverseOf(rows: readonly Row[]): number[][] | undefined {
  const product = (i: number, j: number) => sum(rows, ({ x }) => x[i]! * x[j]!);
  const a = rows.length === 0 ? 0 : product(0, 0);
  if (a === 0) return undefined;
  if (rows[0]!.x.length === 1) return [[1 / a]];
  const [b, d] = [product(0, 1), product(1, 1)];
  const determinant = a * d - b * b;
  if (determinant <= TOLERANCE.flat * a * d) return undefined;
  return [
    [d / determinant, -b / determinant],
    [-b / determinant, a / determinant],
  ];
}

const sum = (rows: readonly Row[], of: (row: Row) => number): number =>
  rows.reduce((total, row) => total + of(row), 0);

const square = (value: number): number => value * value;

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((total, value, i) => total + value * b[i]!, 0);

/** 97.5 % quantiles of Student's t for 1 to 30 degrees of freedom: NIST/SEMATECH e-Handbook, 1.3.6.7.2. */
const STUDENT = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131,
  2.12, 2.11, 2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048, 2.045, 2.042,
] as const;

/** How surely a value is known: its standard error, and where it lies in 95 of a hundred cases. */
export interface Spread {
  readonly error: number;
  readonly low: number;
  readonly high: number;
}

/** The 95 % interval by Student's t. Beyond 30 degrees of freedom that of 30: a little too wide, never too narrow. */
export function spreadOf(value: number, variance: number, freedom: number): Spread {
  const error = Math.sqrt(variance);
  const reach = error * (STUDENT[Math.min(freedom, STUDENT.length) - 1] ?? Number.POSITIVE_INFINITY);
  return { error, low: value - reach, high: value + reach };
}
