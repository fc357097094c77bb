import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Formula, Moment } from '../../../shared/documents/formula.ts';
import type { GoalResult } from '../../../shared/documents/verdict.ts';
import { wording } from '../../../shared/wording/wording.ts';
import { formulas } from '../../formulas.ts';
import { SHEET } from '../goals/hand-made.ts';
import '../../seed.ts';

const { goals } = wording('en');
const sheet = {
  ...SHEET,
  gates: [
    { id: 'market', name: { en: 'Fish market' }, a: { x: 1, y: 1 }, b: { x: 2, y: 2 } },
    { id: 'bakery', name: { en: 'Bakery' }, a: { x: 1, y: 1 }, b: { x: 2, y: 2 } },
  ],
};
const fast: Formula = { kind: 'stretches', pace: 'fast', how: 'exactly', count: 1, length: 150 };

describe('goal sentences', () => {
  const table: [Formula, string, string][] = [
    [{ kind: 'finish' }, 'Finish at the Lighthouse.', 'Reach the Lighthouse'],
    [{ kind: 'park', area: 'landing' }, 'Park at the Ferry landing.', 'Park'],
    [fast, 'Drive exactly one fast stretch of 15 cm or more.', 'One fast stretch of 15 cm'],
    [
      { ...fast, how: 'at-most', count: 2, length: 80 },
      'Drive at most two fast stretches of 80 mm or more.',
      'At most two fast stretches of 80 mm',
    ],
    [{ kind: 'pace-at-end', pace: 'steady' }, 'Be steady at the end.', 'Steady at the end'],
    [
      { kind: 'gates', gates: ['market', 'bakery'], ordered: true },
      'Pass the Fish market, then the Bakery.',
      'Fish market, then Bakery',
    ],
    [{ kind: 'gates', gates: ['bakery'], ordered: true }, 'Pass the Bakery.', 'Bakery'],
    [{ kind: 'time', from: 10, to: 12.5 }, 'Arrive after 10 s and before 12.5 s.', '10 to 12.5 s'],
    [{ kind: 'turn-back', count: 1 }, 'Turn back once.', 'Turn back once'],
    [{ kind: 'mark-limit', most: 1 }, 'Use at most one mark.', 'At most one mark'],
    [{ kind: 'ink-limit', most: 300 }, 'Draw at most 30 cm of line.', 'At most 30 cm of line'],
    [{ kind: 'decided' }, 'Leave nothing to chance.', 'Nothing to chance'],
    [{ kind: 'steadiness', least: 0.9 }, 'Make it with at least 18 of 20 robots.', '18 of 20 robots'],
  ];
  for (const [formula, sentence, short] of table) {
    test(`${formula.kind}: ${sentence}`, () => {
      expect(goals.sentence(formula, sheet)).toBe(sentence);
      expect(goals.short(formula, sheet)).toBe(short);
    });
  }
  const landing: Moment = { kind: 'in-area', area: 'landing' };
  const tiptoe: Moment = { kind: 'pace', pace: 'creep' };
  const bakery: Moment = { kind: 'gates', gates: ['bakery'], ordered: true };
  const turned: Moment = { kind: 'turn-back', count: 1 };
  const not = (of: Moment): Moment => ({ kind: 'not', of });
  const both: Moment = { kind: 'and', of: [landing, tiptoe] };
  const timed: [Formula, string][] = [
    [{ kind: 'every-gate' }, 'Pass every gate.'],
    [{ kind: 'read-marks', count: 3 }, 'Read at least three different marks.'],
    [{ kind: 'act-in', act: 'wait', area: 'landing' }, 'Wait at the Ferry landing.'],
    [{ kind: 'act-in', act: 'signal', area: 'landing' }, 'Call at the Ferry landing.'],
    [{ kind: 'way', how: 'at-most', length: 400 }, 'Drive at most 40 cm.'],
    [{ kind: 'always', of: tiptoe }, 'Always be on tiptoe.'],
    [{ kind: 'always', of: not(tiptoe) }, 'Never be on tiptoe.'],
    [{ kind: 'not', of: { kind: 'eventually', of: landing } }, 'Never be in the Ferry landing.'],
    [
      { kind: 'always', of: { kind: 'stay-on-paper' }, window: { from: 0, to: 5 } },
      'Always be on the paper for the first 5 s.',
    ],
    [{ kind: 'always', of: tiptoe, window: { from: 5, to: 8.5 } }, 'Always be on tiptoe from 5 to 8.5 s.'],
    [{ kind: 'always', of: tiptoe, window: { from: 5 } }, 'Always be on tiptoe from 5 s on.'],
    [
      { kind: 'always', of: { kind: 'or', of: [not(landing), tiptoe] } },
      'Whenever you are in the Ferry landing, be on tiptoe.',
    ],
    [
      { kind: 'always', of: { kind: 'or', of: [landing, tiptoe] } },
      'At every moment be in the Ferry landing or be on tiptoe.',
    ],
    [{ kind: 'eventually', of: landing }, 'Be in the Ferry landing at some moment.'],
    [
      { kind: 'eventually', of: landing, window: { from: 0, to: 10 } },
      'Be in the Ferry landing within 10 s.',
    ],
    [
      { kind: 'eventually', of: landing, window: { from: 8, to: 10 } },
      'Be in the Ferry landing at some moment between 8 and 10 s.',
    ],
    [
      { kind: 'eventually', of: landing, window: { from: 8 } },
      'Be in the Ferry landing at some moment after 8 s.',
    ],
    [{ kind: 'eventually', of: bakery, window: { from: 0, to: 10 } }, 'Pass the Bakery within 10 s.'],
    [{ kind: 'eventually', of: not({ kind: 'finish' }) }, 'Be away from the Lighthouse at some moment.'],
    [{ kind: 'eventually', of: both }, 'At some moment be in the Ferry landing and be on tiptoe.'],
    [
      { kind: 'eventually', of: { kind: 'always', of: landing, window: { from: 0, to: 3 } } },
      'At some moment be in the Ferry landing for the next 3 s.',
    ],
    [
      {
        kind: 'eventually',
        of: { kind: 'and', of: [landing, { kind: 'eventually', of: turned, window: { from: 0, to: 3 } }] },
      },
      'At some moment be in the Ferry landing and have turned back once within the next 3 s.',
    ],
    [
      { kind: 'until', hold: not(bakery), until: turned },
      'Don’t pass the Bakery until you have turned back once.',
    ],
    [
      { kind: 'until', hold: tiptoe, until: landing, within: 6 },
      'Be on tiptoe until you are in the Ferry landing, within 6 s.',
    ],
    [
      { kind: 'until', hold: tiptoe, until: not(landing) },
      'Be on tiptoe until you are out of the Ferry landing.',
    ],
    [
      { kind: 'lasting', of: landing, how: 'at-least', time: 4 },
      'Be in the Ferry landing for at least 4 s in all.',
    ],
    [
      { kind: 'not', of: { kind: 'lasting', of: landing, how: 'at-least', time: 4 } },
      'Be in the Ferry landing for less than 4 s in all.',
    ],
  ];
  for (const [formula, sentence] of timed) {
    test(sentence, () => {
      expect(goals.sentence(formula, sheet)).toBe(sentence);
    });
  }
  const opposites: [Formula, string][] = [
    [{ ...fast, how: 'at-least', count: 2 }, 'Drive at most one fast stretch of 15 cm or more.'],
    [{ ...fast, how: 'at-most', count: 1 }, 'Drive at least two fast stretches of 15 cm or more.'],
    [fast, 'Don’t drive exactly one fast stretch of 15 cm or more.'],
    [{ kind: 'turn-back', count: 0 }, 'Turn back at least once.'],
    [{ kind: 'mark-limit', most: 0 }, 'Use at least one mark.'],
    [{ kind: 'ink-limit', most: 300 }, 'Draw more than 30 cm of line.'],
    [{ kind: 'way', how: 'at-least', length: 300 }, 'Drive less than 30 cm.'],
    [{ kind: 'read-marks', count: 2 }, 'Read at most one mark.'],
    [{ kind: 'decided' }, 'Leave something to chance.'],
    [{ kind: 'steadiness', least: 0.95 }, 'Make it with fewer than 19 of 20 robots.'],
    [
      { kind: 'or', of: [{ kind: 'finish' }, { kind: 'stay-on-paper' }] },
      'Don’t finish at the Lighthouse and drive over the edge of the paper.',
    ],
  ];
  for (const [formula, sentence] of opposites) {
    test(`not: ${sentence}`, () => {
      expect(goals.sentence({ kind: 'not', of: formula }, sheet)).toBe(sentence);
    });
  }
  test('semicolons keep apart what is a list itself', () => {
    const wish: Formula = { kind: 'and', of: [{ kind: 'finish' }, { kind: 'eventually', of: both }] };
    expect(goals.sentence(wish, sheet)).toBe(
      'Finish at the Lighthouse; and at some moment be in the Ferry landing and be on tiptoe.',
    );
    const either: Formula = {
      kind: 'or',
      of: [{ kind: 'park' }, { kind: 'and', of: [{ kind: 'finish' }, { kind: 'every-gate' }] }],
    };
    expect(goals.sentence(either, sheet)).toBe(
      'Park at the Lighthouse; or finish at the Lighthouse and pass every gate.',
    );
    expect(goals.short(either, sheet)).toBe('Park; or reach the Lighthouse and every gate');
  });
  test('every formula reads as one sentence', () => {
    fc.assert(
      fc.property(formulas, (formula) => {
        const said = goals.sentence(formula, sheet);
        expect(said).toMatch(/^\p{Lu}[^.]*(\.\d[^.]*)*\.$/u);
        expect(said).not.toMatch(/undefined|NaN|Infinity|\[object| {2}| [,.;]/);
        expect(goals.short(formula, sheet)).not.toMatch(/undefined|NaN|\[object/);
      }),
    );
  });
  test('and, or and not read as one sentence', () => {
    const both: Formula = {
      kind: 'and',
      of: [{ kind: 'finish' }, { kind: 'not', of: { kind: 'turn-back', count: 2 } }],
    };
    expect(goals.sentence(both, sheet)).toBe('Finish at the Lighthouse and don’t turn back twice.');
  });
});

describe('margins', () => {
  const result = (over: Partial<GoalResult>): GoalResult => ({
    id: 'g',
    met: (over.margin ?? 0) >= 0,
    margin: 0,
    unit: 'mm',
    by: 'stretches',
    leftToLuck: false,
    ...over,
  });
  test('robots and junctions are counted', () => {
    const steady: Formula = { kind: 'steadiness', least: 0.9 };
    const robots = (margin: number) =>
      goals.margin(result({ margin, unit: 'ratio', by: 'steadiness' }), steady);
    expect([robots(0.1), robots(0.05), robots(-0.15)]).toEqual([
      'two robots to spare',
      'one robot to spare',
      'three robots missing',
    ]);
    const open = (margin: number) =>
      goals.margin(result({ margin, unit: 'count', by: 'decided' }), { kind: 'decided' });
    expect([open(0), open(-1), open(-2)]).toEqual([
      'done',
      'one junction left to chance',
      'two junctions left to chance',
    ]);
  });
  test('beside a wish in cm they are in cm', () => {
    expect(goals.margin(result({ margin: 12 }), fast)).toBe('1.2 cm to spare');
    expect(goals.margin(result({ margin: -77, side: 'below' }), fast)).toBe('7.7 cm missing');
    expect(goals.margin(result({ margin: -20, side: 'above' }), fast)).toBe('one too many, by 2 cm');
  });
  test('time says which end of the window was missed', () => {
    const window: Formula = { kind: 'time', from: 10, to: 12 };
    const at = (margin: number, side: 'below' | 'above') =>
      goals.margin(result({ margin, side, unit: 's', by: 'time' }), window);
    expect(at(-2, 'above')).toBe('short by 2 s');
    expect(at(-2, 'below')).toBe('too early by 2 s');
    expect(at(0.5, 'below')).toBe('0.5 s to spare');
  });
  test('a finish is reached, only just reached or so far away', () => {
    const finish = (margin: number) => goals.margin(result({ margin, by: 'finish' }), { kind: 'finish' });
    expect(finish(12)).toBe('reached');
    expect(finish(1.2)).toBe('only just reached');
    expect(finish(-123)).toBe('12.3 cm away');
  });
  test('a goal that is missed in some of several ways says in how many', () => {
    const far = (ways?: { missed: number; of: number }) =>
      goals.far(result({ margin: -170, by: 'finish' }), { kind: 'finish' }, ways);
    expect(far()).toBe('17 cm away');
    expect(far({ missed: 1, of: 2 })).toBe('17 cm away, in one of 2 ways');
    expect(far({ missed: 2, of: 2 })).toBe('17 cm away, in both ways');
    expect(far({ missed: 4, of: 4 })).toBe('17 cm away, in all 4 ways');
  });
  test('a goal over too many runs is left to luck', () => {
    expect(goals.margin(result({ margin: -1, leftToLuck: true, by: 'luck' }), fast)).toBe('left to luck');
    const steady: Formula = { kind: 'steadiness', least: 0.9 };
    expect(goals.margin(result({ margin: -1, open: true, by: 'steadiness' }), steady)).toBe(
      'counted when it is handed in',
    );
  });
  test('under "not" the phrase says no more than the number', () => {
    const away: Formula = { kind: 'not', of: { kind: 'finish' } };
    expect(goals.margin(result({ margin: 40, by: 'finish' }), away)).toBe('40 mm to spare');
  });
  const landing: Formula = { kind: 'eventually', of: { kind: 'in-area', area: 'landing' } };
  test('under a time operator the deciding condition speaks', () => {
    expect(goals.margin(result({ margin: 8, by: 'in-area' }), landing)).toBe('8 mm to spare');
    const slow: Formula = { kind: 'always', of: { kind: 'pace', pace: 'fast' } };
    const behind = result({ margin: -2, unit: 'count', by: 'pace', side: 'below' });
    expect(goals.margin(behind, slow)).toBe('two steps too slow');
    expect(goals.margin(result({ margin: 0, unit: 'count', by: 'pace' }), slow)).toBe('fast');
    const held: Formula = { kind: 'until', hold: { kind: 'finish' }, until: { kind: 'every-gate' } };
    expect(goals.margin(result({ margin: -1, unit: 'count', by: 'every-gate' }), held)).toBe('one missing');
    expect(goals.margin(result({ margin: -140, by: 'finish' }), held)).toBe('14 cm away');
  });
  test('a run that is over before the window says so', () => {
    expect(goals.margin(result({ margin: -9999, unit: 's', by: 'eventually' }), landing)).toBe(
      'over before then',
    );
  });
  test('how long it lasted too long or too short', () => {
    const lasting: Formula = { kind: 'lasting', of: { kind: 'finish' }, how: 'at-least', time: 4 };
    const by = { unit: 's', by: 'lasting' } as const;
    expect(goals.margin(result({ margin: 1.25, ...by }), lasting)).toBe('1.3 s to spare');
    expect(goals.margin(result({ margin: -1.5, ...by }), lasting)).toBe('1.5 s missing');
    expect(goals.margin(result({ margin: -1.5, ...by }), { ...lasting, how: 'at-most' })).toBe(
      '1.5 s too long',
    );
  });
  test('marks, places and way', () => {
    expect(
      goals.margin(result({ margin: -2, unit: 'count', by: 'read-marks' }), { kind: 'read-marks', count: 3 }),
    ).toBe('two missing');
    expect(
      goals.margin(result({ margin: 0, unit: 'count', by: 'read-marks' }), { kind: 'read-marks', count: 3 }),
    ).toBe('done');
    const wait: Formula = { kind: 'act-in', act: 'wait', area: 'landing' };
    expect(goals.margin(result({ margin: -1, unit: 'count', by: 'act-in' }), wait)).toBe('not done');
    expect(goals.margin(result({ margin: -7, by: 'act-in' }), wait)).toBe('7 mm missing');
    const way: Formula = { kind: 'way', how: 'at-most', length: 400 };
    expect(goals.margin(result({ margin: -12, by: 'way' }), way)).toBe('1.2 cm too long');
    expect(goals.margin(result({ margin: -12, by: 'way' }), { ...way, how: 'at-least' })).toBe(
      '1.2 cm too short',
    );
  });
});
