import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design, Line, Mark } from '../../../shared/documents/design.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { refusalOf } from '../../../shared/judge/refusal.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SHEET } from '../goals/hand-made.ts';
import { challengeOn } from './setting.ts';

const line = (id: string, pieces = 1): Line => ({
  id,
  width: 5,
  from: { x: 40, y: 100 },
  pieces: Array.from({ length: pieces }, (_, i) => ({ to: { x: 41 + i / 4, y: 100 }, bulge: 0 })),
});
const mark = (over: Partial<Mark> = {}): Mark => ({
  id: 'm',
  line: 'a',
  at: 0.5,
  bands: [{ ink: 'C', length: 5.5, gap: 0 }],
  ...over,
});
const design = (lines: Line[], marks: Mark[] = []): Design => ({ version: 1, drawing: { lines, marks } });
const challenge = challengeOn({ ...SHEET, given: { lines: [line('given')], marks: [] } }, 60);

describe('refusalOf', () => {
  test('refuses a start from a finish that the sheet lacks', () => {
    const { finish: _finish, ...sheet } = SHEET;
    const refusal = { code: 'finish-missing', path: ['starts'] };
    const strange = challenge({ sheet, starts: ['finish'] });
    expect(refusalOf(strange, design([]))).toEqual(refusal);
    expect(judge(strange, design([]), 'entry')).toMatchObject({ refusal, verdict: { met: false, runs: [] } });
  });
  test('refuses a goal about a robot from a berth that none sets out from', () => {
    const goals: Challenge['goals'] = [
      { id: 'g', formula: { kind: 'finish' }, must: true, weight: 1, start: 'finish' },
    ];
    const refusal = { code: 'start-missing', path: ['goals', 0, 'start'] };
    expect(refusalOf(challenge({ goals }), design([]))).toEqual(refusal);
    expect(judge(challenge({ goals }), design([]), 'entry')).toMatchObject({
      refusal,
      verdict: { met: false, runs: [] },
    });
  });
  test('refuses a robot without a size', () => {
    const kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, wheelTrack: 0 } };
    expect(refusalOf(challenge({ kit }), design([]))).toEqual({
      code: 'size-zero',
      path: ['kit', 'robot', 'wheelTrack'],
    });
  });
  test('accepts a mark on a drawn and on a given line', () => {
    const both = [mark(), mark({ id: 'n', line: 'given' })];
    expect(refusalOf(challenge(), design([line('a')], both))).toBeUndefined();
  });
  test('names the path of a mark whose line is missing', () => {
    expect(refusalOf(challenge(), design([line('a')], [mark(), mark({ id: 'n', line: 'gone' })]))).toEqual({
      code: 'mark-without-line',
      path: ['drawing', 'marks', 1, 'line'],
      mark: 'n',
      line: 'gone',
    });
  });
  test('refuses a mark past the end of its line of 1 mm', () => {
    expect(refusalOf(challenge(), design([line('a')], [mark({ at: 1.5 })]))).toMatchObject({
      code: 'mark-past-end',
      measured: 1.5,
      allowed: 1,
    });
  });
  test('refuses an ink that the kit lacks, with the path of the band', () => {
    const bands = [
      { ink: 'C', length: 5.5, gap: 0 },
      { ink: 'Z', length: 5.5, gap: 0 },
    ];
    expect(refusalOf(challenge(), design([line('a')], [mark({ bands })]))).toMatchObject({
      code: 'unknown-ink',
      path: ['drawing', 'marks', 0, 'bands', 1, 'ink'],
    });
  });
  test('refuses a line with the id of a given one', () => {
    expect(refusalOf(challenge(), design([line('a'), line('given')]))).toEqual({
      code: 'id-already-given',
      path: ['drawing', 'lines', 1, 'id'],
      id: 'given',
    });
  });
  test('counts given and drawn pieces together: 500 pass, 501 do not', () => {
    expect(refusalOf(challenge(), design([line('a', 499)]))).toBeUndefined();
    expect(refusalOf(challenge(), design([line('a', 500)]))).toMatchObject({
      code: 'too-many-pieces',
      measured: 501,
      allowed: 500,
    });
  });
  test('leaves more ink or marks than the challenge allows to the drawing rules', () => {
    const little = challenge({ limits: { time: 60, ink: 0.8, marks: 0 } });
    expect(refusalOf(little, design([line('a')], [mark()]))).toBeUndefined();
  });
});
