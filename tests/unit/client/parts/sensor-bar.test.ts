import { describe, expect, it } from 'vitest';
import { emptiestCorner } from '../../../../client/parts/sensor-bar.tsx';
import { FULL_SHEET } from '../../picture/picture-setting.ts';

describe('emptiestCorner', () => {
  /** The sheet is 300 by 200; a corner takes 108 by 60 of it. */
  it('is the one in which the fewest places lie', () => {
    const all = [
      { x: 20, y: 20 },
      { x: 280, y: 20 },
      { x: 20, y: 180 },
    ];
    expect(emptiestCorner(FULL_SHEET, all)).toEqual({ right: true, down: true });
    expect(emptiestCorner(FULL_SHEET, [...all, { x: 280, y: 190 }, { x: 280, y: 190 }])).toEqual({
      right: true,
      down: false,
    });
  });
});
