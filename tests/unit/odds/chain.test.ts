import { describe, expect, it } from 'vitest';
import { absorptionOf, type Chain, hittingChances } from '../../../shared/odds/chain.ts';
import { solve } from '../../../shared/odds/linear.ts';

/** From each state to others, equally likely; `A` and `B` absorb. */
function chain(...ways: readonly (readonly (number | 'A' | 'B')[])[]): Chain {
  const transient = ways.length;
  const at = (to: number | 'A' | 'B') => (to === 'A' ? transient : to === 'B' ? transient + 1 : to);
  return {
    transient,
    absorbing: 2,
    steps: ways.map((row) => row.map((to) => ({ to: at(to), probability: 1 / row.length }))),
  };
}

describe('solve', () => {
  it('exchanges rows where a zero stands on the diagonal', () => {
    expect(
      solve(
        [
          [0, 2],
          [4, 1],
        ],
        [[6], [11]],
      ),
    ).toEqual([[2], [3]]);
  });

  it('takes the largest pivot, so that a tiny one spoils nothing', () => {
    // With 1e-20 as the pivot, floating-point elimination gives x = 0.
    const [x, y] = solve(
      [
        [1e-20, 1],
        [1, 1],
      ],
      [[1], [2]],
    );
    expect(x![0]).toBeCloseTo(1, 12);
    expect(y![0]).toBeCloseTo(1, 12);
  });

  it('leaves what it is given as it is and refuses a singular matrix', () => {
    const a = [
      [1, 2],
      [2, 4],
    ];
    expect(() => solve(a, [[1], [2]])).toThrow(RangeError);
    expect(a).toEqual([
      [1, 2],
      [2, 4],
    ]);
  });
});

describe('absorptionOf', () => {
  it('finds a ring without a way out, with the chance of coming into it', () => {
    // 0 goes to A or into the ring 1 → 2 → 1.
    const { absorbed, endless, steps } = absorptionOf(chain(['A', 1], [2], [1]));
    expect(absorbed[0]).toEqual([0.5, 0]);
    expect(endless).toEqual([0.5, 1, 1]);
    expect(steps[0]).toBe(1);
  });

  it('a ring with one way out is never endless, however rarely it is taken', () => {
    const rarely: Chain = {
      transient: 2,
      absorbing: 1,
      steps: [
        [
          { to: 1, probability: 0.999 },
          { to: 2, probability: 0.001 },
        ],
        [{ to: 0, probability: 1 }],
      ],
    };
    const { absorbed, endless, steps } = absorptionOf(rarely);
    expect(absorbed[0]![0]).toBeCloseTo(1, 9);
    expect(endless[0]).toBe(0);
    // 1000 turns of the first state and 999 of the second.
    expect(steps[0]).toBeCloseTo(1999, 6);
  });

  it('a step of probability 0 is no way out', () => {
    const shut: Chain = {
      transient: 1,
      absorbing: 1,
      steps: [
        [
          { to: 0, probability: 1 },
          { to: 1, probability: 0 },
        ],
      ],
    };
    expect(absorptionOf(shut).endless).toEqual([1]);
  });

  it('a chain that is caught from the start has nothing to solve', () => {
    expect(absorptionOf(chain([0]))).toEqual({ visits: [[0]], steps: [0], absorbed: [[0, 0]], endless: [1] });
  });
});

describe('hittingChances', () => {
  it('is 1 from a target and what leads there for sure, and a share elsewhere', () => {
    // 0 → 1 or A; 1 → 2; 2 → A or B.
    const line = chain([1, 'A'], [2], ['A', 'B']);
    expect(hittingChances(line, new Set([2]))).toEqual([0.5, 1, 1]);
    expect(hittingChances(line, new Set([1, 2]))).toEqual([0.5, 1, 1]);
  });
});
