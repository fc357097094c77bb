import { marginOf, twoSided, UNLIMITED } from '../margin.ts';
import type { PredicateOf, RunMeasure } from '../predicate.ts';
import { stretchLengths } from '../stretch-lengths.ts';

/** Margin in mm of length, or in stretches for "at most". */
export const stretches: RunMeasure<'stretches'> = {
  id: 'G-stretches',
  over: 'run',
  measure(wish, run) {
    const lengths = stretchLengths(run, wish.pace);
    return MARGINS[wish.how](wish, lengths);
  },
};

type Wish = PredicateOf<'stretches'>;

/** The n-th longest, n from 1; a missing one has length 0, and there is no end to the one before the first. */
const nth = (lengths: readonly number[], n: number): number => (n === 0 ? UNLIMITED : (lengths[n - 1] ?? 0));

const MARGINS = {
  exactly: (wish: Wish, lengths: readonly number[]) =>
    twoSided(
      'stretches',
      'mm',
      nth(lengths, wish.count) - wish.length,
      wish.length - nth(lengths, wish.count + 1),
    ),
  'at-least': (wish: Wish, lengths: readonly number[]) =>
    marginOf('stretches', 'mm', nth(lengths, wish.count) - wish.length),
  'at-most': (wish: Wish, lengths: readonly number[]) =>
    marginOf('stretches', 'count', wish.count - lengths.filter((l) => l >= wish.length).length),
};
