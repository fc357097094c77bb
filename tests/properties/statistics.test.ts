import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rolled, sfc32 } from '../../shared/run/random.ts';
import { NO_TRIALS, STEADINESS_PLAN, wilsonInterval, withTrial } from '../../shared/steadiness/statistics.ts';
import { SEED } from '../seed.ts';

describe('wilsonInterval', () => {
  const counts = fc
    .integer({ min: 1, max: 5000 })
    .chain((trials) => fc.tuple(fc.integer({ min: 0, max: trials }), fc.constant(trials)));

  test('holds the share, stays between 0 and 1, and is the mirror image of the failures’ interval', () => {
    fc.assert(
      fc.property(counts, ([successes, trials]) => {
        const { low, high } = wilsonInterval(successes, trials);
        const failures = wilsonInterval(trials - successes, trials);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(successes / trials);
        expect(high).toBeGreaterThanOrEqual(successes / trials);
        expect(failures.low).toBeCloseTo(1 - high, 12);
        expect(failures.high).toBeCloseTo(1 - low, 12);
      }),
    );
  });
});

/** How often the steadiness test says "high" of robots of which a share makes it. */
function shareOfHigh(share: number, seed: number): number {
  const TESTS = 2000;
  const die = sfc32(seed);
  let high = 0;
  for (let i = 0; i < TESTS; i++) {
    let sequence = NO_TRIALS;
    while (sequence.decision === 'open') {
      sequence = withTrial(sequence, STEADINESS_PLAN, rolled(die, 10_000) < share * 10_000);
    }
    if (sequence.decision === 'high') high++;
  }
  return high / TESTS;
}

describe('withTrial', () => {
  // Wald 1945: the errors are at most α/(1 − β) and β/(1 − α); five deviations of 2,000 tests are 0.024.
  test('keeps both errors of the steadiness test, and always ends', () => {
    expect(shareOfHigh(0.8, SEED)).toBeLessThan(0.05 / 0.95 + 0.024);
    expect(1 - shareOfHigh(0.95, SEED)).toBeLessThan(0.05 / 0.95 + 0.024);
  });
});
