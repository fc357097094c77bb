import { describe, expect, it } from 'vitest';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { decide } from '../../../shared/room/decide.ts';
import { mayRead, view } from '../../../shared/room/seen.ts';
import { isGentler } from '../../../shared/room/state.ts';
import { BOARD, codeOf, DESK, type Move, roomAfter, SERVER, team } from './arbitraries.ts';

const join = (id: string): Move => [SERVER, { kind: 'join', team: id }];
const BUILDING: readonly Move[] = [
  join('t1'),
  join('t2'),
  [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1', gentler: 'g1' }],
  [DESK, { kind: 'start-building', seconds: null }],
];
const atDesk = (command: RoomCommand): Move => [DESK, command];
const HINT = atDesk({ kind: 'send-note', team: 't1', words: { kind: 'hint', hint: 'try-it' } });
const NOTE = atDesk({ kind: 'send-note', team: 't1', words: { kind: 'text', text: 'Well drawn.' } });
const HANDED_IN: readonly Move[] = [
  ...BUILDING,
  [team('t1'), { kind: 'hand-in', round: 0, entry: 'e1', design: 'd1' }],
  [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 60, met: true }],
];
const RETURN = { kind: 'return-entry', entry: 'e1', reason: 'goals-again' } as const;
const ACCEPT = { kind: 'accept-entry', entry: 'e1' } as const;

const everySeat = [DESK, team('t1'), team('t2'), BOARD];

describe('notes', () => {
  it('reach their team and the desk alone, oldest first', () => {
    const state = roomAfter(...BUILDING, HINT, NOTE);
    expect(state.coaching.notes.map(({ team: id, words, away }) => [id, words, away])).toEqual([
      ['t1', { kind: 'hint', hint: 'try-it' }, false],
      ['t1', { kind: 'text', text: 'Well drawn.' }, false],
    ]);
    expect(everySeat.map((seat) => view(state, seat).coaching.notes.length)).toEqual([2, 2, 0, 0]);
  });

  it('have numbers that no later one gets, also after one was taken back', () => {
    const state = roomAfter(...BUILDING, HINT);
    const { number } = state.coaching.notes[0]!;
    const later = roomAfter(...BUILDING, HINT, atDesk({ kind: 'take-note-back', note: number }), NOTE);
    expect(later.coaching.notes.map((note) => note.number > number)).toEqual([true]);
  });

  it('are put away by their own team, once', () => {
    const state = roomAfter(...BUILDING, HINT);
    const { number: note } = state.coaching.notes[0]!;
    const put = { kind: 'put-note-away', note } as const;
    const codes = ['t1', 't2'].map((id) => codeOf(decide(state, put, team(id), 1)));
    expect(codes).toEqual(['accepted', 'already-so']);
    const after = roomAfter(...BUILDING, HINT, [team('t1'), put]);
    expect(after.coaching.notes[0]?.away).toBe(true);
    expect(codeOf(decide(after, put, team('t1'), 1))).toBe('already-so');
  });

  it('to a team that is not here are refused', () => {
    const state = roomAfter(...BUILDING, atDesk({ kind: 'remove-team', team: 't2' }));
    const to = (id: string) =>
      codeOf(
        decide(state, { kind: 'send-note', team: id, words: { kind: 'hint', hint: 'try-it' } }, DESK, 1),
      );
    expect([to('t2'), to('t9')]).toEqual(['team-removed', 'unknown-team']);
  });
});

describe('an entry that is given back', () => {
  const counting = (...moves: Move[]) => {
    const { returned, verdict } = roomAfter(...HANDED_IN, ...moves).entries[0]!;
    return [returned, verdict?.points];
  };

  it('keeps its verdict and counts no longer, until it is accepted', () => {
    expect(counting(atDesk(RETURN))).toEqual([true, 60]);
    expect(counting(atDesk(RETURN), atDesk(ACCEPT))).toEqual([false, 60]);
  });

  it('says why to the team by a note, which goes with the return', () => {
    const state = roomAfter(...HANDED_IN, atDesk(RETURN));
    const why = { kind: 'returned', entry: 'e1', reason: 'goals-again' };
    expect(state.coaching.notes.map(({ words }) => words)).toEqual([why]);
    expect(roomAfter(...HANDED_IN, atDesk(RETURN), atDesk(ACCEPT)).coaching.notes).toEqual([]);
  });

  it('is known as returned to the desk, its team and the board, which counts points', () => {
    const state = roomAfter(...HANDED_IN, atDesk(RETURN));
    expect(everySeat.map((seat) => view(state, seat).entries[0]?.returned)).toEqual([
      true,
      true,
      false,
      true,
    ]);
  });

  it('again, or accepted without having been, changes nothing', () => {
    const again = decide(roomAfter(...HANDED_IN, atDesk(RETURN)), RETURN, DESK, 1);
    const never = decide(roomAfter(...HANDED_IN), ACCEPT, DESK, 1);
    const unknown = decide(roomAfter(...HANDED_IN), { ...ACCEPT, entry: 'e9' }, DESK, 1);
    expect([again, never, unknown].map(codeOf)).toEqual(['already-so', 'already-so', 'unknown-entry']);
  });
});

describe('the gentler form', () => {
  const GENTLER = atDesk({ kind: 'set-gentler', team: 't1', on: true });

  it('of a team is known to it and the desk alone', () => {
    const state = roomAfter(...BUILDING, GENTLER);
    const known = everySeat.map((seat) => view(state, seat).coaching.gentler);
    expect(known).toEqual([['t1'], ['t1'], [], []]);
  });

  it('opens the lines to the desk and to teams that have it, to nobody else', () => {
    const state = roomAfter(...BUILDING, GENTLER);
    expect(everySeat.filter((seat) => mayRead(state, seat, 'g1'))).toEqual([DESK, team('t1')]);
    expect(everySeat.filter((seat) => mayRead(roomAfter(...BUILDING), seat, 'g1'))).toEqual([DESK]);
  });

  it('handed in with the lines alone is read like any other entry, the same document though it is', () => {
    const off = atDesk({ kind: 'set-gentler', team: 't1', on: false });
    const moves: Move[] = [
      ...BUILDING,
      GENTLER,
      [team('t1'), { kind: 'hand-in', round: 0, entry: 'e1', design: 'g1' }],
      [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 20, met: false }],
      off,
      atDesk({ kind: 'go-to', phase: 'show' }),
    ];
    const readers = (...more: Move[]) =>
      everySeat.filter((seat) => mayRead(roomAfter(...moves, ...more), seat, 'g1'));
    expect(readers()).toEqual([DESK, team('t1')]);
    expect(readers(atDesk({ kind: 'stage', entries: ['e1'] }))).toEqual(everySeat);
  });

  it('is that of a round which has one; in another one the team draws as all do', () => {
    const [joinOne, joinTwo, choose] = BUILDING;
    const plain = atDesk({ kind: 'choose-challenge', challenge: 'c2', key: 'k2' });
    const state = roomAfter(joinOne!, joinTwo!, choose!, GENTLER, plain);
    expect(state.rounds.map((_, round) => isGentler(state, 't1', round))).toEqual([true, false]);
    expect(state.rounds.map((_, round) => isGentler(state, 't2', round))).toEqual([false, false]);
  });

  it('is written down with what was handed in in it, and stays with that', () => {
    const off = atDesk({ kind: 'set-gentler', team: 't1', on: false });
    const handIn = (entry: string): Move => [
      team('t1'),
      { kind: 'hand-in', round: 0, entry, design: `d-${entry}` },
    ];
    const state = roomAfter(...BUILDING, GENTLER, handIn('e1'), off, handIn('e2'));
    expect(state.entries.map(({ gentler }) => gentler)).toEqual([true, false]);
    expect(everySeat.map((seat) => view(state, seat).entries[0]?.gentler)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it('set as it is changes nothing', () => {
    const set = (on: boolean) =>
      codeOf(decide(roomAfter(...BUILDING, GENTLER), { kind: 'set-gentler', team: 't1', on }, DESK, 1));
    expect([set(true), set(false)]).toEqual(['already-so', 'accepted']);
  });
});
