import { describe, expect, it } from 'vitest';
import { withMade } from '../../../../../client/desk/trials/fit-notes.ts';

describe('withMade', () => {
  it('sets one step and leaves the others as they were, not tried where nothing was said', () => {
    expect(withMade([], 4, 1, 3)).toEqual([null, 3, null, null]);
    expect(withMade([6, 5, null, 2], 4, 1, null)).toEqual([6, null, null, 2]);
  });
});
