import { describe, expect, test } from 'vitest';
import type { Formula } from '../../../shared/documents/formula.ts';
import { at, measured, run, samplesAt } from './hand-made.ts';

/**
 * A robot at pace fast, 80 mm/s, that arrives after 2 s and 160 mm and rolls on for 0.5 s: 40 mm more, on which
 * it slows down, passes a gate, reads a mark, calls and turns back.
 */
const RUN = run(
  [
    at.pace(0, 'fast', 'fast'),
    at.finish({ t: 2, way: 160, pace: 'fast' }),
    at.gate('inner', { t: 2.1, way: 168, pace: 'fast' }),
    { ...at.read('m'), t: 2.2, way: 176, pace: 'fast' },
    at.acting('signal', { t: 2.3, x: 130, y: 120, way: 184, pace: 'fast' }),
    { ...at.turnBack(192, 'fast'), t: 2.4 },
    { ...at.pace(192, 'fast', 'creep'), t: 2.4 },
    at.end('finished', { t: 2.5, way: 200, pace: 'creep' }),
  ],
  // 50 a second: two seconds to the rim, half a second inside.
  {
    samples: samplesAt([
      { x: 0, way: 160, count: 100 },
      { x: 0, way: 200, count: 26 },
    ]),
  },
);
const margin = (formula: Formula) => measured(formula, [RUN]).margin;

describe('to the arrival count', () => {
  test('the way', () => {
    expect(margin({ kind: 'way', how: 'at-least', length: 160 })).toBe(0);
  });
  test('the time', () => {
    expect(margin({ kind: 'time', from: 0, to: 2 })).toBe(0);
  });
  test('the pace at the end', () => {
    expect(measured({ kind: 'pace-at-end', pace: 'fast' }, [RUN]).met).toBe(true);
    expect(measured({ kind: 'pace-at-end', pace: 'creep' }, [RUN]).met).toBe(false);
  });
});

describe('to the end of the run count', () => {
  test('stretches: 192 mm at pace fast, 32 of them after arriving', () => {
    const wish = { kind: 'stretches', pace: 'fast', how: 'at-least', count: 1, length: 160 } as const;
    expect(margin(wish)).toBe(32);
  });
  test.each<Formula>([
    { kind: 'turn-back', count: 1 },
    { kind: 'gates', gates: ['inner'], ordered: true },
    { kind: 'read-marks', count: 1 },
    { kind: 'act-in', act: 'signal', area: 'landing' },
  ])('what is done after arriving: $kind', (formula) => {
    expect(measured(formula, [RUN]).met).toBe(true);
    expect(measured({ kind: 'not', of: formula }, [RUN]).met).toBe(false);
  });
  test('lasting: 2.4 s at pace fast, 0.4 of them after arriving', () => {
    const wish = { kind: 'lasting', of: { kind: 'pace', pace: 'fast' }, how: 'at-least', time: 2 } as const;
    expect(margin(wish)).toBeCloseTo(0.4, 9);
  });
  test('conditions on moments, also on the way', () => {
    const wish: Formula = { kind: 'eventually', of: { kind: 'way', how: 'at-least', length: 200 } };
    expect(margin(wish)).toBe(0);
  });
});
