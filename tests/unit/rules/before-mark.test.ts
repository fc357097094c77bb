import { describe, expect, it } from 'vitest';
import { drawn, line, mark, mended, of, PIER, withRobot } from './setting.ts';

/** Right, then down: the corner is 110 mm along, the end 220. */
const ELBOW = line('elbow', [40, 100], [150, 100], [150, 180]);

describe('R-before-mark', () => {
  it('R-before-mark is silent at exactly 25 mm behind a corner', () => {
    expect(of('R-before-mark', drawn([ELBOW], [mark('m', 'elbow', 135, 'CA')]))).toEqual([]);
  });

  it('R-before-mark finds 20 mm behind a corner and slides the mark on', () => {
    const found = of('R-before-mark', drawn([ELBOW], [mark('m', 'elbow', 130, 'CA')]));
    expect(found).toMatchObject([
      { variant: 'corner', measured: 20, allowed: 25, unit: 'mm', severity: 'may-stop' },
    ]);
    expect(found[0]?.place).toMatchObject({ kind: 'mark', mark: 'm', at: { x: 150, y: 125.5 } });
    expect(mended(found[0]).marks[0]?.at).toBeCloseTo(135, 1);
  });

  it('R-before-mark counts from the axle of a robot in its berth', () => {
    expect(of('R-before-mark', drawn([PIER], [mark('m', 'pier', 25, 'CA')]))).toEqual([]);
    expect(of('R-before-mark', drawn([PIER], [mark('m', 'pier', 24, 'CA')]))).toMatchObject([
      { variant: 'start', measured: 24, allowed: 25 },
    ]);
  });

  it('R-before-mark asks between two marks for the larger room, not the sum', () => {
    // The first ends at 71; two bands are 11 mm long.
    const marks = (at: number) => [mark('a', 'pier', 60, 'CA'), mark('b', 'pier', at, 'AC')];
    expect(of('R-before-mark', drawn([PIER], marks(96)))).toEqual([]);
    expect(of('R-before-mark', drawn([PIER], marks(91)))).toMatchObject([
      { variant: 'mark', measured: 20, allowed: 25, place: { mark: 'b' } },
    ]);
  });

  it('R-before-mark counts crossings and branches as well', () => {
    const across = line('across', [100, 40], [100, 160]);
    expect(of('R-before-mark', drawn([PIER, across], [mark('m', 'pier', 80, 'CA')]))).toMatchObject([
      { variant: 'junction', measured: 20 },
    ]);
  });

  it('R-before-mark takes a wide curve for straight, a narrower one than 50 mm not', () => {
    // Quarter circles from (100, 100) to the right and down, then straight down.
    const quarter = (r: number) =>
      line('curve', [40, 100], [80, 100], [80 + r, 100 + r, Math.SQRT2 - 1], [80 + r, 190]);
    const behind = (r: number) => mark('m', 'curve', 40 + (r * Math.PI) / 2 + 10, 'CA');
    expect(of('R-before-mark', drawn([quarter(50)], [behind(50)]))).toEqual([]);
    expect(of('R-before-mark', drawn([quarter(40)], [behind(40)]))).toMatchObject([
      { variant: 'curve', measured: 10, allowed: 25 },
    ]);
  });

  it('R-before-mark asks only for sides from which a robot can come', () => {
    // Room towards the loose end is short; nobody comes from there, unless robots turn back at it.
    const near = drawn([PIER], [mark('m', 'pier', 190, 'CVC')]);
    expect(of('R-before-mark', near)).toEqual([]);
    const turning = { kit: withRobot({ looseEnd: 'turn-back' }) };
    expect(of('R-before-mark', near, turning)).toMatchObject([{ variant: 'end', measured: 13.5 }]);
  });

  it('R-before-mark says nothing of given marks, but of the team’s beside them', () => {
    const given = drawn([{ ...ELBOW, id: 'elbow' }], [mark('g', 'elbow', 120, 'CA')]);
    expect(of('R-before-mark', drawn([]), { sheet: { given } })).toEqual([]);
    const close = drawn([], [mark('m', 'elbow', 141, 'AC')]);
    expect(of('R-before-mark', close, { sheet: { given } })).toMatchObject([
      { variant: 'mark', measured: 10, place: { mark: 'm' } },
    ]);
  });
});
