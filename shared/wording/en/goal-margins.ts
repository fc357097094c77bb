import type { Formula } from '../../documents/formula.ts';
import type { Pace } from '../../documents/kit.ts';
import { ROBOTS } from '../../documents/outlook.ts';
import type { GoalResult } from '../../documents/verdict.ts';
import { deciding, type Wish } from '../formula-parts.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

type WishOf<K extends Wish['kind']> = Extract<Wish, { kind: K }>;
type Phrases = { readonly [K in Wish['kind']]: (result: Deciding, wish: WishOf<K>) => string };
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

const paceSteps = (r: Deciding, pace: Pace): string =>
  r.met
    ? actions.pace(pace)
    : `${numbers.words(r.size)} ${r.size === 1 ? 'step' : 'steps'} too ${r.side === 'above' ? 'fast' : 'slow'}`;

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
  'pace-at-end': (r, wish) => paceSteps(r, wish.pace),
  pace: (r, wish) => paceSteps(r, wish.pace),
  gates: (r) => (r.met ? 'passed' : `${numbers.words(r.size)} missing`),
  'every-gate': (r) => (r.met ? 'passed' : `${numbers.words(r.size)} missing`),
  'in-area': plain,
  'act-in': (r) => (r.unit === 'count' ? 'not done' : plain(r)),
  'read-marks': (r) => (r.met && r.size === 0 ? 'done' : plain(r)),
  way: (r, wish) => {
    const size = likeWish(wish.length, r.size);
    return r.met ? `${size} to spare` : `${size} too ${wish.how === 'at-least' ? 'short' : 'long'}`;
  },
  lasting: (r, wish) => (!r.met && wish.how === 'at-most' ? `${inUnit(r)} too long` : plain(r)),
  'keep-out': (r) => (r.met ? plain(r) : `${numbers.length(r.size)} inside`),
  'stay-on-paper': (r) => (r.met ? plain(r) : `${numbers.length(r.size)} over the edge`),
  time: (r) => {
    if (r.unit === 'mm') return `not arrived, ${numbers.length(r.size)} away`;
    if (r.met) return plain(r);
    return r.side === 'below' ? `too early by ${numbers.time(r.size)}` : `short by ${numbers.time(r.size)}`;
  },
  'turn-back': (r) => (r.met ? 'done' : missingOrTooMany(r)),
  'mark-limit': (r) => {
    if (!r.met) return `${numbers.words(r.size)} too many`;
    return r.size === 0 ? 'none left' : `${numbers.words(r.size)} left`;
  },
  'ink-limit': (r, wish) => `${likeWish(wish.most, r.size)} ${r.met ? 'left' : 'too much'}`,
  decided: (r) =>
    r.met ? 'done' : `${numbers.words(r.size)} ${r.size === 1 ? 'junction' : 'junctions'} left to chance`,
  steadiness: (r) => {
    const robots = Math.round(r.size * ROBOTS);
    return `${numbers.words(robots)} ${robots === 1 ? 'robot' : 'robots'} ${r.met ? 'to spare' : 'missing'}`;
  },
};

/** What decides where nothing else does: the run has no moment in the window. */
const OPERATORS: Readonly<Record<string, (result: Deciding) => string>> = {
  always: () => 'over before then',
  eventually: () => 'over before then',
};

/** How far from tipping over: "1.2 cm to spare", "short by 2 s". */
export function margin(result: GoalResult, formula: Formula): string {
  if (result.leftToLuck) return 'left to luck';
  if (result.open) return 'counted when it is handed in';
  const size = result.margin < 0 ? -result.margin : result.margin;
  const part: Deciding = { met: result.met, unit: result.unit, side: result.side, size };
  const wish = deciding(formula, result.by);
  if (!wish) return (OPERATORS[result.by] ?? plain)(part);
  return (PHRASES[wish.kind] as (r: Deciding, wish: Wish) => string)(part, wish);
}
