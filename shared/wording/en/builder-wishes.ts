import type { Formula, Moment, MomentPredicate, Predicate } from '../../documents/formula.ts';
import { numbers } from './numbers.ts';

/** For teachers: the lists that a wish is chosen from. The sentence that comes of it is `goals.sentence`. */

export type RunWish = Predicate['kind'];
export type MomentWish = MomentPredicate['kind'];
export type Operator = Exclude<Formula['kind'] | Moment['kind'], RunWish | MomentWish>;

const RUN: Readonly<Record<RunWish, string>> = {
  finish: 'reach the finish',
  park: 'park in a place',
  stretches: 'stretches at a pace',
  'pace-at-end': 'pace at the end',
  gates: 'pass gates',
  'every-gate': 'pass every gate',
  'keep-out': 'keep out of what is forbidden',
  'stay-on-paper': 'stay on the paper',
  time: 'arrive in a window of time',
  'turn-back': 'turn back so many times',
  'read-marks': 'read different marks',
  'act-in': 'wait or call in an area',
  way: 'length of the way driven',
  'mark-limit': 'at most so many marks',
  'ink-limit': 'at most so much line',
  decided: 'nothing left to chance',
  steadiness: 'so many of 20 robots make it',
};

const MOMENT: Readonly<Record<MomentWish, string>> = {
  finish: 'at the finish',
  stretches: 'stretches at a pace so far',
  gates: 'gates passed so far',
  'every-gate': 'every gate passed so far',
  'keep-out': 'clear of what is forbidden',
  'stay-on-paper': 'on the paper',
  'turn-back': 'turned back so far',
  'read-marks': 'marks read so far',
  'act-in': 'has waited or called in an area',
  way: 'way driven so far',
  'in-area': 'in an area',
  pace: 'at a pace',
};

const OPERATORS: Readonly<Record<Operator, string>> = {
  not: 'the opposite of',
  and: 'all of these',
  or: 'one of these, or more',
  always: 'at every moment',
  eventually: 'at some moment',
  until: 'one thing until another',
  lasting: 'for so long in all',
};

const HOW = { exactly: 'exactly', 'at-least': 'at least', 'at-most': 'at most' } as const;

const CHOICES = {
  pace: 'Pace',
  how: 'How many',
  'how-much': 'How much',
  act: 'What it does',
  area: 'Area',
  'area-or-finish': 'Where',
} as const;

const NUMBERS: Readonly<Record<string, string>> = {
  'stretches count': 'Stretches',
  'stretches length': 'Each of',
  'time from': 'After',
  'time to': 'Before',
  'turn-back count': 'Times',
  'read-marks count': 'Marks',
  'way length': 'Length',
  'mark-limit most': 'Marks',
  'ink-limit most': 'Line',
  'steadiness least': 'At least',
};

export const wish = {
  which: 'What is wished for',
  whichMoment: 'What holds at that moment',
  plain: 'One thing',
  together: 'Put together',
  run: (kind: string): string => RUN[kind as RunWish] ?? kind,
  moment: (kind: string): string => MOMENT[kind as MomentWish] ?? kind,
  operator: (kind: Operator): string => OPERATORS[kind],
  /** Above a part of a wish: what it is to the whole. */
  part: (kind: string, at: number): string => {
    if (kind === 'until') return at === 0 ? 'holds' : 'until';
    if (kind === 'and' || kind === 'or') return numbers.short(at + 1, 0);
    return kind === 'not' ? 'of what' : 'what holds';
  },
  more: 'One more',
  less: 'Take away',
  lessOf: (n: number): string => `Take part ${n} away`,
  seconds: 's',
  within: 'At the latest after (empty: whenever)',
  howLong: 'How long',
  inAll: 'in all',
  from: 'From',
  to: 'To (empty: the end)',
  ordered: 'in this order',
  /** A number of a wish, by the wish and what it is to it. */
  number: (kind: string, key: string): string => NUMBERS[`${kind} ${key}`] ?? key,
  ofRobots: (n: number): string => `of ${n} robots`,
  choice: (of: keyof typeof CHOICES): string => CHOICES[of],
  how: (how: keyof typeof HOW): string => HOW[how],
  act: (act: 'wait' | 'signal'): string => (act === 'wait' ? 'wait' : 'call'),
  inFinish: 'in the finish berth',
  noPlace: 'not on the sheet yet',
  gate: (n: number): string => `Gate ${n}`,
  lessGate: (n: number): string => `Take gate ${n} away`,
  moreGates: 'One more gate',
};
