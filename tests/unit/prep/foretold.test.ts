import { describe, expect, it } from 'vitest';
import { brierOf, calibrationOf, ENOUGH, paceOffer } from '../../../shared/prep/foretold.ts';

const trial = (share: number, came: boolean) => ({ share, came });

describe('brierOf', () => {
  // Source: "Brier score", Wikipedia (as copied at en-academic.com in 2010): 100 % and rain 0, 100 % and none 1,
  // 70 % and rain 0.09, 30 % and rain 0.49, 50 % either way 0.25.
  it.each([
    [1, true, 0],
    [1, false, 1],
    [0.7, true, 0.09],
    [0.3, true, 0.49],
    [0.5, true, 0.25],
    [0.5, false, 0.25],
  ])('of a forecast of %f that came: %s, is %f', (share, came, score) => {
    expect(brierOf([trial(share, came)])).toBeCloseTo(score, 12);
  });

  // By hand: (0.09 + 0.49 + 0.25 + 1)/4 = 0.4575.
  it('is the mean over all', () => {
    expect(brierOf([trial(0.7, true), trial(0.3, true), trial(0.5, false), trial(1, false)])).toBeCloseTo(
      0.4575,
      12,
    );
  });
});

describe('calibrationOf', () => {
  it('puts what was foretold of twenty robots into four bins, the edges where few robots make a difference', () => {
    const shares = [0, 9, 10, 15, 16, 18, 19, 20].map((same) => trial(same / 20, true));
    const { bins } = calibrationOf(shares)!;
    expect(bins.map(({ trials }) => trials)).toEqual([2, 2, 2, 2]);
    expect(bins.map(({ foretold }) => Math.round(foretold * 1000))).toEqual([225, 625, 850, 975]);
  });

  // Intervals: Newcombe 1998, table I, the score method: 81 of 263 is 0.2553 to 0.3662 (as in statistics.test.ts).
  it('counts what came in each bin, with Wilson’s interval', () => {
    const many = Array.from({ length: 263 }, (_, i) => trial(0.3, i < 81));
    const [bin] = calibrationOf(many)!.bins;
    expect(bin).toMatchObject({ trials: 263, came: 81, from: 0, to: 0.5 });
    expect(bin!.interval.low).toBeCloseTo(0.2553, 4);
    expect(bin!.interval.high).toBeCloseTo(0.3662, 4);
  });

  // By hand: whoever always says 3/4 of what came in 3 of 4 scores (3 · 1/16 + 9/16)/4 = 3/16.
  it('says what a constant forecast would score', () => {
    const four = [true, true, true, false].map((came) => trial(1, came));
    expect(calibrationOf(four)).toMatchObject({ trials: 4, came: 3, brier: 0.25, plain: 0.1875 });
  });

  it('knows nothing without a trial', () => expect(calibrationOf([])).toBeUndefined());
});

describe('paceOffer', () => {
  const timed = (count: number, times: number, robots: number) =>
    Array.from({ length: count }, (_, i) => ({
      robot: i % robots,
      foretold: 20,
      took: 20 * times + (i % 2 === 0 ? 0.2 : -0.2),
    }));

  it('wants so many trials with so many robots', () => {
    expect(paceOffer(timed(ENOUGH.trials - 1, 1.2, 5))).toEqual({ kind: 'few', trials: 7, robots: 5 });
    expect(paceOffer(timed(20, 1.2, ENOUGH.robots - 1))).toEqual({ kind: 'few', trials: 20, robots: 2 });
    expect(paceOffer([])).toEqual({ kind: 'few', trials: 0, robots: 0 });
  });

  // By hand: foretold 20 each time, 8 of them: times = mean of took / 20; residuals ±0.2, s² = 8 · 0.04/7, its
  // error √(s²/(8 · 400)) = 0.00378; Student’s t for 7 is 2.365.
  it('offers how many times as long robots take, with its range', () => {
    const found = paceOffer(timed(8, 1.1, 4));
    expect(found).toMatchObject({ kind: 'offer', trials: 8, robots: 4 });
    if (found.kind === 'few') return;
    expect(found.times).toBeCloseTo(1.1, 12);
    expect(found.spread.error).toBeCloseTo(Math.sqrt((8 * 0.04) / 7 / 3200), 12);
    expect(found.spread.high - found.times).toBeCloseTo(2.365 * found.spread.error, 12);
  });

  it('offers nothing where they take as long as foretold, nearly so, or where that is not sure', () => {
    expect(paceOffer(timed(8, 1, 4)).kind).toBe('alike');
    expect(paceOffer(timed(8, 1.015, 4)).kind).toBe('alike');
    const wild = timed(8, 1.05, 4).map((one, i) => ({ ...one, took: one.took + (i % 2 === 0 ? 4 : -4) }));
    expect(paceOffer(wild).kind).toBe('alike');
  });
});
