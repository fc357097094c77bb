import { describe, expect, it } from 'vitest';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { decide } from '../../../shared/room/decide.ts';
import { view } from '../../../shared/room/seen.ts';
import { BOARD, codeOf, DESK, factsOf, type Move, opened, roomAfter, SERVER, team } from './arbitraries.ts';

const join = (id: string): Move => [SERVER, { kind: 'join', team: id }];
const BUILDING: readonly Move[] = [
  join('t1'),
  join('t2'),
  [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
  [DESK, { kind: 'start-building', seconds: null }],
];
const byTeam = (command: RoomCommand): Move => [team('t1'), command];
const TRY = byTeam({ kind: 'try', round: 0, guess: 'makes-it', at: { x: 120, y: 40 }, made: false });
const BECAUSE = {
  offered: ['got-tired', 'line-lost', 'acts-at-once'],
  picked: 'got-tired',
  right: 'line-lost',
} as const;
const EXPLAIN: RoomCommand = { kind: 'explain', round: 0, ...BECAUSE };
const handIn = (entry: string): Move => byTeam({ kind: 'hand-in', round: 0, entry, design: `d-${entry}` });

describe('help', () => {
  it('is the most that there is until the desk says otherwise', () => {
    expect(opened().help).toBe('mend');
  });

  it('a team keeps its own step when the class gets another, until it is taken back', () => {
    const own: Move = [DESK, { kind: 'set-help', team: 't1', step: 'place' }];
    const all: Move = [DESK, { kind: 'set-help', team: null, step: 'after-try' }];
    const back: Move = [DESK, { kind: 'set-help', team: 't1', step: null }];
    const state = roomAfter(...BUILDING, own, all);
    expect([state.help, ...state.teams.map(({ help }) => help)]).toEqual(['after-try', 'place', null]);
    expect(roomAfter(...BUILDING, own, all, back).teams[0]?.help).toBeNull();
  });

  it('set as it is changes nothing, and of an unknown team is refused', () => {
    const set = (id: string | null, step: 'mend' | null) =>
      codeOf(decide(roomAfter(...BUILDING), { kind: 'set-help', team: id, step } as RoomCommand, DESK, 1));
    expect([set(null, 'mend'), set('t1', null), set('t9', 'mend')]).toEqual([
      'already-so',
      'already-so',
      'unknown-team',
    ]);
  });

  it('of one team is known to that team and the desk alone', () => {
    const state = roomAfter(...BUILDING, [DESK, { kind: 'set-help', team: 't1', step: 'place' }]);
    const known = [DESK, team('t1'), team('t2'), BOARD].map((seat) => view(state, seat).teams[0]?.help);
    expect(known).toEqual(['place', 'place', null, null]);
  });
});

describe('tries', () => {
  it('keep what was foretold, what came and the reason, for the team and the desk', () => {
    const state = roomAfter(...BUILDING, TRY, byTeam(EXPLAIN));
    const wanted = { team: 't1', round: 0, guess: 'makes-it', at: { x: 120, y: 40 }, made: false };
    expect(state.tries).toEqual([{ ...wanted, because: BECAUSE }]);
    const counts = [DESK, team('t1'), team('t2'), BOARD].map((seat) => view(state, seat).tries.length);
    expect(counts).toEqual([1, 1, 0, 0]);
  });

  it('a reason is given once a try, and not without one', () => {
    const explained = (...moves: Move[]) =>
      codeOf(decide(roomAfter(...BUILDING, ...moves), EXPLAIN, team('t1'), 3000));
    expect([explained(), explained(TRY), explained(TRY, byTeam(EXPLAIN))]).toEqual([
      'already-so',
      'accepted',
      'already-so',
    ]);
    expect(explained(TRY, byTeam(EXPLAIN), TRY)).toBe('accepted');
  });

  it('belong to the round that is being built', () => {
    const other = { kind: 'try', round: 1, guess: 'fails', at: null, made: false } as const;
    expect(codeOf(decide(roomAfter(...BUILDING), other, team('t1'), 1))).toBe('other-round');
    const early = roomAfter(...BUILDING.slice(0, 3));
    expect(codeOf(decide(early, { ...other, round: 0 }, team('t1'), 1))).toBe('not-building');
  });
});

describe('mending', () => {
  it('is remembered by entries from then on, for the team and the desk', () => {
    const state = roomAfter(...BUILDING, handIn('e1'), byTeam({ kind: 'mend', round: 0 }), handIn('e2'));
    expect(state.entries.map(({ mended }) => mended)).toEqual([false, true]);
    const known = [DESK, team('t1'), team('t2'), BOARD].map((seat) => view(state, seat).entries[1]?.mended);
    expect(known).toEqual([true, true, false, false]);
  });

  it('leaves the entries of the next round alone', () => {
    const state = roomAfter(
      ...BUILDING,
      byTeam({ kind: 'mend', round: 0 }),
      [DESK, { kind: 'end-building' }],
      [DESK, { kind: 'choose-challenge', challenge: 'c2', key: 'k2' }],
      [DESK, { kind: 'start-building', seconds: null }],
      byTeam({ kind: 'hand-in', round: 1, entry: 'e3', design: 'd3' }),
    );
    expect(state.entries[0]?.mended).toBe(false);
  });
});

describe('a team that would rather not be on the wall', () => {
  const wish = (what: 'shown' | 'no-emblem' | 'not-at-all') => byTeam({ kind: 'wish-wall', wish: what });
  const SHOWN: readonly Move[] = [
    ...BUILDING,
    handIn('e1'),
    [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 70, met: true }],
    [DESK, { kind: 'go-to', phase: 'show' }],
  ];

  it('is not staged; without its emblem it is', () => {
    const staged = (...moves: Move[]) =>
      codeOf(decide(roomAfter(...SHOWN, ...moves), { kind: 'stage', entries: ['e1'] }, DESK, 1));
    expect([staged(), staged(wish('no-emblem')), staged(wish('not-at-all'))]).toEqual([
      'accepted',
      'accepted',
      'not-on-the-wall',
    ]);
  });

  it('leaves the stage at once', () => {
    const state = roomAfter(...SHOWN, [DESK, { kind: 'stage', entries: ['e1'] }], wish('not-at-all'));
    expect(state.stage).toEqual([]);
  });

  it('is known to the board and the desk, and not to other teams', () => {
    const state = roomAfter(...BUILDING, wish('no-emblem'));
    const known = [DESK, BOARD, team('t1'), team('t2')].map((seat) => view(state, seat).teams[0]?.wall);
    expect(known).toEqual(['no-emblem', 'no-emblem', 'no-emblem', null]);
    expect(factsOf(decide(state, { kind: 'wish-wall', wish: 'no-emblem' }, team('t1'), 1))).toEqual({
      code: 'already-so',
    });
  });
});
