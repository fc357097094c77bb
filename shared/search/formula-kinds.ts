import type { Formula, Moment } from '../documents/formula.ts';

type Part = Formula | Moment;

/** A formula and all formulas in it. */
function partsOf(formula: Part): Part[] {
  switch (formula.kind) {
    case 'and':
    case 'or':
      return [formula, ...formula.of.flatMap(partsOf)];
    case 'not':
    case 'always':
    case 'eventually':
    case 'lasting':
      return [formula, ...partsOf(formula.of)];
    case 'until':
      return [formula, ...partsOf(formula.hold), ...partsOf(formula.until)];
    default:
      return [formula];
  }
}

/** Kinds of all predicates and operators in a formula. */
export const kindsIn = (formula: Part): string[] =>
  partsOf(formula).flatMap((part) =>
    part.kind === 'act-in' ? [part.kind, `act-in-${part.act}`] : [part.kind],
  );

/** Ids of the areas that a formula speaks of. */
export const areasIn = (formula: Part): string[] =>
  partsOf(formula).flatMap((part) => ('area' in part && part.area !== undefined ? [part.area] : []));
