import { FULL } from './coverage.ts';
import type { Machine } from './machine.ts';
import { MODEL, SENSORS } from './model.ts';
import { MOST_NOISE } from './random.ts';
import { CHANNELS, NOT_SURE, OPTICS, type RobotState } from './robot.ts';
import { BLACK_BYTE, WHITE_BYTE } from './tile-paint.ts';

/**
 * What a robot sees the same whatever the noise: worked out once a robot, so that the step need not. Readings
 * rise or fall evenly with light and noise, also when rounded, so that the ends of both tell everything between.
 */
export function noteCertain(r: RobotState, m: Machine): void {
  const noise = r.greyNoise * MOST_NOISE;
  r.surePaper = 0;
  for (let sensor = 0; sensor < SENSORS; sensor++) {
    const most = Math.max(reading(r, sensor, WHITE_BYTE, noise), reading(r, sensor, WHITE_BYTE, -noise));
    if (most <= MODEL.faint) r.surePaper |= 1 << sensor;
  }
  let level = BLACK_BYTE - 1;
  while (level < FULL >> 1 && isBlack(r, m, level + 1)) level++;
  r.sureBlack = level < BLACK_BYTE ? NOT_SURE : addendFor(level);
}

/** Bits that no byte below 128 has. */
export const ABOVE = 0x80808080 | 0;

/** Added to four bytes below 128, it lifts those above a level to 128 or more. */
const addendFor = (level: number): number => ((FULL >> 1) - level) * 0x01010101;

/** Whether no noise makes anything but black of what is as dark as this, or darker. */
function isBlack(r: RobotState, m: Machine, level: number): boolean {
  const noise = r.colorNoise * MOST_NOISE;
  let square = 0;
  for (let channel = SENSORS; channel < CHANNELS; channel++) {
    square += Math.max(
      squareOff(r, channel, BLACK_BYTE, noise),
      squareOff(r, channel, BLACK_BYTE, -noise),
      squareOff(r, channel, level, noise),
      squareOff(r, channel, level, -noise),
    );
  }
  return square <= m.surelyBlack && square <= MODEL.unlike * MODEL.unlike;
}

/** How far a reading is from black's, squared. */
function squareOff(r: RobotState, channel: number, light: number, noise: number): number {
  const off = 1 - reading(r, channel, light, noise);
  return off * off;
}

/** What a channel reads of some light with some noise. */
function reading({ optics }: RobotState, channel: number, light: number, noise: number): number {
  const o = channel * OPTICS;
  const raw = optics[o]! * light + optics[o + 1]! + noise;
  return (optics[o + 2]! - Math.min(raw, MODEL.clip)) * optics[o + 3]!;
}
