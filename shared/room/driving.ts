import type { Millis, Mm, Seconds } from '../geometry/units.ts';

/** Real robots on paper: which of them drive, whose turn it is, and what they did beside what was foretold. */

/** What a real robot did. */
export type Outcome =
  /** `seconds`: how long it took, where somebody timed it. */
  | { readonly kind: 'as-predicted'; readonly seconds: Seconds | null }
  /** Where it lost the line, whole mm of the sheet, if that was shown. */
  | { readonly kind: 'lost'; readonly at: { readonly x: Mm; readonly y: Mm } | null }
  | { readonly kind: 'other-branch' }
  | { readonly kind: 'time-up' };

/** What the entry's verdict said before. */
export interface Foretold {
  /** Of so many slightly different robots so many do as the undisturbed one. */
  readonly same: number;
  readonly of: number;
  /** Chance of coming into the berth; null where the verdict has no odds. */
  readonly finish: number | null;
  /** How long the undisturbed robot drives; null where it waits on the way, or has several ways to go. */
  readonly seconds: Seconds | null;
}

export interface Trial {
  /** Id of the entry that was on the paper. */
  readonly entry: string;
  /** The number on the robot. */
  readonly robot: number;
  readonly outcome: Outcome;
  /** null where nothing was foretold: what was handed in is no drawing. */
  readonly foretold: Foretold | null;
  readonly at: Millis;
  /** The desk has taken it back: it counts nowhere. */
  readonly withdrawn: boolean;
}

export interface Driving {
  /** Numbers of the robots that drive, lowest first; null: one for each berth, with its number. */
  readonly robots: readonly number[] | null;
  /** Which turn it is, from 0. */
  readonly turn: number;
  /** The robots of each turn before that, as `robots` was then: a robot that rests later has driven all the same. */
  readonly over: readonly (readonly number[] | null)[];
  /** In the order in which they were noted; a trial is known by its place. */
  readonly trials: readonly Trial[];
}

export const NO_DRIVING: Driving = { robots: null, turn: 0, over: [], trials: [] };

/** What a class may have and need. */
export const DRIVING_LIMITS = {
  robots: 40,
  robotNumber: 999,
  turns: 1000,
  trials: 2000,
  seconds: 3600,
} as const;

export type DrivingCommand =
  | { readonly kind: 'set-robots'; readonly robots: readonly number[] }
  | { readonly kind: 'call-turn'; readonly turn: number }
  | ({ readonly kind: 'note-trial' } & Omit<Trial, 'at' | 'withdrawn'>)
  | { readonly kind: 'withdraw-trial'; readonly trial: number };

export type DrivingFact =
  | { readonly kind: 'robots-set'; readonly robots: readonly number[] }
  | { readonly kind: 'turn-called'; readonly turn: number }
  | ({ readonly kind: 'trial-noted' } & Omit<Trial, 'at' | 'withdrawn'>)
  | { readonly kind: 'trial-withdrawn'; readonly trial: number };
