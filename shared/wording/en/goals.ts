import type { Goal } from '../../documents/challenge.ts';
import type { Formula } from '../../documents/formula.ts';
import type { Sheet } from '../../documents/sheet.ts';
import type { GoalResult } from '../../documents/verdict.ts';
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
  last: { and: 'and', or: 'or' },
});

/** In how many of the ways that a robot can go a goal is missed. */
export interface Ways {
  readonly missed: number;
  readonly of: number;
}

const inWays = ({ missed, of }: Ways): string => {
  if (missed < of) return `in ${numbers.words(missed)} of ${of} ways`;
  return of === 2 ? 'in both ways' : `in all ${of} ways`;
};

export const goals = {
  /** One plain sentence: what must come true, and for whom, where it is for one of two travellers. */
  sentence: (formula: Formula, sheet: Sheet, start?: Goal['start']): string =>
    start === undefined
      ? `${numbers.capital(clause(formula, sheet))}.`
      : `From ${places.berth(sheet, start)}: ${clause(formula, sheet)}.`,
  /** A few words for a narrow place: "One fast stretch of 15 cm". */
  short: (formula: Formula, sheet: Sheet, start?: Goal['start']): string =>
    start === undefined
      ? numbers.capital(short(formula, sheet))
      : `From ${places.berth(sheet, start)}: ${short(formula, sheet)}`,
  /** How far from tipping over: "1.2 cm to spare", "short by 2 s". */
  margin,
  /** The margin, and in how many of several ways the goal is missed: "17 cm away, in one of 2 ways". */
  far: (result: GoalResult, formula: Formula, ways?: Ways): string =>
    ways ? `${margin(result, formula)}, ${inWays(ways)}` : margin(result, formula),
};
