import { describe, expect, it } from 'vitest';
import type { Weather } from '../../../shared/documents/outlook.ts';
import type { RoomCommand } from '../../../shared/room/commands.ts';
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
    expect(everySeat.map((seat) => view(state, seat).conditions)).toEqual([
      { weather: 'breezy', own: [{ team: 't1', weather: 'stormy' }] },
      { weather: 'breezy', own: [{ team: 't1', weather: 'stormy' }] },
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
