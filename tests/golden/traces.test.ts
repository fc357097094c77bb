import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Golden, goldenNow } from './runs.ts';

/**
 * The one place where the project's own output is frozen: not to say that it is right, but that it is
 * the same bits on every machine and after every change that does not mean to touch the run.
 * `node --import tsx tests/golden/update.ts` freezes anew.
 */
const frozen = JSON.parse(readFileSync(new URL('./traces.json', import.meta.url), 'utf8')) as Golden;

describe('golden traces', () => {
  const now = goldenNow();

  it('are hashed as they were when they were frozen', () => {
    expect(now.version).toBe(frozen.version);
  });

  it.each(Object.keys(now.traces))('%s is the same run, bit for bit', (name) => {
    expect(now.traces[name]).toEqual(frozen.traces[name]);
  });

  it('are fifty, and none is gone', () => {
    expect(Object.keys(frozen.traces)).toEqual(Object.keys(now.traces));
    expect(Object.keys(now.traces)).toHaveLength(50);
  });
});
