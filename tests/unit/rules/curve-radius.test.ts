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

  /** Straights of a polygon drawn into a circle of radius r, each 15 degrees on, between two legs. */
  const kinked = (r: number, kinks: number) => {
    const at = (mm: number) => Math.round(mm * 100) / 100;
    const corner = (k: number) => [r * Math.sin((k * Math.PI) / 12), r - r * Math.cos((k * Math.PI) / 12)];
    const stops = Array.from({ length: kinks }, (_, k) => corner(k));
    const end = (kinks * Math.PI) / 12 - Math.PI / 24;
    const [x, y] = stops.at(-1)!;
    stops.push([x! + 60 * Math.cos(end), y! + 60 * Math.sin(end)]);
    return line('kinked', [40, 100], ...stops.map(([dx, dy]) => [at(150 + dx!), at(100 + dy!)] as const));
  };

  it('R-curve-radius finds a half-turn of small kinks as tight as the circle that they are drawn into', () => {
    const [finding, ...others] = of('R-curve-radius', drawn([kinked(10, 12)]));
    expect(others).toEqual([]);
    expect(finding?.measured).toBeCloseTo(10, 0);
    expect(finding).toMatchObject({ allowed: 15, severity: 'may-stop' });
  });

  it('R-curve-radius is silent for kinks drawn into a circle of exactly 15 mm, and finds 14.5', () => {
    expect(of('R-curve-radius', drawn([kinked(15, 12)]))).toEqual([]);
    expect(of('R-curve-radius', drawn([kinked(14.5, 12)]))).toHaveLength(1);
  });

  it('R-curve-radius leaves kinks of a right angle in all alone, as it does a corner', () => {
    // The first kink is half of one: 5 and a half times 15 degrees, then 7 and a half times.
    expect(of('R-curve-radius', drawn([kinked(5, 6)]))).toEqual([]);
    expect(of('R-curve-radius', drawn([kinked(5, 8)]))).toHaveLength(1);
  });

  it('R-curve-radius does not add up kinks to either side', () => {
    const stops = Array.from({ length: 20 }, (_, k) => [150 + 4 * k, 100 + (k % 2)] as const);
    expect(of('R-curve-radius', drawn([line('shaky', [40, 100], ...stops)]))).toEqual([]);
  });
});
