import { describe, expect, test } from 'vitest';
import type { Formula, Moment } from '../../../shared/documents/formula.ts';
import type { RunEvent, Trace } from '../../../shared/documents/trace.ts';
import { certainFrom } from '../../../shared/goals/certain.ts';
import { at, CONTEXT, run, samplesAt } from './hand-made.ts';

const certain = (formula: Formula, trace: Trace) => certainFrom(formula, trace, CONTEXT);
const met = (t: number) => ({ t, met: true });
const missed = (t: number) => ({ t, met: false });
const not = (of: Formula): Formula => ({ kind: 'not', of });

// 1 s before the landing, 1 s inside it, 1 s past it; 50 samples a second.
const LANDING = { kind: 'in-area', area: 'landing' } as const;
const across = run([at.end('lost', { t: 3 })], {
  samples: samplesAt([
    { x: 90, y: 120, way: 50, count: 50 },
    { x: 130, y: 120, way: 90, count: 50 },
    { x: 175, y: 120, way: 135, count: 51 },
  ]),
});
const over =
  (kind: 'always' | 'eventually') =>
  (of: Moment, from?: number, to?: number): Formula => ({
    kind,
    of,
    ...(from === undefined ? {} : { window: { from, to } }),
  });
const always = over('always');
const eventually = over('eventually');

// "F p" has beginnings that are good whatever follows and none that are bad, "G p" the other way about, "G F p"
// neither (Bauer, Leucker and Schallhart 2011, section on monitorable properties; from memory).
describe('what holds at some moment', () => {
  test('is met from that moment on', () => {
    expect(certain(eventually(LANDING), across)).toEqual(met(1));
  });
  test('is never missed before the end', () => {
    expect(certain(eventually({ kind: 'in-area', area: 'moon' }), across)).toBeNull();
  });
  test('within a window is missed once that is over', () => {
    expect(certain(eventually(LANDING, 0, 0.5), across)).toEqual(missed(0.5));
  });
  test('in a window is met when that begins', () => {
    expect(certain(eventually(LANDING, 1.5, 2.5), across)).toEqual(met(1.5));
  });
});

describe('what holds always', () => {
  test('is missed from the first other moment on', () => {
    expect(certain(always({ kind: 'not', of: LANDING }), across)).toEqual(missed(1));
  });
  test('is never met before the end', () => {
    expect(certain(always({ kind: 'stay-on-paper' }), across)).toBeNull();
  });
  test('within a window is met once that is over', () => {
    expect(certain(always(LANDING, 1, 1.5), across)).toEqual(met(1.5));
  });
  test('again and again: only the end tells', () => {
    expect(certain({ kind: 'always', of: { kind: 'eventually', of: LANDING } }, across)).toBeNull();
  });
});

describe('until', () => {
  const journey = run([
    at.gate('market', { t: 1 }),
    at.turn(2),
    at.gate('bakery', { t: 4 }),
    at.end('lost', { t: 6 }),
  ]);
  const turned = { kind: 'turn-back', count: 1 } as const;
  const notYet = (gate: string): Moment => ({
    kind: 'not',
    of: { kind: 'gates', gates: [gate], ordered: true },
  });
  test('is met as soon as the right side is', () => {
    expect(certain({ kind: 'until', hold: notYet('bakery'), until: turned }, journey)).toEqual(met(2));
  });
  test('is missed as soon as the left side is before it', () => {
    expect(certain({ kind: 'until', hold: notYet('market'), until: turned }, journey)).toEqual(missed(1));
  });
  test('is missed once its time is up', () => {
    const wish: Formula = { kind: 'until', hold: notYet('bakery'), until: turned, within: 1.5 };
    expect(certain(wish, journey)).toEqual(missed(1.5));
  });
});

describe('lasting', () => {
  const inside = (how: 'at-least' | 'at-most', time: number): Formula => ({
    kind: 'lasting',
    of: LANDING,
    how,
    time,
  });
  test('at least 0.49 s: met after half a second inside', () => {
    expect(certain(inside('at-least', 0.49), across)).toEqual(met(1.5));
  });
  test('at most 0.51 s: missed at the next sample after that', () => {
    expect(certain(inside('at-most', 0.51), across)).toEqual(missed(1.52));
  });
  test('at most 2 s: the end tells', () => {
    expect(certain(inside('at-most', 2), across)).toBeNull();
  });
});

/** At pace fast for 160 mm, until 2 s; arrives at 4 s, rolls on to 5 s; turns back at 1 s and at 3 s. */
const driven = run(
  [
    at.pace(0, 'fast', 'fast'),
    at.turn(1),
    at.gate('market', { t: 1.5 }),
    { ...at.pace(160, 'fast', 'steady'), t: 2 },
    at.gate('bakery', { t: 2.5 }),
    { ...at.read('m'), t: 2.5 },
    at.turn(3),
    at.acting('signal', { t: 3.5, x: 130, y: 120 }),
    at.finish({ t: 4, way: 320, pace: 'steady' }),
    at.end('finished', { t: 5, way: 400 }),
  ],
  {
    samples: samplesAt([
      { x: 20, y: 100, way: 150, count: 100 },
      { x: 5, y: 100, way: 320, count: 101 },
      { x: 90, y: 100, way: 400, count: 50 },
    ]),
  },
);
const stretch = (how: 'exactly' | 'at-least' | 'at-most', count: number): Formula => ({
  kind: 'stretches',
  pace: 'fast',
  how,
  count,
  length: 20,
});

describe('a predicate', () => {
  test.each<[Formula, ReturnType<typeof met> | null]>([
    [{ kind: 'finish' }, met(4)],
    [{ kind: 'time', from: 0, to: 5 }, met(4)],
    // Too early, which the arrival tells; too late, which the clock does.
    [{ kind: 'time', from: 4.5, to: 9 }, missed(4)],
    [{ kind: 'time', from: 0, to: 1 }, missed(1.02)],
    [{ kind: 'pace-at-end', pace: 'steady' }, met(4)],
    [{ kind: 'pace-at-end', pace: 'fast' }, missed(4)],
    [{ kind: 'gates', gates: ['market', 'bakery'], ordered: true }, met(2.5)],
    [{ kind: 'gates', gates: ['bakery', 'market'], ordered: true }, null],
    [{ kind: 'read-marks', count: 1 }, met(2.5)],
    [{ kind: 'act-in', act: 'signal', area: 'landing' }, met(3.5)],
    [{ kind: 'act-in', act: 'wait', area: 'landing' }, null],
    // Twice is twice only when there is no third time.
    [{ kind: 'turn-back', count: 1 }, missed(3)],
    [{ kind: 'turn-back', count: 2 }, null],
    [stretch('at-least', 1), met(2)],
    [stretch('at-most', 0), missed(2)],
    [stretch('exactly', 0), missed(2)],
    [stretch('exactly', 1), null],
    [{ kind: 'way', how: 'at-least', length: 300 }, met(2)],
    [{ kind: 'way', how: 'at-most', length: 300 }, missed(2)],
    // 320 mm when it arrives; what comes after that does not count.
    [{ kind: 'way', how: 'at-least', length: 390 }, missed(4)],
    [{ kind: 'way', how: 'at-most', length: 390 }, met(4)],
    // The rear of the robot is behind the axle, which is 5 mm from the left edge from 2 s on.
    [{ kind: 'stay-on-paper' }, missed(2)],
    [{ kind: 'keep-out' }, null],
    [{ kind: 'decided' }, null],
    [{ kind: 'mark-limit', most: 1 }, met(0)],
    [{ kind: 'park' }, null],
    [{ kind: 'steadiness', least: 0.9 }, null],
  ])('%j: %j', (formula, expected) => {
    expect(certain(formula, driven)).toEqual(expected);
  });

  test('that leaves the robot to decide: missed at the first junction where it does', () => {
    const junction = (t: number, by: 'mark' | 'chance'): RunEvent => ({
      kind: 'junction',
      t,
      x: 0,
      y: 0,
      way: 0,
      pace: 'steady',
      took: 'left',
      by,
      arms: [],
    });
    const forked = run([junction(1, 'mark'), junction(2, 'chance'), at.end('lost', { t: 3 })]);
    expect(certain({ kind: 'decided' }, forked)).toEqual(missed(2));
  });
});

describe('what is put together', () => {
  const arrives: Formula = { kind: 'finish' };
  const calls: Formula = { kind: 'act-in', act: 'signal', area: 'landing' };
  test('"not" turns both about, and one too many is met there', () => {
    expect(certain(not(arrives), driven)).toEqual(missed(4));
    expect(certain(not({ kind: 'turn-back', count: 1 }), driven)).toEqual(met(3));
    expect(certain(not(not(calls)), driven)).toEqual(met(3.5));
  });
  test('"and" is met with its last part and missed with its first', () => {
    expect(certain({ kind: 'and', of: [arrives, calls] }, driven)).toEqual(met(4));
    expect(certain({ kind: 'and', of: [not(arrives), not(calls)] }, driven)).toEqual(missed(3.5));
    expect(certain({ kind: 'and', of: [calls, { kind: 'park' }] }, driven)).toBeNull();
  });
  test('"or" is met with its first part and missed with its last, also where robots are asked for', () => {
    expect(certain({ kind: 'or', of: [arrives, calls] }, driven)).toEqual(met(3.5));
    expect(certain({ kind: 'or', of: [not(arrives), not(calls)] }, driven)).toEqual(missed(4));
    expect(certain({ kind: 'or', of: [calls, { kind: 'steadiness', least: 1 }] }, driven)).toEqual(met(3.5));
  });
});
