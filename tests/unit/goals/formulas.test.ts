import { describe, expect, test } from 'vitest';
import type { Formula } from '../../../shared/documents/formula.ts';
import { measureGoal } from '../../../shared/goals/measure.ts';
import { at, CONTEXT, goal, measured, run } from './hand-made.ts';

const arrives = (t: number, finish: number) => run([at.finish({ t }), at.end('finished')], { finish });
const soon: Formula = { kind: 'time', from: 0, to: 12 };

describe('and', () => {
  test('compares 15 mm (1.5 steps) with 1 s (1 step): time decides, in seconds', () => {
    const both: Formula = { kind: 'and', of: [{ kind: 'finish' }, soon] };
    expect(measured(both, [arrives(11, -15)])).toMatchObject({ met: true, margin: 1, unit: 's', by: 'time' });
  });
  test('compares 5 mm (0.5 steps) with 1 s: the berth decides, in mm', () => {
    const both: Formula = { kind: 'and', of: [{ kind: 'finish' }, soon] };
    expect(measured(both, [arrives(11, -5)])).toMatchObject({ margin: 5, unit: 'mm', by: 'finish' });
  });
});

describe('a goal for one of two travellers', () => {
  const there = run([at.end('finished')], { finish: -4 });
  const back = { ...run([at.end('lost')], { finish: 30 }), start: 'finish' as const };
  const both = { traces: [there, back], tooMany: false };
  const arrive = goal({ kind: 'finish' });

  test('counts the runs from its berth alone, and names the run that decided', () => {
    const forOne = measureGoal({ ...arrive, start: 'start' }, both, CONTEXT);
    expect(forOne).toMatchObject({ met: true, margin: 4, run: 0 });
    const forOther = measureGoal({ ...arrive, start: 'finish' }, both, CONTEXT);
    expect(forOther).toMatchObject({ met: false, margin: -30, run: 1 });
  });
  test('without a berth it has to come true for both', () => {
    expect(measureGoal(arrive, both, CONTEXT)).toMatchObject({ met: false, margin: -30, run: 1 });
  });
});

describe('or', () => {
  test('the part that is furthest from failing decides', () => {
    const either: Formula = { kind: 'or', of: [{ kind: 'finish' }, { kind: 'turn-back', count: 1 }] };
    expect(measured(either, [run([at.end('lost')], { finish: 40 })])).toMatchObject({
      met: false,
      margin: -1,
      by: 'turn-back',
    });
    expect(measured(either, [run([at.end('finished')], { finish: -3 })])).toMatchObject({
      met: true,
      margin: 3,
      by: 'finish',
    });
  });
});

describe('not', () => {
  test('a length turns its sign', () => {
    const away: Formula = { kind: 'not', of: { kind: 'finish' } };
    expect(measured(away, [run([at.end('lost')], { finish: 40 })])).toMatchObject({ met: true, margin: 40 });
  });
  test('a count turns between two whole numbers: not (at most 0 fast stretches of 50)', () => {
    const none: Formula = { kind: 'stretches', pace: 'fast', how: 'at-most', count: 0, length: 50 };
    const slow = run([at.end('finished', { way: 100 })]);
    const quick = run([at.pace(0, 'steady', 'fast'), at.end('finished', { way: 100, pace: 'fast' })]);
    expect(measured(none, [slow])).toMatchObject({ met: true, margin: 0 });
    expect(measured({ kind: 'not', of: none }, [slow])).toMatchObject({ met: false, margin: -1 });
    expect(measured({ kind: 'not', of: none }, [quick])).toMatchObject({ met: true, margin: 0 });
  });
  test('not (a and b) is (not a) or (not b)', () => {
    const a: Formula = { kind: 'finish' };
    const one = arrives(14, -15);
    const left = measured({ kind: 'not', of: { kind: 'and', of: [a, soon] } }, [one]);
    const right = measured(
      {
        kind: 'or',
        of: [
          { kind: 'not', of: a },
          { kind: 'not', of: soon },
        ],
      },
      [one],
    );
    expect(left).toEqual(right);
    expect(left).toMatchObject({ met: true, margin: 2, unit: 's' });
  });
  test('twice is the wish itself', () => {
    const twice: Formula = { kind: 'not', of: { kind: 'not', of: { kind: 'turn-back', count: 3 } } };
    const result = measured(twice, [run([at.turnBack(5), at.end('finished')])]);
    expect(result).toMatchObject({ met: false, margin: -2 });
  });
});

describe('several runs', () => {
  test('the run with the smallest margin decides and is named', () => {
    const result = measured({ kind: 'finish' }, [arrives(5, -12), arrives(5, -4), arrives(5, -9)]);
    expect(result).toMatchObject({ met: true, margin: 4, run: 1 });
  });
  test('more runs than are followed: left to luck, not met', () => {
    const result = measureGoal(
      goal({ kind: 'finish' }),
      { traces: [arrives(5, -12)], tooMany: true },
      CONTEXT,
    );
    expect(result).toMatchObject({ met: false, leftToLuck: true });
    expect(result.margin).toBeLessThan(0);
  });
  test('a goal over the drawing alone is never left to luck', () => {
    const result = measureGoal(goal({ kind: 'mark-limit', most: 3 }), { traces: [], tooMany: true }, CONTEXT);
    expect(result).toMatchObject({ met: true, margin: 3, leftToLuck: false });
  });
});
