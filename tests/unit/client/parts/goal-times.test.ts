import { describe, expect, it } from 'vitest';
import { seenAt } from '../../../../client/parts/goal-times.ts';
import type { GoalResult } from '../../../../shared/documents/verdict.ts';
import type { Certain } from '../../../../shared/goals/certain.ts';
import { runWith } from './runs.ts';

/** One from each berth, which end after 8 s and 6 s, and another way of the first, after 9 s. */
const out = runWith({ end: 8 });
const back = runWith({ start: 'finish', end: 6 });
const other = runWith({ end: 9 });
const traces = [out, other, back];
const result = (met: boolean, more: Partial<GoalResult> = {}): GoalResult => ({
  id: 'g',
  met,
  margin: 0,
  unit: 'count',
  by: 'gates',
  leftToLuck: false,
  ...more,
});
const seen = (certain: readonly (Certain | null)[], wanted: GoalResult, goal: { start?: 'start' } = {}) =>
  seenAt({ id: 'g', ...goal }, wanted, [out, back], { traces, certain: { g: certain } });
const at = (t: number, met: boolean): Certain => ({ t, met });

describe('seenAt', () => {
  it('is when the last of the runs that are shown is certain to meet it', () => {
    expect(seen([at(3, true), at(1, true), at(5, true)], result(true))).toBe(5);
  });
  it('is when the first of them is certain to miss it', () => {
    expect(seen([at(3, false), at(1, false), at(5, true)], result(false))).toBe(3);
  });
  it('is the end of the longest where one of them tells at its end only', () => {
    expect(seen([at(3, true), null, null], result(true))).toBe(8);
    expect(seen([null, at(1, false), null], result(false))).toBe(8);
  });
  it('is the end where they tell something else than the verdict, or nothing is known of them', () => {
    expect(seen([at(3, true), at(1, false), at(5, true)], result(false))).toBe(8);
    expect(seenAt({ id: 'g' }, result(true), [out], { traces })).toBe(8);
  });
  it('looks at the berth that the goal is about', () => {
    expect(seen([at(3, true), null, null], result(true), { start: 'start' })).toBe(3);
  });
  it('is the end for what is left to luck, and at once where nothing is driven', () => {
    expect(seen([at(3, false), null, null], result(false, { leftToLuck: true }))).toBe(8);
    expect(seenAt({ id: 'g' }, result(false), [], { traces: [] })).toBe(0);
  });
});
