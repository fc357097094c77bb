import { type Formula, isPredicate, type Predicate } from '../../documents/formula.ts';
import type { GoalResult } from '../../documents/verdict.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

type WishOf<K extends Predicate['kind']> = Extract<Predicate, { kind: K }>;
type Phrases = { readonly [K in Predicate['kind']]: (result: Deciding, wish: WishOf<K>) => string };
/** The deciding part of a result; `size` is the margin without its sign. */
type Deciding = Pick<GoalResult, 'met' | 'unit' | 'side'> & { readonly size: number };

/** A margin this small is worth a warning. */
const HAIR = 3;

const inUnit = ({ size, unit }: Deciding): string => {
  if (unit === 'mm') return numbers.length(size);
  return unit === 's' ? numbers.time(size) : numbers.words(size);
};
const plain = (result: Deciding): string =>
  result.met ? `${inUnit(result)} to spare` : `${inUnit(result)} missing`;

/** Beside a wish in cm the margin is in cm too. */
const likeWish = (wish: number, size: number): string =>
  wish >= 100 ? numbers.centimetres(size) : numbers.length(size);

const missingOrTooMany = (result: Deciding): string =>
  `${numbers.words(result.size)} ${result.side === 'above' ? 'too many' : 'missing'}`;

const PHRASES: Phrases = {
  finish: (r) => {
    if (!r.met) return `${numbers.length(r.size)} away`;
    return r.size < HAIR ? 'only just reached' : 'reached';
  },
  park: (r) => {
    if (r.unit === 'count') return r.met ? 'not parked' : 'did not park';
    return r.met ? plain(r) : `parked ${numbers.length(r.size)} outside`;
  },
  stretches: (r, wish) => {
    if (r.unit === 'count') return r.met ? 'done' : missingOrTooMany({ ...r, side: 'above' });
    const size = likeWish(wish.length, r.size);
    if (r.met) return `${size} to spare`;
    return r.side === 'above' ? `one too many, by ${size}` : `${size} missing`;
  },
  'pace-at-end': (r, wish) =>
    r.met
      ? actions.pace(wish.pace)
      : `${numbers.words(r.size)} ${r.size === 1 ? 'step' : 'steps'} too ${r.side === 'above' ? 'fast' : 'slow'}`,
  gates: (r) => (r.met ? 'passed' : `${numbers.words(r.size)} missing`),
  'keep-out': (r) => (r.met ? plain(r) : `${numbers.length(r.size)} inside`),
  'stay-on-paper': (r) => (r.met ? plain(r) : `${numbers.length(r.size)} over the edge`),
  time: (r) => {
    if (r.unit === 'mm') return `not arrived, ${numbers.length(r.size)} away`;
    if (r.met) return plain(r);
    return r.side === 'below' ? `too early by ${numbers.time(r.size)}` : `short by ${numbers.time(r.size)}`;
  },
  'turn-back': (r) => (r.met ? 'done' : missingOrTooMany(r)),
  'mark-limit': (r) => (r.met ? `${numbers.words(r.size)} left` : `${numbers.words(r.size)} too many`),
  'ink-limit': (r, wish) => `${likeWish(wish.most, r.size)} ${r.met ? 'left' : 'too much'}`,
};

/** The first predicate of that kind, unless a "not" stands above it: then its phrase would be wrong. */
function deciding(formula: Formula, by: string): Predicate | undefined {
  if (isPredicate(formula)) return formula.kind === by ? formula : undefined;
  if (formula.kind === 'not') return undefined;
  return formula.of.map((part) => deciding(part, by)).find((found) => found !== undefined);
}

/** How far from tipping over: "1.2 cm to spare", "short by 2 s". */
export function margin(result: GoalResult, formula: Formula): string {
  if (result.leftToLuck) return 'left to luck';
  const size = result.margin < 0 ? -result.margin : result.margin;
  const part: Deciding = { met: result.met, unit: result.unit, side: result.side, size };
  const wish = deciding(formula, result.by);
  if (!wish) return plain(part);
  return (PHRASES[wish.kind] as (r: Deciding, wish: Predicate) => string)(part, wish);
}
