import { describe, expect, it } from 'vitest';
import { decide } from '../../../shared/room/decide.ts';
import { DRIVING_LIMITS, NO_DRIVING } from '../../../shared/room/driving.ts';
import { seen, view } from '../../../shared/room/seen.ts';
import { BOARD, codeOf, DESK, factsOf, type Move, roomAfter, SERVER, team } from './arbitraries.ts';

const ENTERED: Move[] = [
  [SERVER, { kind: 'join', team: 't1' }],
  [SERVER, { kind: 'join', team: 't2' }],
  [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
  [DESK, { kind: 'start-building', seconds: null }],
  [team('t1'), { kind: 'hand-in', round: 0, entry: 'e1', design: 'd1' }],
  [DESK, { kind: 'go-to', phase: 'drive' }],
];
const NOTE = {
  kind: 'note-trial',
  entry: 'e1',
  robot: 7,
  outcome: { kind: 'lost', at: { x: 120, y: 80 } },
  foretold: { same: 18, of: 20, finish: 1, seconds: 12.5 },
} as const;

describe('a trial', () => {
  it('is kept with entry, robot, outcome, what was foretold and when', () => {
    const { driving } = roomAfter(...ENTERED, [DESK, NOTE, 5000]);
    const { kind, ...noted } = NOTE;
    expect(driving.trials).toEqual([{ ...noted, at: 5000, withdrawn: false }]);
  });

  it('is withdrawn once, and keeps its place among the others', () => {
    const room = roomAfter(...ENTERED, [DESK, NOTE], [DESK, { ...NOTE, robot: 2 }]);
    const withdraw = { kind: 'withdraw-trial', trial: 0 } as const;
    const after = roomAfter(
      ...ENTERED,
      [DESK, NOTE],
      [DESK, { ...NOTE, robot: 2 }],
      [DESK, withdraw],
      [DESK, { ...NOTE, robot: 3 }],
    );
    expect(after.driving.trials.map(({ robot, withdrawn }) => [robot, withdrawn])).toEqual([
      [7, true],
      [2, false],
      [3, false],
    ]);
    expect(codeOf(decide(after, withdraw, DESK, 0))).toBe('already-so');
    expect(codeOf(decide(room, { kind: 'withdraw-trial', trial: 2 }, DESK, 0))).toBe('unknown-trial');
  });

  it('is refused of an entry that is not there, of a seat that is no desk, and beyond the limit', () => {
    const room = roomAfter(...ENTERED);
    expect(codeOf(decide(room, { ...NOTE, entry: 'e9' }, DESK, 0))).toBe('unknown-entry');
    for (const seat of [team('t1'), BOARD, SERVER])
      expect(codeOf(decide(room, NOTE, seat, 0))).toBe('not-for-this-seat');
    const [trial] = roomAfter(...ENTERED, [DESK, NOTE]).driving.trials;
    const full = { ...NO_DRIVING, trials: new Array(DRIVING_LIMITS.trials).fill(trial) };
    expect(codeOf(decide({ ...room, driving: full }, NOTE, DESK, 0))).toBe('too-many-trials');
  });

  it('is for the desk alone: teams, its own too, and the board learn nothing', () => {
    const room = roomAfter(...ENTERED, [DESK, NOTE]);
    const { kind, ...noted } = NOTE;
    for (const fact of [
      { kind: 'trial-noted', ...noted } as const,
      { kind: 'trial-withdrawn', trial: 0 } as const,
    ]) {
      const event = { seq: 9, at: 1, version: 2, fact };
      for (const seat of [team('t1'), team('t2'), BOARD]) expect(seen(seat, event, room).fact).toBeNull();
      expect(seen(DESK, event, room).fact).toEqual(fact);
    }
    for (const seat of [team('t1'), team('t2'), BOARD]) expect(view(room, seat).driving.trials).toEqual([]);
    expect(view(room, DESK).driving.trials).toHaveLength(1);
  });
});

describe('robots and turns', () => {
  it('are told to everybody: numbers once each, lowest first', () => {
    const set = { kind: 'set-robots', robots: [9, 2, 9, 4] } as const;
    expect(factsOf(decide(roomAfter(...ENTERED), set, DESK, 0))).toEqual([
      { kind: 'robots-set', robots: [2, 4, 9] },
    ]);
    const room = roomAfter(...ENTERED, [DESK, set], [DESK, { kind: 'call-turn', turn: 2 }]);
    expect(view(room, team('t2')).driving).toEqual({
      robots: [2, 4, 9],
      turn: 2,
      over: [
        [2, 4, 9],
        [2, 4, 9],
      ],
      trials: [],
    });
    expect(codeOf(decide(room, set, DESK, 0))).toBe('already-so');
    expect(codeOf(decide(room, { kind: 'call-turn', turn: 2 }, DESK, 0))).toBe('already-so');
  });

  it('of a turn that is over stay those that drove, and a turn that is called again has those of now', () => {
    const resting: Move[] = [
      ...ENTERED,
      [DESK, { kind: 'set-robots', robots: [1, 2] }],
      [DESK, { kind: 'call-turn', turn: 1 }],
      [DESK, { kind: 'set-robots', robots: [2] }],
      [DESK, { kind: 'call-turn', turn: 2 }],
    ];
    expect(roomAfter(...resting).driving.over).toEqual([[1, 2], [2]]);
    const again: Move[] = [...resting, [DESK, { kind: 'call-turn', turn: 1 }]];
    expect(roomAfter(...again).driving.over).toEqual([[1, 2]]);
  });

  it('begin anew with the next challenge: the first turn; robots and trials stay', () => {
    const { driving } = roomAfter(
      ...ENTERED,
      [DESK, NOTE],
      [DESK, { kind: 'set-robots', robots: [4] }],
      [DESK, { kind: 'call-turn', turn: 2 }],
      [DESK, { kind: 'go-to', phase: 'show' }],
      [DESK, { kind: 'choose-challenge', challenge: 'c2', key: 'k2' }],
    );
    expect(driving).toMatchObject({ robots: [4], turn: 0, over: [] });
    expect(driving.trials).toHaveLength(1);
  });
});
