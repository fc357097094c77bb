import * as z from 'zod/mini';
import { Way } from './kit.ts';
import { Ending } from './trace.ts';

/** What may come of a drawing, beyond the runs of the undisturbed robot: its odds and its steadiness. */

export const PlainPoint = z.strictObject({ x: z.number(), y: z.number() });

/** The kit's tolerances × 1, 1.5 and 3. */
export const WEATHERS = ['calm', 'breezy', 'stormy'] as const;
export const Weather = z.enum(WEATHERS);
export type Weather = (typeof WEATHERS)[number];
export const USUAL_WEATHER: Weather = 'calm';

/** So many disturbed robots are driven for a verdict. */
export const ROBOTS = 20;

/** A 95 % confidence interval of a share. */
export const Interval = z.strictObject({ low: z.number(), high: z.number() });

const Chance = z.number();

/** A junction at which the robot decides by itself, as it is met from one side. */
export const OpenJunction = z.strictObject({
  at: PlainPoint,
  /** The direction in which the robot comes, as a unit vector. */
  heading: PlainPoint,
  /** Chance that a run ever meets it so. */
  met: Chance,
  /** The ways that it may take, from left to right. */
  arms: z.array(
    z.strictObject({
      way: Way,
      chance: Chance,
      /** Chance of the finish for those that take it. */
      finish: Chance,
    }),
  ),
});

/**
 * What the track says where the robot decides by itself, from one berth. The chances of all endings and
 * of the endless loop add up to 1; no time limit counts for them.
 */
export const Odds = z.strictObject({
  start: z.enum(['start', 'finish']),
  /**
   * `track`: worked out on the track, and the undisturbed runs do the same. `runs`: they do otherwise
   * (a corner loses the robot, a mark is overlooked), and these are the chances of those runs.
   * `doubtful`: worked out on the track; runs do otherwise, and there are too many to follow them all.
   */
  basis: z.enum(['track', 'runs', 'doubtful']),
  /** Most likely first. */
  endings: z.array(z.strictObject({ ending: Ending, at: PlainPoint, probability: Chance })),
  /** Chance of ever coming into the berth at the other end. */
  finish: Chance,
  /** Chance of going round for ever, never to end. */
  endless: Chance,
  /** The same within the time limit; the mean time of those that arrive, absent where none does. */
  inTime: z.strictObject({ limit: z.number(), finish: Chance, meanTime: z.optional(z.number()) }),
  /** In the order in which they may be met. */
  open: z.array(OpenJunction),
});

/** Why a disturbed robot did not do as the undisturbed one. */
export const CAUSES = [
  'never-started',
  'mark-missed',
  'mark-misread',
  'other-branch',
  'lost',
  'off-paper',
  'time-up',
  /** It ends otherwise: parks, stops or arrives elsewhere. */
  'other-end',
] as const;
export const Cause = z.enum(CAUSES);
export type Cause = (typeof CAUSES)[number];

/** One disturbed robot that did not do as the undisturbed one: where they part, and why. */
export const Stray = z.strictObject({
  seed: z.int(),
  start: z.enum(['start', 'finish']),
  cause: Cause,
  at: PlainPoint,
  /** The mark that it missed or misread, where that is the cause. */
  mark: z.optional(z.string()),
});

/** How many of the disturbed robots end and obey as the undisturbed one. */
export const Steadiness = z.strictObject({
  weather: Weather,
  same: z.int(),
  of: z.int(),
  interval: Interval,
  /** In the order of their seeds. */
  strays: z.array(Stray),
});

export type Interval = z.output<typeof Interval>;
export type OpenJunction = z.output<typeof OpenJunction>;
export type Odds = z.output<typeof Odds>;
export type Stray = z.output<typeof Stray>;
export type Steadiness = z.output<typeof Steadiness>;
