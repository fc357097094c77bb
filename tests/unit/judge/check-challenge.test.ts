import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Formula } from '../../../shared/documents/formula.ts';
import { checkChallenge } from '../../../shared/judge/check-challenge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SHEET } from '../goals/hand-made.ts';
import { challengeOn } from './setting.ts';

const challenge = challengeOn(SHEET, 60);
const { finish: _finish, ...noFinish } = SHEET;
const wanting = (formula: Formula, sheet: Challenge['sheet'] = SHEET) =>
  checkChallenge(challenge({ sheet, goals: [{ id: 'g', formula, must: true, weight: 1 }] }));
const goalPath = ['goals', 0, 'formula'];

describe('checkChallenge', () => {
  test('is silent about a sound challenge', () => {
    expect(checkChallenge(challenge())).toEqual([]);
  });
  test('finish, time and park without an area need a finish berth, also inside a formula', () => {
    const wishes: Formula[] = [{ kind: 'finish' }, { kind: 'time', from: 0, to: 10 }, { kind: 'park' }];
    for (const wish of wishes) {
      expect(wanting(wish, noFinish)).toEqual([{ path: goalPath, code: 'finish-missing' }]);
    }
    const inside: Formula = {
      kind: 'not',
      of: { kind: 'or', of: [{ kind: 'keep-out' }, { kind: 'finish' }] },
    };
    expect(wanting(inside, noFinish).at(-1)).toEqual({
      path: [...goalPath, 'of', 'of', 1],
      code: 'finish-missing',
    });
  });
  test('a start from a finish that is not there is named', () => {
    const problems = checkChallenge(
      challenge({
        sheet: noFinish,
        starts: ['start', 'finish'],
        goals: [{ id: 'g', formula: { kind: 'stay-on-paper' }, must: true, weight: 1 }],
      }),
    );
    expect(problems).toEqual([{ path: ['starts'], code: 'finish-missing' }]);
  });
  test('a berth that robots only set out from is no finish to wish for', () => {
    const sheet = { ...SHEET, finish: { ...SHEET.finish!, startOnly: true } };
    expect(wanting({ kind: 'finish' }, sheet)).toEqual([{ path: goalPath, code: 'finish-missing' }]);
  });
  test('a goal or a question about a berth that none sets out from is named', () => {
    const goals = [{ id: 'g', formula: { kind: 'finish' }, must: true, weight: 1, start: 'finish' }] as const;
    expect(checkChallenge(challenge({ goals: [...goals] }))).toEqual([
      { path: ['goals', 0, 'start'], code: 'start-missing' },
    ]);
    expect(checkChallenge(challenge({ asks: [{ kind: 'end', start: 'finish' }] }))).toEqual([
      { path: ['asks', 0, 'start'], code: 'start-missing' },
    ]);
  });
  test('predict needs given lines and questions, every other way to play needs goals', () => {
    expect(checkChallenge(challenge({ play: 'predict', goals: [] })).map((p) => p.code)).toEqual([
      'given-lines-missing',
      'asks-missing',
    ]);
    expect(checkChallenge(challenge({ goals: [] })).map((p) => p.code)).toEqual(['goals-missing']);
  });
  test('questions about places that are not on the sheet are named', () => {
    const asked = (asks: Challenge['asks'], sheet: Challenge['sheet'] = SHEET) =>
      checkChallenge(challenge({ sheet, goals: [], play: 'predict', asks })).map((p) => p.code);
    expect(asked([{ kind: 'pace', start: 'start', area: 'moon' }])).toContain('unknown-area');
    const place = { kind: 'berth', berth: 'finish' } as const;
    const howMany = [{ kind: 'how-many', start: 'start', place, of: 20 }] as const;
    expect(asked([...howMany], noFinish)).toContain('finish-missing');
    expect(asked([...howMany])).not.toContain('finish-missing');
  });
  test('gates and areas must exist, keep-out must have something to keep out of', () => {
    expect(wanting({ kind: 'gates', gates: ['bakery'], ordered: true })).toEqual([
      { path: goalPath, code: 'unknown-gate' },
    ]);
    expect(wanting({ kind: 'park', area: 'moon' })).toEqual([{ path: goalPath, code: 'unknown-area' }]);
    expect(wanting({ kind: 'park', area: 'landing' })).toEqual([]);
    expect(wanting({ kind: 'keep-out' })).toEqual([{ path: goalPath, code: 'keep-out-missing' }]);
  });
  test('a window of 6 % to either side of 10 s is fair, a narrower one is not', () => {
    expect(wanting({ kind: 'time', from: 9.4, to: 10.6 })).toEqual([]);
    expect(wanting({ kind: 'time', from: 9.5, to: 10.5 })).toEqual([
      { path: goalPath, code: 'window-unfair' },
    ]);
    expect(wanting({ kind: 'time', from: 12, to: 10 })).toEqual([{ path: goalPath, code: 'window-empty' }]);
  });
  test('windows of time operators are held to the same, with their place', () => {
    const within = (from: number, to: number, kind: 'always' | 'eventually' = 'eventually'): Formula => ({
      kind,
      of: { kind: 'finish' },
      window: { from, to },
    });
    expect(wanting(within(9.4, 10.6))).toEqual([]);
    expect(wanting(within(0, 2))).toEqual([]);
    expect(wanting({ kind: 'and', of: [{ kind: 'finish' }, within(9.5, 10.5)] })).toEqual([
      { path: [...goalPath, 'of', 1, 'window'], code: 'window-unfair' },
    ]);
    expect(wanting(within(5, 5, 'always'))).toEqual([
      { path: [...goalPath, 'window'], code: 'window-empty' },
    ]);
    const never: Formula = { kind: 'until', hold: { kind: 'finish' }, until: { kind: 'finish' }, within: 0 };
    expect(wanting(never)).toEqual([{ path: [...goalPath, 'within'], code: 'window-empty' }]);
  });
  test('conditions on a moment need their places too', () => {
    const nest = { kind: 'in-area', area: 'nest' } as const;
    expect(wanting({ kind: 'lasting', of: nest, how: 'at-least', time: 2 })).toEqual([
      { path: [...goalPath, 'of'], code: 'unknown-area' },
    ]);
    expect(wanting({ kind: 'until', hold: { kind: 'every-gate' }, until: nest })).toEqual([
      { path: [...goalPath, 'hold'], code: 'gates-missing' },
      { path: [...goalPath, 'until'], code: 'unknown-area' },
    ]);
    expect(wanting({ kind: 'act-in', act: 'wait', area: 'nest' })).toEqual([
      { path: goalPath, code: 'unknown-area' },
    ]);
    expect(wanting({ kind: 'act-in', act: 'wait', area: 'landing' })).toEqual([]);
  });
  test('a way to play needs what it is played with', () => {
    expect(checkChallenge(challenge({ play: 'fill-in' })).map((p) => p.code)).toEqual([
      'given-lines-missing',
    ]);
    expect(checkChallenge(challenge({ play: 'mend' })).map((p) => p.code)).toEqual(['begin-missing']);
  });
  test('a berth beside the paper and a repeated id are named with their path', () => {
    const start = { ...SHEET.start, at: { x: 300, y: 100 } };
    const areas = [SHEET.areas[0]!, SHEET.areas[0]!];
    expect(checkChallenge(challenge({ sheet: { ...SHEET, start, areas } }))).toEqual([
      { path: ['sheet', 'start'], code: 'off-the-sheet' },
      { path: ['sheet', 'areas'], code: 'same-id-twice' },
    ]);
  });
  test('boxes lie on the sheet, differ in their ids, and take in the smallest mark of the kit', () => {
    const box = (id: string, x: number, w: number, h: number) => ({
      id,
      name: { en: 'Marks' },
      at: { x, y: 20 },
      w,
      h,
    });
    const problems = (...boxes: ReturnType<typeof box>[]) =>
      checkChallenge(challenge({ sheet: { ...SHEET, boxes } }));
    // Two bands of 4 mm on a line of 4 mm, with 0.2 mm of ink to either side; lying and upright.
    expect(problems(box('a', 10, 8, 4.4), box('b', 60, 4.4, 8))).toEqual([]);
    expect(problems(box('a', SHEET.w - 30, 30, 10))).toEqual([]);
    expect(problems(box('a', 10, 7.99, 4.4), box('b', 60, 8, 4.39), box('c', 90, 4.4, 7.9))).toEqual(
      [0, 1, 2].map((i) => ({ path: ['sheet', 'boxes', i], code: 'box-too-small' })),
    );
    expect(problems(box('a', SHEET.w - 29.99, 30, 10))).toEqual([
      { path: ['sheet', 'boxes'], code: 'off-the-sheet' },
    ]);
    expect(problems(box('a', 10, 30, 10), box('a', 60, 30, 10))).toEqual([
      { path: ['sheet', 'boxes'], code: 'same-id-twice' },
    ]);
  });
  test('a model with more line or marks than the challenge allows is named', () => {
    const bands = [
      { ink: 'C', length: 5.5, gap: 0 },
      { ink: 'A', length: 5.5, gap: 0 },
    ];
    const line = {
      id: 'a',
      width: 5,
      from: { x: 40, y: 100 },
      pieces: [{ to: { x: 140, y: 100 }, bulge: 0 }],
    };
    const drawing = { lines: [line], marks: [{ id: 'm', line: 'a', at: 40, bands }] };
    const limited = (ink: number, marks: number) =>
      checkChallenge(challenge({ model: { version: 1, drawing }, limits: { time: 60, ink, marks } }));
    expect(limited(100, 1)).toEqual([]);
    expect(limited(99, 0)).toEqual([
      { path: ['model', 'drawing', 'lines'], code: 'too-much-ink' },
      { path: ['model', 'drawing', 'marks'], code: 'too-many-marks' },
    ]);
  });
  test('what is wrong in the kit is named with the path inside it, what is to be weighed is not', () => {
    const robot = { ...DEMO_KIT.robot, wheelTrack: 0 };
    const row = { word: 'CA', action: { kind: 'park' } } as const;
    const inks = DEMO_KIT.inks.map((ink) => (ink.id === 'V' ? { ...ink, color: '#201030' } : ink));
    const kit = { ...DEMO_KIT, robot, inks, chart: [...DEMO_KIT.chart, row] };
    expect(checkChallenge(challenge({ kit }))).toEqual([
      { path: ['kit', 'robot', 'wheelTrack'], code: 'size-zero' },
      { path: ['kit', 'chart', 12, 'word'], code: 'word-twice' },
    ]);
  });
  test('given marks stand on given lines, in inks of the kit', () => {
    const line = { id: 'l', width: 5, from: { x: 30, y: 20 }, pieces: [{ to: { x: 130, y: 20 }, bulge: 0 }] };
    const problems = (on: string, ink: string, at = 20) => {
      const marks = [{ id: 'm', line: on, at, bands: [{ ink, length: 5, gap: 0 }] }];
      return checkChallenge(challenge({ sheet: { ...SHEET, given: { lines: [line], marks } } }));
    };
    const path = ['sheet', 'given', 'marks', 0];
    expect(problems('l', 'C')).toEqual([]);
    expect(problems('gone', 'C')).toEqual([{ path: [...path, 'line'], code: 'mark-without-line' }]);
    expect(problems('l', 'C', 101)).toEqual([{ path: [...path, 'at'], code: 'mark-past-end' }]);
    expect(problems('l', 'Z')).toEqual([{ path: [...path, 'bands', 0, 'ink'], code: 'unknown-ink' }]);
  });
  test('a model that the sheet refuses is named with the path inside it', () => {
    const marks = [{ id: 'm', line: 'gone', at: 1, bands: [{ ink: 'C', length: 5.5, gap: 0 }] }];
    const model = { version: 1 as const, drawing: { lines: [], marks } };
    expect(checkChallenge(challenge({ model }))).toEqual([
      { path: ['model', 'drawing', 'marks', 0, 'line'], code: 'mark-without-line' },
    ]);
  });
});
