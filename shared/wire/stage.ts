import type { WhatIf } from '../documents/what-if.ts';
import type { Millis, Seconds } from '../geometry/units.ts';
import type { EntryId } from '../room/state.ts';

/** How fast a replay may run, times the robot's own speed. */
export const STAGE_SPEEDS = [0.25, 0.5, 1, 2, 4] as const;

/** A stretch of a run that is shown again and again, s of run time. */
export interface StageLoop {
  readonly from: Seconds;
  readonly to: Seconds;
}

/** How the stage is shown, beside its clock. Nothing of it touches an entry. */
export interface StageLook {
  /** What the sensors read, where one drawing is shown. */
  readonly sensors: boolean;
  /** The whole run as one picture. */
  readonly whole: boolean;
  /** A heat on one sheet, where all of it was drawn on the same. */
  readonly onTop: boolean;
  /** Runs chosen instead of the likeliest, by their place among those of an entry. */
  readonly ways: readonly { readonly entry: EntryId; readonly run: number }[];
  readonly whatIf: WhatIf | null;
}

/** The stage's clock: where the replay stands. `at` is run time in s when server time was `since`. */
export interface StageClock {
  readonly playing: boolean;
  readonly speed: (typeof STAGE_SPEEDS)[number];
  readonly at: Seconds;
  readonly since: Millis;
  readonly loop?: StageLoop | undefined;
  /** The usual look where nothing is said. */
  readonly look?: StageLook | undefined;
}
