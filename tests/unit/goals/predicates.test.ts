import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import { PREDICATES } from '../../../shared/goals/predicates/index.ts';
import { at, CONTEXT, measured, run } from './hand-made.ts';

const end = at.end('finished');

describe('G-finish', () => {
  test('12 mm inside the rim leaves 12 mm to spare', () => {
    expect(measured({ kind: 'finish' }, [run([end], { finish: -12 })])).toMatchObject({
      met: true,
      margin: 12,
      unit: 'mm',
      by: 'finish',
    });
  });
  test('a run that stays 31 mm away lacks 31 mm', () => {
    const far = run([at.end('stopped')], { finish: 31 });
    expect(measured({ kind: 'finish' }, [far])).toMatchObject({ met: false, margin: -31 });
  });
  test('without a berth to arrive in it is never met, and the margin stays finite', () => {
    const { finish: _, ...nowhere } = run([end]);
    const result = measured({ kind: 'finish' }, [nowhere]);
    expect(result.met).toBe(false);
    expect(Number.isFinite(result.margin)).toBe(true);
  });
});

describe('G-park', () => {
  test('5 mm from the centre of a berth of radius 20 leaves 15 mm', () => {
    const parked = run([at.end('parked', { x: 263, y: 101 })]);
    expect(measured({ kind: 'park' }, [parked])).toMatchObject({ met: true, margin: 15, unit: 'mm' });
  });
  test('a run from the finish parks in the start berth', () => {
    const parked = run([at.end('parked', { x: 40, y: 115 })], { start: 'finish' });
    expect(measured({ kind: 'park' }, [parked])).toMatchObject({ met: true, margin: 5 });
  });
  test('25 mm from the centre lacks 5 mm', () => {
    const parked = run([at.end('parked', { x: 235, y: 105 })]);
    expect(measured({ kind: 'park' }, [parked])).toMatchObject({ met: false, margin: -5 });
  });
  test('standing in the berth without having parked lacks one parking', () => {
    const stopped = run([at.end('stopped', { x: 260, y: 105 })]);
    expect(measured({ kind: 'park' }, [stopped])).toMatchObject({ met: false, margin: -1, unit: 'count' });
  });
  test('in an area the nearest edge counts: 8 mm from the right one', () => {
    const parked = run([at.end('parked', { x: 152, y: 120 })]);
    expect(measured({ kind: 'park', area: 'landing' }, [parked])).toMatchObject({ met: true, margin: 8 });
  });
  test('outside an area by 3 and 4 mm past a corner lacks 5 mm', () => {
    const parked = run([at.end('parked', { x: 163, y: 144 })]);
    expect(measured({ kind: 'park', area: 'landing' }, [parked])).toMatchObject({ met: false, margin: -5 });
  });
});

describe('G-stretches', () => {
  // Fast from 100 to 260 (160 mm) and from 300 to 390 (90 mm).
  const twice = run([
    at.pace(100, 'steady', 'fast'),
    at.pace(260, 'fast', 'steady'),
    at.pace(300, 'steady', 'fast'),
    at.end('finished', { way: 390, pace: 'fast' }),
  ]);
  const wish = (how: 'exactly' | 'at-least' | 'at-most', count: number, length: number) =>
    ({ kind: 'stretches', pace: 'fast', how, count, length }) as const;

  test('exactly 1 of 150: the longest has 10 to spare, the next is 60 short of counting', () => {
    expect(measured(wish('exactly', 1, 150), [twice])).toMatchObject({ met: true, margin: 10, unit: 'mm' });
  });
  test('exactly 1 of 85: the second one is 5 too long', () => {
    expect(measured(wish('exactly', 1, 85), [twice])).toMatchObject({ met: false, margin: -5 });
  });
  test('exactly 2 of 85: the second has 5 to spare, a third is missing by all of 85', () => {
    expect(measured(wish('exactly', 2, 85), [twice])).toMatchObject({ met: true, margin: 5 });
  });
  test('exactly 0 of 170: the longest is 10 short of counting', () => {
    expect(measured(wish('exactly', 0, 170), [twice])).toMatchObject({ met: true, margin: 10 });
  });
  test('at least 2 of 100: the second lacks 10', () => {
    expect(measured(wish('at-least', 2, 100), [twice])).toMatchObject({ met: false, margin: -10 });
  });
  test('at least 3 of 50: a missing one is 0 long', () => {
    expect(measured(wish('at-least', 3, 50), [twice])).toMatchObject({ met: false, margin: -50 });
  });
  test('at most 1 of 80 with two used lacks one', () => {
    expect(measured(wish('at-most', 1, 80), [twice])).toMatchObject({
      met: false,
      margin: -1,
      unit: 'count',
    });
  });
  test('at most 2 of 80 with two used has none to spare and is met', () => {
    expect(measured(wish('at-most', 2, 80), [twice])).toMatchObject({ met: true, margin: 0, unit: 'count' });
  });

  const broken = (middle: Parameters<typeof run>[0]) =>
    run([at.pace(100, 'steady', 'fast'), ...middle, at.end('finished', { way: 300, pace: 'fast' })]);

  test('slowing for a corner does not break a stretch of 200', () => {
    const result = measured(wish('exactly', 1, 200), [broken([at.corner(180, 'fast')])]);
    expect(result).toMatchObject({ met: true, margin: 0 });
  });
  test('waiting breaks it into 80 and 120', () => {
    const result = measured(wish('at-least', 1, 200), [broken([at.wait(180, 'fast')])]);
    expect(result).toMatchObject({ met: false, margin: -80 });
  });
  test('turning back breaks it into 80 and 120', () => {
    const result = measured(wish('at-least', 2, 80), [broken([at.turnBack(180, 'fast')])]);
    expect(result).toMatchObject({ met: true, margin: 0 });
  });
  test('parking ends it: the way to a stand does not count', () => {
    const result = measured(wish('at-least', 1, 200), [broken([at.parking(180, 'fast')])]);
    expect(result).toMatchObject({ met: false, margin: -120 });
  });
  test('the pace before the first change counts from the beginning', () => {
    const steady = { kind: 'stretches', pace: 'steady', how: 'at-least', count: 1, length: 90 } as const;
    expect(measured(steady, [twice])).toMatchObject({ met: true, margin: 10 });
  });
});

describe('G-pace-at-end', () => {
  test('the pace at the finish counts, not the one after it', () => {
    const slowedLate = run([
      at.finish({ pace: 'fast', way: 200 }),
      at.pace(210, 'fast', 'steady'),
      at.end('finished', { pace: 'steady' }),
    ]);
    expect(measured({ kind: 'pace-at-end', pace: 'steady' }, [slowedLate])).toMatchObject({
      met: false,
      margin: -2,
      unit: 'count',
    });
    expect(measured({ kind: 'pace-at-end', pace: 'fast' }, [slowedLate])).toMatchObject({
      met: true,
      margin: 0,
    });
  });
  test('without a finish the end counts', () => {
    const parked = run([at.end('parked', { pace: 'creep' })]);
    expect(measured({ kind: 'pace-at-end', pace: 'steady' }, [parked])).toMatchObject({ margin: -1 });
  });
});

describe('G-gates', () => {
  const passed = run([at.gate('bakery'), at.gate('market'), at.gate('bakery'), end]);
  test('in order, other crossings between do not matter', () => {
    const wish = { kind: 'gates', gates: ['market', 'bakery'], ordered: true } as const;
    expect(measured({ ...wish, gates: [...wish.gates] }, [passed])).toMatchObject({ met: true, margin: 0 });
  });
  test('in the wrong order the second is missing', () => {
    const wrong = run([at.gate('bakery'), at.gate('market'), end]);
    expect(measured({ kind: 'gates', gates: ['market', 'bakery'], ordered: true }, [wrong])).toMatchObject({
      met: false,
      margin: -1,
      unit: 'count',
    });
  });
  test('in any order both are passed', () => {
    const wrong = run([at.gate('bakery'), at.gate('market'), end]);
    expect(measured({ kind: 'gates', gates: ['market', 'bakery'], ordered: false }, [wrong])).toMatchObject({
      met: true,
      margin: 0,
    });
  });
});

describe('G-keep-out', () => {
  test('the nearest of two areas decides', () => {
    const near = run([end], { keepOut: { sandbank: 14, nest: 3.5 } });
    expect(measured({ kind: 'keep-out' }, [near])).toMatchObject({ met: true, margin: 3.5, unit: 'mm' });
  });
  test('2 mm inside lacks 2 mm', () => {
    const inside = run([end], { keepOut: { sandbank: -2 } });
    expect(measured({ kind: 'keep-out' }, [inside])).toMatchObject({ met: false, margin: -2 });
  });
});

describe('G-stay-on-paper', () => {
  test('the outline 4 mm over the edge lacks 4 mm', () => {
    expect(measured({ kind: 'stay-on-paper' }, [run([end], { edge: -4 })])).toMatchObject({
      met: false,
      margin: -4,
      unit: 'mm',
    });
  });
});

describe('G-time', () => {
  const window = { kind: 'time', from: 10, to: 12 } as const;
  test('arriving at 10.5 s of 10 to 12 leaves 0.5 s', () => {
    expect(measured(window, [run([at.finish({ t: 10.5 }), end])])).toMatchObject({
      met: true,
      margin: 0.5,
      unit: 's',
    });
  });
  test('arriving at 14 s is 2 s late', () => {
    expect(measured(window, [run([at.finish({ t: 14 }), end])])).toMatchObject({ met: false, margin: -2 });
  });
  test('arriving at 7 s is 3 s early', () => {
    expect(measured(window, [run([at.finish({ t: 7 }), end])])).toMatchObject({ met: false, margin: -3 });
  });
  test('a run that does not arrive lacks the way to the berth', () => {
    expect(measured(window, [run([at.end('lost')], { finish: 80 })])).toMatchObject({
      met: false,
      margin: -80,
      unit: 'mm',
      by: 'time',
    });
  });
});

describe('G-turn-back', () => {
  test('two half turns where one was wanted are one too many', () => {
    const twice = run([at.turnBack(10), at.turnBack(20), end]);
    expect(measured({ kind: 'turn-back', count: 1 }, [twice])).toMatchObject({ met: false, margin: -1 });
    expect(measured({ kind: 'turn-back', count: 2 }, [twice])).toMatchObject({ met: true, margin: 0 });
  });
});

const drawing: Drawing = {
  lines: [
    { id: 'l1', width: 5, from: { x: 40, y: 50 }, pieces: [{ to: { x: 100, y: 50 }, bulge: 0 }] },
    // A half circle over a chord of 20 mm: bulge 1, length 10 pi.
    { id: 'l2', width: 5, from: { x: 100, y: 50 }, pieces: [{ to: { x: 120, y: 50 }, bulge: 1 }] },
  ],
  marks: [{ id: 'm1', line: 'l1', at: 20, bands: [{ ink: 'C', length: 5.5, gap: 0 }] }],
};

describe('G-mark-limit', () => {
  test('one of two marks leaves one; given marks are free', () => {
    const context = { ...CONTEXT, drawing };
    expect(measured({ kind: 'mark-limit', most: 2 }, [], context)).toMatchObject({
      met: true,
      margin: 1,
      unit: 'count',
    });
    expect(measured({ kind: 'mark-limit', most: 0 }, [], context)).toMatchObject({ met: false, margin: -1 });
  });
});

describe('G-ink-limit', () => {
  test('60 mm straight and a half circle over 20 mm are 60 + 10 pi', () => {
    const result = measured({ kind: 'ink-limit', most: 100 }, [], { ...CONTEXT, drawing });
    expect(result).toMatchObject({ met: true, unit: 'mm' });
    expect(result.margin).toBeCloseTo(40 - 10 * Math.PI, 9);
    expect(result).not.toHaveProperty('run');
  });
});

test('every predicate carries the id of its kind', () => {
  for (const [kind, predicate] of Object.entries(PREDICATES)) expect(predicate.id).toBe(`G-${kind}`);
});
