import { describe, expect, test } from 'vitest';
import type { Formula, Predicate } from '../../../shared/documents/formula.ts';
import type { Trace } from '../../../shared/documents/trace.ts';
import { measureGoal } from '../../../shared/goals/measure.ts';
import { at, CONTEXT, goal, measured, run, SHEET } from './hand-made.ts';

/** Every predicate, on a run that lost the line on its way, with what it says of it: unit and value. */
const LOST = run([at.finish({ t: 8, way: 180, pace: 'brisk' }), at.end('lost', { t: 9, way: 200 })], {
  finish: -12,
  edge: 30,
  keepOut: { sandbank: 14 },
});
const PARKED = run([at.end('parked', { x: 250, y: 105, t: 9, way: 200 })]);
const TABLE: readonly (readonly [Predicate, string, number, Trace?])[] = [
  [{ kind: 'finish' }, 'mm', 12],
  [{ kind: 'park' }, 'count', -1],
  [{ kind: 'park' }, 'mm', 10, PARKED],
  [{ kind: 'stretches', pace: 'brisk', how: 'exactly', count: 1, length: 180 }, 'mm', 20],
  [{ kind: 'stretches', pace: 'brisk', how: 'at-least', count: 1, length: 150 }, 'mm', 50],
  [{ kind: 'stretches', pace: 'brisk', how: 'at-most', count: 3, length: 150 }, 'count', 2],
  [{ kind: 'pace-at-end', pace: 'steady' }, 'count', -1],
  [{ kind: 'pace-at-end', pace: 'steady' }, 'count', 0, PARKED],
  [{ kind: 'gates', gates: ['bakery'], ordered: true }, 'count', -1],
  [{ kind: 'every-gate' }, 'count', 0],
  [{ kind: 'keep-out' }, 'mm', 14],
  [{ kind: 'stay-on-paper' }, 'mm', 30],
  [{ kind: 'time', from: 7, to: 10 }, 's', 1],
  [{ kind: 'turn-back', count: 0 }, 'count', 0],
  [{ kind: 'read-marks', count: 1 }, 'count', -1],
  [{ kind: 'act-in', act: 'wait', area: 'landing' }, 'count', -1],
  [{ kind: 'way', how: 'at-least', length: 100 }, 'mm', 80],
  [{ kind: 'mark-limit', most: 2 }, 'count', 2],
  [{ kind: 'ink-limit', most: 50 }, 'mm', 50],
];

describe('a margin names its wish and its unit', () => {
  for (const [wish, unit, margin, trace = LOST] of TABLE) {
    test(`${wish.kind}: ${margin} ${unit}`, () => {
      expect(measured(wish, [trace])).toMatchObject({ by: wish.kind, unit, margin });
    });
  }
  test('only a wish with two ends has a side, the lower one where both are as near', () => {
    expect(measured({ kind: 'finish' }, [LOST])).not.toHaveProperty('side');
    expect(measured({ kind: 'time', from: 7, to: 9 }, [LOST])).toMatchObject({ margin: 1, side: 'below' });
    expect(measured({ kind: 'time', from: 2, to: 9 }, [LOST])).toMatchObject({ margin: 1, side: 'above' });
  });
});

describe('wishes at their limits', () => {
  const twice = run([
    at.pace(100, 'fast', 'steady'),
    at.pace(150, 'steady', 'fast'),
    at.end('finished', { way: 210 }),
  ]);
  const atMost = (length: number): Formula => ({
    kind: 'stretches',
    pace: 'fast',
    how: 'at-most',
    count: 1,
    length,
  });
  test('at most one stretch: the shorter one counts from its own length on', () => {
    expect(measured(atMost(60), [twice])).toMatchObject({ met: false, margin: -1 });
    expect(measured(atMost(60.1), [twice])).toMatchObject({ met: true, margin: 0 });
  });
  test('gates in any order: one of two is missing', () => {
    const one = run([at.gate('bakery'), at.end('finished')]);
    const wish = { kind: 'gates', gates: ['market', 'bakery'], ordered: false } as const;
    expect(measured({ ...wish, gates: [...wish.gates] }, [one])).toMatchObject({ met: false, margin: -1 });
  });
  test('parking where there is no berth to park in is never met', () => {
    const { finish: _, ...nowhere } = SHEET;
    expect(measured({ kind: 'park' }, [PARKED], { ...CONTEXT, sheet: nowhere }).met).toBe(false);
  });
  test('at most and at least 0 s: what never holds lasts 0 s', () => {
    const never: Formula = { kind: 'lasting', of: { kind: 'turn-back', count: 1 }, how: 'at-least', time: 0 };
    expect(measured(never, [LOST])).toMatchObject({ met: true, margin: 0 });
    const whole: Formula = { kind: 'lasting', of: { kind: 'turn-back', count: 0 }, how: 'at-least', time: 9 };
    expect(measured(whole, [LOST])).toMatchObject({ met: true, margin: 0 });
  });
  test('what comes true with the last event holds for a moment', () => {
    const late = run([at.turn(6), at.end('stopped', { t: 6 })]);
    const from = (seconds: number): Formula => ({
      kind: 'eventually',
      of: { kind: 'turn-back', count: 1 },
      window: { from: seconds },
    });
    expect(measured(from(6), [late])).toMatchObject({ met: true, margin: 0 });
    expect(measured(from(6.02), [late])).toMatchObject({ met: false, by: 'eventually' });
  });
});

describe('runs that count', () => {
  const from = (start: 'start' | 'finish', finish: number) => run([at.end('finished')], { start, finish });
  const runs = { traces: [from('start', -12), from('finish', -3), from('start', -7)], tooMany: false };
  test('a goal for one traveller looks at its runs alone', () => {
    const wish = { ...goal({ kind: 'finish' }), start: 'start' as const };
    expect(measureGoal(wish, runs, CONTEXT)).toMatchObject({ margin: 7, run: 2 });
    expect(measureGoal({ ...wish, start: 'finish' }, runs, CONTEXT)).toMatchObject({ margin: 3, run: 1 });
    expect(measureGoal(goal({ kind: 'finish' }), runs, CONTEXT)).toMatchObject({ margin: 3, run: 1 });
  });
  test('of equal runs and equal reasons the first is named', () => {
    const same = { traces: [from('start', -5), from('start', -5)], tooMany: false };
    expect(measureGoal(goal({ kind: 'finish' }), same, CONTEXT)).toMatchObject({ run: 0 });
    // Both are 12 mm and 30 mm: 1.2 and 3 steps; then 12 mm and 12 mm.
    const both = (kind: 'and' | 'or'): Formula => ({
      kind,
      of: [{ kind: 'finish' }, { kind: 'stay-on-paper' }],
    });
    const even = run([at.end('finished')], { finish: -12, edge: 12 });
    expect(measured(both('and'), [even])).toMatchObject({ by: 'finish' });
    expect(measured(both('or'), [even])).toMatchObject({ by: 'finish' });
  });
  test('left to luck says so, in counts', () => {
    expect(measureGoal(goal({ kind: 'finish' }), { ...runs, tooMany: true }, CONTEXT)).toEqual({
      id: 'g',
      met: false,
      margin: -1,
      unit: 'count',
      by: 'luck',
      leftToLuck: true,
    });
  });
  test('a formula depends on runs as soon as one of its parts does', () => {
    const wish: Formula = { kind: 'or', of: [{ kind: 'mark-limit', most: 9 }, { kind: 'finish' }] };
    expect(measureGoal(goal(wish), { ...runs, tooMany: true }, CONTEXT).leftToLuck).toBe(true);
    const drawn: Formula = { kind: 'not', of: { kind: 'and', of: [{ kind: 'mark-limit', most: 9 }] } };
    expect(measureGoal(goal(drawn), { traces: [], tooMany: true }, CONTEXT).leftToLuck).toBe(false);
    const until: Formula = { kind: 'until', hold: { kind: 'finish' }, until: { kind: 'finish' } };
    expect(measureGoal(goal(until), { ...runs, tooMany: true }, CONTEXT).leftToLuck).toBe(true);
  });
  test('a goal over runs without any run is a mistake of the caller', () => {
    expect(() => measureGoal(goal({ kind: 'finish' }), { traces: [], tooMany: false }, CONTEXT)).toThrow(
      TypeError,
    );
  });
});
