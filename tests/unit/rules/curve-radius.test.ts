import { describe, expect, it } from 'vitest';
import { Pen } from '../../sweeps/pen.ts';
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

describe('R-curve-radius of several curves', () => {
  const QUARTER = Math.SQRT2 - 1;
  const said = (...stops: [number, number, number?][]) =>
    of('R-curve-radius', drawn([line('bent', [40, 60], ...stops)]));

  it('apart: each has its own radius, place and finding, in the order of the line', () => {
    // Radius 10 to the right, 40 mm down, radius 12 to the left.
    const found = said([100, 60], [110, 70, QUARTER], [110, 110], [122, 122, -QUARTER], [200, 122]);
    expect(found.map(({ measured, allowed }) => [measured, allowed])).toEqual([
      [10, 15],
      [12, 15],
    ]);
    expect(found[0]).toMatchObject({ severity: 'untidy', remedy: { code: 'widen-curve' } });
    const [first] = found.map(({ place }) => (place.kind === 'stretch' ? place : undefined));
    expect([first!.from, first!.to]).toEqual([expect.closeTo(60, 6), expect.closeTo(60 + 5 * Math.PI, 6)]);
    // The middle of the arc: 10 mm from (100, 70) towards the upper right.
    expect([first!.at.x, first!.at.y]).toEqual([
      expect.closeTo(100 + 10 * Math.SQRT1_2, 6),
      expect.closeTo(70 - 10 * Math.SQRT1_2, 6),
    ]);
  });

  it('touching: one curve, as tight as the tightest, with all that both turn', () => {
    const [both, ...others] = said([100, 60], [110, 70, QUARTER], [122, 82, -QUARTER], [200, 82]);
    expect(others).toEqual([]);
    expect(both).toMatchObject({ measured: 10, severity: 'may-stop' });
    const { place } = both!;
    const long = 60 + 5 * Math.PI + 6 * Math.PI;
    expect(place.kind === 'stretch' && place.to).toBeCloseTo(long, 6);
  });
});

describe('R-curve-radius of kinks and arcs', () => {
  const said = (pen: Pen) => of('R-curve-radius', drawn([{ ...pen.lines[0]!, id: 'bent' }]));
  /** Ten kinks of 10 degrees on a circle of radius 10. */
  const kinked = (pen: Pen) => {
    for (let i = 0; i < 10; i++) pen.turn(10).straight(20 * Math.sin(Math.PI / 36));
    return pen;
  };

  it('far from one another are two findings, whichever comes first', () => {
    const first = said(kinked(new Pen().to(40, 60).straight(60)).straight(40).arc(10, -60).straight(30));
    expect(first.map(({ measured }) => Math.round(measured!))).toEqual([10, 10]);
    const last = said(kinked(new Pen().to(40, 60).straight(60).arc(10, 60).straight(40)));
    expect(last.map(({ measured }) => Math.round(measured!))).toEqual([10, 10]);
  });

  it('that share a stretch are one, which turns as far as the one that turns further', () => {
    // An arc of 80 degrees between two kinks of 10: 100 degrees in all.
    const pen = new Pen().to(40, 60).straight(60).turn(10).straight(2).arc(8, 80).turn(10).straight(40);
    expect(said(pen)).toMatchObject([{ measured: 8, severity: 'may-stop' }]);
    expect(said(new Pen().to(40, 60).straight(60).arc(8, 80).straight(40))).toMatchObject([
      { severity: 'untidy' },
    ]);
  });

  it('allows for the rounding of an arc’s ends, which weighs more on a short one', () => {
    // Ends moved by 0.01 mm each make a radius of 14.98 on a chord of 5 mm one of 15.04, on 29 mm of 14.99.
    const arc = (chord: number) => {
      const bulge = Math.tan(Math.asin(chord / 2 / 14.98) / 2);
      return of('R-curve-radius', drawn([line('bent', [100, 60], [100 + chord, 60, bulge])]));
    };
    expect(arc(5)).toEqual([]);
    expect(arc(29)).toMatchObject([{ measured: 14.98 }]);
  });
});
