import type { Formula } from '../../documents/formula.ts';
import type { Sheet } from '../../documents/sheet.ts';
import type { GoalResult } from '../../documents/verdict.ts';
import { numbers } from './numbers.ts';

export const goals = {
  /** One plain sentence: what must come true. */
  sentence: (formula: Formula, _sheet: Sheet): string => formula.kind,
  /** A few words for a narrow place: "One fast stretch of 15 cm". */
  short: (formula: Formula, _sheet: Sheet): string => formula.kind,
  /** How far from tipping over: "1.2 cm to spare", "short by 2 s". */
  margin: (result: GoalResult, _formula: Formula): string => numbers.short(result.margin, 1),
};
