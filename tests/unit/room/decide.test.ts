import { describe, expect, it } from 'vitest';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { decide } from '../../../shared/room/decide.ts';
import type { Seat } from '../../../shared/room/events.ts';
import { EMBLEMS, type RoomState } from '../../../shared/room/state.ts';
import { BOARD, codeOf, DESK, factsOf, type Move, opened, roomAfter, SERVER, team } from './arbitraries.ts';

const JOIN: Move = [SERVER, { kind: 'join', team: 't1' }];
const CHOOSE: Move = [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }];
const START: Move = [DESK, { kind: 'start-building', seconds: 60 }, 10_000];
const handIn = (entry: string, round = 0): RoomCommand => ({
  kind: 'hand-in',
  round,
  entry,
  design: `d-${entry}`,
});
const HAND_IN: Move = [team('t1'), handIn('e1'), 20_000];
const JUDGE: Move = [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 70, met: true }, 21_000];
const SHOW: Move = [DESK, { kind: 'go-to', phase: 'show' }, 22_000];
const BUILDING = [JOIN, CHOOSE, START] as const;

describe('seats', () => {
  const all: readonly (readonly [RoomCommand, Seat['role']])[] = [
    [{ kind: 'watch-charger' }, 'desk'],
    [{ kind: 'join', team: 't9' }, 'server'],
    [{ kind: 'choose-challenge', challenge: 'c1', key: 'k1' }, 'desk'],
    [{ kind: 'choose-kit', kit: 'kit-1' }, 'desk'],
    [{ kind: 'go-to', phase: 'close' }, 'desk'],
    [{ kind: 'start-building', seconds: null }, 'desk'],
    [{ kind: 'extend-building', seconds: 60 }, 'desk'],
    [{ kind: 'end-building' }, 'desk'],
    [{ kind: 'look-here', on: true }, 'desk'],
    [{ kind: 'vary-sheets', on: true }, 'desk'],
    [{ kind: 'pause', on: true }, 'desk'],
    [{ kind: 'swap-emblem', emblem: 'bell' }, 'team'],
    [{ kind: 'remove-team', team: 't1' }, 'desk'],
    [{ kind: 'put-back-team', team: 't1' }, 'desk'],
    [{ kind: 'free-seat', team: 't1' }, 'desk'],
    [{ kind: 'keep-seat', team: 't1' }, 'desk'],
    [{ kind: 'move-seat', team: 't1' }, 'server'],
    [{ kind: 'show-standings', on: true }, 'desk'],
    [{ kind: 'stage', entries: [] }, 'desk'],
    [{ kind: 'take-late', entries: ['e9'], on: true }, 'desk'],
    [{ kind: 'set-help', team: null, step: 'place' }, 'desk'],
    [{ kind: 'wish-wall', wish: 'no-emblem' }, 'team'],
    [{ kind: 'try', round: 0, guess: 'fails', at: null, made: true }, 'team'],
    [{ kind: 'explain', round: 0, offered: [], picked: 'got-tired', right: 'time-up' }, 'team'],
    [{ kind: 'mend', round: 0 }, 'team'],
    [handIn('e9'), 'team'],
    [{ kind: 'judge', entry: 'e1', document: 'v1', points: 0, met: false }, 'server'],
    [{ kind: 'time-is-up' }, 'server'],
  ];

  it.each(all)('$kind is refused from every seat but one', (command, role) => {
    const others = [DESK, BOARD, SERVER, team('t1')].filter((seat) => seat.role !== role);
    const codes = others.map((seat) => codeOf(decide(roomAfter(...BUILDING), command, seat, 30_000)));
    expect(codes).toEqual(others.map(() => 'not-for-this-seat'));
  });
});

describe('joining', () => {
  it('gives the next free emblem and berth, in every phase', () => {
    const state = roomAfter(
      JOIN,
      CHOOSE,
      [DESK, { kind: 'go-to', phase: 'close' }],
      [SERVER, { kind: 'join', team: 't2' }],
    );
    const rest = { seatFree: false, moves: 0, help: null, wall: null, mended: [] };
    expect(state.teams).toEqual([
      { id: 't1', emblem: EMBLEMS[0], berth: 1, ...rest },
      { id: 't2', emblem: EMBLEMS[1], berth: 2, ...rest },
    ]);
  });

  it('refuses the forty-first team', () => {
    const moves = EMBLEMS.map((_, i): Move => [SERVER, { kind: 'join', team: `t${i}` }]);
    const decision = decide(roomAfter(...moves), { kind: 'join', team: 'late' }, SERVER, 3000);
    expect(factsOf(decision)).toEqual({ code: 'room-full', most: 40 });
  });
});

describe('phases', () => {
  it('need a challenge from the brief on', () => {
    const codes = (['brief', 'build', 'show', 'close'] as const).map((phase) =>
      codeOf(decide(opened(), { kind: 'go-to', phase }, DESK, 2000)),
    );
    expect(codes).toEqual(['no-challenge', 'no-challenge', 'no-challenge', 'accepted']);
  });

  it('may go back', () => {
    const state = roomAfter(...BUILDING, SHOW, [DESK, { kind: 'go-to', phase: 'build' }]);
    expect(state.phase).toBe('build');
  });

  it('leaving the building phase ends the building', () => {
    expect(factsOf(decide(roomAfter(...BUILDING), SHOW[1], DESK, 22_000))).toEqual([
      { kind: 'building-ended', by: 'desk' },
      { kind: 'phase-changed', phase: 'show' },
    ]);
  });

  it('leaving the show clears the stage', () => {
    const staged: Move = [DESK, { kind: 'stage', entries: ['e1'] }];
    const state = roomAfter(...BUILDING, HAND_IN, JUDGE, SHOW, staged, [
      DESK,
      { kind: 'go-to', phase: 'close' },
    ]);
    expect(state.stage).toEqual([]);
  });
});

describe('choosing a challenge', () => {
  it('starts a new round and goes back to the brief', () => {
    const other: Move = [DESK, { kind: 'choose-challenge', challenge: 'c2', key: 'k2' }];
    const state = roomAfter(...BUILDING, SHOW, other);
    expect([state.rounds.length, state.phase, state.building]).toEqual([2, 'brief', null]);
  });

  it('is refused while teams are building', () => {
    const decision = decide(roomAfter(...BUILDING), CHOOSE[1], DESK, 22_000);
    expect(factsOf(decision)).toEqual({ code: 'not-now', phase: 'build' });
  });

  it('is refused when it is chosen already and nobody has built it', () => {
    expect(codeOf(decide(roomAfter(CHOOSE), CHOOSE[1], DESK, 3000))).toBe('already-so');
  });

  it('opens another round of the same challenge once it was built', () => {
    expect(roomAfter(...BUILDING, SHOW, CHOOSE).rounds.length).toBe(2);
  });
});

describe('building time', () => {
  it('ends so many seconds after it began', () => {
    expect(roomAfter(...BUILDING).building).toEqual({ since: 10_000, until: 70_000, ended: false });
  });

  it('without a limit has no end', () => {
    const state = roomAfter(JOIN, CHOOSE, [DESK, { kind: 'start-building', seconds: null }]);
    expect(state.building?.until).toBeNull();
    expect(codeOf(decide(state, { kind: 'time-is-up' }, SERVER, 9e9))).toBe('not-building');
    expect(codeOf(decide(state, { kind: 'extend-building', seconds: 9 }, DESK, 9000))).toBe('already-so');
  });

  it('is up at the deadline and not before, once', () => {
    const state = roomAfter(...BUILDING);
    const up: RoomCommand = { kind: 'time-is-up' };
    expect(codeOf(decide(state, up, SERVER, 69_999))).toBe('not-building');
    expect(factsOf(decide(state, up, SERVER, 70_000))).toEqual([{ kind: 'building-ended', by: 'time' }]);
    expect(codeOf(decide(roomAfter(...BUILDING, [SERVER, up, 70_000]), up, SERVER, 70_001))).toBe(
      'not-building',
    );
  });

  it('is extended from its deadline', () => {
    const more: Move = [DESK, { kind: 'extend-building', seconds: 30 }, 40_000];
    expect(roomAfter(...BUILDING, more).building?.until).toBe(100_000);
  });

  it('opens again when it is extended after its end, counted from then', () => {
    const end: Move = [SERVER, { kind: 'time-is-up' }, 70_000];
    const more: Move = [DESK, { kind: 'extend-building', seconds: 30 }, 90_000];
    expect(roomAfter(...BUILDING, end, more).building).toEqual({
      since: 10_000,
      until: 120_000,
      ended: false,
    });
  });

  it('starts once', () => {
    expect(codeOf(decide(roomAfter(...BUILDING), START[1], DESK, 11_000))).toBe('already-so');
  });

  it('may be started again in the same round', () => {
    const state = roomAfter(...BUILDING, SHOW, [DESK, { kind: 'start-building', seconds: 10 }, 80_000]);
    expect([state.phase, state.building?.until, state.rounds.length]).toEqual(['build', 90_000, 1]);
  });
});

describe('handing in', () => {
  it('counts a team’s entries of the round', () => {
    const state = roomAfter(...BUILDING, HAND_IN, [team('t1'), handIn('e2'), 23_000]);
    expect(state.entries.map((e) => [e.id, e.number, e.round, e.late])).toEqual([
      ['e1', 1, 0, false],
      ['e2', 2, 0, false],
    ]);
  });

  it('before anybody builds is refused', () => {
    expect(codeOf(decide(roomAfter(JOIN, CHOOSE), handIn('e1'), team('t1'), 3000))).toBe('not-building');
  });

  it('for another round is refused', () => {
    expect(codeOf(decide(roomAfter(...BUILDING), handIn('e1', 1), team('t1'), 20_000))).toBe('other-round');
  });

  it('from the deadline on is kept as late, with or without the event of the end', () => {
    const lateOf = (state: RoomState, at: number) => factsOf(decide(state, handIn('e1'), team('t1'), at));
    expect(lateOf(roomAfter(...BUILDING), 69_999)).toMatchObject([{ late: false }]);
    expect(lateOf(roomAfter(...BUILDING), 70_000)).toMatchObject([{ late: true }]);
    expect(lateOf(roomAfter(...BUILDING, SHOW), 23_000)).toMatchObject([{ late: true }]);
  });

  it('late counts once the desk takes it, and no longer when that is taken back', () => {
    const moves = [...BUILDING, HAND_IN, SHOW, [team('t1'), handIn('e2'), 80_000]] as const;
    const late = roomAfter(...moves);
    expect(late.entries.map((e) => e.taken)).toEqual([true, false]);
    const take = (on: boolean): Move => [DESK, { kind: 'take-late', entries: ['e1', 'e2'], on }, 81_000];
    const taken = roomAfter(...moves, take(true));
    expect(taken.entries.map((e) => e.taken)).toEqual([true, true]);
    // What was in time counts whatever the desk says.
    const left = roomAfter(...moves, take(true), take(false));
    expect(left.entries.map((e) => e.taken)).toEqual([true, false]);
    expect(codeOf(decide(taken, take(true)[1], DESK, 82_000))).toBe('already-so');
    const unknown = { kind: 'take-late', entries: ['e2', 'e9'], on: true } as const;
    expect(codeOf(decide(late, unknown, DESK, 82_000))).toBe('unknown-entry');
    expect(codeOf(decide(late, take(true)[1], team('t1'), 82_000))).toBe('not-for-this-seat');
  });
});

describe('judging', () => {
  it('gives an entry one verdict', () => {
    const state = roomAfter(...BUILDING, HAND_IN, JUDGE);
    expect(state.entries[0]?.verdict).toEqual({ document: 'v1', points: 70, met: true });
    expect(codeOf(decide(state, JUDGE[1], SERVER, 30_000))).toBe('already-judged');
  });

  it('of no entry is refused', () => {
    expect(factsOf(decide(opened(), JUDGE[1], SERVER, 3000))).toEqual({ code: 'unknown-entry', entry: 'e1' });
  });
});

describe('the stage', () => {
  const judged = [...BUILDING, HAND_IN, JUDGE] as const;
  const stage = (...entries: string[]): RoomCommand => ({ kind: 'stage', entries });

  it('names entries and their designs', () => {
    expect(factsOf(decide(roomAfter(...judged, SHOW), stage('e1'), DESK, 30_000))).toEqual([
      {
        kind: 'staged',
        entries: ['e1'],
        designs: ['d-e1'],
        verdicts: [{ entry: 'e1', document: 'v1', points: 70, met: true }],
      },
    ]);
  });

  it('is refused outside the show', () => {
    expect(codeOf(decide(roomAfter(...judged), stage('e1'), DESK, 30_000))).toBe('not-now');
  });

  it('takes judged entries of this room, at most four', () => {
    const state = roomAfter(...BUILDING, HAND_IN, SHOW);
    expect(codeOf(decide(state, stage('e1'), DESK, 30_000))).toBe('not-judged');
    expect(codeOf(decide(state, stage('e7'), DESK, 30_000))).toBe('unknown-entry');
    expect(codeOf(decide(state, stage('e1', 'e2', 'e3', 'e4', 'e5'), DESK, 30_000))).toBe(
      'too-many-on-stage',
    );
    expect(codeOf(decide(state, stage(), DESK, 30_000))).toBe('already-so');
  });
});

describe('switches', () => {
  it.each([
    [{ kind: 'look-here', on: false }],
    [{ kind: 'show-standings', on: false }],
    [{ kind: 'pause', on: false }],
  ] as [RoomCommand][])('%o is refused when it is so already', (command) => {
    expect(codeOf(decide(opened(), command, DESK, 3000))).toBe('already-so');
  });

  it('the charger is watched once', () => {
    const watch: Move = [DESK, { kind: 'watch-charger' }];
    expect(roomAfter(watch).chargerWatched).toBe(true);
    expect(codeOf(decide(roomAfter(watch), watch[1], DESK, 3000))).toBe('already-so');
  });
});
