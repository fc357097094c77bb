import { describe, expect, it } from 'vitest';
import { apply } from '../../../shared/room/apply.ts';
import { decide } from '../../../shared/room/decide.ts';
import { continuation } from '../../../shared/room/decide-plan.ts';
import { LONGEST_QUEUE, queueWith } from '../../../shared/room/plan.ts';
import { view } from '../../../shared/room/seen.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { BOARD, codeOf, DESK, factsOf, type Move, opened, roomAfter, SERVER, team } from './arbitraries.ts';

const queued = (key: string, place: number | null = 99): Move => [
  DESK,
  { kind: 'queue-challenge', key, place },
];
const join = (id: string, before?: string): Move => [
  SERVER,
  { kind: 'join', team: id, ...(before === undefined ? {} : { before }) },
];

describe('the queue', () => {
  it('takes a challenge at its end or anywhere, moves it, and takes it off', () => {
    expect(queueWith(['a', 'b'], 'c', 99)).toEqual(['a', 'b', 'c']);
    expect(queueWith(['a', 'b', 'c'], 'c', 0)).toEqual(['c', 'a', 'b']);
    expect(queueWith(['a', 'b', 'c'], 'a', 1)).toEqual(['b', 'a', 'c']);
    expect(queueWith(['a', 'b', 'c'], 'b', null)).toEqual(['a', 'c']);
  });

  it('is left by a challenge that is chosen', () => {
    const chosen: Move = [DESK, { kind: 'choose-challenge', challenge: 'c', key: 'b' }];
    expect(roomAfter(queued('a'), queued('b'), queued('c'), chosen).plan.queue).toEqual(['a', 'c']);
  });

  it('is known to the desk alone', () => {
    const state = roomAfter(queued('a'));
    expect([DESK, BOARD, team('t1')].map((seat) => view(state, seat).plan.queue)).toEqual([['a'], [], []]);
  });

  it('that would stay as it is, or grow too long, is refused', () => {
    const full = roomAfter(...Array.from({ length: LONGEST_QUEUE }, (_, i) => queued(`k${i}`)));
    const code = (state: RoomState, key: string, place: number | null) =>
      codeOf(decide(state, { kind: 'queue-challenge', key, place }, DESK, 1));
    expect(code(roomAfter(queued('a')), 'a', 0)).toBe('already-so');
    expect(code(opened(), 'a', null)).toBe('already-so');
    expect(code(full, 'one more', 0)).toBe('queue-full');
    expect(code(full, 'k0', null)).toBe('accepted');
  });
});

describe('a lesson that goes on from another', () => {
  const old = roomAfter(
    join('o1'),
    join('o2'),
    join('o3'),
    [DESK, { kind: 'remove-team', team: 'o1' }],
    [team('o2'), { kind: 'swap-emblem', emblem: 'kite' }],
    [DESK, { kind: 'vary-sheets', on: true }],
    [DESK, { kind: 'set-help', team: null, step: 'place' }],
    [DESK, { kind: 'set-help', team: 'o2', step: 'after-try' }],
    [DESK, { kind: 'set-gentler', team: 'o2', on: true }],
    [DESK, { kind: 'set-robots', robots: [2, 41] }],
    queued('a'),
    queued('b'),
    [DESK, { kind: 'choose-challenge', challenge: 'c', key: 'a' }],
  );
  const begun = continuation(old).reduce(
    (state, fact) => apply(state, { seq: state.seq + 1, at: 2000, version: 2, fact }),
    opened(),
  );
  const played = (...moves: Move[]) =>
    moves.reduce((state, [seat, command]) => {
      const decision = decide(state, command, seat, 3000);
      if (!decision.ok) throw new Error(decision.refusal.code);
      return decision.facts.reduce(
        (now, fact) => apply(now, { seq: now.seq + 1, at: 3000, version: 2, fact }),
        state,
      );
    }, begun);

  it('has its queue, its sheets, its robots and its help, and knows what was played last', () => {
    expect([begun.plan.queue, begun.variedSheets, begun.help]).toEqual([['b'], true, 'place']);
    expect(begun.driving.robots).toEqual([2, 41]);
    expect(begun.plan.from?.last).toBe('a');
  });

  it('gives a team that comes back its emblem and berth, whoever came before', () => {
    const { teams } = played(join('n1'), join('n2', 'o2'));
    expect(teams.map(({ id, emblem, berth }) => [id, emblem, berth])).toEqual([
      // o2 had berth 2 and o3 berth 3; the sailboat had been taken out and is free.
      ['n1', 'sailboat', 1],
      ['n2', 'kite', 2],
    ]);
  });

  it('gives a team that comes back its own help step and gentler form, which others do not see', () => {
    const now = played(join('n1'), join('n2', 'o2'), join('n3', 'o3'));
    const ofTeams = (state: RoomState) => state.teams.map(({ id, help }) => [id, help]);
    expect(ofTeams(now)).toEqual([
      ['n1', null],
      ['n2', 'after-try'],
      ['n3', null],
    ]);
    expect(now.coaching.gentler).toEqual(['n2']);
    const others = [BOARD, team('n1'), team('n3')].map((seat) => view(now, seat));
    expect(others.map(({ coaching }) => coaching.gentler)).toEqual([[], [], []]);
    expect(others.flatMap(ofTeams).filter(([, help]) => help !== null)).toEqual([]);
    expect(view(now, team('n2')).coaching.gentler).toEqual(['n2']);
  });

  it('a second tablet of one team gets a place of its own, and nothing that was the team’s', () => {
    const second = played(join('n1', 'o2'), join('n2', 'o2'));
    expect(second.coaching.gentler).toEqual(['n1']);
    const { teams } = played(join('n1', 'o2'), join('n2', 'o2'));
    expect(teams.map(({ emblem, berth }) => [emblem, berth])).toEqual([
      ['sailboat', 1],
      ['kite', 2],
    ]);
  });

  it('tells nobody but the desk who sat where', () => {
    expect(view(begun, team('n1')).plan.from).toBeNull();
    expect(view(begun, BOARD).plan.from).toBeNull();
    expect(
      JSON.stringify(factsOf(decide(begun, { kind: 'join', team: 'n', before: 'o2' }, SERVER, 1))),
    ).not.toContain('o2');
  });
});
