import { describe, expect, it } from 'vitest';
import { SEED } from '../seed.ts';
import { playSchedules } from './schedule.ts';

const SCHEDULES = 25;
const AT_ONCE = 5;

describe('a lesson over bad connections', () => {
  it(`ends with every page at the log and every entry once, ${SCHEDULES} times (seed ${SEED})`, async () => {
    expect(await playSchedules(SEED, SCHEDULES, AT_ONCE)).toEqual([]);
  }, 180_000);
});
