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
import { of } from './names.ts';
import { numbers } from './numbers.ts';

type WishOf<K extends MomentPredicate['kind']> = Extract<MomentPredicate, { kind: K }>;

/** How a condition is said: where or how somebody is ("en el Nido", "de puntillas"), or what they have done. */
type Said =
  | { readonly is: string; readonly isNot?: string; readonly moving?: boolean }
  | { readonly has: string };
type PerKind = { readonly [K in MomentPredicate['kind']]: (wish: WishOf<K>, sheet: Sheet) => Said };

const SAID: PerKind = {
  finish: (_, sheet) => ({ is: `en ${places.finish(sheet)}`, isNot: `lejos ${of(places.finish(sheet))}` }),
  'in-area': (wish, sheet) => {
    const area = places.area(sheet, wish.area);
    return { is: `en ${area}`, isNot: `fuera ${of(area)}` };
  },
  pace: (wish) => ({ is: actions.pace(wish.pace), moving: true }),
  'keep-out': (_, sheet) => ({ is: `fuera ${of(places.keepOut(sheet))}` }),
  'stay-on-paper': () => ({ is: 'en el papel', isNot: 'fuera del papel' }),
  stretches: (wish) => ({ has: `hecho ${stretches(wish)}` }),
  gates: (wish, sheet) => ({ has: `pasado por ${places.gates(sheet, wish)}` }),
  'every-gate': () => ({ has: 'pasado por todas las puertas' }),
  'turn-back': (wish) => ({ has: `dado media vuelta ${times(wish.count)}` }),
  'read-marks': (wish) => ({ has: `leído ${differentMarks(wish.count)}` }),
  'act-in': (wish, sheet) => ({
    has: `${wish.act === 'wait' ? 'esperado' : 'llamado'} en ${places.area(sheet, wish.area)}`,
  }),
  way: (wish) => ({
    has: `recorrido ${numbers.length(wish.length)} ${wish.how === 'at-least' ? 'o más' : 'como mucho'}`,
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

/** "estar en el Nido", "ir de puntillas", "no pasar por la Panadería" */
function wished(wish: MomentPredicate, { sheet, negated }: Saying): string {
  const said = saidOf(wish, sheet);
  if ('has' in said) return negated ? oppositeOf(asWhole(wish), sheet) : `haber ${said.has}`;
  const verb = said.moving ? 'ir' : 'estar';
  if (!negated) return `${verb} ${said.is}`;
  return said.isNot === undefined ? `no ${verb} ${said.is}` : `${verb} ${said.isNot}`;
}

/** "estás en el Nido", "no has pasado por la Panadería" */
function stated(wish: MomentPredicate, { sheet, negated }: Saying): string {
  const said = saidOf(wish, sheet);
  if ('has' in said) return `${negated ? 'no ' : ''}has ${said.has}`;
  const verb = said.moving ? 'vas' : 'estás';
  if (!negated) return `${verb} ${said.is}`;
  return said.isNot === undefined ? `no ${verb} ${said.is}` : `${verb} ${said.isNot}`;
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
      return untilSaid(moment, how, form, 'en los próximos');
    default:
      return form(moment, how);
  }
}

function untilSaid(
  { hold, until, within }: Extract<Moment, { kind: 'until' }>,
  how: Saying,
  form: Form,
  soonest: string,
): string {
  const plain = { ...how, negated: false };
  const soon = within === undefined ? '' : `, ${soonest} ${numbers.time(within)}`;
  const rule = `${said(hold, plain, form)} hasta que ${said(until, plain, stated)}${soon}`;
  return how.negated ? `romper la regla «${rule}»` : rule;
}

/** When, counted from another moment. */
function later(always: boolean, window: Window | undefined): string {
  const { from, to } = window ?? { from: 0, to: undefined };
  if (always) {
    if (to === undefined) return from === 0 ? 'desde entonces' : `desde ${numbers.time(from)} después`;
    return from === 0
      ? `en los próximos ${numbers.time(to)}`
      : `desde ${numbers.short(from, 1)} hasta ${numbers.time(to)} después`;
  }
  if (to === undefined)
    return from === 0 ? 'en algún momento después' : `en algún momento, ${numbers.time(from)} después o más`;
  return from === 0
    ? `en algún momento de los próximos ${numbers.time(to)}`
    : `en algún momento, de ${numbers.short(from, 1)} a ${numbers.time(to)} después`;
}

/** When, counted from the start of the run; with a space before it where it is not empty. */
function throughout(window: Window | undefined): string {
  const { from, to } = window ?? { from: 0, to: undefined };
  if (to === undefined) return from === 0 ? '' : ` desde los ${numbers.time(from)}`;
  return from === 0
    ? ` en los primeros ${numbers.time(to)}`
    : ` desde los ${numbers.short(from, 1)} hasta los ${numbers.time(to)}`;
}

function sometime(window: Window | undefined): string {
  const { from, to } = window ?? { from: 0, to: undefined };
  if (to === undefined)
    return from === 0 ? 'en algún momento' : `en algún momento después de ${numbers.time(from)}`;
  return from === 0
    ? `en ${numbers.time(to)} o menos`
    : `en algún momento entre ${numbers.short(from, 1)} y ${numbers.time(to)}`;
}

function alwaysSaid(moment: Moment, window: Window | undefined, how: Saying): string {
  const one = alone(moment, how.negated);
  const when = throughout(window);
  if (one?.negated) return `nunca ${wished(one.wish, { ...how, negated: false })}${when}`;
  if (one) return `siempre ${wished(one.wish, { ...how, negated: false })}${when}`;
  const [condition, then, ...others] = moment.kind === 'or' && !how.negated ? moment.of : [];
  if (condition?.kind === 'not' && then && others.length === 0) {
    return `siempre que ${said(condition.of, how, stated)}, ${said(then, how, wished)}${when}`;
  }
  return `en todo momento${when} ${said(moment, how, wished)}`;
}

function sometimeSaid(moment: Moment, window: Window | undefined, how: Saying): string {
  const one = alone(moment, how.negated);
  const when = sometime(window);
  if (!one) return `${when} ${said(moment, how, wished)}`;
  // What has been done at some moment was done in it.
  const done = !one.negated && 'has' in saidOf(one.wish, how.sheet);
  const what = done
    ? clauseOf(asWhole(one.wish), how.sheet)
    : wished(one.wish, { ...how, negated: one.negated });
  return `${what} ${when}`;
}

/** A time operator over a run, as an infinitive. */
export function timedClause(operator: TimeOperator, sheet: Sheet, negated: boolean): string {
  const how = { sheet, negated };
  if (operator.kind === 'until') return untilSaid(operator, how, wished, 'en menos de');
  const { of: moment, window } = operator;
  return (operator.kind === 'always') !== negated
    ? alwaysSaid(moment, window, how)
    : sometimeSaid(moment, window, how);
}

/** How long a condition holds in all, as an infinitive. */
export function lastingClause({ of: moment, how, time }: Lasting, sheet: Sheet, negated: boolean): string {
  const least = how === 'at-least';
  const much = negated ? (least ? 'menos de' : 'más de') : least ? 'al menos' : 'como mucho';
  return `${said(moment, { sheet, negated: false }, wished)} ${much} ${numbers.time(time)} en total`;
}
