import { describe, expect, it } from 'vitest';
import { drawn, line, of } from './setting.ts';

/** A half-turn of radius r between two straights: bulge 1 is a half circle. */
const halfTurn = (r: number, bulge = 1) =>
  line('turn', [40, 100], [150, 100], [150, 100 + 2 * r * Math.sign(bulge), bulge], [60, 100 + 2 * r]);
const QUARTER = Math.SQRT2 - 1;

describe('R-curve-radius', () => {
  it('R-curve-radius is silent at exactly 15 mm', () => {
    expect([15, 20].flatMap((r) => of('R-curve-radius', drawn([halfTurn(r)])))).toEqual([]);
  });

  it('R-curve-radius is silent at 15 mm that was rounded to the file form', () => {
    // A quarter of radius 15, its ends turned by 30 degrees and rounded: 14.997 mm.
    const turned = line('turned', [40, 100], [150, 100], [155.49, 120.49, QUARTER]);
    expect(of('R-curve-radius', drawn([turned]))).toEqual([]);
  });

  it('R-curve-radius finds a half-turn of 12 mm', () => {
    // The half circle is π · 12 = 37.70 mm long and begins after 110 mm.
    const [finding] = of('R-curve-radius', drawn([halfTurn(12)]));
    expect(finding).toMatchObject({ measured: 12, allowed: 15, unit: 'mm', severity: 'may-stop' });
    expect(finding?.place).toMatchObject({ kind: 'stretch', line: 'turn', from: 110 });
    expect(finding?.place.kind === 'stretch' && finding.place.to).toBeCloseTo(147.7, 2);
  });

  it('R-curve-radius calls up to a right angle untidy', () => {
    const quarter = line('quarter', [40, 100], [150, 100], [158, 108, QUARTER], [158, 160]);
    expect(of('R-curve-radius', drawn([quarter]))).toMatchObject([{ measured: 8, severity: 'untidy' }]);
  });

  it('R-curve-radius counts neighbouring tight arcs as one curve', () => {
    const two = line('two', [40, 100], [150, 100], [160, 110, QUARTER], [148, 122, QUARTER], [80, 122]);
    expect(of('R-curve-radius', drawn([two]))).toMatchObject([{ measured: 10, severity: 'may-stop' }]);
  });

  it('R-curve-radius says nothing of given lines', () => {
    const sheet = { given: drawn([{ ...halfTurn(8), id: 'given' }]) };
    expect(of('R-curve-radius', drawn([]), { sheet })).toEqual([]);
  });
});
