import { describe, expect, it } from 'vitest';
import { isTwoWay, wordsOf } from '../../shared/kit/words.ts';

const kitOf = (letters: string, equalNeighbours: boolean) => ({
  inks: [...letters].map((id) => ({ id, name: { en: id }, color: '#000000', hatch: 'dots' as const })),
  equalNeighbours,
});

/** Words that differ even when met from the other side. */
const classes = (words: readonly string[]): number =>
  new Set(words.map((word) => [word, [...word].reverse().join('')].sort()[0])).size;

const count = (letters: string, bands: number, equalNeighbours: boolean) => {
  const words = wordsOf(kitOf(letters, equalNeighbours), bands);
  return [words.length, words.filter(isTwoWay).length, classes(words)];
};

describe('counts of words: all, two-way, and classes under reversal', () => {
  // Source: k(k-1)^(n-1), the chromatic polynomial of a path; OEIS A003945 and A003946 for the totals.
  it.each([
    [
      'CAV',
      [
        [3, 3, 3],
        [6, 0, 3],
        [12, 6, 9],
        [24, 0, 12],
        [48, 12, 30],
        [96, 0, 48],
      ],
    ],
    [
      'CAVE',
      [
        [4, 4, 4],
        [12, 0, 6],
        [36, 12, 24],
        [108, 0, 54],
        [324, 36, 180],
        [972, 0, 486],
      ],
    ],
  ])('without equal neighbours, inks %s', (letters, expected) => {
    expect([1, 2, 3, 4, 5, 6].map((n) => count(letters, n, false))).toEqual(expected);
  });

  // Source: (k^n + k^ceil(n/2))/2. Three inks: OEIS A032120, from memory. Four: OEIS A032121, its number seen only
  // where another entry refers to it; its values by the formula.
  it.each([
    ['CAV', [3, 6, 18, 45, 135]],
    ['CAVE', [4, 10, 40, 136, 544]],
  ])('with equal neighbours, classes of inks %s', (letters, expected) => {
    expect([1, 2, 3, 4, 5].map((n) => count(letters, n, true)[2])).toEqual(expected);
  });
});
