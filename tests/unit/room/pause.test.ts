import { describe, expect, it } from 'vitest';
import { decide } from '../../../shared/room/decide.ts';
import { codeOf, DESK, factsOf, type Move, roomAfter, SERVER, team } from './arbitraries.ts';

/** Building from 10 s to 70 s, paused at 30 s, going on at 100 s: the end is at 140 s. */
const BUILDING: Move[] = [
  [SERVER, { kind: 'join', team: 't1' }],
  [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
  [DESK, { kind: 'start-building', seconds: 60 }, 10_000],
];
const PAUSE: Move = [DESK, { kind: 'pause', on: true }, 30_000];
const GO_ON: Move = [DESK, { kind: 'pause', on: false }, 100_000];
const handIn = { kind: 'hand-in', round: 0, entry: 'e1', design: 'd1' } as const;
const lateAt = (now: number, ...moves: Move[]) =>
  factsOf(decide(roomAfter(...BUILDING, ...moves), handIn, team('t1'), now));

describe('pausing everything', () => {
  it('moves the end of the building by as long as it lasted', () => {
    const state = roomAfter(...BUILDING, PAUSE, GO_ON);
    expect(state.building).toEqual({ since: 80_000, until: 140_000, ended: false });
    expect(state.paused).toBeNull();
  });

  it('lets no time be up while it lasts', () => {
    const up = { kind: 'time-is-up' } as const;
    expect(codeOf(decide(roomAfter(...BUILDING, PAUSE), up, SERVER, 90_000))).toBe('not-building');
    const on = roomAfter(...BUILDING, PAUSE, GO_ON);
    expect(codeOf(decide(on, up, SERVER, 139_999))).toBe('not-building');
    expect(codeOf(decide(on, up, SERVER, 140_000))).toBe('accepted');
  });

  it('makes nobody late who was in time when it began', () => {
    expect(lateAt(99_000, PAUSE)).toMatchObject([{ late: false }]);
    expect(lateAt(139_999, PAUSE, GO_ON)).toMatchObject([{ late: false }]);
    expect(lateAt(140_000, PAUSE, GO_ON)).toMatchObject([{ late: true }]);
  });

  it('counts time that is added or started meanwhile from where time stands', () => {
    const more: Move = [DESK, { kind: 'extend-building', seconds: 60 }, 50_000];
    expect(roomAfter(...BUILDING, PAUSE, more, GO_ON).building?.until).toBe(200_000);
    const end: Move = [DESK, { kind: 'end-building' }, 40_000];
    expect(roomAfter(...BUILDING, PAUSE, end, more, GO_ON).building).toMatchObject({
      until: 160_000,
      ended: false,
    });
    const start: Move = [DESK, { kind: 'start-building', seconds: 60 }, 50_000];
    const [join, choose] = BUILDING as [Move, Move];
    expect(roomAfter(join, choose, PAUSE, start, GO_ON).building).toEqual({
      since: 100_000,
      until: 160_000,
      ended: false,
    });
  });

  it('leaves a building without a limit without one', () => {
    const [join, choose] = BUILDING as [Move, Move];
    const start: Move = [DESK, { kind: 'start-building', seconds: null }, 10_000];
    expect(roomAfter(join, choose, start, PAUSE, GO_ON).building).toMatchObject({ until: null });
  });
});
