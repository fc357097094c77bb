import { describe, expect, it } from 'vitest';
import { decide } from '../../../shared/room/decide.ts';
import { EMBLEMS, type RoomState } from '../../../shared/room/state.ts';
import '../../seed.ts';
import fc from 'fast-check';
import { codeOf, DESK, factsOf, lesson, type Move, play, roomAfter, SERVER, team } from './arbitraries.ts';

const join = (id: string): Move => [SERVER, { kind: 'join', team: id }];
const remove = (id: string): Move => [DESK, { kind: 'remove-team', team: id }];
const putBack = (id: string): Move => [DESK, { kind: 'put-back-team', team: id }];
const swap = (id: string, emblem: string): Move => [team(id), { kind: 'swap-emblem', emblem }];
const ask = (state: RoomState, [seat, command]: Move) => decide(state, command, seat, 3000);
const places = (state: RoomState) => state.teams.map((t) => `${t.id} ${t.emblem} ${t.berth}`);
const full = EMBLEMS.map((_, i) => join(`t${i + 1}`));

describe('removing a team', () => {
  it('takes it out of the room, with its emblem and berth kept for it', () => {
    const state = roomAfter(join('t1'), join('t2'), remove('t1'), join('t3'));
    expect(places(state)).toEqual(['t2 bell 2', 't3 key 3']);
    expect(places(roomAfter(join('t1'), join('t2'), remove('t1'), join('t3'), putBack('t1')))).toEqual([
      't1 sailboat 1',
      't2 bell 2',
      't3 key 3',
    ]);
  });

  it('makes place for another team in a full room, and then has none to come back to', () => {
    const state = roomAfter(...full, remove('t7'), join('late'));
    expect(state.teams.find((t) => t.id === 'late')).toMatchObject({ emblem: EMBLEMS[6], berth: 7 });
    expect(factsOf(ask(state, putBack('t7')))).toEqual({ code: 'room-full', most: 40 });
    const roomier = roomAfter(...full, remove('t7'), join('late'), remove('t9'));
    expect(factsOf(ask(roomier, putBack('t7')))).toEqual([
      { kind: 'team-put-back', team: 't7', emblem: EMBLEMS[8], berth: 9 },
    ]);
  });

  it('refuses its tablet everything, and a tablet that joins once more', () => {
    const state = roomAfter(
      join('t1'),
      [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
      [DESK, { kind: 'start-building', seconds: null }],
      remove('t1'),
    );
    const handIn: Move = [team('t1'), { kind: 'hand-in', round: 0, entry: 'e1', design: 'd1' }];
    expect(codeOf(ask(state, handIn))).toBe('team-removed');
    expect(codeOf(ask(state, join('t1')))).toBe('already-so');
    expect(codeOf(ask(state, [DESK, { kind: 'free-seat', team: 't1' }]))).toBe('team-removed');
  });

  it('twice, or one that is not there, is refused', () => {
    expect(codeOf(ask(roomAfter(join('t1'), remove('t1')), remove('t1')))).toBe('already-so');
    expect(codeOf(ask(roomAfter(join('t1')), remove('t9')))).toBe('unknown-team');
    expect(codeOf(ask(roomAfter(join('t1')), putBack('t1')))).toBe('already-so');
    expect(codeOf(ask(roomAfter(join('t1')), putBack('t9')))).toBe('unknown-team');
  });

  it('takes its entry off the stage and leaves the other one', () => {
    const moves: Move[] = [
      join('t1'),
      join('t2'),
      [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
      [DESK, { kind: 'start-building', seconds: null }],
      ...['1', '2'].flatMap((n): Move[] => [
        [team(`t${n}`), { kind: 'hand-in', round: 0, entry: `e${n}`, design: `d${n}` }],
        [SERVER, { kind: 'judge', entry: `e${n}`, document: `v${n}`, points: 50, met: false }],
      ]),
      [DESK, { kind: 'go-to', phase: 'show' }],
      [DESK, { kind: 'stage', entries: ['e1', 'e2'] }],
    ];
    expect(factsOf(ask(roomAfter(...moves), remove('t1')))).toEqual([
      { kind: 'team-removed', team: 't1' },
      {
        kind: 'staged',
        entries: ['e2'],
        designs: ['d2'],
        verdicts: [{ entry: 'e2', document: 'v2', points: 50, met: false }],
      },
    ]);
    const state = roomAfter(...moves, remove('t1'));
    expect(codeOf(ask(state, [DESK, { kind: 'stage', entries: ['e1'] }]))).toBe('team-removed');
  });

  it('never leaves two teams with one emblem or one berth, nor one of them on the stage', () => {
    fc.assert(
      fc.property(lesson, (steps) => {
        const { state } = play(steps);
        const differ = (list: readonly unknown[]) => expect(new Set(list).size).toBe(list.length);
        differ(state.teams.map((t) => t.emblem));
        differ(state.teams.map((t) => t.berth));
        const gone = state.removed.map((t) => t.id);
        const staged = state.entries.filter((entry) => state.stage.includes(entry.id));
        expect(staged.filter((entry) => gone.includes(entry.team))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('swapping an emblem', () => {
  it('gives a free one while the class gathers', () => {
    expect(places(roomAfter(join('t1'), join('t2'), swap('t1', 'moon')))).toEqual(['t1 moon 1', 't2 bell 2']);
    const after = roomAfter(join('t1'), swap('t1', 'moon'), join('t2'));
    expect(places(after)).toEqual(['t1 moon 1', 't2 sailboat 2']);
  });

  it('is refused for one that another team has, and from the brief on', () => {
    expect(codeOf(ask(roomAfter(join('t1'), join('t2')), swap('t1', 'bell')))).toBe('emblem-taken');
    expect(codeOf(ask(roomAfter(join('t1')), swap('t1', 'sailboat')))).toBe('already-so');
    const briefed = roomAfter(
      join('t1'),
      [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
      [DESK, { kind: 'go-to', phase: 'brief' }],
    );
    expect(factsOf(ask(briefed, swap('t1', 'moon')))).toEqual({ code: 'not-now', phase: 'brief' });
  });
});

describe('a seat', () => {
  const free: Move = [DESK, { kind: 'free-seat', team: 't1' }];
  const keep: Move = [DESK, { kind: 'keep-seat', team: 't1' }];
  const move: Move = [SERVER, { kind: 'move-seat', team: 't1' }];

  it('is free until the desk keeps it or another tablet has it', () => {
    const isFree = (...moves: Move[]) => roomAfter(join('t1'), ...moves).teams[0]?.seatFree;
    expect([isFree(), isFree(free), isFree(free, keep), isFree(free, move)]).toEqual([
      false,
      true,
      false,
      false,
    ]);
  });

  it('that is free, or kept, is not freed or kept again; it moves as often as wanted', () => {
    expect(codeOf(ask(roomAfter(join('t1'), free), free))).toBe('already-so');
    expect(codeOf(ask(roomAfter(join('t1')), keep))).toBe('already-so');
    expect(codeOf(ask(roomAfter(join('t1'), move), move))).toBe('accepted');
    expect(codeOf(ask(roomAfter(), move))).toBe('unknown-team');
  });
});
