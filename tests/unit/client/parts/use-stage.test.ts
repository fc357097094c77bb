import { describe, expect, it } from 'vitest';
import { runTime } from '../../../../client/parts/use-stage.ts';

const clock = { playing: true, speed: 2, at: 3, since: 10_000 } as const;

describe('runTime', () => {
  it('without a clock stands at the beginning', () => {
    expect(runTime(null, 99_000, 20)).toBe(0);
  });

  it('goes on from where it stood, at its speed', () => {
    expect(runTime(clock, 12_500, 20)).toBe(8);
  });

  it('paused stays where it is', () => {
    expect(runTime({ ...clock, playing: false }, 12_500, 20)).toBe(3);
  });

  it('never runs over the end, nor back before the clock was set', () => {
    expect(runTime(clock, 99_000, 20)).toBe(20);
    expect(runTime(clock, 9_000, 20)).toBe(3);
  });
});
