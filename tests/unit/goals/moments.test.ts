import { describe, expect, test } from 'vitest';
import type { Formula, Moment } from '../../../shared/documents/formula.ts';
import { MOMENTS } from '../../../shared/goals/moments/index.ts';
import { PREDICATES } from '../../../shared/goals/predicates/index.ts';
import { KITS } from '../../kits.ts';
import { at, CONTEXT, measured, run, SHEET, samplesAt } from './hand-made.ts';

const always = (of: Moment): Formula => ({ kind: 'always', of });
const eventually = (of: Moment): Formula => ({ kind: 'eventually', of });
const between = (kind: 'always' | 'eventually', from: number, to: number, of: Moment): Formula => ({
  kind,
  of,
  window: { from, to },
});

// The landing reaches from (100, 100) to (160, 140); the axle is 1 s before it, 1 s inside, 1 s past it.
const LANDING = { kind: 'in-area', area: 'landing' } as const;
const across = run([at.end('finished', { t: 3 })], {
  samples: samplesAt([
    { x: 90, y: 120, way: 50, count: 50 },
    { x: 130, y: 108, way: 90, count: 50 },
    { x: 175, y: 120, way: 135, count: 51 },
  ]),
});

describe('G-in-area', () => {
  test('at some moment: 8 mm deep at the deepest', () => {
    expect(measured(eventually(LANDING), [across])).toMatchObject({
      met: true,
      margin: 8,
      unit: 'mm',
      by: 'in-area',
    });
  });
  test('always: 15 mm are missing at the farthest', () => {
    expect(measured(always(LANDING), [across])).toMatchObject({ met: false, margin: -15 });
  });
  test('never, which is always not: 8 mm too deep', () => {
    expect(measured(always({ kind: 'not', of: LANDING }), [across])).toMatchObject({
      met: false,
      margin: -8,
    });
  });
  test('within a window the samples in it count: from 1 s to 1.98 s inside, at 2 s past it', () => {
    expect(measured(between('always', 1, 1.98, LANDING), [across])).toMatchObject({ met: true, margin: 8 });
    expect(measured(between('always', 1, 2, LANDING), [across])).toMatchObject({ met: false, margin: -15 });
    expect(measured(between('eventually', 0, 0.98, LANDING), [across])).toMatchObject({ margin: -10 });
  });
  test('an area that the sheet lacks is never entered', () => {
    expect(measured(eventually({ kind: 'in-area', area: 'moon' }), [across]).met).toBe(false);
  });
});

describe('G-pace', () => {
  // Steady, from 2 s on fast, from 5 s on creep, until 9 s.
  const paced = run([
    at.paceFrom(2, 'steady', 'fast'),
    at.paceFrom(5, 'fast', 'creep'),
    at.end('finished', { t: 9, pace: 'creep' }),
  ]);
  test('from the first event on the pace before it is known', () => {
    expect(measured(between('always', 0, 1.99, { kind: 'pace', pace: 'steady' }), [paced])).toMatchObject({
      met: true,
      margin: 0,
      unit: 'count',
      by: 'pace',
    });
  });
  test('a change counts from its own moment', () => {
    const fast = { kind: 'pace', pace: 'fast' } as const;
    expect(measured(between('always', 2, 4.99, fast), [paced])).toMatchObject({ met: true });
    expect(measured(between('always', 2, 5, fast), [paced])).toMatchObject({
      met: false,
      margin: -3,
      side: 'below',
    });
    expect(measured(between('always', 1.99, 3, fast), [paced])).toMatchObject({ met: false, margin: -2 });
  });
  test('an event that is no change of pace at the start says the pace', () => {
    const slow = run([
      at.gate('bakery', { t: 1, pace: 'creep' }),
      at.end('finished', { t: 2, pace: 'creep' }),
    ]);
    expect(measured(always({ kind: 'pace', pace: 'creep' }), [slow])).toMatchObject({ met: true });
  });
});

describe.each(KITS)('the outline of $robot.name at a moment', ({ robot }) => {
  const context = { ...CONTEXT, robot };
  test('G-stay-on-paper: 20 mm of axle from the left edge leave what is not behind the axle', () => {
    const near = run([at.end('finished', { t: 1 })], { samples: samplesAt([{ x: 20, y: 100, count: 51 }]) });
    expect(measured(always({ kind: 'stay-on-paper' }), [near], context)).toMatchObject({
      met: true,
      margin: 20 - robot.axleToRear,
      unit: 'mm',
      by: 'stay-on-paper',
    });
  });
  test('G-keep-out: the nearer of two areas counts, 30 mm ahead of the axle', () => {
    const box = (id: string, x: number) => ({
      id,
      name: { en: id },
      polygon: [
        { x, y: 50 },
        { x: x + 10, y: 50 },
        { x: x + 10, y: 150 },
        { x, y: 150 },
      ],
    });
    const guarded = { ...context, sheet: { ...SHEET, keepOut: [box('far', 200), box('near', 130)] } };
    const before = run([at.end('finished', { t: 1 })], {
      samples: samplesAt([{ x: 100, y: 100, count: 51 }]),
    });
    expect(measured(always({ kind: 'keep-out' }), [before], guarded)).toMatchObject({
      margin: 30 - (robot.length - robot.axleToRear),
      by: 'keep-out',
    });
  });
});

describe('the axle in a berth at a moment', () => {
  test('G-finish: 15 mm from the middle of a berth of 20 mm, and towards the other berth on the way back', () => {
    const samples = samplesAt([{ x: 245, y: 105, count: 51 }]);
    const there = run([at.end('finished', { t: 1 })], { samples });
    expect(measured(eventually({ kind: 'finish' }), [there])).toMatchObject({ margin: 5, by: 'finish' });
    const back = run([at.end('lost', { t: 1 })], { samples, start: 'finish' });
    expect(measured(eventually({ kind: 'finish' }), [back])).toMatchObject({ margin: 15 - 205 });
    const { finish: _, ...nowhere } = SHEET;
    expect(measured(eventually({ kind: 'finish' }), [there], { ...CONTEXT, sheet: nowhere }).met).toBe(false);
  });
});

describe('what has happened so far', () => {
  const journey = run([
    at.gate('market', { t: 1 }),
    at.turn(2),
    at.gate('bakery', { t: 4 }),
    at.end('finished', { t: 6 }),
  ]);
  const market = { kind: 'gates', gates: ['market'], ordered: true } as const;
  const bakery = { kind: 'gates', gates: ['bakery'], ordered: true } as const;
  const turnedBack = { kind: 'turn-back', count: 1 } as const;
  test('don’t pass the bakery until you have turned back: kept', () => {
    const wish: Formula = {
      kind: 'until',
      hold: { kind: 'not', of: { ...bakery, gates: ['bakery'] } },
      until: turnedBack,
    };
    expect(measured(wish, [journey])).toMatchObject({ met: true, margin: 0, unit: 'count' });
  });
  test('don’t pass the market until you have turned back: broken', () => {
    const wish: Formula = {
      kind: 'until',
      hold: { kind: 'not', of: { ...market, gates: ['market'] } },
      until: turnedBack,
    };
    expect(measured(wish, [journey])).toMatchObject({ met: false, margin: -1, by: 'gates' });
  });
  test('until within 1.99 s comes too early for a turn at 2 s', () => {
    const wish = (within: number): Formula => ({
      kind: 'until',
      hold: { kind: 'stay-on-paper' },
      until: turnedBack,
      within,
    });
    const samples = samplesAt([{ x: 150, y: 100, count: 301 }]);
    expect(measured(wish(2), [{ ...journey, samples }])).toMatchObject({ met: true });
    expect(measured(wish(1.99), [{ ...journey, samples }])).toMatchObject({ met: false, margin: -1 });
  });
  test('what comes true with the last event still counts', () => {
    const late = run([at.turn(6), at.end('stopped', { t: 6 })]);
    expect(measured(eventually(turnedBack), [late])).toMatchObject({ met: true, margin: 0 });
  });
  test('a stretch counts from where it ends; way grows with every sample', () => {
    const fast = { kind: 'stretches', pace: 'fast', how: 'at-least', count: 1, length: 150 } as const;
    const driven = run(
      [
        at.pace(100, 'steady', 'fast'),
        { ...at.pace(260, 'fast', 'steady'), t: 4 },
        at.end('finished', { t: 6, way: 300 }),
      ],
      {
        samples: samplesAt([
          { x: 150, way: 100, count: 100 },
          { x: 150, way: 300, count: 201 },
        ]),
      },
    );
    expect(measured(between('eventually', 0, 3.99, fast), [driven])).toMatchObject({ margin: -150 });
    expect(measured(between('eventually', 0, 4, fast), [driven])).toMatchObject({ margin: 10 });
    const far = { kind: 'way', how: 'at-least', length: 200 } as const;
    expect(measured(between('eventually', 0, 1.98, far), [driven])).toMatchObject({
      margin: -100,
      by: 'way',
    });
    expect(measured(between('eventually', 0, 2, far), [driven])).toMatchObject({ margin: 100 });
  });
});

describe('formulas in one another', () => {
  test('whenever in the landing, be on tiptoe: the part nearer to failing decides in its own unit', () => {
    const wish = always({
      kind: 'or',
      of: [
        { kind: 'not', of: LANDING },
        { kind: 'pace', pace: 'creep' },
      ],
    });
    // Steady all the way: in the landing the pace is 1 step off, and the landing 8 mm, 0.8 steps, too near.
    expect(measured(wish, [across])).toMatchObject({ met: false, margin: -8, unit: 'mm', by: 'in-area' });
    const tiptoed = {
      ...across,
      events: [
        at.paceFrom(0.98, 'steady', 'creep'),
        at.paceFrom(2.02, 'creep', 'steady'),
        at.end('finished', { t: 3 }),
      ],
    };
    // Before it 10 mm away, in it at the right pace (0 steps to spare).
    expect(measured(wish, [tiptoed])).toMatchObject({ met: true, margin: 0, unit: 'count', by: 'pace' });
  });
  test('and within: in the landing, and within 1.5 s after that 175 mm to the right of it', () => {
    const after = (to: number): Formula =>
      eventually({
        kind: 'and',
        of: [LANDING, { kind: 'eventually', of: { kind: 'not', of: LANDING }, window: { from: 0.5, to } }],
      });
    // From 1 s to 2 s inside; outside again from 2 s on, by 15 mm.
    expect(measured(after(1), [across])).toMatchObject({ met: true, margin: 8 });
    const always1s: Formula = eventually({ kind: 'always', of: LANDING, window: { from: 0, to: 0.98 } });
    expect(measured(always1s, [across])).toMatchObject({ met: true, margin: 8 });
    const longer: Formula = eventually({ kind: 'always', of: LANDING, window: { from: 0, to: 1 } });
    expect(measured(longer, [across])).toMatchObject({ met: false, margin: -10 });
  });
  test('beside wishes for the whole run and the drawing', () => {
    const all: Formula = {
      kind: 'and',
      of: [eventually(LANDING), { kind: 'mark-limit', most: 0 }, { kind: 'finish' }],
    };
    expect(measured(all, [across])).toMatchObject({ met: true, margin: 0, by: 'mark-limit' });
  });
  test('a window past the end of the run: at some moment fails, always is kept, and only time decides', () => {
    expect(measured(between('eventually', 10, 20, LANDING), [across])).toMatchObject({
      met: false,
      unit: 's',
      by: 'eventually',
    });
    expect(measured(between('always', 10, 20, LANDING), [across])).toMatchObject({
      met: true,
      unit: 's',
      by: 'always',
    });
  });
});

describe('lasting', () => {
  const lasting = (how: 'at-least' | 'at-most', time: number): Formula => ({
    kind: 'lasting',
    of: LANDING,
    how,
    time,
  });
  test('1 s in the landing is 0.25 s more than 0.75 s, and 0.5 s less than 1.5 s', () => {
    expect(measured(lasting('at-least', 0.75), [across])).toMatchObject({
      met: true,
      margin: 0.25,
      unit: 's',
      by: 'lasting',
    });
    expect(measured(lasting('at-least', 1.5), [across])).toMatchObject({ met: false, margin: -0.5 });
    expect(measured(lasting('at-most', 0.75), [across])).toMatchObject({ met: false, margin: -0.25 });
  });
  test('its opposite turns the sign', () => {
    expect(measured({ kind: 'not', of: lasting('at-most', 0.75) }, [across])).toMatchObject({
      met: true,
      margin: 0.25,
      by: 'lasting',
    });
  });
  test('the moment after the last event does not count', () => {
    const whole: Formula = { kind: 'lasting', of: { kind: 'not', of: LANDING }, how: 'at-most', time: 2 };
    expect(measured(whole, [across])).toMatchObject({ met: true, margin: 0 });
  });
});

test('every condition on a moment carries the id of its kind, and that of its wish for a whole run', () => {
  for (const [kind, moment] of Object.entries(MOMENTS)) expect(moment.id).toBe(`G-${kind}`);
  const shared = Object.keys(MOMENTS).filter((kind) => kind in PREDICATES);
  expect(Object.keys(MOMENTS).filter((kind) => !shared.includes(kind))).toEqual(['in-area', 'pace']);
});
