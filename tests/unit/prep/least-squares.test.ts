import { describe, expect, it } from 'vitest';
import { leastSquares, spreadOf } from '../../../shared/prep/least-squares.ts';

describe('leastSquares', () => {
  // Source: NIST Statistical Reference Datasets, linear regression, NoInt2: y = B1·x, certified values.
  it('gives the certified slope and its standard error of NoInt2', () => {
    const fitted = leastSquares([
      { x: [4], y: 3 },
      { x: [5], y: 4 },
      { x: [6], y: 4 },
    ])!;
    expect(fitted.coefficients[0]).toBeCloseTo(0.727272727272727, 14);
    expect(Math.sqrt(fitted.covariance![0]![0]!)).toBeCloseTo(0.420827318078432e-1, 14);
    expect(fitted.freedom).toBe(2);
  });

  // By hand, a column of ones beside x = 1, 2, 3, 4 and y = 1, 3, 2, 4: XᵀX = [4 10; 10 30], its determinant 20,
  // inverse [1.5 −0.5; −0.5 0.2]; Xᵀy = (10, 29); b = (0.5, 0.8). Residuals −0.3, 0.9, −0.9, 0.3: squares 1.8,
  // s² = 0.9; covariance [1.35 −0.45; −0.45 0.18].
  it('gives two coefficients and their covariance as worked out by hand', () => {
    const fitted = leastSquares([1, 3, 2, 4].map((y, i) => ({ x: [1, i + 1], y })))!;
    const [a, b] = fitted.coefficients;
    expect(a).toBeCloseTo(0.5, 12);
    expect(b).toBeCloseTo(0.8, 12);
    const wanted = [
      [1.35, -0.45],
      [-0.45, 0.18],
    ];
    wanted.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(fitted.covariance![i]![j]).toBeCloseTo(value, 12);
      });
    });
  });

  it('knows no covariance of as many rows as coefficients, and nothing of columns that go together', () => {
    expect(leastSquares([{ x: [2], y: 3 }])).toEqual({ coefficients: [1.5], covariance: null, freedom: 0 });
    expect(leastSquares([])).toBeUndefined();
    expect(leastSquares([{ x: [0], y: 3 }])).toBeUndefined();
    expect(
      leastSquares([
        { x: [1, 2], y: 3 },
        { x: [2, 4], y: 5 },
      ]),
    ).toBeUndefined();
  });
});

describe('spreadOf', () => {
  // Quantiles: NIST/SEMATECH e-Handbook, 1.3.6.7.2, column 0.975.
  it.each([
    [1, 12.706],
    [2, 4.303],
    [10, 2.228],
    [30, 2.042],
    [100, 2.042],
  ])(
    'reaches the quantile of Student’s t for %i degrees of freedom: %f standard errors',
    (freedom, quantile) => {
      const spread = spreadOf(10, 4, freedom);
      expect(spread.error).toBe(2);
      expect(spread.high - 10).toBeCloseTo(2 * quantile, 12);
      expect(10 - spread.low).toBeCloseTo(2 * quantile, 12);
    },
  );
});
