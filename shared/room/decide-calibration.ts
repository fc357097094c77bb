import type { Millis } from '../geometry/units.ts';
import { anyCalibrated, type CalibrationCommand, calibrationOf } from './calibration.ts';
import { ALREADY, type CommandOf, type Decision, done, type Rule } from './decision.ts';
import type { Seat } from './events.ts';
import type { RoomState } from './state.ts';

/** What the desk notes in the log of calibrations, and takes back. */

/** Who taps twice means it once. */
const TWICE_WITHIN: Millis = 5000;

function calibrate(
  state: RoomState,
  { robot, light }: CommandOf<'calibrate'>,
  _: Seat,
  now: Millis,
): Decision {
  const last = calibrationOf(state.calibrations, robot);
  if (last && !last.due && last.light === light && now - last.at < TWICE_WITHIN) return ALREADY;
  return done({ kind: 'robot-calibrated', robot, light });
}

function takeBack(state: RoomState, { robot }: CommandOf<'take-calibration-back'>): Decision {
  const last = calibrationOf(state.calibrations, robot);
  return last ? done({ kind: 'calibration-taken-back', robot }) : ALREADY;
}

/** On: all that were calibrated are due. Off: the last change of the light was none. */
function changeLight(state: RoomState, { on }: CommandOf<'change-light'>): Decision {
  const log = state.calibrations;
  if (on) return anyCalibrated(log) ? done({ kind: 'light-changed' }) : ALREADY;
  return log.some(({ kind }) => kind === 'light-changed') ? done({ kind: 'light-kept' }) : ALREADY;
}

type CalibrationKind = CalibrationCommand['kind'];

export const CALIBRATION_RULES: { readonly [K in CalibrationKind]: Rule<K> } = {
  calibrate: { by: 'desk', decide: calibrate },
  'take-calibration-back': { by: 'desk', decide: takeBack },
  'change-light': { by: 'desk', decide: changeLight },
};
