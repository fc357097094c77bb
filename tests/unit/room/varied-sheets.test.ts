import { describe, expect, it } from 'vitest';
import { decide } from '../../../shared/room/decide.ts';
import { variantFor } from '../../../shared/room/drawn-in.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { codeOf, DESK, type Move, roomAfter, SERVER, team } from './arbitraries.ts';

const JOIN: Move = [SERVER, { kind: 'join', team: 't1' }];
const CHOOSE: Move = [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }];
const START: Move = [DESK, { kind: 'start-building', seconds: 60 }, 10_000];
const handIn = (by: string, entry: string): Move => [
  team(by),
  { kind: 'hand-in', round: 0, entry, design: `d-${entry}` },
  20_000,
];

describe('varied sheets', () => {
  const vary = (on: boolean): Move => [DESK, { kind: 'vary-sheets', on }, 5000];
  const JOIN_ANOTHER: Move = [SERVER, { kind: 'join', team: 't2' }];
  const sheets = (state: RoomState) =>
    state.teams.map((one) => variantFor(state.rounds[state.rounds.length - 1], one));

  it('are never the same at berths side by side', () => {
    const joins = Array.from({ length: 7 }, (_, i): Move => [SERVER, { kind: 'join', team: `t${i}` }]);
    const found = sheets(roomAfter(...joins, CHOOSE, vary(true)));
    expect(found.slice(0, 4)).toEqual([null, 'mirrored', 'turned', null]);
    expect(found.some((variant, i) => variant === found[i + 1])).toBe(false);
    expect(new Set(sheets(roomAfter(...joins, CHOOSE)))).toEqual(new Set([null]));
  });

  it('can be had before a challenge is chosen, and until teams build', () => {
    const before = roomAfter(JOIN, JOIN_ANOTHER, vary(true), CHOOSE);
    expect(sheets(before)).toEqual([null, 'mirrored']);
    expect(sheets(roomAfter(JOIN, JOIN_ANOTHER, vary(true), CHOOSE, vary(false)))).toEqual([null, null]);
    expect(codeOf(decide(before, vary(true)[1], DESK, 6000))).toBe('already-so');
    const building = roomAfter(JOIN, CHOOSE, START);
    expect(codeOf(decide(building, vary(true)[1], DESK, 11_000))).toBe('not-now');
  });

  it('stay with a round and its entries, whatever comes later', () => {
    const other: Move = [DESK, { kind: 'choose-challenge', challenge: 'c2', key: 'k2' }, 40_000];
    const state = roomAfter(
      JOIN,
      JOIN_ANOTHER,
      CHOOSE,
      vary(true),
      START,
      handIn('t1', 'e1'),
      handIn('t2', 'e2'),
      [DESK, { kind: 'go-to', phase: 'show' }, 22_000],
      other,
      vary(false),
    );
    expect(state.entries.map((entry) => entry.variant)).toEqual([null, 'mirrored']);
    expect(state.rounds.map((round) => round.varied)).toEqual([true, false]);
  });
});
