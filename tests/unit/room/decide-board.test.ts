import { describe, expect, it } from 'vitest';
import { apply } from '../../../shared/room/apply.ts';
import { type BoardCommand, FIRST_BOARD } from '../../../shared/room/board.ts';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { decide } from '../../../shared/room/decide.ts';
import { mayRead, seen, view } from '../../../shared/room/seen.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { BOARD, codeOf, DESK, factsOf, type Move, roomAfter, SERVER, team } from './arbitraries.ts';

const CHALLENGE: Move = [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }];
const SHOWING: Move[] = [
  [SERVER, { kind: 'join', team: 't1' }],
  [SERVER, { kind: 'join', team: 't2' }],
  CHALLENGE,
  [DESK, { kind: 'start-building', seconds: null }],
  [team('t1'), { kind: 'hand-in', round: 0, entry: 'e1', design: 'd1' }],
  [team('t2'), { kind: 'hand-in', round: 0, entry: 'e2', design: 'd2' }],
  [SERVER, { kind: 'judge', entry: 'e1', document: 'v1', points: 80, met: false }],
  [DESK, { kind: 'end-building' }],
  [DESK, { kind: 'go-to', phase: 'show' }],
];
const by = (command: RoomCommand): Move => [DESK, command];
const asked = (state: RoomState, command: BoardCommand, now = 3000) => decide(state, command, DESK, now);
const HANG = { kind: 'hang', entries: ['e1', 'e2'] } as const;
const FLEET = { kind: 'show-fleet', entry: 'e1', weather: 'stormy' } as const;
const FORETELL = { kind: 'foretell', entry: 'e1' } as const;

describe('a scene', () => {
  it('that is chosen stays until the lesson goes on', () => {
    const chosen = roomAfter(...SHOWING, by({ kind: 'show-scene', scene: 'wall' }));
    expect(chosen.board.scene).toBe('wall');
    const next = roomAfter(
      ...SHOWING,
      by({ kind: 'show-scene', scene: 'wall' }),
      by({ kind: 'go-to', phase: 'close' }),
    );
    expect(next.board.scene).toBeNull();
  });

  it.each([
    ['brief', 'no-challenge'],
    ['building', 'not-building'],
    ['stage', 'not-now'],
    ['gallery', 'nothing-to-show'],
    ['fleet', 'nothing-to-show'],
    ['forecast', 'nothing-to-show'],
    ['wall', 'accepted'],
    ['closing', 'accepted'],
  ] as const)('%s in a room that has just opened: %s', (scene, code) => {
    expect(codeOf(asked(roomAfter(), { kind: 'show-scene', scene }))).toBe(code);
  });

  it('with drawings is refused while teams draw, whoever hung them before', () => {
    const before = [...SHOWING, by(HANG), by({ kind: 'go-to', phase: 'brief' })];
    const building = roomAfter(...before, by({ kind: 'start-building', seconds: 60 }));
    expect(building.board.scene).toBeNull();
    for (const command of [{ kind: 'show-scene', scene: 'gallery' }, HANG, FLEET, FORETELL] as const)
      expect(codeOf(asked(building, command))).toBe('not-now');
  });

  it('that is shown already is no news', () => {
    expect(codeOf(asked(roomAfter(), { kind: 'show-scene', scene: null }))).toBe('already-so');
    expect(codeOf(asked(roomAfter(), { kind: 'set-board', setting: 'dark', on: false }))).toBe('already-so');
    expect(codeOf(asked(roomAfter(...SHOWING, by(HANG)), HANG))).toBe('already-so');
  });
});

describe('drawings on the board', () => {
  it('of a team that wants to stay away, of none, or of a stranger are refused', () => {
    const shy = roomAfter(...SHOWING, [team('t2'), { kind: 'wish-wall', wish: 'not-at-all' }]);
    expect(codeOf(asked(shy, HANG))).toBe('not-on-the-wall');
    expect(codeOf(asked(shy, { ...FLEET, entry: 'e2' }))).toBe('not-on-the-wall');
    expect(codeOf(asked(shy, { ...FORETELL, entry: 'e9' }))).toBe('unknown-entry');
    const gone = roomAfter(...SHOWING, by({ kind: 'remove-team', team: 't2' }));
    expect(codeOf(asked(gone, HANG))).toBe('team-removed');
  });

  it('leave it with their team, and a scene that is left empty with them', () => {
    const hung = [...SHOWING, by(FLEET), by(HANG)];
    const one = roomAfter(...hung, by({ kind: 'remove-team', team: 't1' }));
    expect([one.board.scene, one.board.fleet, one.board.gallery.map(({ entry }) => entry)]).toEqual([
      'gallery',
      null,
      ['e2'],
    ]);
    const none = roomAfter(...hung, by({ kind: 'remove-team', team: 't1' }), [
      team('t2'),
      { kind: 'wish-wall', wish: 'not-at-all' },
    ]);
    expect([none.board.scene, none.board.gallery]).toEqual([null, []]);
  });

  it('go with their challenge', () => {
    const { board } = roomAfter(...SHOWING, by(FLEET), by(HANG), by(FORETELL), [
      DESK,
      { kind: 'choose-challenge', challenge: 'c2', key: 'k2' },
    ]);
    expect(board).toEqual(FIRST_BOARD);
  });

  it('may be read by the board from then on, and by no other team', () => {
    for (const command of [HANG, FLEET, FORETELL]) {
      const state = roomAfter(...SHOWING, by(command));
      expect([mayRead(roomAfter(...SHOWING), BOARD, 'd1'), mayRead(state, BOARD, 'd1')]).toEqual([
        false,
        true,
      ]);
      expect(mayRead(state, team('t2'), 'd1')).toBe(false);
      expect(view(state, team('t2')).board).toEqual(FIRST_BOARD);
    }
  });

  it('once more is told again: the same robots start anew', () => {
    const state = roomAfter(...SHOWING, by(FLEET));
    expect(codeOf(asked(state, FLEET))).toBe('accepted');
    expect(state.board.fleet).toEqual({ entry: 'e1', design: 'd1', weather: 'stormy', since: 2000 });
  });
});

describe('a drive that is foretold', () => {
  const hands = (stop: number, counts: readonly number[]) => by({ kind: 'count-hands', stop, hands: counts });

  it('keeps the hands of each mark, also those counted late', () => {
    const { forecast } = roomAfter(
      ...SHOWING,
      by(FORETELL),
      hands(1, [3, 4]),
      by({ kind: 'drive-on', passed: 2 }),
      hands(0, [5]),
      hands(1, [4, 3]),
    ).board;
    expect(forecast).toMatchObject({ passed: 2, hands: [[5], [4, 3]] });
  });

  it('drives over one mark when the key is pressed twice', () => {
    const state = roomAfter(...SHOWING, by(FORETELL), by({ kind: 'drive-on', passed: 1 }));
    expect(codeOf(asked(state, { kind: 'drive-on', passed: 1 }))).toBe('already-so');
  });

  it('needs no team: what the challenge gives is enough', () => {
    const state = roomAfter(CHALLENGE, by({ kind: 'foretell', entry: null }));
    expect(state.board).toMatchObject({ scene: 'forecast', forecast: { hung: null, passed: 0, hands: [] } });
    expect(codeOf(asked(roomAfter(), { kind: 'foretell', entry: null }))).toBe('no-challenge');
  });

  it('has no hands before it begins', () => {
    expect(codeOf(asked(roomAfter(), { kind: 'count-hands', stop: 0, hands: [1] }))).toBe('nothing-to-show');
  });
});

describe('the closing', () => {
  it.each([
    { kind: 'go-to', phase: 'close' },
    { kind: 'show-scene', scene: 'closing' },
  ] as const)('tells the board, and no team, how all entries did: $kind', (command) => {
    const state = roomAfter(...SHOWING);
    const [told] = factsOf(decide(state, command, DESK, 3000)) as { kind: string }[];
    expect(told).toEqual({
      kind: 'verdicts-told',
      verdicts: [{ entry: 'e1', document: 'v1', points: 80, met: false }],
    });
    const event = { seq: state.seq + 1, at: 3000, version: 2, fact: told as never };
    expect(seen(team('t1'), event, state).fact).toBeNull();
    expect(view(apply(state, event), BOARD).entries[0]?.verdict).toEqual({
      document: 'v1',
      points: 80,
      met: false,
    });
  });

  it('counts what is judged after it has begun', () => {
    const judged: Move = [SERVER, { kind: 'judge', entry: 'e2', document: 'v2', points: 40, met: false }];
    const state = roomAfter(...SHOWING, by({ kind: 'go-to', phase: 'close' }), judged);
    expect(view(state, BOARD).entries.map(({ verdict }) => verdict?.points)).toEqual([80, 40]);
  });

  it('takes counts, and takes them back', () => {
    const counted = by({ kind: 'count-back', what: 'robots', counted: { there: 11, of: 12 } });
    expect(roomAfter(counted).board.robots).toEqual({ there: 11, of: 12 });
    const back = by({ kind: 'count-back', what: 'robots', counted: null });
    expect(roomAfter(counted, back).board.robots).toBeNull();
  });
});
