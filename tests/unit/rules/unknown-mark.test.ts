import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { bands, berth, drawn, mark, of, PIER } from './setting.ts';

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

describe('R-unknown-mark of several marks', () => {
  it('R-unknown-mark tells of those alone that are in no chart', () => {
    const marks = [
      mark('good', 'pier', 40, 'CA'),
      mark('bad', 'pier', 90, 'CAV'),
      mark('fine', 'pier', 150, 'AC'),
    ];
    expect(of('R-unknown-mark', drawn([PIER], marks)).map(({ place }) => place)).toMatchObject([
      { mark: 'bad' },
    ]);
  });

  it('R-unknown-mark wants both sides known where robots come from both', () => {
    const kit = { ...DEMO_KIT, chart: DEMO_KIT.chart.filter((row) => row.word !== 'AC') };
    const turning = { ...kit, robot: { ...kit.robot, looseEnd: 'turn-back' as const } };
    expect(of('R-unknown-mark', word('CA'), { kit })).toEqual([]);
    expect(of('R-unknown-mark', word('CA'), { kit: turning })).toHaveLength(1);
  });

  it('R-unknown-mark: where nobody comes a word that is known from neither side is unknown', () => {
    const away = { sheet: { start: berth(40, 30) } };
    expect(of('R-unknown-mark', word('CAV'), away)).toHaveLength(1);
    expect(of('R-unknown-mark', word('CA'), away)).toEqual([]);
  });

  it('R-unknown-mark leaves more bands than the kit has to R-band-count', () => {
    const many = word('CACAC');
    expect(of('R-unknown-mark', many)).toEqual([]);
    expect(of('R-band-count', many)).toHaveLength(1);
  });

  it('R-unknown-mark says of a lone ink how bad it is and what to do', () => {
    expect(of('R-unknown-mark', drawn([PIER], [mark('m', 'pier', 60, bands('C', 12))]))).toMatchObject([
      { severity: 'untidy', remedy: { code: 'choose-mark' } },
    ]);
  });
});
