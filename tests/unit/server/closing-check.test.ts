import { expect, it } from 'vitest';
import { madeCheck } from '../../../server/rooms/closing-check.ts';
import { DESK, type Move, roomAfter, SERVER, team } from '../room/arbitraries.ts';

const judged = (by: string, entry: string): Move[] => [
  [SERVER, { kind: 'join', team: by }],
  [team(by), { kind: 'hand-in', round: 0, entry, design: `d-${entry}` }],
  [SERVER, { kind: 'judge', entry, document: `v-${entry}`, points: 100, met: true }],
];

it('a closing check is made of no entry that was given back', async () => {
  const state = roomAfter(
    [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
    [DESK, { kind: 'start-building', seconds: null }],
    ...judged('t1', 'e1'),
    ...judged('t2', 'e2'),
    [DESK, { kind: 'return-entry', entry: 'e1', reason: 'by-mistake' }],
  );
  const read: string[] = [];
  const nothing = async (id: string) => {
    read.push(id);
    return undefined;
  };
  await madeCheck(state, nothing, 3);
  expect(read).toContain('d-e2');
  expect(read).not.toContain('d-e1');
});
