import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calibrationOf } from '../../../shared/room/calibration.ts';
import { decide } from '../../../shared/room/decide.ts';
import { view } from '../../../shared/room/seen.ts';
import '../../seed.ts';
import { BOARD, codeOf, DESK, lesson, type Move, play, roomAfter, SERVER, team } from './arbitraries.ts';

const calibrate = (robot: number, light: 'daylight' | 'lamps', at: number): Move => [
  DESK,
  { kind: 'calibrate', robot, light },
  at,
];
const changed = (on: boolean, at: number): Move => [DESK, { kind: 'change-light', on }, at];

describe('calibrationOf', () => {
  it('is undefined for a robot that nobody calibrated', () => {
    expect(calibrationOf(roomAfter(calibrate(2, 'lamps', 3000)).calibrations, 1)).toBeUndefined();
  });

  it('is the newest light and the server’s time, not due', () => {
    const { calibrations } = roomAfter(calibrate(2, 'lamps', 3000), calibrate(2, 'daylight', 9000));
    expect(calibrationOf(calibrations, 2)).toEqual({
      kind: 'calibrated',
      robot: 2,
      light: 'daylight',
      at: 9000,
      due: false,
    });
  });

  it('is due once the light has changed, and no longer when that is taken back', () => {
    const moves = [calibrate(1, 'lamps', 3000), calibrate(2, 'lamps', 4000), changed(true, 5000)];
    const due = (...more: Move[]) =>
      [1, 2].map((robot) => calibrationOf(roomAfter(...moves, ...more).calibrations, robot)?.due);
    expect(due()).toEqual([true, true]);
    expect(due(calibrate(1, 'daylight', 6000))).toEqual([false, true]);
    expect(due(calibrate(1, 'daylight', 6000), changed(false, 7000))).toEqual([false, false]);
  });

  it('is the one before when the newest is taken back', () => {
    const back: Move = [DESK, { kind: 'take-calibration-back', robot: 1 }, 9000];
    const { calibrations } = roomAfter(calibrate(1, 'lamps', 3000), calibrate(1, 'daylight', 8500), back);
    expect(calibrationOf(calibrations, 1)).toMatchObject({ light: 'lamps', at: 3000 });
  });

  it('goes by the order of the log where a clock was set back', () => {
    const { calibrations } = roomAfter(calibrate(1, 'lamps', 90_000), changed(true, 20_000));
    expect(calibrationOf(calibrations, 1)?.due).toBe(true);
  });
});

describe('decide on calibrations', () => {
  it('takes a double tap for one, and a later one for another', () => {
    const state = roomAfter(calibrate(1, 'lamps', 3000));
    const again = (now: number) =>
      codeOf(decide(state, { kind: 'calibrate', robot: 1, light: 'lamps' }, DESK, now));
    expect([again(3500), again(60_000)]).toEqual(['already-so', 'accepted']);
  });

  it('marks nothing as due where nothing was calibrated since the last change', () => {
    const change = { kind: 'change-light', on: true } as const;
    expect(codeOf(decide(roomAfter(), change, DESK, 5000))).toBe('already-so');
    const changedOnce = roomAfter(calibrate(1, 'lamps', 3000), changed(true, 4000));
    expect(codeOf(decide(changedOnce, change, DESK, 5000))).toBe('already-so');
  });

  it('is for the desk alone', () => {
    for (const seat of [BOARD, SERVER, team('t1')])
      expect(codeOf(decide(roomAfter(), { kind: 'calibrate', robot: 1, light: 'dim' }, seat, 5000))).toBe(
        'not-for-this-seat',
      );
  });
});

it('the board sees the log, a team nothing of it', () => {
  fc.assert(
    fc.property(lesson, (steps) => {
      const { state } = play(steps);
      expect(view(state, BOARD).calibrations).toEqual(state.calibrations);
      expect(view(state, team('t1')).calibrations).toEqual([]);
    }),
    { numRuns: 50 },
  );
});
