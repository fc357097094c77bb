import { describe, expect, it } from 'vitest';
import { shownRuns } from '../../../../client/parts/use-stage.ts';
import { runWith } from './runs.ts';

describe('shownRuns', () => {
  const [left, right, back] = [
    runWith({ probability: 0.25 }),
    runWith({ probability: 0.75 }),
    runWith({ start: 'finish' }),
  ];
  const all = [left, right, back];

  it('are the likeliest from each berth', () => {
    expect(shownRuns(all, [])).toEqual([right, back]);
  });

  it('or the one that was chosen, whatever its chance; the other berth keeps its own', () => {
    expect(shownRuns(all, [0])).toEqual([left, back]);
    expect(shownRuns(all, [0])[0]).toBe(left);
  });

  it('a choice that is no run of this entry any more chooses nothing', () => {
    expect(shownRuns(all, [9])).toEqual([right, back]);
  });
});
