import { describe, expect, it } from 'vitest';
import { turnsOf } from '../../../../client/parts/driving.ts';
import { DESK, type Move, roomAfter, SERVER } from '../../room/arbitraries.ts';

const FIVE: Move[] = ['t1', 't2', 't3', 't4', 't5'].map((team) => [SERVER, { kind: 'join', team }]);
const robots = (...numbers: number[]): Move => [DESK, { kind: 'set-robots', robots: numbers }];
const turn = (number: number): Move => [DESK, { kind: 'call-turn', turn: number }];
const teamsIn = (...moves: Move[]) =>
  turnsOf(roomAfter(...FIVE, ...moves)).map((drives) => drives.map(({ team }) => team.id));

describe('turnsOf', () => {
  it('has every team drive once, all at once as long as nobody says which robots there are', () => {
    expect(teamsIn()).toEqual([['t1', 't2', 't3', 't4', 't5']]);
    expect(teamsIn(robots(1, 2))).toEqual([
      ['t1', 't2'],
      ['t3', 't4'],
      ['t5', 't1'],
    ]);
  });

  it('goes on with the next team where a robot rests and comes back', () => {
    const resting = [robots(1, 2), turn(1), robots(2)];
    expect(teamsIn(...resting)).toEqual([['t1', 't2'], ['t3'], ['t4'], ['t5']]);
    const back = [...resting, turn(2), robots(1, 2)];
    expect(teamsIn(...back)).toEqual([['t1', 't2'], ['t3'], ['t4', 't5']]);
  });

  it('goes as far as the class has come, and is empty without robots', () => {
    expect(teamsIn(robots(1, 2), turn(3))[3]).toEqual(['t2', 't3']);
    expect(teamsIn(robots())).toEqual([]);
  });
});
