import * as z from 'zod/mini';
import { Design } from './design.ts';
import { Formula } from './formula.ts';
import { Kit } from './kit.ts';
import { Weather } from './outlook.ts';
import { Ask } from './question.ts';
import { Sheet } from './sheet.ts';
import { Duration, Id, Length, Ratio, Texts } from './values.ts';

export const Goal = z.strictObject({
  id: Id,
  formula: Formula,
  /** Whether the challenge counts as met only with this goal. */
  must: z.boolean(),
  weight: z.int().check(z.gte(1), z.lte(100)),
  /** Where it is for one of two travellers: only the runs from this berth count. */
  start: z.optional(z.enum(['start', 'finish'])),
});

/** The same sheet as in a mirror, or turned by half a turn: for neighbouring tables. */
export const VARIANTS = ['mirrored', 'turned'] as const;
export type Variant = (typeof VARIANTS)[number];

/** What may differ from the challenge where a team draws; null: as the challenge has it. */
export interface DrawnIn {
  readonly variant: Variant | null;
  readonly weather: Weather | null;
}

export const AS_IT_IS: DrawnIn = { variant: null, weather: null };

/**
 * `draw`: the track is the team's; `fill-in`: lines are given; `mend`: the draft begins as a faulty
 * drawing; `predict`: all is given, and the team answers questions.
 */
export const Play = z.enum(['draw', 'fill-in', 'mend', 'predict']);

/**
 * Room light in the model's units: what it was when the robots were calibrated, and what it is now; and
 * how strongly each colour meets it, 1 being a neutral lamp.
 */
export const Light = z.strictObject({
  calibrated: Ratio,
  now: Ratio,
  tint: z.strictObject({ red: Ratio, green: Ratio, blue: Ratio }),
});

export const Challenge = z.strictObject({
  version: z.literal(1),
  id: Id,
  topic: z.int().check(z.gte(1), z.lte(99)),
  /** A few words for a list. */
  title: z.optional(Texts),
  /** The sentence that children read. */
  sentence: Texts,
  /** What the sentence becomes on a mirrored sheet, where it speaks of left or right. */
  mirroredSentence: z.optional(Texts),
  play: Play,
  kit: Kit,
  sheet: Sheet,
  starts: z.array(z.enum(['start', 'finish'])).check(z.minLength(1), z.maxLength(2)),
  /** None only where questions take their place. */
  goals: z.array(Goal).check(z.maxLength(8)),
  /** The questions of a `predict`. */
  asks: z.optional(z.array(Ask).check(z.minLength(1), z.maxLength(12))),
  limits: z.strictObject({ ink: z.optional(Length), marks: z.optional(z.int()), time: Duration }),
  /** How different the robots are; calm where nothing is said. */
  weather: z.optional(Weather),
  /** The light that they were calibrated in, where nothing is said. */
  light: z.optional(Light),
  /** What a draft starts as: the faulty drawing of a mend. */
  begin: z.optional(Design),
  /** The maker's own sound design. Never sent to teams by the server. */
  model: z.optional(Design),
  /**
   * The lowest cost of a drawing that is known to meet it: mm of line and 20 a mark, in files in
   * hundredths like a length.
   */
  par: z.optional(Length),
  /** For the teacher: what it teaches, usual mistakes, a question to ask. */
  note: z.optional(z.strictObject({ teaches: Texts, mistakes: Texts, ask: Texts })),
});

export type Goal = z.output<typeof Goal>;
export type Light = z.output<typeof Light>;
export type Play = z.output<typeof Play>;
export type Challenge = z.output<typeof Challenge>;
