import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FIELDS,
  type FormulaKind,
  kindsAt,
  type Level,
  levelIn,
  ofKind,
  partsOf,
  TOP,
  withParts,
} from '../../../../../client/desk/builder/formula-form.ts';
import { Formula, isPredicate, type Moment } from '../../../../../shared/documents/formula.ts';
import { parseDocument, writeDocument } from '../../../../../shared/documents/values.ts';
import { DEMO_KIT } from '../../../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../../../shared/library/ready.ts';
import { formulas } from '../../../../formulas.ts';
import '../../../../seed.ts';

const [found] = readyChallenges(DEMO_KIT).filter(({ key }) => key === 'three-calls');
if (!found?.playable) throw new Error('the library has three calls');
const { sheet } = found.challenge;
const FINISH: Formula = { kind: 'finish' };
const MOMENT: Level = { moment: true, below: 3 };

/** What stands beside the parts of an operator. */
const TIMES: Readonly<Record<string, readonly string[]>> = {
  always: ['window'],
  eventually: ['window'],
  until: ['within'],
  lasting: ['how', 'time'],
};

/** Writes a formula anew by the builder's own steps: kinds from lists, then fields, then parts. */
function rewritten(formula: Formula | Moment, level: Level): Formula | Moment {
  const { wishes, operators } = kindsAt(level);
  if (![...wishes, ...operators].includes(formula.kind as never))
    throw new Error(`no way to ${formula.kind}`);
  const blank = ofKind(FINISH, formula.kind as FormulaKind, level, sheet);
  const settable = isPredicate(formula)
    ? FIELDS[formula.kind].map(({ key }) => key)
    : (TIMES[formula.kind] ?? []);
  const from = Object.entries(formula).filter(([key]) => settable.includes(key));
  const bare = Object.fromEntries(Object.entries(blank).filter(([key]) => !settable.includes(key)));
  const set = { ...bare, ...Object.fromEntries(from) } as unknown as Formula;
  const inside = levelIn(level, formula.kind as FormulaKind);
  return withParts(
    set,
    partsOf(formula).map((part) => rewritten(part, inside)),
  );
}

describe('the sentence builder', () => {
  it('writes every formula that a file may hold', () => {
    fc.assert(
      fc.property(formulas, (formula) => {
        expect(rewritten(formula, TOP)).toEqual(formula);
      }),
    );
  });

  it.each([TOP, MOMENT])('begins every kind with values that a file may hold, %j', (level) => {
    const { wishes, operators } = kindsAt(level);
    for (const kind of [...wishes, ...operators]) {
      const blank = ofKind(FINISH, kind, level, sheet);
      const whole = level.moment ? { kind: 'always' as const, of: blank as Moment } : (blank as Formula);
      const read = parseDocument(Formula, writeDocument(Formula, whole));
      expect(read).toEqual({ ok: true, value: whole });
    }
  });

  it('offers a sheet’s own gates and areas first', () => {
    expect(ofKind(FINISH, 'gates', TOP, sheet)).toMatchObject({ gates: [sheet.gates[0]!.id] });
    expect(ofKind(FINISH, 'act-in', TOP, sheet)).toMatchObject({ area: sheet.areas[0]!.id });
  });

  it('keeps what was there inside "not", "and" and time operators where it can stand there', () => {
    const wish = ofKind(FINISH, 'way', TOP, sheet);
    expect(ofKind(wish, 'not', TOP, sheet)).toEqual({ kind: 'not', of: wish });
    expect(ofKind(wish, 'always', TOP, sheet)).toEqual({ kind: 'always', of: wish });
    const both = ofKind(wish, 'and', TOP, sheet);
    expect(partsOf(both)).toEqual([wish, FINISH]);
    expect(ofKind(both, 'or', TOP, sheet)).toEqual({ kind: 'or', of: [wish, FINISH] });
    // Parking is of a whole run: under a time operator something else has to take its place.
    const park = ofKind(FINISH, 'park', TOP, sheet);
    expect(ofKind(park, 'always', TOP, sheet)).toEqual({ kind: 'always', of: { kind: 'stay-on-paper' } });
  });

  it('offers no operator where formulas may go no deeper', () => {
    expect(kindsAt({ moment: true, below: 0 }).operators).toEqual([]);
    expect(kindsAt({ moment: false, below: 0 }).operators).toEqual([
      'always',
      'eventually',
      'until',
      'lasting',
    ]);
  });
});
