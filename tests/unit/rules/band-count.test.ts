import { describe, expect, it } from 'vitest';
import { bands, drawn, findings, mark, of, PIER } from './setting.ts';

const worded = (word: string) => drawn([PIER], [mark('m', 'pier', 60, word)]);

describe('R-band-count', () => {
  it('R-band-count is silent for two, three and four bands', () => {
    expect(['CA', 'ACA', 'CACA'].flatMap((word) => of('R-band-count', worded(word)))).toEqual([]);
  });

  it('R-band-count finds one short band and five bands', () => {
    expect(of('R-band-count', worded('C'))).toMatchObject([
      { variant: 'few', measured: 1, allowed: 2, unit: 'count', place: { mark: 'm' } },
    ]);
    expect(of('R-band-count', worded('CACAC'))).toMatchObject([{ variant: 'many', measured: 5, allowed: 4 }]);
  });

  it('R-band-count leaves a single ink of 8 mm and more to others', () => {
    const single = (length: number) => drawn([PIER], [mark('m', 'pier', 60, bands('C', length))]);
    expect(of('R-band-count', single(7.9))).toHaveLength(1);
    expect(of('R-band-count', single(8))).toEqual([]);
    expect(findings(single(20))).toEqual([]);
  });

  it('R-band-count says nothing of given marks', () => {
    const given = drawn([PIER], [mark('g', 'pier', 60, 'CACAC')]);
    expect(of('R-band-count', drawn([]), { sheet: { given } })).toEqual([]);
  });
});
