import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SECOND_KIT } from '../../shared/kit/second-kit.ts';
import { freshChallenge } from '../../shared/search/fresh.ts';
import { faultsOf, madeFor, wishFor } from '../fresh.ts';
import '../seed.ts';

describe('fresh challenges', () => {
  test('are sound, need just the marks that were wished for, and leave nothing to chance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const { wish, result } = madeFor(seed);
        expect(faultsOf(wish, result)).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  test.each([1, 4, 5, 15])('are as wished with another kit: seed %d', (seed) => {
    const wish = { ...wishFor(seed), kit: SECOND_KIT };
    expect(faultsOf(wish, freshChallenge(wish))).toEqual([]);
  });

  test('equal seeds give equal challenges, other seeds others', () => {
    const wish = wishFor(7);
    expect(freshChallenge(wish)).toEqual(freshChallenge(wish));
    const other = freshChallenge({ ...wish, seed: 8 });
    const first = freshChallenge(wish);
    if (first.kind !== 'fresh' || other.kind !== 'fresh') throw new Error('both seeds give a challenge');
    expect(other.challenge.sheet).not.toEqual(first.challenge.sheet);
  });

  test('end when they are told to', () => {
    expect(freshChallenge({ ...wishFor(7), goOn: () => false }).kind).toBe('cancelled');
  });

  test('come out empty where the chart lacks what the topic needs', () => {
    const wish = wishFor(5);
    const chart = wish.kit.chart.filter((row) => row.action.kind !== 'park');
    expect(wish.topic).toBe('park');
    expect(freshChallenge({ ...wish, kit: { ...wish.kit, chart } }).kind).toBe('none');
  });
});
