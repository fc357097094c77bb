import type {
  Lasting,
  Moment,
  MomentPredicate,
  Predicate,
  TimeOperator,
  Window,
} from '../../documents/formula.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { alone } from '../formula-parts.ts';
import { actions } from './actions.ts';
import { clauseOf, differentMarks, oppositeOf, places, stretches, times } from './goal-clauses.ts';
import { numbers } from './numbers.ts';

type WishOf<K extends MomentPredicate['kind']> = Extract<MomentPredicate, { kind: K }>;

/** How a condition is said: what somebody is ("in the nest", "out of the nest"), or has done. */
type Said = { readonly is: string; readonly isNot?: string } | { readonly has: string };
type PerKind = { readonly [K in MomentPredicate['kind']]: (wish: WishOf<K>, sheet: Sheet) => Said };

const SAID: PerKind = {
  finish: (_, sheet) => ({ is: `at ${places.finish(sheet)}`, isNot: `away from ${places.finish(sheet)}` }),
  'in-area': (wish, sheet) => {
    const area = places.area(sheet, wish.area);
    return { is: `in ${area}`, isNot: `out of ${area}` };
  },
  pace: (wish) => ({ is: wish.pace === 'creep' ? 'on tiptoe' : actions.pace(wish.pace) }),
  'keep-out': (_, sheet) => ({ is: `clear of ${places.keepOut(sheet)}` }),
  'stay-on-paper': () => ({ is: 'on the paper', isNot: 'over the edge of the paper' }),
  stretches: (wish) => ({ has: `driven ${stretches(wish)}` }),
  gates: (wish, sheet) => ({ has: `passed ${places.gates(sheet, wish)}` }),
  'every-gate': () => ({ has: 'passed every gate' }),
  'turn-back': (wish) => ({
    has: wish.count === 0 ? 'never turned back' : `turned back ${times(wish.count)}`,
  }),
  'read-marks': (wish) => ({ has: `read ${differentMarks(wish.count)}` }),
  'act-in': (wish, sheet) => ({
    has: `${wish.act === 'wait' ? 'waited' : 'called'} at ${places.area(sheet, wish.area)}`,
  }),
  way: (wish) => ({
    has: `driven ${numbers.length(wish.length)} ${wish.how === 'at-least' ? 'or more' : 'at most'}`,
  }),
};

const saidOf = (wish: MomentPredicate, sheet: Sheet): Said =>
  (SAID[wish.kind] as (wish: MomentPredicate, sheet: Sheet) => Said)(wish, sheet);

interface Saying {
  readonly sheet: Sheet;
  /** The opposite is to be said. */
  readonly negated: boolean;
}

/** What has been done is also a wish for a whole run. */
const asWhole = (wish: MomentPredicate): Extract<MomentPredicate, Predicate> =>
  wish as Extract<MomentPredicate, Predicate>;

/** "be in the nest", "don’t pass the bakery" */
function wished(wish: MomentPredicate, { sheet, negated }: Saying): string {
  const said = saidOf(wish, sheet);
  if ('is' in said) {
    if (!negated) return `be ${said.is}`;
    return said.isNot === undefined ? `don’t be ${said.is}` : `be ${said.isNot}`;
  }
  return negated ? oppositeOf(asWhole(wish), sheet) : `have ${said.has}`;
}

/** "you are in the nest", "you have not passed the bakery" */
function stated(wish: MomentPredicate, { sheet, negated }: Saying): string {
  const said = saidOf(wish, sheet);
  if ('has' in said) return `you have ${negated ? 'not ' : ''}${said.has}`;
  if (!negated) return `you are ${said.is}`;
  return `you are ${said.isNot ?? `not ${said.is}`}`;
}

type Form = typeof wished;

function said(moment: Moment, how: Saying, form: Form): string {
  switch (moment.kind) {
    case 'not':
      return said(moment.of, { ...how, negated: !how.negated }, form);
    case 'and':
    case 'or': {
      const parts = moment.of.map((part) => said(part, how, form));
      return numbers.list(parts, (moment.kind === 'and') !== how.negated ? 'and' : 'or');
    }
    case 'always':
    case 'eventually': {
      const always = (moment.kind === 'always') !== how.negated;
      return `${said(moment.of, how, form)} ${later(always, moment.window)}`;
    }
    case 'until':
      return untilSaid(moment, how, form, 'the next ');
    default:
      return form(moment, how);
  }
}

function untilSaid(
  { hold, until, within }: Extract<Moment, { kind: 'until' }>,
  how: Saying,
  form: Form,
  next: string,
): string {
  const plain = { ...how, negated: false };
  const soon = within === undefined ? '' : `, within ${next}${numbers.time(within)}`;
  const rule = `${said(hold, plain, form)} until ${said(until, plain, stated)}${soon}`;
  return how.negated ? `break the rule “${rule}”` : rule;
}

/** When, counted from another moment. */
function later(always: boolean, window: Window | undefined): string {
  const { from, to } = window ?? { from: 0, to: undefined };
  if (always) {
    if (to === undefined) return from === 0 ? 'from then on' : `from ${numbers.time(from)} later on`;
    return from === 0
      ? `for the next ${numbers.time(to)}`
      : `from ${numbers.short(from, 1)} to ${numbers.time(to)} later`;
  }
  if (to === undefined)
    return from === 0 ? 'at some later moment' : `at some moment ${numbers.time(from)} later or after that`;
  return from === 0
    ? `within the next ${numbers.time(to)}`
    : `at some moment ${numbers.short(from, 1)} to ${numbers.time(to)} later`;
}

/** When, counted from the start of the run; with a space before it where it is not empty. */
function throughout(window: Window | undefined): string {
  const { from, to } = window ?? { from: 0, to: undefined };
  if (to === undefined) return from === 0 ? '' : ` from ${numbers.time(from)} on`;
  return from === 0
    ? ` for the first ${numbers.time(to)}`
    : ` from ${numbers.short(from, 1)} to ${numbers.time(to)}`;
}

function sometime(window: Window | undefined): string {
  const { from, to } = window ?? { from: 0, to: undefined };
  if (to === undefined) return from === 0 ? 'at some moment' : `at some moment after ${numbers.time(from)}`;
  return from === 0
    ? `within ${numbers.time(to)}`
    : `at some moment between ${numbers.short(from, 1)} and ${numbers.time(to)}`;
}

function alwaysSaid(of: Moment, window: Window | undefined, how: Saying): string {
  const one = alone(of, how.negated);
  const when = throughout(window);
  if (one?.negated) return `never ${wished(one.wish, { ...how, negated: false })}${when}`;
  if (one) return `always ${wished(one.wish, { ...how, negated: false })}${when}`;
  const [condition, then, ...others] = of.kind === 'or' && !how.negated ? of.of : [];
  if (condition?.kind === 'not' && then && others.length === 0) {
    return `whenever ${said(condition.of, how, stated)}, ${said(then, how, wished)}${when}`;
  }
  return `at every moment${when} ${said(of, how, wished)}`;
}

function sometimeSaid(of: Moment, window: Window | undefined, how: Saying): string {
  const one = alone(of, how.negated);
  const when = sometime(window);
  if (!one) return `${when} ${said(of, how, wished)}`;
  // What has been done at some moment was done in it.
  const done = !one.negated && 'has' in saidOf(one.wish, how.sheet);
  const what = done
    ? clauseOf(asWhole(one.wish), how.sheet)
    : wished(one.wish, { ...how, negated: one.negated });
  return `${what} ${when}`;
}

/** A time operator over a run, as an imperative. */
export function timedClause(operator: TimeOperator, sheet: Sheet, negated: boolean): string {
  const how = { sheet, negated };
  if (operator.kind === 'until') return untilSaid(operator, how, wished, '');
  const { of, window } = operator;
  return (operator.kind === 'always') !== negated
    ? alwaysSaid(of, window, how)
    : sometimeSaid(of, window, how);
}

/** How long a condition holds in all, as an imperative. */
export function lastingClause({ of, how, time }: Lasting, sheet: Sheet, negated: boolean): string {
  const least = how === 'at-least';
  const much = negated ? (least ? 'less than' : 'more than') : least ? 'at least' : 'at most';
  return `${said(of, { sheet, negated: false }, wished)} for ${much} ${numbers.time(time)} in all`;
}
