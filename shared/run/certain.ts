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
  r.surePaper = 0;
  for (let sensor = 0; sensor < SENSORS; sensor++) {
    const most = Math.max(...readings(r, sensor, [WHITE_BYTE], r.greyNoise));
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
  let square = 0;
  for (let channel = SENSORS; channel < CHANNELS; channel++) {
    const off = readings(r, channel, [BLACK_BYTE, level], r.colorNoise).map((reading) => 1 - reading);
    square += Math.max(...off.map((value) => value * value));
  }
  return square <= m.surelyBlack && square <= MODEL.unlike * MODEL.unlike;
}

/** Readings of a channel at some levels of light, with the most noise either way. */
const readings = (
  { optics }: RobotState,
  channel: number,
  levels: readonly number[],
  noise: number,
): number[] => {
  const [gain, base, white, perSpan] = optics.subarray(channel * OPTICS);
  return levels.flatMap((light) =>
    [-MOST_NOISE, MOST_NOISE].map((most) => {
      const raw = gain! * light + base! + noise * most;
      return (white! - Math.min(raw, MODEL.clip)) * perSpan!;
    }),
  );
};
