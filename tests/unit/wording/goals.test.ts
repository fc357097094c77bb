import { describe, expect, test } from 'vitest';
import type { Formula } from '../../../shared/documents/formula.ts';
import type { GoalResult } from '../../../shared/documents/verdict.ts';
import { wording } from '../../../shared/wording/wording.ts';
import { SHEET } from '../goals/hand-made.ts';

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
    [{ kind: 'finish' }, 'Finish at the Lighthouse.', 'Finish'],
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
  ];
  for (const [formula, sentence, short] of table) {
    test(`${formula.kind}: ${sentence}`, () => {
      expect(goals.sentence(formula, sheet)).toBe(sentence);
      expect(goals.short(formula, sheet)).toBe(short);
    });
  }
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
  test('a goal over too many runs is left to luck', () => {
    expect(goals.margin(result({ margin: -1, leftToLuck: true, by: 'luck' }), fast)).toBe('left to luck');
  });
  test('under "not" the phrase says no more than the number', () => {
    const away: Formula = { kind: 'not', of: { kind: 'finish' } };
    expect(goals.margin(result({ margin: 40, by: 'finish' }), away)).toBe('40 mm to spare');
  });
});
