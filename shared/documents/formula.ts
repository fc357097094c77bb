import * as z from 'zod/mini';
import { Pace } from './kit.ts';
import { Duration, Id, Length } from './values.ts';

const Count = z.int().check(z.gte(0), z.lte(99));

/**
 * What a goal says, as a closed set of predicates; each has a margin in its own unit and is met
 * when the margin is at least 0.
 */
export const Predicate = z.discriminatedUnion('kind', [
  /** The middle of the axle comes into the finish berth. */
  z.strictObject({ kind: z.literal('finish') }),
  /** The run ends by parking with the axle inside the berth or area. */
  z.strictObject({ kind: z.literal('park'), area: z.optional(Id) }),
  /** So many unbroken parts of the run at this commanded pace, each at least so long. */
  z.strictObject({
    kind: z.literal('stretches'),
    pace: Pace,
    how: z.enum(['exactly', 'at-least', 'at-most']),
    count: Count,
    length: Length,
  }),
  /** The commanded pace when the run ends or the finish is reached. */
  z.strictObject({ kind: z.literal('pace-at-end'), pace: Pace }),
  z.strictObject({
    kind: z.literal('gates'),
    gates: z.array(Id).check(z.minLength(1)),
    ordered: z.boolean(),
  }),
  /** The robot's whole outline stays out of every keep-out area. */
  z.strictObject({ kind: z.literal('keep-out') }),
  z.strictObject({ kind: z.literal('stay-on-paper') }),
  /** Arrives in the finish berth within the window. */
  z.strictObject({ kind: z.literal('time'), from: Duration, to: Duration }),
  z.strictObject({ kind: z.literal('turn-back'), count: Count }),
  z.strictObject({ kind: z.literal('mark-limit'), most: Count }),
  z.strictObject({ kind: z.literal('ink-limit'), most: Length }),
]);
export type Predicate = z.output<typeof Predicate>;

export type Formula =
  | Predicate
  | { readonly kind: 'not'; readonly of: Formula }
  | { readonly kind: 'and' | 'or'; readonly of: readonly Formula[] };

const Combination: z.ZodMiniType<Formula, unknown> = z.lazy(() =>
  z.union([
    z.strictObject({ kind: z.literal('not'), of: Formula }),
    z.strictObject({
      kind: z.enum(['and', 'or']),
      of: z.array(Formula).check(z.minLength(1), z.maxLength(8)),
    }),
  ]),
);
export const Formula: z.ZodMiniType<Formula, unknown> = z.union([Predicate, Combination]);

/** Whether a formula is a predicate, with nothing put together inside. */
export const isPredicate = (formula: Formula): formula is Predicate =>
  formula.kind !== 'not' && formula.kind !== 'and' && formula.kind !== 'or';
