import type { Goal } from '../../documents/challenge.ts';
import type { Formula } from '../../documents/formula.ts';
import type { Sheet } from '../../documents/sheet.ts';
import type { GoalResult } from '../../documents/verdict.ts';
import type { Ways } from '../en/goals.ts';
import { formulasIn } from '../formula-parts.ts';
import { clauseOf, oppositeOf, places, shortOf } from './goal-clauses.ts';
import { margin } from './goal-margins.ts';
import { lastingClause, timedClause } from './goal-moments.ts';
import { numbers } from './numbers.ts';

const { clause, short } = formulasIn({
  clauseOf,
  oppositeOf,
  shortOf,
  timedClause,
  lastingClause,
  list: numbers.list,
  last: { and: 'y', or: 'o' },
});

const inWays = ({ missed, of }: Ways): string => {
  if (missed < of) return `en ${numbers.words(missed)} de ${of} caminos`;
  return of === 2 ? 'en los dos caminos' : `en los ${of} caminos`;
};

export const goals = {
  /** One plain sentence: what must come true, and for whom, where it is for one of two travellers. */
  sentence: (formula: Formula, sheet: Sheet, start?: Goal['start']): string =>
    start === undefined
      ? `${numbers.capital(clause(formula, sheet))}.`
      : `Desde ${places.berth(sheet, start)}: ${clause(formula, sheet)}.`,
  /** A few words for a narrow place: "Un tramo rápido de 15 cm". */
  short: (formula: Formula, sheet: Sheet, start?: Goal['start']): string =>
    start === undefined
      ? numbers.capital(short(formula, sheet))
      : `Desde ${places.berth(sheet, start)}: ${short(formula, sheet)}`,
  /** How far from tipping over: "1,2 cm de sobra", "2 s tarde". */
  margin,
  /** The margin, and in how many of several ways the goal is missed: "a 17 cm, en uno de 2 caminos". */
  far: (result: GoalResult, formula: Formula, ways?: Ways): string =>
    ways ? `${margin(result, formula)}, ${inWays(ways)}` : margin(result, formula),
};
