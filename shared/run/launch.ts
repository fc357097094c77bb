import type { Tolerances } from '../documents/kit.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import { cos, sin } from '../geometry/exact-math.ts';
import { sideOfMiddle } from './actions.ts';
import { noteCertain } from './certain.ts';
import { FULL } from './coverage.ts';
import type { Machine } from './machine.ts';
import { MODEL, SENSORS, TOLERANCES } from './model.ts';
import { evenly, nextInteger, normal, type Sfc32, sfc32 } from './random.ts';
import { BLACK, WHITE } from './reflectance.ts';
import { CHANNELS, newRobot, OPTICS, putAtRest, type RobotState } from './robot.ts';
import type { Ambient, DriveOptions, StartBerth } from './world.ts';

/** Where a run begins and which berth it is to reach. */
export interface Journey {
  readonly from: Berth;
  readonly to: Berth | undefined;
}

/** Refuses a start from a finish berth that the sheet lacks. */
export function journeyOf(sheet: Sheet, start: StartBerth): Journey {
  if (start === 'start') return { from: sheet.start, to: arrivalAt(sheet.finish) };
  if (!sheet.finish) throw new RangeError('a run from the finish berth needs a sheet with one');
  return { from: sheet.finish, to: arrivalAt(sheet.start) };
}

const arrivalAt = (berth: Berth | undefined): Berth | undefined => (berth?.startOnly ? undefined : berth);

/**
 * Puts a robot into its berth, at rest, calibrated. All draws of a seed are made in one order whatever
 * the disturbance, so that weather turns the same robot's faults up and down.
 */
export function launch(m: Machine, sheet: Sheet, from: Berth, options: DriveOptions): RobotState {
  const undisturbed = options.seed === 0;
  const share = undisturbed ? 0 : options.disturbance;
  const die = sfc32(options.seed);
  const r = newRobot({
    choices: options.choices,
    die: undisturbed ? undefined : die,
    sheetMiddle: { x: sheet.w / 2, y: sheet.h / 2 },
    pace: m.startPace,
  });
  putAtRest(r);
  place(r, from, m.tolerances, share, die);
  r.side = sideOfMiddle(r);
  const mismatch = share * m.tolerances.wheelMismatch * normal(die);
  const common = 1 + share * m.tolerances.commonSpeed * normal(die);
  r.scaleLeft = (1 + mismatch) * common;
  r.scaleRight = (1 - mismatch) * common;
  for (let channel = 0; channel < CHANNELS; channel++) {
    calibrate(r, m.tolerances, channel, options.ambient, share, die);
  }
  // Noise belongs to every real sensor and is no tolerance: weather does not make it worse.
  r.greyNoise = MODEL.greyNoise * Math.min(share, 1);
  r.colorNoise = MODEL.colorNoise * Math.min(share, 1);
  r.noisePlace = nextInteger(die);
  noteCertain(r, m);
  if (!undisturbed && options.ink > 0) drawByHand(r, m, options);
  return r;
}

/** The ink as a hand drew it for this robot: a matter of its own, which moves none of the robot's own draws. */
function drawByHand(r: RobotState, m: Machine, { seed, ink }: DriveOptions): void {
  const hand = sfc32(~seed);
  r.wobble = ink;
  r.wobbleSeed = nextInteger(hand);
  r.widen = (ink * TOLERANCES.inkWidth * evenly(hand)) / 2;
  r.barScale = 1 - r.widen / m.pitch;
}

function place(r: RobotState, berth: Berth, differ: Tolerances, share: number, die: Sfc32): void {
  const aside = share * differ.aside * normal(die);
  const heading = berth.heading + share * differ.heading * normal(die);
  r.x = berth.at.x - aside * sin(berth.heading);
  r.y = berth.at.y + aside * cos(berth.heading);
  r.cos = cos(heading);
  r.sin = sin(heading);
}

/** The grey channels see a lamp as neutral. */
function tintOf(ambient: Ambient, channel: number): number {
  if (channel < SENSORS) return 1;
  const { red, green, blue } = ambient.tint;
  return [red, green, blue][channel - SENSORS]!;
}

/**
 * raw = gain · reflectance · (1 + 0.25 A) + offset + 0.12 A, with A the light that a channel meets;
 * white and black are taken at the light of calibration, and readings are made in the light of now.
 */
function calibrate(
  r: RobotState,
  differ: Tolerances,
  channel: number,
  ambient: Ambient,
  share: number,
  die: Sfc32,
): void {
  const gain = 1 + share * differ.sensorGain * normal(die);
  const offset = share * differ.sensorOffset * normal(die);
  const tint = tintOf(ambient, channel);
  const then = ambient.calibrated * tint;
  const now = ambient.now * tint;
  const rawThen = (reflectance: number): number =>
    gain * reflectance * (1 + MODEL.lightGain * then) + offset + MODEL.lightOffset * then;
  const error = share * differ.calibration;
  const white = Math.min(MODEL.clip, rawThen(WHITE)) * (1 + error * normal(die));
  const black = rawThen(BLACK) + error * TOLERANCES.calibrationOfBlack * normal(die);
  const scaled = (gain * (1 + MODEL.lightGain * now)) / FULL;
  const base = offset + MODEL.lightOffset * now;
  r.optics.set([scaled, base, white, 1 / (white - black)], channel * OPTICS);
}
