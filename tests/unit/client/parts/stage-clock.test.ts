import { describe, expect, it } from 'vitest';
import {
  readingAfter,
  readingBefore,
  readingTimes,
  runTime,
  stretchAt,
} from '../../../../client/parts/stage-clock.ts';
import { runWith } from './runs.ts';

const clock = { playing: true, speed: 2, at: 3, since: 10_000 } as const;

describe('runTime', () => {
  it('without a clock stands at the beginning', () => {
    expect(runTime(null, 99_000, 20)).toBe(0);
  });

  it('goes on from where it stood, at its speed', () => {
    expect(runTime(clock, 12_500, 20)).toBe(8);
    expect(runTime({ ...clock, speed: 0.25 }, 12_000, 20)).toBe(3.5);
  });

  it('paused stays where it is', () => {
    expect(runTime({ ...clock, playing: false }, 12_500, 20)).toBe(3);
  });

  it('never runs over the end, nor back before the clock was set', () => {
    expect(runTime(clock, 99_000, 20)).toBe(20);
    expect(runTime(clock, 9_000, 20)).toBe(3);
  });

  it('with a stretch begins it again where it ends', () => {
    const loop = { from: 2, to: 6 };
    // 3 s of run time to its end, then rounds of 4 s: after 1.5, 2.5 and 5.5 s of the clock.
    const at = [11_500, 12_500, 15_500].map((now) => runTime({ ...clock, loop }, now, 20));
    expect(at).toEqual([6, 4, 2 + ((14 - 6) % 4)]);
  });

  it('who stands behind the stretch goes on to the end', () => {
    expect(runTime({ ...clock, at: 7, loop: { from: 2, to: 6 } }, 12_000, 20)).toBe(11);
  });
});

describe('steps from reading to reading', () => {
  const times = readingTimes([runWith({ reads: [4, 1.5] }), runWith({ reads: [1.5, 9] })]);

  it('are those of all runs, in order, each time once', () => {
    expect(times).toEqual([1.5, 4, 9]);
  });

  it('lead on to the next one and then to the end, back to the one before and then to the beginning', () => {
    expect([0, 1.5, 4.2, 9].map((at) => readingAfter(times, at, 12))).toEqual([1.5, 4, 9, 12]);
    expect([0, 1.5, 4.2, 12].map((at) => readingBefore(times, at))).toEqual([0, 0, 4, 9]);
  });

  it('a stretch begins half a second before a reading and ends one after the next', () => {
    expect(stretchAt(times, 4, 12)).toEqual({ from: 3.5, to: 10 });
    expect(stretchAt(times, 0.5, 12)).toEqual({ from: 0, to: 2.5 });
    expect(stretchAt([], 12, 12)).toEqual({ from: 0, to: 12 });
  });
});
