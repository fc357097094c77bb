import { describe, expect, it } from 'vitest';
import { hangingOf } from '../../../../client/board/gallery-grid.ts';

const WALL = { width: 1000, height: 600, gap: 10, words: 30 };

describe('hangingOf', () => {
  it('one sheet is as large as its place: 600 − 30 high, twice as wide, but no wider than the wall', () => {
    expect(hangingOf(1, 1.5, WALL)).toEqual({ columns: 1, width: 855 });
    expect(hangingOf(1, 3, WALL)).toEqual({ columns: 1, width: 1000 });
  });

  it('takes the columns in which sheets are largest: 4 squares side by side are 242.5, in two rows 265', () => {
    expect(hangingOf(4, 1, WALL)).toEqual({ columns: 2, width: 265 });
    expect(hangingOf(4, 0.5, WALL)).toEqual({ columns: 4, width: 242.5 });
  });

  it.each([1, 2, 3, 5, 7, 11, 12])('%i sheets fit with their words', (count) => {
    const { columns, width } = hangingOf(count, 1.41, WALL);
    const rows = Math.ceil(count / columns);
    expect(columns * width + (columns - 1) * WALL.gap).toBeLessThanOrEqual(WALL.width + 0.01);
    expect(rows * (width / 1.41 + WALL.words) + (rows - 1) * WALL.gap).toBeLessThanOrEqual(
      WALL.height + 0.01,
    );
    expect(width).toBeGreaterThan(150);
  });

  it('a place that is not measured yet has no sheets', () => {
    expect(hangingOf(3, 1.4, { ...WALL, width: 0, height: 0 }).width).toBe(0);
  });
});
