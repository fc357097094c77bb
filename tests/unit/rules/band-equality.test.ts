import { describe, expect, it } from 'vitest';
import { drawn, mark, mended, of, PIER } from './setting.ts';

const pair = (a: number, b: number) =>
  drawn(
    [PIER],
    [
      mark('m', 'pier', 60, [
        { ink: 'C', length: a, gap: 0 },
        { ink: 'A', length: b, gap: 0 },
      ]),
    ],
  );

describe('R-band-equality', () => {
  it('R-band-equality is silent at exactly 20 % from the mean', () => {
    expect([pair(5.5, 5.5), pair(4, 6), pair(4.8, 7.2)].flatMap((d) => of('R-band-equality', d))).toEqual([]);
  });

  it('R-band-equality finds 4 beside 7 mm: 1.5 of a mean of 5.5', () => {
    expect(of('R-band-equality', pair(4, 7))).toMatchObject([
      { measured: 0.27, allowed: 0.2, unit: 'ratio', severity: 'may-stop', place: { mark: 'm' } },
    ]);
  });

  it('R-band-equality mends to bands of one length', () => {
    const mend = mended(of('R-band-equality', pair(4, 7))[0]);
    expect(mend.marks[0]?.bands.map((band) => band.length)).toEqual([5.5, 5.5]);
  });
});
