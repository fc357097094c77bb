import { describe, expect, test } from 'vitest';
import type { RunEvent } from '../../../shared/documents/trace.ts';
import { stretchesOf, stretchLengths } from '../../../shared/goals/stretch-lengths.ts';
import { at, run } from './hand-made.ts';

const signal = (way: number, pace: 'steady' | 'fast'): RunEvent => ({
  ...at.acting('signal', { way, pace }),
});
const acting = (way: number, kind: 'nothing' | 'turn-back'): RunEvent => ({
  ...at.parking(way, 'fast'),
  kind: 'act',
  action: { kind },
  read: 0,
});

describe('stretchesOf', () => {
  test('the pace of the first event holds from the start where it is no change', () => {
    const even = run([signal(50, 'fast'), at.end('finished', { way: 120, pace: 'fast' })]);
    expect(stretchesOf(even)).toEqual([{ pace: 'fast', from: 0, to: 120 }]);
  });
  test('a change of pace ends one stretch and begins the next', () => {
    const changed = run([at.pace(40, 'steady', 'fast'), at.end('finished', { way: 100, pace: 'fast' })]);
    expect(stretchesOf(changed)).toEqual([
      { pace: 'steady', from: 0, to: 40 },
      { pace: 'fast', from: 40, to: 100 },
    ]);
  });
  test('a change to the same pace ends nothing', () => {
    const same = run([at.pace(40, 'steady', 'steady'), at.end('finished', { way: 100 })]);
    expect(stretchesOf(same)).toEqual([{ pace: 'steady', from: 0, to: 100 }]);
  });
  test('waiting and turning back end a stretch, calling, corners and actions of other kinds do not', () => {
    const stood = run([
      at.corner(20, 'fast'),
      signal(30, 'fast'),
      acting(35, 'nothing'),
      at.wait(50, 'fast'),
      at.turnBack(80, 'fast'),
      at.end('finished', { way: 100, pace: 'fast' }),
    ]);
    expect(stretchesOf(stood).map(({ from, to }) => [from, to])).toEqual([
      [0, 50],
      [50, 80],
      [80, 100],
    ]);
  });
  test('two breaks at one place leave no empty stretch, and what follows parking is none', () => {
    const parked = run([
      at.wait(60, 'fast'),
      at.turnBack(60, 'fast'),
      at.parking(90, 'fast'),
      at.end('parked', { way: 100, pace: 'fast' }),
    ]);
    expect(stretchesOf(parked).map(({ from, to }) => [from, to])).toEqual([
      [0, 60],
      [60, 90],
    ]);
  });
  test('before the first event there is none', () => {
    expect(stretchesOf({ ...run([]), events: [] })).toEqual([]);
  });
});

test('stretchLengths gives those of one pace, longest first', () => {
  const mixed = run([
    at.pace(40, 'fast', 'steady'),
    at.pace(90, 'steady', 'fast'),
    at.end('finished', { way: 190, pace: 'fast' }),
  ]);
  expect(stretchLengths(mixed, 'fast')).toEqual([100, 40]);
  expect(stretchLengths(mixed, 'steady')).toEqual([50]);
  expect(stretchLengths(mixed, 'creep')).toEqual([]);
});
