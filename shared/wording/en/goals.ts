import { type Formula, isPredicate, type Predicate } from '../../documents/formula.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { actions } from './actions.ts';
import { margin } from './goal-margins.ts';
import { numbers } from './numbers.ts';

type WishOf<K extends Predicate['kind']> = Extract<Predicate, { kind: K }>;
type PerKind<Said> = { readonly [K in Predicate['kind']]: (wish: WishOf<K>, sheet: Sheet) => Said };

const nameIn = (things: readonly { id: string; name: { en: string } }[], id: string): string =>
  things.find((thing) => thing.id === id)?.name.en ?? id;

const the = (name: string): string => `the ${name}`;

const finishName = (sheet: Sheet): string => the(sheet.finish?.name.en ?? 'finish');

const keepOutNames = (sheet: Sheet): string =>
  sheet.keepOut.length === 0
    ? 'every marked area'
    : numbers.list(
        sheet.keepOut.map((a) => the(a.name.en)),
        'and',
      );

const HOW = { exactly: 'exactly', 'at-least': 'at least', 'at-most': 'at most' } as const;

const stretch = (count: number, pace: WishOf<'stretches'>['pace']): string =>
  `${numbers.words(count)} ${actions.pace(pace)} ${count === 1 ? 'stretch' : 'stretches'}`;

const marks = (count: number): string => `${numbers.words(count)} ${count === 1 ? 'mark' : 'marks'}`;

const times = (count: number): string =>
  count === 0 ? 'never' : count === 1 ? 'once' : count === 2 ? 'twice' : `${numbers.words(count)} times`;

const inTurn = (names: readonly string[]): string =>
  names.map((name, i) => (i === 0 ? name : `then ${name}`)).join(', ');

/** Imperatives, so that "don't" makes the opposite of any. */
const CLAUSES: PerKind<string> = {
  finish: (_, sheet) => `finish at ${finishName(sheet)}`,
  park: (wish, sheet) =>
    `park at ${wish.area === undefined ? finishName(sheet) : the(nameIn(sheet.areas, wish.area))}`,
  stretches: (wish) =>
    `drive ${HOW[wish.how]} ${stretch(wish.count, wish.pace)} of ${numbers.length(wish.length)} or more`,
  'pace-at-end': (wish) => `${wish.pace === 'creep' ? 'tiptoe' : `be ${actions.pace(wish.pace)}`} at the end`,
  gates: (wish, sheet) => {
    const names = wish.gates.map((id) => the(nameIn(sheet.gates, id)));
    if (names.length === 1) return `pass ${names[0]}`;
    return wish.ordered ? `pass ${inTurn(names)}` : `pass ${numbers.list(names)} in any order`;
  },
  'keep-out': (_, sheet) => `keep out of ${keepOutNames(sheet)}`,
  'stay-on-paper': () => 'stay on the paper',
  time: (wish) =>
    wish.from === 0
      ? `arrive within ${numbers.time(wish.to)}`
      : `arrive after ${numbers.time(wish.from)} and before ${numbers.time(wish.to)}`,
  'turn-back': (wish) => (wish.count === 0 ? 'never turn back' : `turn back ${times(wish.count)}`),
  'mark-limit': (wish) => (wish.most === 0 ? 'use no marks' : `use at most ${marks(wish.most)}`),
  'ink-limit': (wish) => `draw at most ${numbers.length(wish.most)} of line`,
};

/** For a narrow place: a few words, beside which the margin stands. */
const SHORT: PerKind<string> = {
  finish: () => 'finish',
  park: () => 'park',
  stretches: (wish) => {
    const how = wish.how === 'exactly' ? '' : `${HOW[wish.how]} `;
    return `${how}${stretch(wish.count, wish.pace)} of ${numbers.length(wish.length)}`;
  },
  'pace-at-end': (wish) => `${actions.pace(wish.pace)} at the end`,
  gates: (wish, sheet) => {
    const names = wish.gates.map((id) => nameIn(sheet.gates, id));
    return wish.ordered ? inTurn(names) : numbers.list(names);
  },
  'keep-out': () => 'keep out',
  'stay-on-paper': () => 'stay on the paper',
  time: (wish) =>
    wish.from === 0
      ? `within ${numbers.time(wish.to)}`
      : `${numbers.short(wish.from, 1)} to ${numbers.time(wish.to)}`,
  'turn-back': (wish) => `turn back ${times(wish.count)}`,
  'mark-limit': (wish) => `at most ${marks(wish.most)}`,
  'ink-limit': (wish) => `at most ${numbers.length(wish.most)} of line`,
};

function clause(formula: Formula, sheet: Sheet): string {
  if (isPredicate(formula)) {
    return (CLAUSES[formula.kind] as (wish: Predicate, sheet: Sheet) => string)(formula, sheet);
  }
  if (formula.kind === 'not') return `don’t ${clause(formula.of, sheet)}`;
  const parts = formula.of.map((part) => clause(part, sheet));
  return numbers.list(parts, formula.kind);
}

function short(formula: Formula, sheet: Sheet): string {
  if (isPredicate(formula)) {
    return (SHORT[formula.kind] as (wish: Predicate, sheet: Sheet) => string)(formula, sheet);
  }
  if (formula.kind === 'not') return clause(formula, sheet);
  const parts = formula.of.map((part) => short(part, sheet));
  return numbers.list(parts, formula.kind);
}

export const goals = {
  /** One plain sentence: what must come true. */
  sentence: (formula: Formula, sheet: Sheet): string => `${numbers.capital(clause(formula, sheet))}.`,
  /** A few words for a narrow place: "One fast stretch of 15 cm". */
  short: (formula: Formula, sheet: Sheet): string => numbers.capital(short(formula, sheet)),
  /** How far from tipping over: "1.2 cm to spare", "short by 2 s". */
  margin,
  met: (met: boolean): string => (met ? 'met' : 'not met'),
};
