import type { Formula } from '../../documents/formula.ts';
import type { Pace } from '../../documents/kit.ts';
import { ROBOTS } from '../../documents/outlook.ts';
import type { GoalResult } from '../../documents/verdict.ts';
import { deciding, type Wish } from '../formula-parts.ts';
import { actions } from './actions.ts';
import { type Gender, numbers } from './numbers.ts';

type WishOf<K extends Wish['kind']> = Extract<Wish, { kind: K }>;
type Phrases = { readonly [K in Wish['kind']]: (result: Deciding, wish: WishOf<K>) => string };
/** The deciding part of a result; `size` is the margin without its sign. */
type Deciding = Pick<GoalResult, 'met' | 'unit' | 'side'> & { readonly size: number };

/** A margin this small is worth a warning. */
const HAIR = 3;

/** Counts are of marks, gates and times: all feminine. Tramos and robots say so. */
const count = (n: number, gender: Gender = 'f'): string =>
  n === 1 ? (gender === 'm' ? 'uno' : 'una') : numbers.words(n);

const inUnit = ({ size, unit }: Deciding): string => {
  if (unit === 'mm') return numbers.length(size);
  return unit === 's' ? numbers.time(size) : count(size);
};
const plain = (result: Deciding): string =>
  result.met ? `${inUnit(result)} de sobra` : numbers.lacking(inUnit(result));

/** Beside a wish in cm the margin is in cm too. */
const likeWish = (wish: number, size: number): string =>
  wish >= 100 ? numbers.centimetres(size) : numbers.length(size);

const missingOrTooMany = ({ size, side }: Deciding, gender: Gender): string =>
  side === 'above' ? `${count(size, gender)} de más` : numbers.lacking(count(size, gender));

const paceSteps = (r: Deciding, pace: Pace): string =>
  r.met
    ? actions.pace(pace)
    : `${numbers.some(r.size, 'm', 'paso', 'pasos')} demasiado ${r.side === 'above' ? 'rápido' : 'despacio'}`;

const PHRASES: Phrases = {
  finish: (r) => {
    if (!r.met) return `a ${numbers.length(r.size)}`;
    return r.size < HAIR ? 'llega por muy poco' : 'llega';
  },
  park: (r) => {
    if (r.unit === 'count') return r.met ? 'sin estacionar' : 'no estaciona';
    return r.met ? plain(r) : `estaciona ${numbers.length(r.size)} fuera`;
  },
  stretches: (r, wish) => {
    if (r.unit === 'count') return r.met ? 'hecho' : missingOrTooMany({ ...r, side: 'above' }, 'm');
    const size = likeWish(wish.length, r.size);
    if (r.met) return `${size} de sobra`;
    return r.side === 'above' ? `uno de más, por ${size}` : numbers.lacking(size);
  },
  'pace-at-end': (r, wish) => paceSteps(r, wish.pace),
  pace: (r, wish) => paceSteps(r, wish.pace),
  gates: (r) => (r.met ? 'pasa' : numbers.lacking(count(r.size))),
  'every-gate': (r) => (r.met ? 'pasa' : numbers.lacking(count(r.size))),
  'in-area': plain,
  'act-in': (r) => (r.unit === 'count' ? 'sin hacer' : plain(r)),
  'read-marks': (r) => (r.met && r.size === 0 ? 'hecho' : plain(r)),
  way: (r, wish) => {
    const size = likeWish(wish.length, r.size);
    if (r.met) return `${size} de sobra`;
    return wish.how === 'at-least' ? numbers.lacking(size) : `${size} de más`;
  },
  lasting: (r, wish) => (!r.met && wish.how === 'at-most' ? `${inUnit(r)} de más` : plain(r)),
  'keep-out': (r) => (r.met ? plain(r) : `${numbers.length(r.size)} dentro`),
  'stay-on-paper': (r) => (r.met ? plain(r) : `${numbers.length(r.size)} fuera`),
  time: (r) => {
    if (r.unit === 'mm') return `no llega, a ${numbers.length(r.size)}`;
    if (r.met) return plain(r);
    return `${numbers.time(r.size)} ${r.side === 'below' ? 'antes de tiempo' : 'tarde'}`;
  },
  'turn-back': (r) => (r.met ? 'hecho' : missingOrTooMany(r, 'f')),
  'mark-limit': (r) => (r.met ? `${count(r.size)} de sobra` : `${count(r.size)} de más`),
  'ink-limit': (r, wish) => `${likeWish(wish.most, r.size)} ${r.met ? 'de sobra' : 'de más'}`,
  decided: (r) => (r.met ? 'hecho' : `${numbers.some(r.size, 'm', 'cruce', 'cruces')} al azar`),
  steadiness: (r) => {
    const robots = numbers.some(Math.round(r.size * ROBOTS), 'm', 'robot', 'robots');
    return r.met ? `${robots} de sobra` : numbers.lacking(robots);
  },
};

/** What decides where nothing else does: the run has no moment in the window. */
const OPERATORS: Readonly<Record<string, (result: Deciding) => string>> = {
  always: () => 'acaba antes',
  eventually: () => 'acaba antes',
};

/** How far from tipping over: "1,2 cm de sobra", "2 s tarde". */
export function margin(result: GoalResult, formula: Formula): string {
  if (result.leftToLuck) return 'al azar';
  if (result.open) return 'se cuenta al entregar';
  const size = result.margin < 0 ? -result.margin : result.margin;
  const part: Deciding = { met: result.met, unit: result.unit, side: result.side, size };
  const wish = deciding(formula, result.by);
  if (!wish) return (OPERATORS[result.by] ?? plain)(part);
  return (PHRASES[wish.kind] as (r: Deciding, wish: Wish) => string)(part, wish);
}
