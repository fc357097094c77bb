import type { Texts } from './values.ts';

/** What a fresh challenge can be about. */
export const FRESH_TOPICS = ['park', 'pace', 'junction', 'crossing', 'turn-back'] as const;
export type FreshTopic = (typeof FRESH_TOPICS)[number];

/** How many marks it takes. */
export const FRESH_MARKS = [1, 2, 3] as const;
export type FreshMarks = (typeof FRESH_MARKS)[number];

/** What people read on a fresh challenge. */
export interface FreshWords {
  readonly sentences: Readonly<Record<FreshTopic, Texts>>;
  readonly start: Texts;
  readonly finish: Texts;
  /** Where to park, and what to look in at. */
  readonly area: Texts;
  readonly gate: Texts;
}

/** How hard a challenge is, as far as it can be counted on its solution. */
export interface Difficulty {
  /** The fewest marks that do it. */
  readonly marks: number;
  /** Readings whose mark means something else from its other side. */
  readonly sided: number;
  /** The smallest margin of a must-goal, in steps of its scale (10 mm, 1 s, 1 count). */
  readonly slack: number;
  /** Drawings that the search for the solution has driven. */
  readonly searched: number;
  /** 2 a mark, 1 a sided reading, 1 where less than a step is to spare. */
  readonly score: number;
}
