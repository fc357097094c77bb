import { describe, expect, it } from 'vitest';
import { bestEntry, classFigures, pointsSoFar, standingsOf } from '../../../../client/parts/figures.ts';
import type { Entry, Team } from '../../../../shared/room/state.ts';
import { roomState } from '../link/fakes.ts';

let count = 0;
const entry = (team: string, points: number | null, round = 0): Entry => ({
  id: `e${++count}`,
  team,
  round,
  number: 1,
  design: null,
  at: 0,
  late: false,
  variant: null,
  weather: null,
  mended: false,
  gentler: false,
  spent: 0,
  verdict: points === null ? null : { document: 'v', points, met: points === 100 },
  shown: false,
  counted: false,
  taken: true,
  returned: false,
  unjudged: false,
});
const teams = ['a', 'b', 'c', 'd'].map(
  (id, i): Team => ({
    id,
    emblem: 'bell',
    berth: i + 1,
    seatFree: false,
    moves: 0,
    help: null,
    wall: 'shown',
    mended: [],
  }),
);
const rounds = [
  { challenge: 'c', key: 'k', varied: false },
  { challenge: 'd', key: 'l', varied: false },
];
const entries = [
  entry('a', 40),
  entry('a', 100),
  entry('b', 100),
  entry('c', 20),
  entry('a', 10, 1),
  entry('c', null, 1),
];
const room = roomState(9, { teams, rounds, entries });

describe('standingsOf', () => {
  it('adds the best of each round; equal points share a rank, the next one leaves a gap', () => {
    const tied = roomState(9, { teams, rounds, entries: entries.slice(0, 4) });
    expect(standingsOf(tied).map((s) => [s.team.id, s.points, s.rank])).toEqual([
      ['a', 100, 1],
      ['b', 100, 1],
      ['c', 20, 3],
      ['d', 0, null],
    ]);
    expect(standingsOf(room)[0]).toMatchObject({ points: 110, rank: 1 });
  });

  it('a late entry counts once it is taken', () => {
    const late = (taken: boolean): Entry => ({ ...entry('b', 100), late: true, taken });
    const pointsWith = (one: Entry) => {
      const late = roomState(9, { teams, rounds, entries: [entry('b', 30), one] });
      return [standingsOf(late)[0]?.points, pointsSoFar(late, 'b'), bestEntry(late, 'b', 0)?.verdict?.points];
    };
    expect(pointsWith(late(false))).toEqual([30, 30, 30]);
    expect(pointsWith(late(true))).toEqual([100, 100, 100]);
  });

  it('a team without a judged entry has no points and no rank', () => {
    expect(pointsSoFar(room, 'd')).toBeNull();
  });
});

describe('bestEntry', () => {
  it('is the judged one with the most points of the round', () => {
    expect(bestEntry(room, 'a', 0)?.verdict?.points).toBe(100);
    expect(bestEntry(room, 'c', 1)).toBeUndefined();
  });
});

describe('classFigures', () => {
  it('counts what the class did, not who was best', () => {
    expect(classFigures(room)).toEqual({
      teams: 4,
      challenges: 2,
      entries: 6,
      teamsHandedIn: 3,
      teamsMet: 2,
      teamsBetter: 1,
    });
  });

  it('counts nothing that was given back: neither the entry, nor its team, nor what it met', () => {
    const back = entries.map((one) => (one.team === 'b' ? { ...one, returned: true } : one));
    expect(classFigures(roomState(9, { teams, rounds, entries: back }))).toEqual({
      teams: 4,
      challenges: 2,
      entries: 5,
      teamsHandedIn: 2,
      teamsMet: 1,
      teamsBetter: 1,
    });
  });

  it('holds the best entry against the first one that was not given back', () => {
    const [first, ...rest] = entries;
    const back = [{ ...first!, returned: true }, ...rest];
    expect(classFigures(roomState(9, { teams, rounds, entries: back })).teamsBetter).toBe(0);
  });

  it('leaves out a team that was taken out of the room', () => {
    const [first, ...rest] = teams;
    const without = roomState(9, { teams: rest, removed: [first!], rounds, entries });
    expect(classFigures(without)).toEqual({
      teams: 3,
      challenges: 2,
      entries: 3,
      teamsHandedIn: 2,
      teamsMet: 1,
      teamsBetter: 0,
    });
    expect(standingsOf(without).map((s) => s.team.id)).toEqual(['b', 'c', 'd']);
  });
});
