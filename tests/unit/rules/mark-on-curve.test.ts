import { describe, expect, it } from 'vitest';
import { drawn, line, mark, mended, of } from './setting.ts';

/** 60 mm to the right, a quarter circle of radius r to the right, then 80 mm down. */
const curve = (r: number) =>
  line('curve', [40, 60], [100, 60], [100 + r, 60 + r, Math.SQRT2 - 1], [100 + r, 140 + r]);

describe('R-mark-on-curve', () => {
  it('R-mark-on-curve is silent on a curve of exactly 50 mm and beside a narrower one', () => {
    expect(of('R-mark-on-curve', drawn([curve(50)], [mark('m', 'curve', 80, 'CA')]))).toEqual([]);
    expect(of('R-mark-on-curve', drawn([curve(40)], [mark('m', 'curve', 49, 'CA')]))).toEqual([]);
  });

  it('R-mark-on-curve finds a mark that reaches into a curve of 40 mm', () => {
    expect(of('R-mark-on-curve', drawn([curve(40)], [mark('m', 'curve', 50, 'CA')]))).toMatchObject([
      { measured: 40, allowed: 50, unit: 'mm', severity: 'may-stop', place: { mark: 'm' } },
    ]);
  });

  it('R-mark-on-curve slides the mark to the nearer straight, with room before it', () => {
    const sheet = { start: { name: { en: 'b' }, at: { x: 40, y: 60 }, heading: 0, r: 15 } };
    const [finding] = of('R-mark-on-curve', drawn([curve(40)], [mark('m', 'curve', 105, 'CA')]), { sheet });
    // The arc ends at 60 + 20π = 122.83; 25 mm of straight come before the mark.
    expect(mended(finding).marks[0]?.at).toBeCloseTo(147.85, 1);
  });

  it('R-mark-on-curve says nothing of given marks, but of the team’s on given lines', () => {
    const given = drawn([curve(40)], [mark('g', 'curve', 90, 'CA')]);
    expect(of('R-mark-on-curve', drawn([]), { sheet: { given } })).toEqual([]);
    const onGiven = drawn([], [mark('m', 'curve', 70, 'CA')]);
    expect(of('R-mark-on-curve', onGiven, { sheet: { given } })).toMatchObject([{ place: { mark: 'm' } }]);
  });

  it('R-mark-on-curve slides past many curves without trying every pair of them', () => {
    // 40 arcs of 36 degrees over chords of 24 mm, to and fro: radius 12 / sin 18° = 38.83, length 24.40.
    const bulge = Math.tan(Math.PI / 20);
    const stops = Array.from(
      { length: 40 },
      (_, i) => [84 + 24 * i, 100, i % 2 === 0 ? bulge : -bulge] as const,
    );
    const garland = line('garland', [40, 100], [60, 100], ...stops, [1220, 100]);
    const arcs = 40 * (12 / Math.sin(Math.PI / 10)) * (Math.PI / 5);
    const drawing = drawn([garland], [mark('m', 'garland', 520, 'CA')]);
    const [finding] = of('R-mark-on-curve', drawing, { sheet: { w: 4000 } });
    // The straight begins behind the arcs; 25 mm of it come before the mark.
    expect(mended(finding).marks[0]?.at).toBeCloseTo(20 + arcs + 25, 1);
  });
});
