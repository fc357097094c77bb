import * as z from 'zod/mini';
import { Pace } from './kit.ts';
import { Duration, Id, Length, Ratio } from './values.ts';

const Count = z.int().check(z.gte(0), z.lte(99));

/** The middle of the axle comes into the finish berth; at a moment: is in it. */
const Finish = z.strictObject({ kind: z.literal('finish') });
/** So many unbroken parts of the run at this commanded pace, each at least so long; at a moment: so far. */
const Stretches = z.strictObject({
  kind: z.literal('stretches'),
  pace: Pace,
  how: z.enum(['exactly', 'at-least', 'at-most']),
  count: Count,
  length: Length,
});
/** At a moment: so far. */
const Gates = z.strictObject({
  kind: z.literal('gates'),
  gates: z.array(Id).check(z.minLength(1)),
  ordered: z.boolean(),
});
/** Every gate that the sheet has, in any order; at a moment: so far. */
const EveryGate = z.strictObject({ kind: z.literal('every-gate') });
/** The robot's whole outline stays out of every keep-out area; at a moment: is out of them. */
const KeepOut = z.strictObject({ kind: z.literal('keep-out') });
/** The robot's whole outline stays on the sheet; at a moment: is on it. */
const StayOnPaper = z.strictObject({ kind: z.literal('stay-on-paper') });
/** Half turns; at a moment: so far. */
const TurnBack = z.strictObject({ kind: z.literal('turn-back'), count: Count });
/** At least so many different marks understood; at a moment: so far. */
const ReadMarks = z.strictObject({ kind: z.literal('read-marks'), count: Count });
/** Waits or calls with the axle inside the area; at a moment: has done so. */
const ActIn = z.strictObject({ kind: z.literal('act-in'), act: z.enum(['wait', 'signal']), area: Id });
/** The way along the drawing, until the finish is reached or else until the end; at a moment: so far. */
const WayDriven = z.strictObject({
  kind: z.literal('way'),
  how: z.enum(['at-least', 'at-most']),
  length: Length,
});

/**
 * What a goal says, as a closed set of predicates; each has a margin in its own unit and is met
 * when the margin is at least 0.
 */
export const Predicate = z.discriminatedUnion('kind', [
  Finish,
  /** The run ends by parking with the axle inside the berth or area. */
  z.strictObject({ kind: z.literal('park'), area: z.optional(Id) }),
  Stretches,
  /** The commanded pace when the run ends or the finish is reached. */
  z.strictObject({ kind: z.literal('pace-at-end'), pace: Pace }),
  Gates,
  EveryGate,
  KeepOut,
  StayOnPaper,
  /** Arrives in the finish berth within the window. */
  z.strictObject({ kind: z.literal('time'), from: Duration, to: Duration }),
  TurnBack,
  ReadMarks,
  ActIn,
  WayDriven,
  z.strictObject({ kind: z.literal('mark-limit'), most: Count }),
  z.strictObject({ kind: z.literal('ink-limit'), most: Length }),
  /** No junction at which the robot decides by itself. */
  z.strictObject({ kind: z.literal('decided') }),
  /** At least this share of the disturbed robots does as the undisturbed one; known of entries only. */
  z.strictObject({ kind: z.literal('steadiness'), least: Ratio.check(z.gte(0), z.lte(1)) }),
]);
export type Predicate = z.output<typeof Predicate>;

const MOMENT_PREDICATES = [
  Finish,
  Stretches,
  Gates,
  EveryGate,
  KeepOut,
  StayOnPaper,
  TurnBack,
  ReadMarks,
  ActIn,
  WayDriven,
  /** The middle of the axle is inside the area. */
  z.strictObject({ kind: z.literal('in-area'), area: Id }),
  /** The commanded pace. */
  z.strictObject({ kind: z.literal('pace'), pace: Pace }),
] as const;

/** What can hold at one moment of a run and not at another: all that may stand under a time operator. */
const MomentPredicate = z.discriminatedUnion('kind', MOMENT_PREDICATES);
export type MomentPredicate = z.output<typeof MomentPredicate>;

/** Seconds after the moment that is looked at; without `to` until the run's end. */
const Window = z.strictObject({ from: Duration, to: z.optional(Duration) });
export type Window = z.output<typeof Window>;

/** `hold` is true from now until, at the latest `within` s from now, `until` is; in that moment it need not be. */
export interface Until {
  readonly kind: 'until';
  readonly hold: Moment;
  readonly until: Moment;
  readonly within?: number | undefined;
}

/** Holds at every moment, or at one moment, of the window. */
export interface Throughout {
  readonly kind: 'always' | 'eventually';
  readonly of: Moment;
  readonly window?: Window | undefined;
}

export type TimeOperator = Until | Throughout;

/** A condition at one moment of a run. */
export type Moment =
  | MomentPredicate
  | { readonly kind: 'not'; readonly of: Moment }
  | { readonly kind: 'and' | 'or'; readonly of: readonly Moment[] }
  | TimeOperator;

/** Holds for so long in all. */
export interface Lasting {
  readonly kind: 'lasting';
  readonly of: Moment;
  readonly how: 'at-least' | 'at-most';
  readonly time: number;
}

/** A condition on a whole run or on the design. Time operators look from the run's start. */
export type Formula =
  | Predicate
  | { readonly kind: 'not'; readonly of: Formula }
  | { readonly kind: 'and' | 'or'; readonly of: readonly Formula[] }
  | TimeOperator
  | Lasting;

/** How deep formulas may stand in one another. */
const LEVELS = 6;

/** "Not", "and" and "or" of whatever stands below. */
const combined = <T>(below: z.ZodMiniType<T, unknown>) =>
  [
    z.strictObject({ kind: z.literal('not'), of: below }),
    z.strictObject({
      kind: z.enum(['and', 'or']),
      of: z.array(below).check(z.minLength(1), z.maxLength(8)),
    }),
  ] as const;

const timed = (below: z.ZodMiniType<Moment, unknown>) =>
  [
    z.strictObject({ kind: z.enum(['always', 'eventually']), of: below, window: z.optional(Window) }),
    z.strictObject({ kind: z.literal('until'), hold: below, until: below, within: z.optional(Duration) }),
  ] as const;

function momentTo(levels: number): z.ZodMiniType<Moment, unknown> {
  if (levels === 0) return MomentPredicate;
  const below = momentTo(levels - 1);
  return z.discriminatedUnion('kind', [...MOMENT_PREDICATES, ...combined(below), ...timed(below)]);
}

function formulaTo(levels: number, moment: z.ZodMiniType<Moment, unknown>): z.ZodMiniType<Formula, unknown> {
  const lasting = z.strictObject({
    kind: z.literal('lasting'),
    of: moment,
    how: z.enum(['at-least', 'at-most']),
    time: Duration,
  });
  const plain = [...Predicate.def.options, ...timed(moment), lasting] as const;
  if (levels === 0) return z.discriminatedUnion('kind', plain);
  return z.discriminatedUnion('kind', [...plain, ...combined(formulaTo(levels - 1, moment))]);
}

/** Refuses with its path whatever does not depend on the moment and yet stands under a time operator. */
export const Formula: z.ZodMiniType<Formula, unknown> = formulaTo(LEVELS, momentTo(LEVELS));

const OPERATORS = ['not', 'and', 'or', 'always', 'eventually', 'until', 'lasting'] as const;
type Operator = (typeof OPERATORS)[number];
type PlainOf<F extends Formula | Moment> = Exclude<F, { readonly kind: Operator }>;

/** Whether a formula is a predicate, with nothing put together inside. */
export const isPredicate = <F extends Formula | Moment>(formula: F): formula is PlainOf<F> =>
  !(OPERATORS as readonly string[]).includes(formula.kind);
