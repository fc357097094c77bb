import type { Formula, Moment } from '../documents/formula.ts';

/** Kinds of all predicates and operators in a formula. */
export function kindsIn(formula: Formula | Moment): string[] {
  switch (formula.kind) {
    case 'and':
    case 'or':
      return [formula.kind, ...formula.of.flatMap(kindsIn)];
    case 'not':
    case 'always':
    case 'eventually':
    case 'lasting':
      return [formula.kind, ...kindsIn(formula.of)];
    case 'until':
      return [formula.kind, ...kindsIn(formula.hold), ...kindsIn(formula.until)];
    case 'act-in':
      return [formula.kind, `act-in-${formula.act}`];
    default:
      return [formula.kind];
  }
}
