import type { Predicate } from '../../documents/formula.ts';
import { ROBOTS } from '../../documents/outlook.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { TOLERANCE } from '../../geometry/tolerances.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

type WishOf<K extends Predicate['kind']> = Extract<Predicate, { kind: K }>;
type PerKind<Said> = { readonly [K in Predicate['kind']]: (wish: WishOf<K>, sheet: Sheet) => Said };
type ForSome<Said> = {
  readonly [K in Predicate['kind']]?: (wish: WishOf<K>, sheet: Sheet) => Said | undefined;
};

const nameIn = (things: readonly { id: string; name: { en: string } }[], id: string): string =>
  things.find((thing) => thing.id === id)?.name.en ?? id;

const the = (name: string): string => `the ${name}`;

/** Places by the names that the sheet gives them: "the Bakery". */
export const places = {
  finish: (sheet: Sheet): string => the(sheet.finish?.name.en ?? 'finish'),
  berth: (sheet: Sheet, berth: 'start' | 'finish'): string =>
    berth === 'start' ? the(sheet.start.name.en) : places.finish(sheet),
  area: (sheet: Sheet, id: string): string => the(nameIn(sheet.areas, id)),
  keepOut: (sheet: Sheet): string =>
    sheet.keepOut.length === 0 ? 'every marked area' : numbers.list(sheet.keepOut.map((a) => the(a.name.en))),
  gates: (sheet: Sheet, { gates, ordered }: WishOf<'gates'>): string => {
    const names = gates.map((id) => the(nameIn(sheet.gates, id)));
    if (names.length === 1) return names[0]!;
    return ordered ? inTurn(names) : `${numbers.list(names)} in any order`;
  },
};

const HOW = { exactly: 'exactly', 'at-least': 'at least', 'at-most': 'at most' } as const;

const stretch = (count: number, pace: WishOf<'stretches'>['pace']): string =>
  `${numbers.words(count)} ${actions.pace(pace)} ${count === 1 ? 'stretch' : 'stretches'}`;

/** "at least one fast stretch of 15 cm or more" */
export const stretches = (wish: WishOf<'stretches'>): string =>
  `${HOW[wish.how]} ${stretch(wish.count, wish.pace)} of ${numbers.length(wish.length)} or more`;

const marks = (count: number): string => `${numbers.words(count)} ${count === 1 ? 'mark' : 'marks'}`;

/** "one mark", "three different marks" */
export const differentMarks = (count: number): string =>
  count === 1 ? marks(1) : `${numbers.words(count)} different marks`;

export const times = (count: number): string =>
  count === 0 ? 'never' : count === 1 ? 'once' : count === 2 ? 'twice' : `${numbers.words(count)} times`;

const inTurn = (names: readonly string[]): string =>
  names.map((name, i) => (i === 0 ? name : `then ${name}`)).join(', ');

/** Shares are said as so many of the robots that are driven for an entry: "18 of 20 robots". */
const ofRobots = ({ least }: WishOf<'steadiness'>): string =>
  `${Math.ceil(least * ROBOTS - TOLERANCE.shareOfRobots)} of ${ROBOTS} robots`;

/** Imperatives, so that "don't" makes the opposite of most. */
const CLAUSES: PerKind<string> = {
  finish: (_, sheet) => `finish at ${places.finish(sheet)}`,
  park: (wish, sheet) =>
    `park at ${wish.area === undefined ? places.finish(sheet) : places.area(sheet, wish.area)}`,
  stretches: (wish) => `drive ${stretches(wish)}`,
  'pace-at-end': (wish) => `${wish.pace === 'creep' ? 'tiptoe' : `be ${actions.pace(wish.pace)}`} at the end`,
  gates: (wish, sheet) => `pass ${places.gates(sheet, wish)}`,
  'every-gate': () => 'pass every gate',
  'keep-out': (_, sheet) => `keep out of ${places.keepOut(sheet)}`,
  'stay-on-paper': () => 'stay on the paper',
  time: (wish) =>
    wish.from === 0
      ? `arrive within ${numbers.time(wish.to)}`
      : `arrive after ${numbers.time(wish.from)} and before ${numbers.time(wish.to)}`,
  'turn-back': (wish) => (wish.count === 0 ? 'never turn back' : `turn back ${times(wish.count)}`),
  'read-marks': (wish) =>
    `read ${wish.count === 0 ? 'any number of' : 'at least'} ${differentMarks(wish.count)}`,
  'act-in': (wish, sheet) => `${wish.act === 'wait' ? 'wait' : 'call'} at ${places.area(sheet, wish.area)}`,
  way: (wish) => `drive ${HOW[wish.how]} ${numbers.length(wish.length)}`,
  'mark-limit': (wish) => (wish.most === 0 ? 'use no marks' : `use at most ${marks(wish.most)}`),
  'ink-limit': (wish) => `draw at most ${numbers.length(wish.most)} of line`,
  decided: () => 'leave nothing to chance',
  steadiness: (wish) => `make it with at least ${ofRobots(wish)}`,
};

/** Opposites that read better than with "don't" before them. */
const OPPOSITES: ForSome<string> = {
  stretches: (wish) => {
    if (wish.how === 'at-most')
      return `drive ${stretches({ ...wish, how: 'at-least', count: wish.count + 1 })}`;
    if (wish.how === 'exactly' || wish.count === 0) return undefined;
    return `drive ${stretches({ ...wish, how: 'at-most', count: wish.count - 1 })}`;
  },
  'keep-out': (_, sheet) => `touch ${places.keepOut(sheet)}`,
  'stay-on-paper': () => 'drive over the edge of the paper',
  'turn-back': (wish) => (wish.count === 0 ? 'turn back at least once' : undefined),
  'read-marks': (wish) => (wish.count === 0 ? undefined : `read at most ${differentMarks(wish.count - 1)}`),
  way: (wish) => `drive ${wish.how === 'at-least' ? 'less' : 'more'} than ${numbers.length(wish.length)}`,
  'mark-limit': (wish) => `use at least ${marks(wish.most + 1)}`,
  'ink-limit': (wish) => `draw more than ${numbers.length(wish.most)} of line`,
  decided: () => 'leave something to chance',
  steadiness: (wish) => `make it with fewer than ${ofRobots(wish)}`,
};

/** For a narrow place: a few words, beside which the margin stands. */
const SHORT: PerKind<string> = {
  ...CLAUSES,
  finish: (_, sheet) => `reach ${places.finish(sheet)}`,
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
  'every-gate': () => 'every gate',
  'keep-out': () => 'keep out',
  time: (wish) =>
    wish.from === 0
      ? `within ${numbers.time(wish.to)}`
      : `${numbers.short(wish.from, 1)} to ${numbers.time(wish.to)}`,
  'turn-back': (wish) => (wish.count === 0 ? 'never turn back' : `turn back ${times(wish.count)}`),
  'read-marks': (wish) => `read ${differentMarks(wish.count)}`,
  way: (wish) => `${HOW[wish.how]} ${numbers.length(wish.length)}`,
  'mark-limit': (wish) => `at most ${marks(wish.most)}`,
  'ink-limit': (wish) => `at most ${numbers.length(wish.most)} of line`,
  decided: () => 'nothing to chance',
  steadiness: ofRobots,
};

type Saying = (wish: Predicate, sheet: Sheet) => string | undefined;

/** What to do, as an imperative. */
export const clauseOf = (wish: Predicate, sheet: Sheet): string =>
  (CLAUSES[wish.kind] as Saying)(wish, sheet)!;

/** The opposite, as an imperative. */
export const oppositeOf = (wish: Predicate, sheet: Sheet): string =>
  (OPPOSITES[wish.kind] as Saying | undefined)?.(wish, sheet) ?? `don’t ${clauseOf(wish, sheet)}`;

/** A few words. */
export const shortOf = (wish: Predicate, sheet: Sheet): string => (SHORT[wish.kind] as Saying)(wish, sheet)!;
