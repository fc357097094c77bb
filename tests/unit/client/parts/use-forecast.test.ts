import { describe, expect, it } from 'vitest';
import { askedAt, forecastTime, handsRight } from '../../../../client/parts/use-forecast.ts';
import type { Stop } from '../../../../shared/evidence/stops.ts';

const answers: Stop['answers'] = [
  { action: { kind: 'park' }, right: false, mistake: 'first-colour-counts' },
  { action: { kind: 'nothing' }, right: true, mistake: null },
];
const stop = (at: number, readAt: number): Stop => ({ at, readAt, mark: 'm', word: 'CA', answers });
/** A run of 20 s with marks that are read at 5 s and 9 s. */
const STOPS = [stop(4, 5), stop(8, 9)];
const DURATION = 20;

describe('forecastTime', () => {
  const at = (passed: number, seconds: number) =>
    forecastTime({ passed, since: 1000 }, STOPS, DURATION, 1000 + seconds * 1000);

  it.each([
    [0, 2, 2],
    [0, 60, 4],
    [1, 0, 4],
    [1, 3, 7],
    [1, 60, 8],
    [2, 60, 20],
    [9, 0, 20],
  ])('%i marks passed, %i s ago: %f s of the run', (passed, seconds, t) => {
    expect(at(passed, seconds)).toBe(t);
  });

  it('does not drive back where a clock is a little behind', () => {
    expect(at(1, -2)).toBe(4);
  });
});

describe('askedAt', () => {
  const asked = (gone: number, passed: number) => askedAt(gone, passed, STOPS, DURATION);

  it('asks about a mark once the robot stands before it', () => {
    expect(asked(3, 0)).toEqual({ stop: null, stand: 'drives', over: false });
    expect(asked(4, 0)).toEqual({ stop: 0, stand: 'waits', over: false });
  });

  it('tells what it says once it has been read, for some seconds before the next one is asked about', () => {
    expect(asked(0.5, 1)).toEqual({ stop: 0, stand: 'drives', over: false });
    expect(asked(1, 1)).toEqual({ stop: 0, stand: 'told', over: false });
    expect(asked(4.9, 1)).toEqual({ stop: 0, stand: 'told', over: false });
    expect(asked(5, 1)).toEqual({ stop: 1, stand: 'waits', over: false });
  });

  it('is over at the end of the run, with the last mark told', () => {
    expect(asked(11.9, 2)).toEqual({ stop: 1, stand: 'told', over: false });
    expect(asked(12, 2)).toEqual({ stop: 1, stand: 'told', over: true });
    expect(asked(0, 7)).toEqual({ stop: 1, stand: 'told', over: true });
  });

  it('of a run without marks asks nothing', () => {
    expect(askedAt(3, 0, [], 5)).toEqual({ stop: null, stand: 'drives', over: false });
    expect(askedAt(5, 0, [], 5)).toEqual({ stop: null, stand: 'drives', over: true });
  });
});

describe('handsRight', () => {
  it('sums hands over all marks, counted or not', () => {
    expect(handsRight(STOPS, [[3, 4], []])).toEqual({ right: 4, of: 7 });
    expect(handsRight(STOPS, [[1], [2, 5]])).toEqual({ right: 5, of: 8 });
    expect(handsRight(STOPS, [])).toEqual({ right: 0, of: 0 });
  });
});
