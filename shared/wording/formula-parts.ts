import {
  type Formula,
  isPredicate,
  type Lasting,
  type Moment,
  type MomentPredicate,
  type Predicate,
  type TimeOperator,
} from '../documents/formula.ts';
import type { Sheet } from '../documents/sheet.ts';

/** What every language asks of a formula before it says it. */

export type Wish = Predicate | MomentPredicate | Lasting;

/** Whether "and" or "or" stands in the sentence of a formula by itself. */
const isList = (formula: Formula): boolean => {
  switch (formula.kind) {
    case 'not':
      return isList(formula.of);
    case 'and':
    case 'or':
      return formula.of.length > 1;
    case 'always':
    case 'eventually':
    case 'lasting':
      return formula.of.kind === 'and' || formula.of.kind === 'or';
    default:
      return false;
  }
};

/** The first predicate of that kind, unless a "not" stands above it: then its phrase would be wrong. */
export function deciding(formula: Formula | Moment, by: string): Wish | undefined {
  const firstOf = (parts: readonly (Formula | Moment)[]) =>
    parts.map((part) => deciding(part, by)).find((found) => found !== undefined);
  switch (formula.kind) {
    case 'not':
      return undefined;
    case 'and':
    case 'or':
      return firstOf(formula.of);
    case 'always':
    case 'eventually':
      return deciding(formula.of, by);
    case 'until':
      return firstOf([formula.hold, formula.until]);
    default:
      return formula.kind === by ? formula : undefined;
  }
}

/** A predicate by itself, and whether its opposite is meant. */
export function alone(
  moment: Moment,
  negated: boolean,
): { wish: MomentPredicate; negated: boolean } | undefined {
  if (moment.kind === 'not') return alone(moment.of, !negated);
  return isPredicate(moment) ? { wish: moment, negated } : undefined;
}

/** How a language says what formulas are made of. */
export interface FormulaWords {
  readonly clauseOf: (wish: Predicate, sheet: Sheet) => string;
  readonly oppositeOf: (wish: Predicate, sheet: Sheet) => string;
  readonly shortOf: (wish: Predicate, sheet: Sheet) => string;
  readonly timedClause: (operator: TimeOperator, sheet: Sheet, negated: boolean) => string;
  readonly lastingClause: (lasting: Lasting, sheet: Sheet, negated: boolean) => string;
  readonly list: (parts: readonly string[], last: 'and' | 'or') => string;
  readonly last: Readonly<Record<'and' | 'or', string>>;
}

/** Whole formulas in the words of a language: as a clause, or short, for a narrow place. */
export function formulasIn(words: FormulaWords) {
  /** A list of parts; where one is a list itself, semicolons keep them apart. */
  const listed = (parts: readonly string[], last: 'and' | 'or', of: readonly Formula[]): string =>
    of.some(isList) ? parts.join(`; ${words.last[last]} `) : words.list(parts, last);

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
        return words.timedClause(formula, sheet, negated);
      case 'lasting':
        return words.lastingClause(formula, sheet, negated);
      default:
        return negated ? words.oppositeOf(formula, sheet) : words.clauseOf(formula, sheet);
    }
  }

  function short(formula: Formula, sheet: Sheet): string {
    if (isPredicate(formula)) return words.shortOf(formula, sheet);
    if (formula.kind !== 'and' && formula.kind !== 'or') return clause(formula, sheet);
    const parts = formula.of.map((part) => short(part, sheet));
    return listed(parts, formula.kind, formula.of);
  }

  return { clause, short };
}
