import {
  type Formula,
  isPredicate,
  type Moment,
  type MomentPredicate,
  type Predicate,
} from '../../../shared/documents/formula.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';

/** Every formula as lists to choose from and numbers to set: what a sentence builder shows and changes. */

/** What a sentence is made of, at whichever level. */
export type Clause = Formula | Moment;
export type Wish = Predicate | MomentPredicate;
export type WishKind = Wish['kind'];
type OperatorKind = Exclude<Formula['kind'] | Moment['kind'], WishKind>;
export type FormulaKind = WishKind | OperatorKind;

/** What a list offers. */
export type ChoiceOf = 'pace' | 'how' | 'how-much' | 'act' | 'area' | 'area-or-finish';
export type NumberOf = 'count' | 'length' | 'time' | 'share';

/** One thing of a predicate that can be set. */
export type Field =
  | { readonly is: 'one-of'; readonly key: string; readonly of: ChoiceOf }
  | { readonly is: 'number'; readonly key: string; readonly of: NumberOf }
  | { readonly is: 'gates'; readonly key: 'gates' }
  | { readonly is: 'tick'; readonly key: 'ordered' };

const choice = (key: string, of: ChoiceOf): Field => ({ is: 'one-of', key, of });
const number = (key: string, of: NumberOf): Field => ({ is: 'number', key, of });

export const FIELDS: Readonly<Record<WishKind, readonly Field[]>> = {
  finish: [],
  park: [choice('area', 'area-or-finish')],
  stretches: [
    choice('how', 'how'),
    number('count', 'count'),
    choice('pace', 'pace'),
    number('length', 'length'),
  ],
  'pace-at-end': [choice('pace', 'pace')],
  gates: [
    { is: 'gates', key: 'gates' },
    { is: 'tick', key: 'ordered' },
  ],
  'every-gate': [],
  'keep-out': [],
  'stay-on-paper': [],
  time: [number('from', 'time'), number('to', 'time')],
  'turn-back': [number('count', 'count')],
  'read-marks': [number('count', 'count')],
  'act-in': [choice('act', 'act'), choice('area', 'area')],
  way: [choice('how', 'how-much'), number('length', 'length')],
  'mark-limit': [number('most', 'count')],
  'ink-limit': [number('most', 'length')],
  decided: [],
  steadiness: [number('least', 'share')],
  'in-area': [choice('area', 'area')],
  pace: [choice('pace', 'pace')],
};

const RUN_ONLY = [
  'park',
  'pace-at-end',
  'time',
  'mark-limit',
  'ink-limit',
  'decided',
  'steadiness',
] as const satisfies readonly WishKind[];
const MOMENT_ONLY = ['in-area', 'pace'] as const satisfies readonly WishKind[];
const includes = (list: readonly string[], kind: string): boolean => list.includes(kind);

/** Whether a whole run is spoken of, or one moment of it; and how many levels may stand below. */
export interface Level {
  readonly moment: boolean;
  readonly below: number;
}

/** As deep as formulas may be. */
const DEEPEST = 6;
export const TOP: Level = { moment: false, below: DEEPEST };

/** The level of what stands in an operator of this kind. */
export function levelIn({ moment, below }: Level, kind: FormulaKind): Level {
  const combines = kind === 'not' || kind === 'and' || kind === 'or';
  return moment || combines ? { moment, below: below - 1 } : { moment: true, below: DEEPEST };
}

const WISHES = Object.keys(FIELDS) as WishKind[];
const COMBINED = ['not', 'and', 'or'] as const satisfies readonly OperatorKind[];
const TIMED = ['always', 'eventually', 'until'] as const satisfies readonly OperatorKind[];

/** What may stand at a level: predicates and operators, as a list shows them. */
export function kindsAt({ moment, below }: Level): { wishes: WishKind[]; operators: OperatorKind[] } {
  const wishes = WISHES.filter((kind) => !includes(moment ? RUN_ONLY : MOMENT_ONLY, kind));
  const combined = below > 0 ? COMBINED : [];
  if (moment) return { wishes, operators: [...combined, ...(below > 0 ? TIMED : [])] };
  return { wishes, operators: [...combined, ...TIMED, 'lasting'] };
}

/** Whether a formula may stand at a level. */
function fits(formula: Clause, level: Level): boolean {
  const { wishes, operators } = kindsAt(level);
  if (isPredicate(formula)) return includes(wishes, formula.kind);
  if (!includes(operators, formula.kind)) return false;
  return partsOf(formula).every((part) => fits(part, levelIn(level, formula.kind)));
}

/** What stands in an operator, in the order in which it is said. */
export function partsOf(formula: Clause): readonly Clause[] {
  switch (formula.kind) {
    case 'and':
    case 'or':
      return formula.of;
    case 'not':
    case 'always':
    case 'eventually':
    case 'lasting':
      return [formula.of];
    case 'until':
      return [formula.hold, formula.until];
    default:
      return [];
  }
}

/** First values: such as the sheet allows, and windows that are fair. */
function blankWish(kind: WishKind, sheet: Sheet): Wish {
  const area = sheet.areas[0]?.id ?? NO_PLACE;
  switch (kind) {
    case 'park':
      return sheet.finish || !sheet.areas[0] ? { kind } : { kind, area };
    case 'stretches':
      return { kind, pace: 'fast', how: 'at-least', count: 1, length: 100 };
    case 'pace-at-end':
    case 'pace':
      return { kind, pace: 'steady' };
    case 'gates':
      return { kind, gates: [sheet.gates[0]?.id ?? NO_PLACE], ordered: true };
    case 'time':
      return { kind, from: 0, to: 20 };
    case 'turn-back':
    case 'read-marks':
      return { kind, count: 1 };
    case 'act-in':
      return { kind, act: 'wait', area };
    case 'in-area':
      return { kind, area };
    case 'way':
      return { kind, how: 'at-most', length: 500 };
    case 'mark-limit':
      return { kind, most: 2 };
    case 'ink-limit':
      return { kind, most: 500 };
    case 'steadiness':
      return { kind, least: 0.9 };
    default:
      return { kind };
  }
}

/** Stands for a place until the sheet has one. */
const NO_PLACE = 'none';

/** The formula of another kind at the same level; what was there is kept inside it where it can be. */
export function ofKind(before: Clause, kind: FormulaKind, level: Level, sheet: Sheet): Clause {
  if (kind in FIELDS) return blankWish(kind as WishKind, sheet);
  const inside = levelIn(level, kind);
  const kept = isPredicate(before) || kind === 'not' ? [before] : partsOf(before);
  const parts = kept.filter((part) => fits(part, inside));
  const blank = blankWish(inside.moment ? 'stay-on-paper' : 'finish', sheet) as MomentPredicate;
  const [first = blank, second = blank] = parts as Moment[];
  switch (kind) {
    case 'and':
    case 'or':
      return { kind, of: parts.length > 1 ? (parts as Moment[]) : [first, second] };
    case 'until':
      return { kind, hold: first, until: second };
    case 'lasting':
      return { kind, of: first, how: 'at-least', time: 5 };
    default:
      return { kind: kind as 'not', of: first };
  }
}

/** The same operator with other parts. */
export function withParts(formula: Clause, parts: readonly Clause[]): Clause {
  const [first, second] = parts as Moment[];
  switch (formula.kind) {
    case 'and':
    case 'or':
      return { ...formula, of: parts as Moment[] };
    case 'until':
      return { ...formula, hold: first!, until: second! };
    case 'not':
    case 'always':
    case 'eventually':
    case 'lasting':
      return { ...formula, of: first! };
    default:
      return formula;
  }
}

/** How many parts "and" and "or" may have. */
export const MOST_PARTS = 8;
