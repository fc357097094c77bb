import { describe, expect, it } from 'vitest';
import { drawn, findings, line, mark, mended, of, PIER } from './setting.ts';

const ACROSS = line('across', [150, 40], [150, 160]);

describe('R-mark-on-junction', () => {
  it('R-mark-on-junction is silent for a mark that ends where the crossing is', () => {
    expect(of('R-mark-on-junction', drawn([PIER, ACROSS], [mark('m', 'pier', 99, 'CA')]))).toEqual([]);
  });

  it('R-mark-on-junction finds a mark over a crossing, a corner and the end of its line', () => {
    const elbow = line('elbow', [40, 100], [150, 100], [150, 160]);
    expect(of('R-mark-on-junction', drawn([PIER, ACROSS], [mark('m', 'pier', 105, 'CA')]))).toMatchObject([
      { variant: 'junction', measured: 0, allowed: 25, severity: 'may-stop', place: { mark: 'm' } },
    ]);
    expect(of('R-mark-on-junction', drawn([elbow], [mark('m', 'elbow', 105, 'CA')]))).toMatchObject([
      { variant: 'corner' },
    ]);
    expect(of('R-mark-on-junction', drawn([PIER], [mark('m', 'pier', 215, 'CA')]))).toMatchObject([
      { variant: 'end' },
    ]);
  });

  it('R-mark-on-junction is the only one to speak of room beside such a mark', () => {
    const rules = findings(drawn([PIER, ACROSS], [mark('m', 'pier', 105, 'CA')])).map((f) => f.rule);
    expect(rules).toEqual(['R-mark-on-junction']);
  });

  it('R-mark-on-junction slides the mark off, with room on both sides', () => {
    const [finding] = of('R-mark-on-junction', drawn([PIER, ACROSS], [mark('m', 'pier', 103, 'CA')]));
    // 25 mm after a mark "faster" that ends at 74 mm + 11 mm, before the crossing at 110 mm.
    expect(mended(finding).marks[0]?.at).toBeCloseTo(74, 1);
  });

  it('R-mark-on-junction lets a coloured stretch run over a crossing', () => {
    const stretch = mark('m', 'pier', 95, [{ ink: 'C', length: 30, gap: 0 }]);
    expect(findings(drawn([PIER, ACROSS], [stretch]))).toEqual([]);
  });
});
