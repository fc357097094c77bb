import { describe, expect, it } from 'vitest';
import type { Variant } from '../../../shared/documents/challenge.ts';
import type { Weather } from '../../../shared/documents/outlook.ts';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import type { OwnSheet } from '../../../shared/room/conditions.ts';
import { decide } from '../../../shared/room/decide.ts';
import { conditionsFor } from '../../../shared/room/drawn-in.ts';
import { seen, view } from '../../../shared/room/seen.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { BOARD, codeOf, DESK, type Move, roomAfter, SERVER, team } from './arbitraries.ts';

const join = (id: string): Move => [SERVER, { kind: 'join', team: id }];
const atDesk = (command: RoomCommand): Move => [DESK, command];
const JOINED = [join('t1'), join('t2')] as const;
const CHOSEN: readonly Move[] = [...JOINED, atDesk({ kind: 'choose-challenge', challenge: 'c1', key: 'k1' })];
const BUILDING: readonly Move[] = [...CHOSEN, atDesk({ kind: 'start-building', seconds: null })];
const weather = (whose: string | null, to: Weather | null): Move =>
  atDesk({ kind: 'set-weather', team: whose, weather: to });
const handIn = (by: string, entry: string): Move => [
  team(by),
  { kind: 'hand-in', round: 0, entry, design: `d-${entry}` },
];

const everySeat = [DESK, team('t1'), team('t2'), BOARD];
const weathers = (state: RoomState) => state.teams.map((one) => conditionsFor(state, one).weather);

describe('the weather of a round', () => {
  it('is the challenge’s, then the class’s, then a team’s own', () => {
    expect(weathers(roomAfter(...BUILDING))).toEqual([null, null]);
    expect(weathers(roomAfter(...CHOSEN, weather(null, 'breezy')))).toEqual(['breezy', 'breezy']);
    const own = [...BUILDING, weather(null, 'breezy'), weather('t1', 'stormy')];
    expect(weathers(roomAfter(...own))).toEqual(['stormy', 'breezy']);
    expect(weathers(roomAfter(...own, weather('t1', null)))).toEqual(['breezy', 'breezy']);
    expect(weathers(roomAfter(...own, weather(null, null)))).toEqual(['stormy', null]);
  });

  it('ends with the round', () => {
    const next = atDesk({ kind: 'choose-challenge', challenge: 'c2', key: 'k2' });
    const state = roomAfter(...CHOSEN, weather(null, 'breezy'), weather('t1', 'stormy'), next);
    expect(weathers(state)).toEqual([null, null]);
  });

  it('stays with what was handed in in it', () => {
    const state = roomAfter(
      ...BUILDING,
      handIn('t1', 'e1'),
      weather(null, 'breezy'),
      handIn('t1', 'e2'),
      weather('t1', 'stormy'),
      handIn('t1', 'e3'),
      handIn('t2', 'e4'),
      weather('t1', null),
      weather(null, null),
    );
    expect(state.entries.map((entry) => entry.weather)).toEqual([null, 'breezy', 'stormy', 'breezy']);
  });

  it('of a team is known to it and the desk alone, and so is that of its entries', () => {
    const moves = [...BUILDING, weather(null, 'breezy'), weather('t1', 'stormy'), handIn('t1', 'e1')];
    const state = roomAfter(...moves);
    const own = [{ team: 't1', weather: 'stormy', sheet: null, earlier: [] }];
    expect(everySeat.map((seat) => view(state, seat).conditions)).toEqual([
      { weather: 'breezy', own },
      { weather: 'breezy', own },
      { weather: 'breezy', own: [] },
      { weather: 'breezy', own: [] },
    ]);
    const told = everySeat.map((seat) => view(state, seat).entries[0]?.weather);
    expect(told).toEqual(['stormy', 'stormy', null, null]);
  });

  it('of a team stays hidden when its drawing is on the stage', () => {
    const state = roomAfter(
      ...BUILDING,
      weather('t1', 'stormy'),
      handIn('t1', 'e1'),
      [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 60, met: true }],
      atDesk({ kind: 'go-to', phase: 'show' }),
      atDesk({ kind: 'stage', entries: ['e1'] }),
    );
    for (const seat of [team('t2'), BOARD]) expect(JSON.stringify(view(state, seat))).not.toContain('stormy');
  });

  it('said of the class is told to all, of a team to that team', () => {
    const state = roomAfter(...BUILDING);
    const event = (whose: string | null) =>
      ({ seq: 9, at: 1, version: 2, fact: { kind: 'weather-set', team: whose, weather: 'stormy' } }) as const;
    const told = (whose: string | null) =>
      everySeat.map((seat) => seen(seat, event(whose), state).fact !== null);
    expect(told(null)).toEqual([true, true, true, true]);
    expect(told('t1')).toEqual([true, true, false, false]);
  });

  it('is refused without a challenge, for a team that does not play, as it is already, and to others', () => {
    const storm = { kind: 'set-weather', team: 't1', weather: 'stormy' } as const;
    const code = (moves: readonly Move[], command: RoomCommand, seat = DESK) =>
      codeOf(decide(roomAfter(...moves), command, seat, 1));
    expect(code(JOINED, storm)).toBe('no-challenge');
    expect(code(CHOSEN, { ...storm, team: 't9' })).toBe('unknown-team');
    expect(code([...CHOSEN, atDesk({ kind: 'remove-team', team: 't1' })], storm)).toBe('team-removed');
    expect(code([...CHOSEN, weather('t1', 'stormy')], storm)).toBe('already-so');
    expect(code(CHOSEN, { ...storm, team: null, weather: null })).toBe('already-so');
    expect([team('t1'), BOARD].map((seat) => code(CHOSEN, storm, seat))).toEqual([
      'not-for-this-seat',
      'not-for-this-seat',
    ]);
  });
});

describe('a sheet of its own', () => {
  const sheet = (to: OwnSheet | null): Move => atDesk({ kind: 'set-sheet', team: 't1', sheet: to });
  const vary: Move = atDesk({ kind: 'vary-sheets', on: true });
  const SHOWN: readonly Move[] = [
    [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 60, met: true }],
    atDesk({ kind: 'go-to', phase: 'show' }),
  ];
  const variants = (state: RoomState) => state.teams.map((one) => conditionsFor(state, one).variant);
  const told = (state: RoomState) => everySeat.map((seat) => view(state, seat).entries[0]?.variant);

  it('takes the place of the berth’s until it is taken back, and ends with the round', () => {
    expect(variants(roomAfter(...BUILDING, sheet('mirrored')))).toEqual(['mirrored', null]);
    expect(variants(roomAfter(...BUILDING, sheet('mirrored'), sheet(null)))).toEqual([null, null]);
    const varied = [...JOINED, vary, ...CHOSEN.slice(2)];
    expect(variants(roomAfter(...varied, sheet('turned')))).toEqual(['turned', 'mirrored']);
    const plain = atDesk({ kind: 'set-sheet', team: 't2', sheet: 'as-drawn' });
    expect(variants(roomAfter(...varied, plain))).toEqual([null, null]);
    const next = atDesk({ kind: 'choose-challenge', challenge: 'c2', key: 'k2' });
    expect(variants(roomAfter(...CHOSEN, sheet('mirrored'), next))).toEqual([null, null]);
  });

  it('stays with what was handed in on it', () => {
    const state = roomAfter(
      ...BUILDING,
      sheet('turned'),
      handIn('t1', 'e1'),
      sheet(null),
      handIn('t1', 'e2'),
    );
    expect(state.entries.map(({ variant }) => variant)).toEqual(['turned', null]);
  });

  it('is known to its team and the desk alone until a drawing on it is shown', () => {
    const moves = [...BUILDING, sheet('turned'), handIn('t1', 'e1')];
    expect(told(roomAfter(...moves))).toEqual(['turned', 'turned', null, null]);
    for (const seat of [team('t2'), BOARD])
      expect(JSON.stringify(view(roomAfter(...moves), seat))).not.toContain('"turned"');
    const staged = atDesk({ kind: 'stage', entries: ['e1'] });
    expect(told(roomAfter(...moves, ...SHOWN, staged))).toEqual(['turned', 'turned', 'turned', 'turned']);
  });

  it('comes to the board with what hangs there', () => {
    const moves = [...BUILDING, sheet('turned'), handIn('t1', 'e1'), ...SHOWN];
    const hung = { entry: 'e1', design: 'd-e1', variant: 'turned' };
    const board = (command: RoomCommand) => view(roomAfter(...moves, atDesk(command)), BOARD).board;
    expect(board({ kind: 'hang', entries: ['e1'] }).gallery).toEqual([hung]);
    expect(board({ kind: 'show-fleet', entry: 'e1', weather: 'calm' }).fleet).toMatchObject(hung);
    expect(board({ kind: 'foretell', entry: 'e1' }).forecast?.hung).toEqual(hung);
  });

  it('is told to a team that may be drawing by one note, and before that by none', () => {
    const notes = (...moves: Move[]) => roomAfter(...moves).coaching.notes.map(({ words }) => words);
    expect(notes(...CHOSEN, sheet('turned'))).toEqual([]);
    expect(notes(...BUILDING, sheet('as-drawn'))).toEqual([]);
    expect(notes(...BUILDING, sheet('turned'))).toEqual([{ kind: 'sheet', variant: 'turned' }]);
    expect(notes(...BUILDING, sheet('turned'), sheet(null))).toEqual([{ kind: 'sheet', variant: null }]);
  });

  it('is not told any longer of a round that is over, where all else that was said still waits', () => {
    const hint = { kind: 'hint', hint: 'follow-the-line' } as const;
    const state = roomAfter(
      ...BUILDING,
      atDesk({ kind: 'send-note', team: 't1', words: hint }),
      sheet('turned'),
      atDesk({ kind: 'end-building' }),
      atDesk({ kind: 'go-to', phase: 'brief' }),
      atDesk({ kind: 'choose-challenge', challenge: 'c2', key: 'k2' }),
    );
    expect(state.coaching.notes.map(({ words }) => words)).toEqual([hint]);
  });

  it('takes what a tablet that was away drew on the one before, on that one, and no sheet that it never had', () => {
    const state = roomAfter(...BUILDING, sheet('turned'));
    const code = (variant: Variant | null | undefined) =>
      codeOf(
        decide(state, { kind: 'hand-in', round: 0, entry: 'e1', design: 'd', variant }, team('t1'), 3000),
      );
    expect([null, 'mirrored' as const, 'turned' as const, undefined].map(code)).toEqual([
      'accepted',
      'other-sheet',
      'accepted',
      'accepted',
    ]);
    const late: Move = [team('t1'), { kind: 'hand-in', round: 0, entry: 'e1', design: 'd', variant: null }];
    expect(told(roomAfter(...BUILDING, sheet('turned'), late))).toEqual([null, null, null, null]);
    const turned: Move = [
      team('t1'),
      { kind: 'hand-in', round: 0, entry: 'e1', design: 'd', variant: 'turned' },
    ];
    const back = roomAfter(...BUILDING, sheet('turned'), sheet(null), turned);
    expect(told(back)).toEqual(['turned', 'turned', null, null]);
  });

  it('is refused without a challenge, for a team that does not play, as it is already, and to others', () => {
    const turned = { kind: 'set-sheet', team: 't1', sheet: 'turned' } as const;
    const code = (moves: readonly Move[], command: RoomCommand, seat = DESK) =>
      codeOf(decide(roomAfter(...moves), command, seat, 1));
    expect(code(JOINED, turned)).toBe('no-challenge');
    expect(code(CHOSEN, { ...turned, team: 't9' })).toBe('unknown-team');
    expect(code([...CHOSEN, sheet('turned')], turned)).toBe('already-so');
    expect(code(CHOSEN, turned, team('t1'))).toBe('not-for-this-seat');
  });
});
