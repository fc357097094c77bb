import {
  type Formula,
  isPredicate,
  type Lasting,
  type MomentPredicate,
  type Predicate,
} from '../documents/formula.ts';
import { TRACE_RATE, type Trace } from '../documents/trace.ts';
import type { Seconds } from '../geometry/units.ts';
import { evaluate, momentMargins } from './evaluate.ts';
import { isMet, type Margin, marginOf, opposite } from './margin.ts';
import { eventsOf, type GoalContext, type PredicateOf } from './predicate.ts';
import { type Reading, signalOf, timed } from './signals.ts';
import { stretchLengths } from './stretch-lengths.ts';
import { type Signal, timeIn } from './temporal.ts';

/** What a formula is for certain from a moment of the run on, whatever the robot does after it. */
export interface Certain {
  readonly t: Seconds;
  readonly met: boolean;
}

/**
 * What is known of a wish at a moment: met on every way that the run can go on, missed on every one, or open.
 * "And" is the least of them, "or" the largest. Three values on beginnings of runs as in Bauer, Leucker and
 * Schallhart, "Runtime verification for LTL and TLTL" (2011; from memory): never too early, sometimes late,
 * since parts are looked at one by one.
 */
type Known = -1 | 0 | 1;
const MISSED: Known = -1;
const OPEN: Known = 0;
const MET: Known = 1;

/** When a formula on a run becomes certain before all of it is over; null where the end alone tells. */
export function certainFrom(formula: Formula, run: Trace, context: GoalContext): Certain | null {
  const signals = new Map<MomentPredicate, Signal<Margin>>();
  const signal = (wish: MomentPredicate) => {
    const found = signals.get(wish) ?? momentMargins(wish, run, context);
    signals.set(wish, found);
    return found;
  };
  const knownIn = (sample: number) => {
    const t = sample / TRACE_RATE;
    const events = run.events.filter((event) => event.t <= t);
    return knownOf(formula, { run, events, t, signal, context }, false);
  };
  let late = Math.floor(run.events.at(-1)!.t * TRACE_RATE);
  const known = knownIn(late);
  if (known === OPEN) return null;
  // What is certain stays so: the first such sample is between the last open one and the first known one.
  let early = -1;
  while (late - early > 1) {
    const middle = Math.floor((early + late) / 2);
    if (knownIn(middle) === OPEN) early = middle;
    else late = middle;
  }
  return { t: late / TRACE_RATE, met: known === MET };
}

/** A run as far as it has come. */
interface SoFar {
  readonly run: Trace;
  readonly events: Trace['events'];
  readonly t: Seconds;
  /** Over the whole run; what comes after `t` nobody knows yet. */
  readonly signal: (wish: MomentPredicate) => Signal<Margin>;
  readonly context: GoalContext;
}

function knownOf(formula: Formula, soFar: SoFar, negated: boolean): Known {
  if (isPredicate(formula)) return leaning(leaningOf(formula, soFar), negated);
  switch (formula.kind) {
    case 'not':
      return knownOf(formula.of, soFar, !negated);
    case 'and':
    case 'or': {
      const parts = formula.of.map((part) => knownOf(part, soFar, negated));
      return (formula.kind === 'and') !== negated ? least(parts) : greatest(parts);
    }
    case 'lasting':
      return leaning(lastingSoFar(formula, soFar), negated);
    default:
      return timed(formula, reading(soFar), negated).values[0]!;
  }
}

const least = (values: readonly Known[]) => Math.min(...values) as Known;
const greatest = (values: readonly Known[]) => Math.max(...values) as Known;

/** Conditions on moments as far as the run has come; from the next sample on all is open. */
const reading = ({ signal, t }: SoFar): Reading<Known> => ({
  signal: (wish, negated) => {
    const { times, values } = upTo(signal(wish), t);
    const known = values.map((margin) => (isMet(negated ? opposite(margin) : margin) ? MET : MISSED));
    return { times: [...times, t + 1 / TRACE_RATE], values: [...known, OPEN], end: Number.POSITIVE_INFINITY };
  },
  scale: () => ({ rank: (known) => known, least: MISSED, most: MET }),
  smallest: least,
  largest: greatest,
});

function upTo({ times, values }: Signal<Margin>, t: Seconds): Pick<Signal<Margin>, 'times' | 'values'> {
  const count = times.filter((time) => time <= t).length;
  return { times: times.slice(0, count), values: values.slice(0, count) };
}

/** Margins so far, and how the one at the end of the run can lie to each of them. */
interface Leaning {
  /** `settled`: it is the same. */
  readonly trend: 'gains' | 'loses' | 'settled';
  readonly margins: readonly Margin[];
}

const gains = (margins: readonly Margin[]): Leaning => ({ trend: 'gains', margins });
const loses = (margins: readonly Margin[]): Leaning => ({ trend: 'loses', margins });
const settled = (margin: Margin): Leaning => ({ trend: 'settled', margins: [margin] });

/** A margin that only gains is met once it is met at all, and one that only loses is missed for good. */
function leaning({ trend, margins }: Leaning, negated: boolean): Known {
  const stands = margins.map((margin) => isMet(negated ? opposite(margin) : margin));
  if (trend === 'settled') return stands.includes(true) ? MET : MISSED;
  if ((trend === 'gains') !== negated) return stands.includes(true) ? MET : OPEN;
  return stands.includes(false) ? MISSED : OPEN;
}

function leaningOf(wish: Predicate, soFar: SoFar): Leaning {
  const { run, events, context } = soFar;
  switch (wish.kind) {
    case 'gates':
    case 'every-gate':
    case 'read-marks':
    case 'act-in':
      return gains(marginsOf(wish, soFar));
    case 'keep-out':
    case 'stay-on-paper':
      return loses(marginsOf(wish, soFar));
    case 'stretches':
      return stretchesSoFar(wish, soFar);
    case 'turn-back': {
      const more = eventsOf({ ...run, events }, 'turn-back').length - wish.count;
      return loses([marginOf('turn-back', 'count', Math.min(0, -more))]);
    }
    case 'decided':
      return loses([evaluate(wish, { ...run, events }, context)]);
    case 'finish':
    case 'time':
    case 'pace-at-end':
    case 'way':
      return arriving(wish, soFar);
    case 'mark-limit':
    case 'ink-limit':
      return settled(evaluate(wish, undefined, context));
    case 'park':
    case 'steadiness':
      return gains([]);
  }
}

const marginsOf = (wish: MomentPredicate, { signal, t }: SoFar): readonly Margin[] =>
  upTo(signal(wish), t).values;

/** What counts to the arrival is settled with it. */
function arriving(wish: PredicateOf<'finish' | 'time' | 'pace-at-end' | 'way'>, soFar: SoFar): Leaning {
  const { run, events, t, context } = soFar;
  if (events.some((event) => event.kind === 'finish')) return settled(evaluate(wish, run, context));
  if (wish.kind === 'time') return loses([marginOf('time', 's', wish.to - t)]);
  if (wish.kind !== 'way') return gains([]);
  const margins = marginsOf(wish, soFar);
  return wish.how === 'at-least' ? gains(margins) : loses(margins);
}

/** A stretch counts from where it ends. Of "exactly so many" only that there is one too many. */
function stretchesSoFar(wish: PredicateOf<'stretches'>, soFar: SoFar): Leaning {
  if (wish.how === 'at-least') return gains(marginsOf(wish, soFar));
  if (wish.how === 'at-most') return loses(marginsOf(wish, soFar));
  const lengths = stretchLengths({ ...soFar.run, events: soFar.events }, wish.pace);
  return loses([marginOf('stretches', 'mm', wish.length - (lengths[wish.count] ?? 0))]);
}

function lastingSoFar({ of, how, time }: Lasting, soFar: SoFar): Leaning {
  const seconds = timeIn(signalOf(of, reading(soFar), false), (known) => known === MET, soFar.t);
  return how === 'at-least'
    ? gains([marginOf('lasting', 's', seconds - time)])
    : loses([marginOf('lasting', 's', time - seconds)]);
}
