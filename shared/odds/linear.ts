/**
 * Solves A X = B by Gaussian elimination with partial pivoting. A is n × n, B has n rows of any length;
 * both stay as they are. Refuses a singular A.
 */
export function solve(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] {
  const n = a.length;
  const left = a.map((row) => [...row]);
  const right = b.map((row) => [...row]);
  for (let column = 0; column < n; column++) {
    const pivot = pivotOf(left, column);
    exchange(left, column, pivot);
    exchange(right, column, pivot);
    for (let row = column + 1; row < n; row++) eliminate(left, right, row, column);
  }
  for (let row = n - 1; row >= 0; row--) substitute(left[row]!, right, row);
  return right;
}

/** The row with the largest entry in the column, from the diagonal down. */
function pivotOf(left: readonly (readonly number[])[], column: number): number {
  let best = column;
  for (let row = column + 1; row < left.length; row++) {
    if (Math.abs(left[row]![column]!) > Math.abs(left[best]![column]!)) best = row;
  }
  if (left[best]![column] === 0) throw new RangeError('a singular matrix has no solution');
  return best;
}

function exchange(rows: number[][], i: number, j: number): void {
  const row = rows[i]!;
  rows[i] = rows[j]!;
  rows[j] = row;
}

function eliminate(left: number[][], right: number[][], row: number, column: number): void {
  const factor = left[row]![column]! / left[column]![column]!;
  if (factor === 0) return;
  for (let j = column; j < left.length; j++) left[row]![j]! -= factor * left[column]![j]!;
  for (let j = 0; j < right[row]!.length; j++) right[row]![j]! -= factor * right[column]![j]!;
}

function substitute(upper: readonly number[], right: number[][], row: number): void {
  const own = right[row]!;
  for (let j = 0; j < own.length; j++) {
    let sum = own[j]!;
    for (let k = row + 1; k < upper.length; k++) sum -= upper[k]! * right[k]![j]!;
    own[j] = sum / upper[row]!;
  }
}
