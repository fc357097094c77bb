import { describe, expect, it } from 'vitest';
import { SEED } from '../seed.ts';
import { fuzz } from './fuzzing.ts';

const MESSAGES = 5000;

describe('a server that is sent anything', () => {
  it(`answers each of ${MESSAGES} messages, and a refused one changes nothing (seed ${SEED})`, async () => {
    const fuzzed = await fuzz(MESSAGES, SEED);
    expect(await fuzzed.differences()).toEqual([]);
    // Both halves are worth something only when there are enough of each.
    expect(fuzzed.accepted).toBeGreaterThan(MESSAGES / 20);
    expect(fuzzed.refused).toBeGreaterThan(MESSAGES / 2);
    await fuzzed.end();
  }, 120_000);
});
