import { describe, expect, it } from 'vitest';
import { decide } from '../../../shared/room/decide.ts';
import { mayRead, seen } from '../../../shared/room/seen.ts';
import { isOfKit } from '../../../shared/room/state.ts';
import { BOARD, codeOf, DESK, factsOf, type Move, opened, roomAfter, team } from './arbitraries.ts';

const KIT: Move = [DESK, { kind: 'choose-kit', kit: 'kit-1' }];
const OTHER: Move = [DESK, { kind: 'choose-kit', kit: 'kit-2' }];
const CHOOSE: Move = [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }];
const CHOOSE_OF_KIT: Move = [
  DESK,
  { kind: 'choose-challenge', challenge: 'c1-of-kit', key: 'k1', kit: 'kit-1' },
];
const START: Move = [DESK, { kind: 'start-building', seconds: null }];

describe('choose-kit', () => {
  it('a room begins without a kit of its own, which stands for the demo kit', () => {
    expect(opened().kit).toBeNull();
  });

  it('changes the kit, once', () => {
    expect(factsOf(decide(opened(), KIT[1], DESK, 0))).toEqual([{ kind: 'kit-chosen', kit: 'kit-1' }]);
    expect(codeOf(decide(roomAfter(KIT), KIT[1], DESK, 0))).toBe('already-so');
    expect(roomAfter(KIT, OTHER).kit).toBe('kit-2');
  });

  it('is possible while teams build: a chosen challenge keeps the kit that it was made for', () => {
    const state = roomAfter(KIT, CHOOSE_OF_KIT, START, OTHER);
    expect(state.kit).toBe('kit-2');
    expect(state.rounds).toEqual([{ challenge: 'c1-of-kit', key: 'k1', kit: 'kit-1', varied: false }]);
    expect(isOfKit(state, state.rounds[0]!)).toBe(false);
  });

  it('a round without a kit was made for the demo kit', () => {
    const [before, after] = [roomAfter(CHOOSE), roomAfter(CHOOSE, KIT)];
    expect(before.rounds).toEqual([{ challenge: 'c1', key: 'k1', varied: false }]);
    expect([isOfKit(before, before.rounds[0]!), isOfKit(after, after.rounds[0]!)]).toEqual([true, false]);
  });

  it('of the beginning again has the rounds before the other one be of its kit', () => {
    const state = roomAfter(CHOOSE, KIT, [DESK, { kind: 'choose-kit', kit: null }]);
    expect(state.kit).toBeNull();
    expect(isOfKit(state, state.rounds[0]!)).toBe(true);
    expect(codeOf(decide(opened(), { kind: 'choose-kit', kit: null }, DESK, 0))).toBe('already-so');
  });

  it('everybody in the room may read the kit, and no earlier one that no challenge was made for', () => {
    const state = roomAfter(KIT, OTHER);
    const event = { seq: 2, at: 0, version: 2, fact: { kind: 'kit-chosen', kit: 'kit-1' } } as const;
    for (const seat of [DESK, BOARD, team('t1')]) {
      expect(seen(seat, event, state)).toEqual(event);
      expect(['kit-1', 'kit-2'].map((id) => mayRead(state, seat, id))).toEqual([false, true]);
    }
  });
});
