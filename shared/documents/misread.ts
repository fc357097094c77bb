import type { Design } from './design.ts';

/**
 * Ways in which people are known to misread marks: what a mark tells from its other side is taken for what
 * it tells from here; a mark is taken to act where it stands; one ink is taken for another.
 */
export const MISREADINGS = ['sides-swapped', 'acts-at-once', 'ink-mistaken'] as const;
export type Misreading = (typeof MISREADINGS)[number];

/** What somebody would hand in who misreads marks, and whether a run shows the mistake. */
export interface Misread {
  readonly misreading: Misreading;
  /** The two inks that are taken for one another. */
  readonly inks?: readonly [string, string];
  /** The cheapest drawing that does it as misread; null where none was found. */
  readonly design: Design | null;
  /** Whether it meets the challenge all the same. */
  readonly met: boolean;
}
