import { describe, expect, it } from 'vitest';
import { bands, drawn, mark, mended, of, PIER } from './setting.ts';

const gapped = (gap: number) => drawn([PIER], [mark('m', 'pier', 60, bands('ACA', 5.5, gap))]);

describe('R-band-gap', () => {
  it('R-band-gap is silent at exactly 0.6 mm of white and 1 mm of overlap', () => {
    expect([0.6, 0, -1].flatMap((gap) => of('R-band-gap', gapped(gap)))).toEqual([]);
  });

  it('R-band-gap finds 0.7 mm of white', () => {
    expect(of('R-band-gap', gapped(0.7))).toMatchObject([
      { variant: 'gap', measured: 0.7, allowed: 0.6, unit: 'mm', severity: 'may-stop' },
    ]);
  });

  it('R-band-gap finds 1.2 mm of overlap', () => {
    expect(of('R-band-gap', gapped(-1.2))).toMatchObject([
      { variant: 'overlap', measured: 1.2, allowed: 1, unit: 'mm' },
    ]);
  });

  it('R-band-gap finds both in one mark, and one mending is good for both', () => {
    const [first, second] = bands('AC');
    const third = { ink: 'A', length: 5.5, gap: -2 };
    const drawing = drawn([PIER], [mark('m', 'pier', 60, [first!, { ...second!, gap: 2 }, third])]);
    const found = of('R-band-gap', drawing);
    expect(found.map((f) => f.variant)).toEqual(['gap', 'overlap']);
    expect(of('R-band-gap', mended(found[0]))).toEqual([]);
  });

  it('R-band-gap says nothing of white before the first band', () => {
    const [first, second] = bands('CA');
    const drawing = drawn([PIER], [mark('m', 'pier', 60, [{ ...first!, gap: 3 }, second!])]);
    expect(of('R-band-gap', drawing)).toEqual([]);
  });
});
