import { describe, expect, it } from 'vitest';
import { crossesOf, evened, partsOf, tilingOf } from '../../../shared/picture/tiles.ts';

// All by hand: two neighbours share 10 mm, so n parts of length s reach n s − 10 (n − 1).
const sheet = { w: 420, h: 297 };

describe('tilingOf', () => {
  it('takes one part where the sheet fits, to the last millimetre', () => {
    expect(tilingOf(sheet, sheet)).toMatchObject({ across: 1, down: 1 });
    expect(tilingOf(sheet, { w: 419, h: 297 })).toMatchObject({ across: 2, down: 1 });
  });
  it('takes as few parts as reach the end', () => {
    // 3 × 150 − 20 = 430 and 2 × 150 − 10 = 290 across; 2 × 160 − 10 = 310 down.
    expect(tilingOf(sheet, { w: 150, h: 160 })).toMatchObject({ across: 3, down: 2 });
    // 2 × 215 − 10 = 420.
    expect(tilingOf(sheet, { w: 215, h: 160 })).toMatchObject({ across: 2 });
  });
});

describe('partsOf', () => {
  it('goes row by row, cuts the last ones off at the sheet’s end', () => {
    const parts = partsOf(tilingOf(sheet, { w: 150, h: 160 }));
    expect(parts).toHaveLength(6);
    expect(parts[0]).toEqual({ number: 1, row: 0, column: 0, x: 0, y: 0, w: 150, h: 160 });
    expect(parts[1]).toMatchObject({ number: 2, row: 0, column: 1, x: 140 });
    // From 2 × 140 to 420, from 150 to 297.
    expect(parts[5]).toEqual({ number: 6, row: 1, column: 2, x: 280, y: 150, w: 140, h: 147 });
  });
  it('has parts of one size once they are evened, each overlapping the next by 10 mm', () => {
    // (420 + 10) / 2 and (297 + 10) / 2: two parts of 215 across, two of 153.5 down.
    const parts = partsOf(evened(tilingOf(sheet, { w: 300, h: 160 })));
    expect(parts.map(({ x, y, w, h }) => [x, y, w, h])).toEqual([
      [0, 0, 215, 153.5],
      [205, 0, 215, 153.5],
      [0, 143.5, 215, 153.5],
      [205, 143.5, 215, 153.5],
    ]);
  });
});

describe('crossesOf', () => {
  it('has none on a sheet that fits', () => expect(crossesOf(tilingOf(sheet, sheet))).toEqual([]));

  it('stands in the middle of the overlap, 15 mm from both its ends', () => {
    // Two parts of 215 across: they share 205 to 215.
    const crosses = crossesOf(evened(tilingOf(sheet, { w: 300, h: 297 })));
    expect(crosses).toEqual([
      { x: 210, y: 15 },
      { x: 210, y: 282 },
    ]);
  });
  it('shows at least two on both sides of every seam', () => {
    const tiling = evened(tilingOf(sheet, { w: 150, h: 160 }));
    const crosses = crossesOf(tiling);
    const parts = partsOf(tiling);
    const inside = (i: number) =>
      crosses.filter(({ x, y }) => {
        const part = parts[i]!;
        return x > part.x && x < part.x + part.w && y > part.y && y < part.y + part.h;
      });
    const shared = (i: number, j: number) => inside(i).filter((cross) => inside(j).includes(cross)).length;
    for (const [i, j] of [
      [0, 1],
      [1, 2],
      [3, 4],
      [0, 3],
      [2, 5],
    ] as const)
      expect(shared(i, j), `${i} and ${j}`).toBeGreaterThanOrEqual(2);
  });
});
