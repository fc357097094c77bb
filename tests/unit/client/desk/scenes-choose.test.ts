import { describe, expect, it } from 'vitest';
import {
  choiceOf,
  drawingsFor,
  galleryOf,
  likelyDrawing,
  pagesOf,
} from '../../../../client/desk/scenes-choose.ts';
import type { Entry } from '../../../../shared/room/state.ts';
import { challengeOf } from '../../../disturbed.ts';
import { DESK, type Move, roomAfter, SERVER, team } from '../../room/arbitraries.ts';

const drawn = challengeOf('one-fast-stretch');
const predicted = challengeOf('from-the-other-end');
const CHOSEN: Move[] = [
  ...['t1', 't2', 't3'].map((id): Move => [SERVER, { kind: 'join', team: id }]),
  [DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }],
];
const judged = (by: string, entry: string, points: number, at: number): Move[] => [
  [team(by), { kind: 'hand-in', round: 0, entry, design: `d-${entry}` }, at],
  [SERVER, { kind: 'judge', entry, document: `v-${entry}`, points, met: false }, at],
];
const SHOWING: Move[] = [
  ...CHOSEN,
  [DESK, { kind: 'start-building', seconds: null }],
  ...judged('t1', 'a', 60, 3000),
  ...judged('t1', 'b', 20, 9000),
  ...judged('t2', 'c', 10, 5000),
  [DESK, { kind: 'end-building' }],
];
const ids = (entries: readonly Entry[]) => entries.map(({ id }) => id);
const why = (choice: ReturnType<typeof choiceOf>) => (choice.kind === 'hindered' ? choice.why : choice.ask);

describe('drawings for the board', () => {
  const room = roomAfter(...SHOWING);

  it('are those of the round, without teams that stay away; none where answers are handed in', () => {
    expect(ids(drawingsFor(room, drawn))).toEqual(['a', 'b', 'c']);
    expect(ids(drawingsFor(room, predicted))).toEqual([]);
    const shy = roomAfter(...SHOWING, [team('t1'), { kind: 'wish-wall', wish: 'not-at-all' }]);
    expect(ids(drawingsFor(shy, drawn))).toEqual(['c']);
  });

  it('hang with the best of each team, in the order of the berths', () => {
    expect(ids(galleryOf(room, drawingsFor(room, drawn)))).toEqual(['a', 'c']);
  });

  it('come in pages of twelve', () => {
    const many = Array.from({ length: 25 }, (_, i) => ({ ...room.entries[0]!, id: `e${i}` }));
    expect(pagesOf(many).map((page) => page.length)).toEqual([12, 12, 1]);
    expect(pagesOf([])).toEqual([]);
  });

  it('begin with what is on the stage, or else with the newest', () => {
    expect(likelyDrawing(room, drawingsFor(room, drawn))?.id).toBe('b');
    const staged = roomAfter(
      ...SHOWING,
      [DESK, { kind: 'go-to', phase: 'show' }],
      [DESK, { kind: 'stage', entries: ['c'] }],
    );
    expect(likelyDrawing(staged, drawingsFor(staged, drawn))?.id).toBe('c');
  });
});

describe('choiceOf', () => {
  it('of a room without a challenge: the wall, the closing, and why not the others', () => {
    const room = roomAfter();
    const all = (
      ['wall', 'brief', 'building', 'stage', 'gallery', 'fleet', 'forecast', 'closing'] as const
    ).map((scene) => why(choiceOf(room, null, scene)));
    expect(all).toEqual([
      { kind: 'show-scene', scene: 'wall' },
      'no-challenge',
      'step',
      'step',
      'no-challenge',
      'no-challenge',
      'no-challenge',
      { kind: 'show-scene', scene: 'closing' },
    ]);
  });

  it('while teams draw: no drawing', () => {
    const room = roomAfter(...CHOSEN, [DESK, { kind: 'start-building', seconds: null }]);
    for (const scene of ['gallery', 'fleet', 'forecast'] as const)
      expect(why(choiceOf(room, drawn, scene))).toBe('building');
  });

  it('shows drawings that there are, in the weather of the challenge', () => {
    const room = roomAfter(...SHOWING);
    expect(why(choiceOf(room, drawn, 'gallery'))).toEqual({ kind: 'hang', entries: ['a', 'c'] });
    expect(why(choiceOf(room, { ...drawn, weather: 'breezy' }, 'fleet'))).toEqual({
      kind: 'show-fleet',
      entry: 'b',
      weather: 'breezy',
    });
    expect(why(choiceOf(room, drawn, 'forecast'))).toEqual({ kind: 'foretell', entry: 'b' });
  });

  it('shows a fleet in the weather of the class, whatever a team has of its own', () => {
    const weather = (whose: string | null, to: 'breezy' | 'stormy'): Move => [
      DESK,
      { kind: 'set-weather', team: whose, weather: to },
    ];
    const [ended] = SHOWING.slice(-1);
    const shown = (...moves: Move[]) =>
      why(choiceOf(roomAfter(...SHOWING.slice(0, -1), ...moves, ended!), drawn, 'fleet'));
    const own = [weather('t1', 'stormy'), ...judged('t1', 'e', 10, 9500)];
    expect(shown(...own)).toEqual({ kind: 'show-fleet', entry: 'e', weather: 'calm' });
    expect(shown(weather(null, 'breezy'), ...own)).toMatchObject({ entry: 'e', weather: 'breezy' });
  });

  it('foretells without any tablet where the challenge gives marks, and says so where it gives none', () => {
    const room = roomAfter([DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }]);
    expect(why(choiceOf(room, predicted, 'forecast'))).toEqual({ kind: 'foretell', entry: null });
    expect(why(choiceOf(room, drawn, 'forecast'))).toBe('no-marks');
    expect(why(choiceOf(room, drawn, 'fleet'))).toBe('no-drawings');
  });
});
