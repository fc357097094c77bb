import type { Millis } from '../geometry/units.ts';

/**
 * The log of calibrations: which robot was calibrated when, and in which light. A robot is known by its
 * number: that of its berth on the harbour wall, or a higher one where a class has more robots than berths. The
 * newest line is the last one, whatever the clocks say.
 */

/** What lights the room, as anybody sees it; nobody needs a meter. */
export const LIGHTS = ['daylight', 'sun', 'lamps', 'mixed', 'dim'] as const;
export type Light = (typeof LIGHTS)[number];

export type CalibrationNote =
  | { readonly kind: 'calibrated'; readonly robot: number; readonly light: Light; readonly at: Millis }
  | { readonly kind: 'light-changed'; readonly at: Millis };

export type Calibrated = Extract<CalibrationNote, { kind: 'calibrated' }> & {
  /** The light has changed since. */
  readonly due: boolean;
};

export type CalibrationCommand =
  | { readonly kind: 'calibrate'; readonly robot: number; readonly light: Light }
  /** The newest line of that robot. */
  | { readonly kind: 'take-calibration-back'; readonly robot: number }
  /** On: all robots are due. Off: takes the newest change back. */
  | { readonly kind: 'change-light'; readonly on: boolean };

export type CalibrationFact =
  | { readonly kind: 'robot-calibrated'; readonly robot: number; readonly light: Light }
  /** Its newest line in the log was a mistake. */
  | { readonly kind: 'calibration-taken-back'; readonly robot: number }
  /** All robots are due; and the newest such line was a mistake. */
  | { readonly kind: 'light-changed' }
  | { readonly kind: 'light-kept' };

/** How a robot was calibrated last; undefined for one that was not. */
export function calibrationOf(log: readonly CalibrationNote[], robot: number): Calibrated | undefined {
  const place = log.findLastIndex((note) => note.kind === 'calibrated' && note.robot === robot);
  const note = log[place];
  if (note?.kind !== 'calibrated') return undefined;
  return { ...note, due: log.slice(place).some(({ kind }) => kind === 'light-changed') };
}

/** The log without the newest line that `is` says; the same where there is none. */
export function withoutNewest(
  log: readonly CalibrationNote[],
  is: (note: CalibrationNote) => boolean,
): readonly CalibrationNote[] {
  const place = log.findLastIndex(is);
  return place < 0 ? log : log.toSpliced(place, 1);
}

/** Whether a change of the light would mark any robot as due. */
export const anyCalibrated = (log: readonly CalibrationNote[]): boolean => {
  const last = log.at(-1);
  return last !== undefined && last.kind === 'calibrated';
};
