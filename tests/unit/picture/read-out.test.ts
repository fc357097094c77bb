import { describe, expect, it } from 'vitest';
import { readOut } from '../../../shared/picture/read-out.ts';
import { FULL_SHEET, STRAIGHT } from './picture-setting.ts';

describe('readOut', () => {
  it('a straight with a mark: where it begins, where it ends, where the bands lie', () => {
    // The mark begins 40 mm along the line from (50, 150) and is 5.5 + 0.5 + 5.5 mm long.
    expect(readOut(FULL_SHEET, STRAIGHT)).toEqual([
      { kind: 'begin', at: { x: 50, y: 150 } },
      { kind: 'straight', to: { x: 250, y: 150 } },
      { kind: 'mark', word: 'CA', from: { x: 90, y: 150 }, to: { x: 101.5, y: 150 } },
    ]);
  });

  it('a bow goes over the place in its middle', () => {
    // Half a circle of radius 40 from (60, 100) to (140, 100), bending to the right: over (100, 60).
    const half = {
      lines: [
        { id: 'l1', width: 5, from: { x: 60, y: 100 }, pieces: [{ to: { x: 140, y: 100 }, bulge: 1 }] },
      ],
      marks: [],
    };
    expect(readOut(FULL_SHEET, half)[1]).toEqual({
      kind: 'bow',
      over: { x: 100, y: 60 },
      to: { x: 140, y: 100 },
    });
  });

  it('places are told to half a millimetre', () => {
    const odd = {
      lines: [
        {
          id: 'l1',
          width: 5,
          from: { x: 60.26, y: 100.1 },
          pieces: [{ to: { x: 99.77, y: 100 }, bulge: 0 }],
        },
      ],
      marks: [],
    };
    expect(readOut(FULL_SHEET, odd)).toEqual([
      { kind: 'begin', at: { x: 60.5, y: 100 } },
      { kind: 'straight', to: { x: 100, y: 100 } },
    ]);
  });

  it('what is given is on the paper already', () => {
    const { lines, marks } = STRAIGHT;
    expect(readOut({ ...FULL_SHEET, given: { lines, marks } }, { lines: [], marks: [] })).toEqual([]);
  });
});
