import type { Light } from '../../room/calibration.ts';
import { numbers } from './numbers.ts';

const LIGHTS: Readonly<Record<Light, string>> = {
  daylight: 'daylight',
  sun: 'sun on the table',
  lamps: 'lamps',
  mixed: 'daylight and lamps',
  dim: 'little light',
};

/** The desk's log of which robot was calibrated when, and in which light. */
export const calibration = {
  title: 'Robots',
  teams: 'Teams',
  leaves: 'On the harbour wall',
  how: 'Calibrate a robot on the patch, where it will drive and as its maker says. Then tap its berth: a robot has the number of its berth.',
  light: 'The light now',
  lightIs: (light: Light): string => LIGHTS[light],
  robot: (n: number): string => `Robot ${n}`,
  not: 'not calibrated',
  done: (light: Light, when: string): string => `${when}, ${LIGHTS[light]}`,
  due: 'due again',
  count: (n: number, of: number): string => `${n} of ${numbers.counted(of, 'robot', 'robots')} calibrated`,
  changed: 'The light changed',
  changedNote: 'Marks all as due: robots read colours by the light that they were calibrated in.',
  log: 'Calibration log',
  logNone: 'No robot has been calibrated yet.',
  line: (robot: number, light: Light): string => `Robot ${robot} calibrated, ${LIGHTS[light]}`,
  lineChanged: 'The light changed: all due',
  takeBack: (robot: number): string => `Take the last calibration of robot ${robot} back`,
  undo: {
    calibrated: (robot: number, light: Light): string => `Robot ${robot} is calibrated, ${LIGHTS[light]}.`,
    changed: 'The light changed: all robots are due.',
  },
};
