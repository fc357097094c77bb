import { describe, expect, it } from 'vitest';
import { settled, shownRuns } from '../../../../client/parts/use-stage.ts';
import { judge } from '../../../../shared/judge/judge.ts';
import { challengeOf } from '../../../disturbed.ts';
import { runWith } from './runs.ts';

describe('shownRuns', () => {
  const [left, right, back] = [
    runWith({ probability: 0.25 }),
    runWith({ probability: 0.75 }),
    runWith({ start: 'finish' }),
  ];
  const all = [left, right, back];

  it('are the likeliest from each berth', () => {
    expect(shownRuns(all, [])).toEqual([right, back]);
  });

  it('or the one that was chosen, whatever its chance; the other berth keeps its own', () => {
    expect(shownRuns(all, [0])).toEqual([left, back]);
    expect(shownRuns(all, [0])[0]).toBe(left);
  });

  it('a choice that is no run of this entry any more chooses nothing', () => {
    expect(shownRuns(all, [9])).toEqual([right, back]);
  });
});

describe('settled', () => {
  // One of its goals asks for twenty robots, which are driven for entries only.
  const challenge = challengeOf('round-the-harbour');
  const here = { ...judge(challenge, challenge.model!, 'live'), ways: {} };
  const stored = {
    ...here.verdict,
    goals: here.verdict.goals.map(({ open: _, ...goal }) => ({ ...goal, margin: 7 })),
  };
  const marginsOf = (verdict: typeof stored) => verdict.goals.map(({ margin }) => margin);

  it('takes from the verdict on the entry what is not found out here, and nothing else', () => {
    const open = here.verdict.goals.map((goal) => goal.open === true);
    expect(open).toEqual([false, false, false, true]);
    const { verdict } = settled(here, stored);
    expect(marginsOf(verdict)).toEqual([...marginsOf(here.verdict).slice(0, 3), 7]);
    expect(verdict.goals.some((goal) => goal.open)).toBe(false);
  });

  it('leaves it open as long as that verdict is not there', () => {
    expect(settled(here, null).verdict.goals).toEqual(here.verdict.goals);
  });
});
