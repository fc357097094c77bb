import type { Kit } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import type { Seconds } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';
import type { Pairs } from '../track/pairs.ts';
import { buildInkField, type InkField } from './ink-field.ts';
import { type JoinMap, joinsOf } from './joins.ts';

/** All that a robot can meet: the ink as its sensors see it, and what was drawn where. */
export interface World {
  readonly field: InkField;
  readonly layout: Layout;
  readonly sheet: Sheet;
  readonly kit: Kit;
  /** Where a robot may leave one line for another. */
  readonly joins: JoinMap;
}

/**
 * Puts a drawing's ink on the sheet. Build it once a drawing; any number of runs may share it. From what is
 * known, of the same sheet and kit, it takes what is the same: the field of an earlier drawing, and where
 * lines of this one meet.
 */
export function worldOf(
  layout: Layout,
  sheet: Sheet,
  kit: Kit,
  known: { readonly field?: InkField | undefined; readonly pairs?: Pairs | undefined } = {},
): World {
  const joins = joinsOf(layout, kit.rules.junction.snap, known.pairs);
  return { field: buildInkField(layout, sheet, kit, known.field), layout, sheet, kit, joins };
}

export type StartBerth = 'start' | 'finish';

/** Room light in model units: what it was at calibration, what it is now, and its colour. */
export interface Ambient {
  readonly calibrated: number;
  readonly now: number;
  /** How strongly each colour channel meets the light; 1 is a neutral lamp. */
  readonly tint: { readonly red: number; readonly green: number; readonly blue: number };
}

/** Calibrated where it drives. */
export const SAME_LIGHT: Ambient = { calibrated: 0.1, now: 0.1, tint: { red: 1, green: 1, blue: 1 } };

export interface DriveOptions {
  readonly start: StartBerth;
  readonly limit: Seconds;
  /** 0 is the undisturbed robot; any other integer is one of the many slightly different ones. */
  readonly seed: number;
  /** What the tolerances are multiplied by: 0 none, 1 calm, 1.5 breezy, 3 stormy. Not used by seed 0. */
  readonly disturbance: number;
  /** What the tolerances of hand-drawn ink are multiplied by, in the same way; 0 is ink where it was meant to be. */
  readonly ink: number;
  readonly ambient: Ambient;
  /**
   * For each junction that nothing decides, in the order in which they are met, the index into its
   * arms (left, straight, right as far as they exist). Past the end of the list the undisturbed robot
   * takes the first arm and any other rolls its own die.
   */
  readonly choices: readonly number[];
}

/** The undisturbed robot from the start berth, with the light that it was calibrated in. */
export const UNDISTURBED: DriveOptions = {
  start: 'start',
  limit: 90,
  seed: 0,
  disturbance: 0,
  ink: 0,
  ambient: SAME_LIGHT,
  choices: [],
};
