import { describe, expect, it } from 'vitest';
import { stacked } from '../../../../client/board/stacked.ts';

const at = (...places: number[]) => places.map((place, i) => ({ id: `t${i}`, at: place }));

describe('stacked', () => {
  it('emblems far apart stand on the line', () => {
    expect(stacked(at(0, 0.5, 1), 2).map((p) => p.level)).toEqual([0, 0, 0]);
  });

  it('near ones stand on one another', () => {
    expect(stacked(at(0.5, 0.5, 0.55, 0.8), 3).map((p) => p.level)).toEqual([0, 1, 2, 0]);
  });

  it('what would stand too high is counted on the highest, nobody is lost', () => {
    const places = stacked(at(1, 1, 1, 1, 1), 2);
    expect(places.map((p) => [p.level, p.others])).toEqual([
      [0, 0],
      [1, 3],
    ]);
    expect(places.reduce((n, p) => n + 1 + p.others, 0)).toBe(5);
  });
});
