import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Formula, isPredicate } from '../../../shared/documents/formula.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { formulas } from '../../formulas.ts';
import '../../seed.ts';

const problemsOf = (input: unknown) => {
  const parsed = parseDocument(Formula, input);
  return parsed.ok ? [] : parsed.problems.map((problem) => problem.path);
};
const FINISH = { kind: 'finish' };

describe('formulas as documents', () => {
  test('what the first version could say is still read', () => {
    const old = {
      kind: 'and',
      of: [
        { kind: 'stretches', pace: 'fast', how: 'exactly', count: 1, length: 15_000 },
        { kind: 'not', of: { kind: 'or', of: [FINISH, { kind: 'time', from: 940, to: 1060 }] } },
      ],
    };
    expect(parseDocument(Formula, old)).toEqual({
      ok: true,
      value: {
        kind: 'and',
        of: [
          { kind: 'stretches', pace: 'fast', how: 'exactly', count: 1, length: 150 },
          { kind: 'not', of: { kind: 'or', of: [FINISH, { kind: 'time', from: 9.4, to: 10.6 }] } },
        ],
      },
    });
  });
  test('windows are hundredths of a second in files', () => {
    const input = { kind: 'always', of: FINISH, window: { from: 150 } };
    expect(parseDocument(Formula, input)).toEqual({
      ok: true,
      value: { kind: 'always', of: FINISH, window: { from: 1.5 } },
    });
  });
  test('a wish over the drawing or the end of the run under a time operator is refused with its path', () => {
    for (const kind of ['always', 'eventually', 'lasting'] as const) {
      const more = kind === 'lasting' ? { how: 'at-least', time: 100 } : {};
      const wish = { kind, of: { kind: 'and', of: [FINISH, { kind: 'mark-limit', most: 1 }] }, ...more };
      expect(problemsOf(wish)).toEqual([['of', 'of', 1, 'kind']]);
    }
    expect(problemsOf({ kind: 'until', hold: FINISH, until: { kind: 'park' } })).toEqual([['until', 'kind']]);
    expect(problemsOf({ kind: 'until', hold: { kind: 'ink-limit', most: 1 }, until: FINISH })).toEqual([
      ['hold', 'kind'],
    ]);
  });
  test('a condition on a moment outside a time operator is refused with its path', () => {
    expect(problemsOf({ kind: 'or', of: [FINISH, { kind: 'pace', pace: 'fast' }] })).toEqual([
      ['of', 1, 'kind'],
    ]);
  });
  test('formulas stand up to six deep in one another; hostile depth is refused and does not throw', () => {
    const deep = (levels: number): unknown => {
      let formula: unknown = FINISH;
      for (let i = 0; i < levels; i++) formula = { kind: 'not', of: formula };
      return formula;
    };
    expect(problemsOf(deep(6))).toEqual([]);
    expect(problemsOf(deep(7))).toHaveLength(1);
    expect(problemsOf(deep(50_000))).toHaveLength(1);
  });
  test('every formula is the same after writing and reading', () => {
    fc.assert(
      fc.property(formulas, (formula) => {
        const file = JSON.parse(JSON.stringify(writeDocument(Formula, formula)));
        expect(parseDocument(Formula, file)).toEqual({ ok: true, value: formula });
      }),
    );
  });
});

test('isPredicate tells predicates from what is put together', () => {
  expect(isPredicate({ kind: 'finish' } as Formula)).toBe(true);
  expect(isPredicate({ kind: 'always', of: { kind: 'finish' } } as Formula)).toBe(false);
});
