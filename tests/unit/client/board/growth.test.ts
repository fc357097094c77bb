import { describe, expect, it } from 'vitest';
import { growthOf } from '../../../../client/board/growth.ts';
import { DESK, type Move, roomAfter, SERVER, team } from '../../room/arbitraries.ts';

const judged = (by: string, entry: string, points: number): Move[] => [
  [team(by), { kind: 'hand-in', round: 0, entry, design: `d-${entry}` }],
  [SERVER, { kind: 'judge', entry, document: `v-${entry}`, points, met: points === 100 }],
];

describe('growthOf', () => {
  it('says of each team how far it has come, in the order of the berths and not of the points', () => {
    const room = roomAfter(
      ...['t1', 't2', 't3', 't4'].map((id): Move => [SERVER, { kind: 'join', team: id }]),
      [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
      [DESK, { kind: 'start-building', seconds: null }],
      ...judged('t1', 'a', 30),
      ...judged('t1', 'b', 10),
      ...judged('t1', 'c', 75),
      ...judged('t2', 'd', 100),
      ...judged('t3', 'e', 40),
    );
    expect(growthOf(room).map(({ team: { id }, ...rest }) => ({ id, ...rest }))).toEqual([
      { id: 't1', grown: 45, met: false, entries: 3 },
      { id: 't2', grown: 0, met: true, entries: 1 },
      { id: 't3', grown: 0, met: false, entries: 1 },
      { id: 't4', grown: 0, met: false, entries: 0 },
    ]);
  });

  it('leaves out what was given back: such a team is here, and has handed in nothing', () => {
    const room = roomAfter(
      [SERVER, { kind: 'join', team: 't1' }],
      [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
      [DESK, { kind: 'start-building', seconds: null }],
      ...judged('t1', 'a', 100),
      [DESK, { kind: 'return-entry', entry: 'a', reason: 'by-mistake' }],
    );
    expect(growthOf(room)).toMatchObject([{ met: false, grown: 0, entries: 0 }]);
  });
});
