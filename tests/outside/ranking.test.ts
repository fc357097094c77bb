import { expect, test } from 'vitest';
import { ranksOf } from '../../shared/points/standings.ts';

// Source: Rosetta Code, task "Ranking methods": scores 44, 42, 42, 41, 41, 41, 39; standard ranking.
test('standard competition ranking of the published scores is 1 2 2 4 4 4 7', () => {
  expect(ranksOf([44, 42, 42, 41, 41, 41, 39])).toEqual([1, 2, 2, 4, 4, 4, 7]);
});

// Source: the same task, in another order of the same scores.
test('the order of the scores does not change the ranks', () => {
  expect(ranksOf([39, 41, 44, 42, 41, 42, 41])).toEqual([7, 4, 1, 2, 4, 2, 4]);
});
