import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { nodeUnder, radiusUnder } from '../../../shared/rules/marks.ts';
import { ruleContext } from '../../../shared/rules/rules.ts';
import { drawn, line, mark, PIER, SHEET } from './setting.ts';

const QUARTER = Math.SQRT2 - 1;
/** 80 mm, a quarter of a circle of radius 20, 40 mm, one of 12 the other way, and 30 mm. */
const BENT = line('bent', [40, 20], [120, 20], [140, 40, QUARTER], [140, 80], [152, 92, -QUARTER], [182, 92]);
const OTHER = line('other', [40, 180], [260, 180]);

function laid(lines: ReturnType<typeof line>[], on: string, at: number) {
  const context = ruleContext(SHEET, drawn(lines, [mark('m', on, at, 'CA')]), DEMO_KIT);
  return { track: context.track, laid: context.track.layout.marks[0]! };
}

describe('nodeUnder', () => {
  const across = line('across', [150, 60], [150, 140]);
  const under = (lines: ReturnType<typeof line>[], on: string, at: number) => {
    const { track, laid: one } = laid(lines, on, at);
    return nodeUnder(track, one);
  };

  it('tells a junction, a corner and the end of the mark’s own line', () => {
    const lines = [OTHER, PIER, across];
    expect(under(lines, 'pier', 105)).toBe('junction');
    expect(under(lines, 'across', 35)).toBe('junction');
    expect(under(lines, 'other', 105)).toBeUndefined();
    const elbow = line('elbow', [40, 60], [150, 60], [150, 140]);
    expect(under([OTHER, elbow], 'elbow', 105)).toBe('corner');
    expect(under([OTHER, PIER], 'pier', 212)).toBe('end');
    expect(under([OTHER, PIER], 'pier', 209)).toBeUndefined();
  });

  it('tells nothing where the mark only touches it, but for rounding', () => {
    // The crossing is 110 mm along; two bands are 11 mm long.
    const at = (way: number) => under([PIER, across], 'pier', way);
    expect([at(99), at(99.01), at(99.02)]).toEqual([undefined, undefined, 'junction']);
    expect([at(110), at(109.98)]).toEqual([undefined, 'junction']);
  });
});

describe('radiusUnder', () => {
  const under = (on: string, at: number) => {
    const { track, laid: one } = laid([OTHER, BENT], on, at);
    return radiusUnder(track, one);
  };
  const first = 80 + 10 * Math.PI;

  it('is that of the tightest arc under the mark, and infinite on straight line', () => {
    expect(under('bent', 60)).toBe(Number.POSITIVE_INFINITY);
    expect(under('other', 90)).toBe(Number.POSITIVE_INFINITY);
    expect(under('bent', 90)).toBeCloseTo(20, 6);
    expect(under('bent', first + 42)).toBeCloseTo(12, 6);
  });

  it('counts no arc that the mark only touches, but for rounding', () => {
    expect([under('bent', 69), under('bent', 69.02)]).toEqual([
      Number.POSITIVE_INFINITY,
      expect.closeTo(20, 6),
    ]);
    expect(under('bent', first)).toBe(Number.POSITIVE_INFINITY);
    expect(under('bent', first - 0.02)).toBeCloseTo(20, 6);
  });
});
