import { describe, expect, it } from 'vitest';
import { nextStep, reachable, standOf, suggestedKey } from '../../../../client/desk/steps.ts';
import type { RoomState } from '../../../../shared/room/state.ts';
import { roomState } from '../link/fakes.ts';

const rounds = [{ challenge: 'c', key: 'first-line', varied: false }];
const entry = { round: 0 } as RoomState['entries'][number];
const open = { since: 0, until: null, ended: false };
const over = { since: 0, until: null, ended: true };
const view = (step: Parameters<typeof nextStep>[1]['step'], change = {}) => ({
  step,
  marked: null,
  queued: null,
  unshown: null,
  turns: 2,
  ...change,
});

describe('nextStep', () => {
  const cases: [string, Partial<RoomState>, Parameters<typeof nextStep>[1], object][] = [
    ['while preparing: back to the class', {}, view('prepare'), { kind: 'look-at', step: 'gather' }],
    ['while gathering: choose', {}, view('gather'), { kind: 'look-at', step: 'brief' }],
    ['a challenge marked: take it', {}, view('brief', { marked: 'long-pier' }), { kind: 'take-challenge' }],
    [
      'the chosen challenge marked: start building',
      { phase: 'brief', rounds },
      view('brief', { marked: 'first-line' }),
      { kind: 'start-building' },
    ],
    [
      'another one marked than the chosen: take that',
      { phase: 'brief', rounds },
      view('brief', { marked: 'long-pier' }),
      { kind: 'take-challenge' },
    ],
    [
      'the played one marked: play it again',
      { phase: 'show', rounds, building: over },
      view('brief', { marked: 'first-line' }),
      { kind: 'take-challenge' },
    ],
    [
      'looking at challenges while teams build: back to them',
      { phase: 'build', rounds, building: open },
      view('brief', { marked: 'long-pier' }),
      { kind: 'look-at', step: 'build' },
    ],
    [
      'teams build: end it',
      { phase: 'build', rounds, building: open },
      view('build'),
      { kind: 'end-building' },
    ],
    [
      'building is over: show',
      { phase: 'build', rounds, building: over },
      view('build'),
      { kind: 'go-to-show' },
    ],
    [
      'a drawing has not been shown: that one',
      { phase: 'show', rounds, building: over },
      view('show', { unshown: 'e' }),
      { kind: 'show-next', entry: 'e' },
    ],
    [
      'nothing was handed in: close',
      { phase: 'show', rounds, building: over },
      view('show'),
      { kind: 'go-to-close' },
    ],
    [
      'all have been shown: to paper',
      { phase: 'show', rounds, building: over, entries: [entry] },
      view('show'),
      { kind: 'go-to-drive' },
    ],
    [
      'looking at the robots before the class is there: to them',
      { phase: 'show', rounds, building: over },
      view('drive'),
      { kind: 'go-to-drive' },
    ],
    [
      'not every team has driven: the next turn',
      { phase: 'drive', rounds, building: over },
      view('drive'),
      { kind: 'next-turn', turn: 1 },
    ],
    [
      'every team has driven: close',
      { phase: 'drive', rounds, building: over },
      view('drive', { turns: 1 }),
      { kind: 'go-to-close' },
    ],
    [
      'looking at the end before the class is there: close',
      { phase: 'show', rounds, building: over },
      view('close', { unshown: 'e' }),
      { kind: 'go-to-close' },
    ],
    [
      'looking at the end while teams build: back to them',
      { phase: 'build', rounds, building: open },
      view('close'),
      { kind: 'look-at', step: 'build' },
    ],
    [
      'all have been shown and a challenge waits: that one',
      { phase: 'show', rounds, building: over },
      view('show', { queued: 'long-pier' }),
      { kind: 'take-queued', key: 'long-pier' },
    ],
    [
      'a drawing has not been shown: that one, before any challenge that waits',
      { phase: 'show', rounds, building: over },
      view('show', { unshown: 'e', queued: 'long-pier' }),
      { kind: 'show-next', entry: 'e' },
    ],
    ['at the end: another challenge', { phase: 'close' }, view('close'), { kind: 'another-challenge' }],
  ];
  it.each(cases)('%s', (_, change, looked, next) => {
    expect(nextStep(roomState(1, change), looked)).toEqual(next);
  });
});

describe('suggestedKey', () => {
  const course = ['first-line', 'sharp-corner', 'long-pier'];
  const from = (last: string | null) => ({ queue: [], from: { room: 'old', last, places: [] } });
  const suggested = (change: Partial<RoomState>, queued: string | null = null) =>
    suggestedKey(roomState(1, change), course, queued);

  it('is what was just chosen, before the queue', () => {
    expect(suggested({ rounds }, 'long-pier')).toBe('first-line');
  });

  it('is the first of the queue once a challenge has been built', () => {
    expect(suggested({ rounds, building: over }, 'long-pier')).toBe('long-pier');
    expect(suggested({ rounds, building: over })).toBe('first-line');
  });

  it('is what comes after the last one of the lesson before, or the first of the course', () => {
    expect([suggested({ plan: from('first-line') }), suggested({ plan: from(null) })]).toEqual([
      'sharp-corner',
      'first-line',
    ]);
    expect(suggested({ plan: from('long-pier') })).toBe('first-line');
  });
});

describe('reachable', () => {
  it('building, showing and driving need a building phase, everything else is open', () => {
    const closed = (['prepare', 'gather', 'brief', 'build', 'show', 'drive', 'close'] as const).filter(
      (step) => !reachable(step, roomState(1, { rounds })),
    );
    expect(closed).toEqual(['build', 'show', 'drive']);
  });
});

describe('standOf', () => {
  it('says which steps lie behind the class', () => {
    expect((['gather', 'brief', 'build'] as const).map((step) => standOf(step, 'brief'))).toEqual([
      'done',
      'here',
      'ahead',
    ]);
  });
});
