import {
  type Formula,
  isPredicate,
  type Lasting,
  type Moment,
  type MomentPredicate,
  type Predicate,
} from '../documents/formula.ts';

/** What every language asks of a formula before it says it. */

export type Wish = Predicate | MomentPredicate | Lasting;

/** Whether "and" or "or" stands in the sentence of a formula by itself. */
export const isList = (formula: Formula): boolean => {
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
