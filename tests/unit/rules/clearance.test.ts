import { describe, expect, it } from 'vitest';
import { berth, drawn, line, of, PIER } from './setting.ts';

const beside = (gap: number, from = 80, to = 200) => line('beside', [from, 100 + gap], [to, 100 + gap]);

describe('R-clearance', () => {
  it('R-clearance is silent for parallel lines 15 mm apart', () => {
    expect(of('R-clearance', drawn([PIER, beside(15)]))).toEqual([]);
  });

  it('R-clearance finds parallel lines 14.9 mm apart, over their whole length', () => {
    const [finding, ...others] = of('R-clearance', drawn([PIER, beside(14.9)]));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ measured: 14.9, allowed: 15, unit: 'mm', severity: 'untidy' });
    expect(finding?.place.at.x).toBeCloseTo(140, 2);
    expect(finding?.place.at.y).toBeCloseTo(107.45, 2);
    const [from, to] = finding?.place.kind === 'stretch' ? [finding.place.from, finding.place.to] : [];
    expect(to! - from!).toBeGreaterThan(119);
  });

  it('R-clearance: may stop from where the outer sensor sees the other line, 2 · 4 + 2.5 mm', () => {
    expect(of('R-clearance', drawn([PIER, beside(10.6)]))[0]?.severity).toBe('untidy');
    expect(of('R-clearance', drawn([PIER, beside(10.4)]))[0]?.severity).toBe('may-stop');
  });

  it('R-clearance is silent at junctions and corners, however sharp', () => {
    const across = line('across', [100, 40], [160, 160]);
    const branch = line('branch', [150, 100], [230, 60]);
    const sharp = line('sharp', [40, 100], [200, 100], [60, 60]);
    expect(of('R-clearance', drawn([PIER, across]))).toEqual([]);
    expect(of('R-clearance', drawn([PIER, branch]))).toEqual([]);
    expect(of('R-clearance', drawn([sharp]))).toEqual([]);
  });

  it('R-clearance finds a line that ends 5 mm before another', () => {
    const short = line('short', [150, 40], [150, 95]);
    const [finding] = of('R-clearance', drawn([PIER, short]));
    expect(finding).toMatchObject({ measured: 5, allowed: 15 });
  });

  it('R-clearance finds a line that comes back beside itself', () => {
    // Down, left and up again: the last leg ends 10 mm under the first one.
    const back = line('back', [40, 100], [240, 100], [240, 150], [120, 150], [120, 110]);
    expect(of('R-clearance', drawn([back]))).toMatchObject([{ measured: 10, allowed: 15 }]);
  });

  it('R-clearance is silent in a half-turn of 15 mm across, and finds its legs when they close in', () => {
    const even = line('even', [40, 100], [150, 100], [150, 115, 1], [60, 115]);
    const closing = line('closing', [40, 100], [150, 100], [150, 116, 1], [60, 108]);
    expect(of('R-clearance', drawn([even]))).toEqual([]);
    expect(of('R-clearance', drawn([closing]))).toMatchObject([{ measured: 8 }]);
  });

  it('R-clearance measures circles along the straight through their centres', () => {
    // Half circles of radius 30 about (100, 60) and (172, 60), open to the top: 12 mm between them.
    const one = line('one', [70, 60], [130, 60, -1]);
    const two = line('two', [142, 60], [202, 60, -1]);
    expect(of('R-clearance', drawn([one, two]))).toMatchObject([{ measured: 12 }]);
  });

  it('R-clearance says nothing of two given lines, but of one beside the team’s', () => {
    const given = drawn([
      { ...PIER, id: 'given' },
      { ...beside(12), id: 'second' },
    ]);
    expect(of('R-clearance', drawn([]), { sheet: { given } })).toEqual([]);
    const mixed = of('R-clearance', drawn([beside(-12)]), { sheet: { given: drawn([PIER]) } });
    expect(mixed).toMatchObject([{ measured: 12, place: { line: 'beside' } }]);
  });
});

describe('R-clearance says where', () => {
  /** 10 mm beside the pier, from 60 to 160 mm along it. */
  const beside = line('beside', [100, 110], [200, 110]);
  /** So far beyond its ends the pier is still nearer than 15 mm. */
  const OVER = Math.sqrt(15 ** 2 - 10 ** 2);

  it('R-clearance tells the stretch of the team’s line that is near a given one', () => {
    const onPier = of('R-clearance', drawn([PIER]), { sheet: { given: drawn([beside]) } });
    expect(onPier).toMatchObject([{ measured: 10, place: { kind: 'stretch', line: 'pier' } }]);
    const { place } = onPier[0]!;
    if (place.kind !== 'stretch') throw new Error('a stretch');
    expect(Math.abs(place.from - (60 - OVER))).toBeLessThan(0.02);
    expect(Math.abs(place.to - (160 + OVER))).toBeLessThan(0.02);
    expect([place.at.x, place.at.y]).toEqual([expect.closeTo(150, -1), expect.closeTo(105, 1)]);
    const onOther = of('R-clearance', drawn([beside]), { sheet: { given: drawn([PIER]) } });
    expect(onOther).toMatchObject([{ measured: 10, place: { line: 'beside', from: 0, to: 100 } }]);
  });

  it('R-clearance finds where a line that comes nearer on a slant comes too near', () => {
    // 3 mm down for each 4 along, down to 10 mm above the pier at x = 200: 15 mm at 6.67 mm before that.
    const slant = line('slant', [120, 30], [200, 90]);
    const [finding, ...others] = of('R-clearance', drawn([slant]), {
      sheet: { start: berth(40, 160), given: drawn([PIER]) },
    });
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ measured: 10, place: { kind: 'stretch', line: 'slant' } });
    const { place } = finding!;
    if (place.kind !== 'stretch') throw new Error('a stretch');
    expect(Math.abs(place.from - (100 - 5 / 0.6))).toBeLessThan(0.02);
    expect(place.to).toBeCloseTo(100, 6);
  });

  it('R-clearance tells of two places that are more than two clearances apart, each for itself', () => {
    const comb = (apart: number) => [
      line('one', [100, 40], [100, 90]),
      line('two', [100 + apart, 40], [100 + apart, 90]),
    ];
    // Each is near for 11 mm to either side.
    const places = (apart: number) =>
      of('R-clearance', drawn([PIER, ...comb(apart)])).map(({ place }) => place.at.x);
    expect(places(60).map(Math.round).sort()).toEqual([100, 160]);
    expect(places(40)).toHaveLength(1);
  });

  it('R-clearance is silent beside a gap, but not of the same lines elsewhere', () => {
    const a = line('a', [40, 100], [150, 100]);
    const b = (...stops: [number, number][]) => line('b', [158, 100], [230, 100], ...stops);
    expect(of('R-clearance', drawn([a, b()]))).toEqual([]);
    // It comes round and ends 10 mm above the first line.
    const round = of('R-clearance', drawn([a, b([230, 50], [90, 50], [90, 90])]));
    expect(round).toMatchObject([{ measured: 10 }]);
    expect(Math.abs(round[0]!.place.at.x - 90)).toBeLessThan(1);
  });
});
