import { describe, expect, it } from 'vitest';
import { drawn, line, of, PIER } from './setting.ts';

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
