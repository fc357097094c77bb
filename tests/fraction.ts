/** Exact fractions, for examples whose published values are fractions. */
export interface Fraction {
  readonly n: bigint;
  /** Positive, without a factor in common with `n`. */
  readonly d: bigint;
}

const divisor = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : divisor(b, a % b));

export function fraction(n: bigint | number, d: bigint | number = 1): Fraction {
  const [top, bottom] = [BigInt(n), BigInt(d)];
  if (bottom === 0n) throw new RangeError('a fraction over 0');
  const common = divisor(top, bottom) * (bottom < 0n ? -1n : 1n);
  return { n: top / common, d: bottom / common };
}

/** `"3/2"`, `"4"`. */
export function fractionOf(text: string): Fraction {
  const [n, d] = text.split('/');
  return fraction(BigInt(n!), BigInt(d ?? '1'));
}

export const ZERO = fraction(0);
export const ONE = fraction(1);
export const add = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.d + b.n * a.d, a.d * b.d);
export const minus = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.d - b.n * a.d, a.d * b.d);
export const times = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.n, a.d * b.d);
export const over = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.d, a.d * b.n);
export const numberOf = (a: Fraction): number => Number(a.n) / Number(a.d);
export const textOf = (a: Fraction): string => (a.d === 1n ? `${a.n}` : `${a.n}/${a.d}`);

export const sum = (values: readonly Fraction[]): Fraction => values.reduce(add, ZERO);

export const product = (a: readonly Fraction[][], b: readonly Fraction[][]): Fraction[][] =>
  a.map((row) => b[0]!.map((_, j) => sum(row.map((value, k) => times(value, b[k]![j]!)))));

/** The inverse of a square matrix, by Gauss and Jordan; refuses a singular one. */
export function inverse(matrix: readonly (readonly Fraction[])[]): Fraction[][] {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? ONE : ZERO))]);
  for (let column = 0; column < n; column++) {
    const pivot = rows.findIndex((row, i) => i >= column && row[column]!.n !== 0n);
    if (pivot < 0) throw new RangeError('singular');
    const lead = rows[pivot]!;
    rows[pivot] = rows[column]!;
    const factor = lead[column]!;
    rows[column] = lead.map((value) => over(value, factor));
    rows.forEach((row, i) => {
      const by = row[column]!;
      if (i === column || by.n === 0n) return;
      rows[i] = row.map((value, j) => minus(value, times(by, rows[column]![j]!)));
    });
  }
  return rows.map((row) => row.slice(n));
}
