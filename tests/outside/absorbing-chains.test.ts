import { describe, expect, it } from 'vitest';
import { absorptionOf, type Chain } from '../../shared/odds/chain.ts';
import {
  type Fraction,
  fractionOf,
  inverse,
  minus,
  numberOf,
  ONE,
  product,
  sum,
  textOf,
  ZERO,
} from '../fraction.ts';

interface Example {
  readonly source: string;
  readonly q: readonly string[];
  readonly r: readonly string[];
  /** Fundamental matrix, expected steps, absorption probabilities. */
  readonly n: readonly string[];
  readonly t: string;
  readonly b: readonly string[];
}

const GRINSTEAD_SNELL = 'Grinstead and Snell, Introduction to Probability (AMS), section 11.2';

/** Rows of matrices as text, as they are printed. */
const EXAMPLES: readonly Example[] = [
  {
    source: `${GRINSTEAD_SNELL}, examples 11.13 to 11.15: the drunkard's walk`,
    q: ['0 1/2 0', '1/2 0 1/2', '0 1/2 0'],
    r: ['1/2 0', '0 0', '0 1/2'],
    n: ['3/2 1 1/2', '1 2 1', '1/2 1 3/2'],
    t: '3 4 3',
    b: ['3/4 1/4', '1/2 1/2', '1/4 3/4'],
  },
  {
    source: `${GRINSTEAD_SNELL}, exercise 8: the walk that goes right two times in three`,
    q: ['0 2/3 0', '1/3 0 2/3', '0 1/3 0'],
    r: ['1/3 0', '0 0', '0 2/3'],
    n: ['7/5 6/5 4/5', '3/5 9/5 6/5', '1/5 3/5 7/5'],
    t: '17/5 18/5 11/5',
    b: ['7/15 8/15', '1/5 4/5', '1/15 14/15'],
  },
  {
    source: `${GRINSTEAD_SNELL}, exercise 9: jumps to a larger number, up to 5`,
    q: ['0 1/4 1/4 1/4', '0 0 1/3 1/3', '0 0 0 1/2', '0 0 0 0'],
    r: ['1/4', '1/3', '1/2', '1'],
    n: ['1 1/4 1/3 1/2', '0 1 1/3 1/2', '0 0 1 1/2', '0 0 0 1'],
    // Harmonic numbers H4 to H1.
    t: '25/12 11/6 3/2 1',
    b: ['1', '1', '1', '1'],
  },
  {
    source: 'R package markovchain, test of fundamentalMatrix (its Q; inverse by exact fractions)',
    q: ['1/2 2/5', '1/5 3/5'],
    r: ['1/10', '1/5'],
    n: ['10/3 10/3', '5/3 25/6'],
    t: '20/3 35/6',
    b: ['1', '1'],
  },
  {
    source: `${GRINSTEAD_SNELL}, the Land of Oz with rain absorbing (chain from memory)`,
    q: ['0 1/2', '1/4 1/2'],
    r: ['1/2', '1/4'],
    n: ['4/3 4/3', '2/3 8/3'],
    t: '8/3 10/3',
    b: ['1', '1'],
  },
];

const row = (text: string): Fraction[] => text.split(' ').map(fractionOf);
const rows = (texts: readonly string[]): Fraction[][] => texts.map(row);

function chainFrom(q: readonly Fraction[][], r: readonly Fraction[][]): Chain {
  const steps = q.map((from, i) =>
    [...from, ...r[i]!].flatMap((p, to) => (p.n === 0n ? [] : [{ to, probability: numberOf(p) }])),
  );
  return { transient: q.length, absorbing: r[0]!.length, steps };
}

const unlike = (found: readonly number[], exact: readonly Fraction[]): number =>
  Math.max(...exact.map((value, i) => Math.abs(found[i]! - numberOf(value))));

describe.each(EXAMPLES)('$source', ({ q, r, n, t, b }) => {
  const [Q, R] = [rows(q), rows(r)];
  const identityLess = Q.map((values, i) => values.map((value, j) => minus(i === j ? ONE : ZERO, value)));

  it('exact fractions give the printed matrices', () => {
    const N = inverse(identityLess);
    expect(N.map((values) => values.map(textOf).join(' '))).toEqual(n);
    expect(N.map((values) => textOf(sum(values))).join(' ')).toBe(t);
    expect(product(N, R).map((values) => values.map(textOf).join(' '))).toEqual(b);
  });

  it('absorptionOf gives them to twelve digits', () => {
    const found = absorptionOf(chainFrom(Q, R));
    rows(n).forEach((exact, i) => {
      expect(unlike(found.visits[i]!, exact)).toBeLessThan(1e-12);
    });
    rows(b).forEach((exact, i) => {
      expect(unlike(found.absorbed[i]!, exact)).toBeLessThan(1e-12);
    });
    expect(unlike(found.steps, row(t))).toBeLessThan(1e-12);
    expect(found.endless.every((chance) => Math.abs(chance) < 1e-12)).toBe(true);
  });
});
