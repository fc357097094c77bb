import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apply, stateOf } from '../../../shared/room/apply.ts';
import { EVENT_VERSION, type RoomEvent, type Seat } from '../../../shared/room/events.ts';
import { mayRead, seen, view } from '../../../shared/room/seen.ts';
import '../../seed.ts';
import { BOARD, DESK, lesson, OPENED, opened, type Played, play, SERVER, team } from './arbitraries.ts';

const SEATS: readonly Seat[] = [DESK, BOARD, SERVER, team('t1'), team('t2'), team('nobody')];
const holds = (property: (played: Played, seat: Seat) => void) =>
  fc.assert(
    fc.property(lesson, fc.constantFrom(...SEATS), (steps, seat) => property(play(steps), seat)),
    { numRuns: 300 },
  );

describe('seen', () => {
  it('folded is the view of the state, for every seat', () => {
    holds(({ state, events }, seat) => {
      expect(stateOf(events.map((e) => seen(seat, e, state)))).toEqual(view(state, seat));
    });
  });

  it('told at once or later is the same', () => {
    holds(({ state, events }, seat) => {
      let then = opened();
      const atOnce = events.map((event) => {
        then = event === OPENED ? then : apply(then, event);
        return seen(seat, event, then);
      });
      expect(atOnce).toEqual(events.map((event) => seen(seat, event, state)));
    });
  });

  it('keeps every number', () => {
    holds(({ state, events }, seat) => {
      const numbers = events.map((e) => seen(seat, e, state).seq);
      expect(numbers).toEqual(events.map((_, i) => i + 1));
    });
  });

  it('tells a team no design of others before it is staged, and no verdict of others at all', () => {
    holds(({ state, events }) => {
      const told = JSON.stringify(events.map((e) => seen(team('t1'), e, state)));
      const others = state.entries.filter((e) => e.team !== 't1');
      const leaks = others.filter(
        (e) => (!e.shown && told.includes(`"${e.design}"`)) || told.includes(`"v-${e.id}"`),
      );
      expect(leaks).toEqual([]);
    });
  });

  it('tells a board no design before it is staged, or hung there', () => {
    holds(({ state, events }) => {
      const hung = events.flatMap(({ fact }) => {
        if (fact?.kind === 'hung') return fact.drawings;
        return fact?.kind === 'fleet-shown' || fact?.kind === 'foretold' ? (fact.drawing ?? []) : [];
      });
      const told = JSON.stringify(events.map((e) => seen(BOARD, e, state)));
      const secret = state.entries.filter((e) => !e.shown && !hung.some(({ entry }) => entry === e.id));
      expect(secret.filter((e) => told.includes(`"${e.design}"`))).toEqual([]);
    });
  });
});

describe('verdicts on the board', () => {
  const before = (state: Played['state']) => state.entries.filter((e) => !e.counted);

  it('it is told none before the standings are shown, the entry is staged or the lesson closes', () => {
    holds(({ state, events }) => {
      const told = JSON.stringify(events.map((e) => seen(BOARD, e, state)));
      expect(before(state).filter((e) => told.includes(`"v-${e.id}"`))).toEqual([]);
      const neverShown = events.every(
        ({ fact }) =>
          fact?.kind !== 'staged' &&
          fact?.kind !== 'verdicts-told' &&
          (fact?.kind !== 'phase-changed' || fact.phase !== 'close') &&
          (fact?.kind !== 'scene-shown' || fact.scene !== 'closing') &&
          (fact?.kind !== 'standings-shown' || !fact.on),
      );
      if (neverShown) expect(told).not.toContain('"points"');
    });
  });

  it('while the standings are shown it has all of them, as the desk has', () => {
    holds(({ state }) => {
      if (!state.standingsShown) return;
      const verdicts = (seat: Seat) => view(state, seat).entries.map((e) => e.verdict);
      expect(verdicts(BOARD)).toEqual(verdicts(DESK));
    });
  });
});

describe('mayRead', () => {
  const played = play([
    { wait: 0, seat: SERVER, command: { kind: 'join', team: 't1' } },
    { wait: 0, seat: SERVER, command: { kind: 'join', team: 't2' } },
    { wait: 0, seat: DESK, command: { kind: 'choose-challenge', challenge: 'c1', key: 'k1' } },
    { wait: 0, seat: DESK, command: { kind: 'start-building', seconds: null } },
    { wait: 0, seat: team('t1'), command: { kind: 'hand-in', round: 0, entry: 'e1', design: 'd1' } },
    { wait: 0, seat: SERVER, command: { kind: 'judge', entry: 'e1', document: 'v1', points: 9, met: false } },
    { wait: 0, seat: DESK, command: { kind: 'go-to', phase: 'show' } },
  ]).state;
  const staged = apply(played, {
    seq: played.seq + 1,
    at: 5000,
    version: EVENT_VERSION,
    fact: {
      kind: 'staged',
      entries: ['e1'],
      designs: ['d1'],
      verdicts: [{ entry: 'e1', document: 'v1', points: 9, met: false }],
    },
  });
  const readers = (state: typeof played, id: string) =>
    [DESK, BOARD, team('t1'), team('t2')]
      .filter((seat) => mayRead(state, seat, id))
      .map((s) => JSON.stringify(s));
  const all = [DESK, BOARD, team('t1'), team('t2')].map((s) => JSON.stringify(s));
  const [desk, board, own] = all;

  it('opens the challenge to everybody', () => expect(readers(played, 'c1')).toEqual(all));
  it('opens a design to desk and owner', () => expect(readers(played, 'd1')).toEqual([desk, own]));
  it('opens a staged design to everybody', () => expect(readers(staged, 'd1')).toEqual(all));
  it('opens a verdict to desk and owner', () => expect(readers(played, 'v1')).toEqual([desk, own]));
  it('opens a staged verdict to the board too', () =>
    expect(readers(staged, 'v1')).toEqual([desk, board, own]));
  it('opens nothing that the room does not speak of', () => expect(readers(staged, 'x')).toEqual([]));
});

describe('apply', () => {
  it('takes any event, however strange, and counts it', () => {
    const strange: RoomEvent[] = [
      { seq: 2, at: 1, version: 1, fact: null },
      { seq: 3, at: 1, version: 9, fact: { kind: 'later-invention' } as never },
      { seq: 4, at: 1, version: 1, fact: { kind: 'constructor' } as never },
      { seq: 5, at: 1, version: 1, fact: { kind: 'building-extended', until: 9 } },
      { seq: 6, at: 1, version: 1, fact: { kind: 'building-ended', by: 'time' } },
      {
        seq: 7,
        at: 1,
        version: 1,
        fact: { kind: 'judged', entry: 'no', document: 'v', points: 1, met: true, counted: true },
      },
      { seq: 8, at: 1, version: 1, fact: { kind: 'staged', entries: ['no'], designs: [], verdicts: [] } },
      { ...OPENED, seq: 9 },
    ];
    expect(strange.reduce(apply, opened())).toEqual({ ...opened(), seq: 9, stage: ['no'] });
  });

  it('changes no state in place', () => {
    holds(({ events, state }) => {
      let frozen = deepFrozen(opened());
      for (const event of events.slice(1)) frozen = deepFrozen(apply(frozen, deepFrozen(event)));
      expect(frozen).toEqual(state);
    });
  });
});

/** A change in place of a frozen thing throws. */
function deepFrozen<T>(thing: T): T {
  if (typeof thing === 'object' && thing !== null && !Object.isFrozen(thing)) {
    Object.freeze(thing);
    for (const value of Object.values(thing)) deepFrozen(value);
  }
  return thing;
}
