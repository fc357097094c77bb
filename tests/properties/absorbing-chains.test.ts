import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { absorptionOf, type Chain } from '../../shared/odds/chain.ts';
import { type Fraction, fraction, inverse, minus, numberOf, ONE, product, ZERO } from '../fraction.ts';
import '../seed.ts';

/** Chains of up to seven states whose probabilities are twelfths; whatever is left goes to an absorbing state. */
const TWELFTHS = 12;
const chains = fc
  .record({ transient: fc.integer({ min: 1, max: 7 }), absorbing: fc.integer({ min: 1, max: 3 }) })
  .chain(({ transient, absorbing }) =>
    fc
      .array(
        fc.array(fc.integer({ min: 0, max: transient + absorbing - 1 }), {
          minLength: TWELFTHS,
          maxLength: TWELFTHS,
        }),
        { minLength: transient, maxLength: transient },
      )
      .map((rows) => ({ transient, absorbing, rows })),
  );

const countsOf = (row: readonly number[], states: number): number[] =>
  Array.from({ length: states }, (_, state) => row.filter((to) => to === state).length);

describe('absorptionOf', () => {
  test('the chances of all endings and of the endless loop add up to 1', () => {
    fc.assert(
      fc.property(chains, ({ transient, absorbing, rows }) => {
        const steps = rows.map((row) => row.map((to) => ({ to, probability: 1 / TWELFTHS })));
        const { absorbed, endless } = absorptionOf({ transient, absorbing, steps });
        absorbed.forEach((row, i) => {
          expect(row.reduce((a, b) => a + b, endless[i]!)).toBeCloseTo(1, 10);
        });
      }),
    );
  });

  test('agrees with exact fractions wherever every state has a way out', () => {
    fc.assert(
      fc.property(chains, ({ transient, absorbing, rows }) => {
        const counts = rows.map((row) => {
          const own = countsOf(row, transient + absorbing);
          // A way out for everyone.
          own[transient]! += 1;
          return own;
        });
        const twelfth = (n: number): Fraction => fraction(n, TWELFTHS + 1);
        const q = counts.map((row) => row.slice(0, transient).map(twelfth));
        const r = counts.map((row) => row.slice(transient).map(twelfth));
        const n = inverse(q.map((row, i) => row.map((p, j) => minus(i === j ? ONE : ZERO, p))));
        const b = product(n, r);
        const chain: Chain = {
          transient,
          absorbing,
          steps: counts.map((row) => row.map((k, to) => ({ to, probability: k / (TWELFTHS + 1) }))),
        };
        const found = absorptionOf(chain);
        b.forEach((row, i) => {
          row.forEach((exact, j) => {
            expect(found.absorbed[i]![j]).toBeCloseTo(numberOf(exact), 10);
          });
        });
        n.forEach((row, i) => {
          row.forEach((exact, j) => {
            const value = numberOf(exact);
            expect(Math.abs(found.visits[i]![j]! - value)).toBeLessThan(1e-10 * (1 + value));
          });
        });
      }),
    );
  });
});
