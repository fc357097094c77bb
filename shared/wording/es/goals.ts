import type { Goal } from '../../documents/challenge.ts';
import { type Formula, isPredicate } from '../../documents/formula.ts';
import type { Sheet } from '../../documents/sheet.ts';
import type { GoalResult } from '../../documents/verdict.ts';
import { isList } from '../formula-parts.ts';
import { clauseOf, oppositeOf, places, shortOf } from './goal-clauses.ts';
import { margin } from './goal-margins.ts';
import { lastingClause, timedClause } from './goal-moments.ts';
import { numbers } from './numbers.ts';

const LAST = { and: 'y', or: 'o' } as const;

/** A list of parts; where one is a list itself, semicolons keep them apart. */
function listed(parts: readonly string[], last: 'and' | 'or', of: readonly Formula[]): string {
  return of.some(isList) ? parts.join(`; ${LAST[last]} `) : numbers.list(parts, last);
}

function clause(formula: Formula, sheet: Sheet, negated = false): string {
  switch (formula.kind) {
    case 'not':
      return clause(formula.of, sheet, !negated);
    case 'and':
    case 'or': {
      const parts = formula.of.map((part) => clause(part, sheet, negated));
      return listed(parts, (formula.kind === 'and') !== negated ? 'and' : 'or', formula.of);
    }
    case 'always':
    case 'eventually':
    case 'until':
      return timedClause(formula, sheet, negated);
    case 'lasting':
      return lastingClause(formula, sheet, negated);
    default:
      return negated ? oppositeOf(formula, sheet) : clauseOf(formula, sheet);
  }
}

function short(formula: Formula, sheet: Sheet): string {
  if (isPredicate(formula)) return shortOf(formula, sheet);
  if (formula.kind !== 'and' && formula.kind !== 'or') return clause(formula, sheet);
  const parts = formula.of.map((part) => short(part, sheet));
  return listed(parts, formula.kind, formula.of);
}

/** In how many of the ways that a robot can go a goal is missed. */
interface Ways {
  readonly missed: number;
  readonly of: number;
}

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
  met: (met: boolean): string => (met ? 'cumplido' : 'sin cumplir'),
};
