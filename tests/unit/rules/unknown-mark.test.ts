import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { bands, drawn, mark, of, PIER } from './setting.ts';

const word = (letters: string) => drawn([PIER], [mark('m', 'pier', 60, letters)]);

describe('R-unknown-mark', () => {
  it('R-unknown-mark is silent for every word of the chart', () => {
    expect(DEMO_KIT.chart.flatMap((row) => of('R-unknown-mark', word(row.word)))).toEqual([]);
  });

  it('R-unknown-mark finds a spare word and equal neighbours', () => {
    expect(of('R-unknown-mark', word('CAV'))).toMatchObject([
      { variant: 'word', severity: 'untidy', remedy: { code: 'choose-mark' }, place: { mark: 'm' } },
    ]);
    expect(of('R-unknown-mark', word('CC'))).toHaveLength(1);
  });

  it('R-unknown-mark reads a mark as the robot meets it', () => {
    const kit = { ...DEMO_KIT, chart: DEMO_KIT.chart.filter((row) => row.word !== 'CA') };
    expect(of('R-unknown-mark', word('AC'), { kit })).toEqual([]);
    expect(of('R-unknown-mark', word('CA'), { kit })).toHaveLength(1);
    // Where no robot comes, one known side is enough.
    const aside = {
      sheet: { start: { ...PIER.from, name: { en: 'b' }, at: { x: 40, y: 30 }, heading: 0, r: 15 } },
    };
    expect(of('R-unknown-mark', word('CA'), { kit, ...aside })).toEqual([]);
  });

  it('R-unknown-mark: a single ink from 8 mm to under 20 mm is no mark and no stretch', () => {
    const single = (length: number) => drawn([PIER], [mark('m', 'pier', 60, bands('C', length))]);
    expect([7.9, 20].flatMap((length) => of('R-unknown-mark', single(length)))).toEqual([]);
    expect(of('R-unknown-mark', single(8))).toMatchObject([
      { variant: 'single-ink', measured: 8, allowed: 20, unit: 'mm' },
    ]);
    expect(of('R-unknown-mark', single(19.9))).toHaveLength(1);
  });
});
