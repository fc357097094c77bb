import type { Kit } from '../documents/kit.ts';
import { acos, cos, sin } from '../geometry/exact-math.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, MmPerSecond, PerMm, Rad, Seconds } from '../geometry/units.ts';
import { MODEL } from '../run/model.ts';

/** A speed on its way to the commanded one, at a steady rate. */
export interface Motion {
  readonly speed: MmPerSecond;
  readonly target: MmPerSecond;
}

const rampTime = ({ speed, target }: Motion): Seconds => Math.abs(target - speed) / MODEL.paceChange;

/** How far a motion comes in a time, and its speed then. */
export function after(motion: Motion, time: Seconds): { readonly way: Mm; readonly speed: MmPerSecond } {
  const { speed, target } = motion;
  const ramp = rampTime(motion);
  const rate = target < speed ? -MODEL.paceChange : MODEL.paceChange;
  if (time < ramp) return { way: (speed + (rate * time) / 2) * time, speed: speed + rate * time };
  return { way: ((speed + target) / 2) * ramp + target * (time - ramp), speed: target };
}

/** The time that a motion needs for a way; the target must not be 0. */
export function timeFor(motion: Motion, way: Mm): Seconds {
  if (way <= 0) return 0;
  const { speed, target } = motion;
  const ramp = rampTime(motion);
  const rampWay = ((speed + target) / 2) * ramp;
  if (way >= rampWay) return ramp + (way - rampWay) / target;
  const rate = target < speed ? -MODEL.paceChange : MODEL.paceChange;
  const then = speed * speed + 2 * rate * way;
  return (2 * way) / (speed + Math.sqrt(Math.max(then, 0)));
}

/** What a bend does to a robot that follows it for a while. */
export interface Leaning {
  /** How far the line lies off the middle of the bar. */
  readonly offset: Mm;
  /** Way along the line that it gains a mm of its straight-line speed. */
  readonly share: number;
}

const ROUNDS = 40;

/**
 * The steady state of the controller on a circle: the bar's middle runs `offset` outside of the line, the
 * axle on a circle of its own, and the turn rate that the offset asks for is the one that the circle needs.
 */
export function leaningOn(curvature: PerMm, kit: Kit): Leaning {
  const bend = Math.abs(curvature);
  if (bend < TOLERANCE.straightBend) return { offset: 0, share: 1 };
  const { barAhead, sensorPitch } = kit.robot;
  const outer = 2 * sensorPitch;
  const radius = 1 / bend;
  let low = 0;
  let high = outer;
  for (let round = 0; round < ROUNDS; round++) {
    const offset = (low + high) / 2;
    const bar = radius + offset;
    const axle = bar > barAhead ? Math.sqrt(bar * bar - barAhead * barAhead) : 0;
    if (MODEL.steer * offset * axle < 1 - (MODEL.slowing * offset) / outer) low = offset;
    else high = offset;
  }
  return { offset: low, share: MODEL.steer * low * radius };
}

/** Where a robot stands that turns from one line to another at an angle, and how long that takes. */
export interface Turn {
  /** How far its axle has come past the point where the lines meet. */
  readonly past: Mm;
  /** How far along the new line the bar is above its distance from the axle, after the turn. */
  readonly ahead: Mm;
  readonly time: Seconds;
}

const arcSine = (value: number): Rad => Math.PI / 2 - acos(value);

/** Half of a line's width. */
export const halfWidth = (kit: Kit): Mm => kit.rules.lineWidth.nominal / 2;

/** How far a robot rolls on while its motors take up a command to stand or to turn on the spot. */
export const rollOut = (speed: MmPerSecond): Mm => speed * MODEL.motorLag;

/**
 * A turn by `angle` from ahead, come to at a speed. The bar sees the new line when its outer sensor comes
 * over the edge, the robot creeps on until its axle is where an arm at a right angle would be, rolls on as
 * it begins to spin, and spins until the middle sensor comes over the new line. The motors lag as it begins
 * to spin and again as it drives on.
 */
export function turnBy(angle: Rad, kit: Kit, speed: MmPerSecond): Turn {
  const { barAhead, sensorPitch } = kit.robot;
  const half = halfWidth(kit);
  const s = sin(angle);
  const c = cos(angle);
  const seenAt = (2 * sensorPitch * c - half) / s;
  const past = seenAt + half;
  const short = arcSine((half - (past + rollOut(speed)) * s) / barAhead);
  const spun = Math.max(angle - short, MODEL.leastTurn);
  return {
    past,
    ahead: past * c + barAhead * (cos(angle - spun) - 1),
    time: spun / MODEL.spin + 2 * MODEL.motorLag,
  };
}

/** Time of a half turn on a line. */
export function halfTurnTime(kit: Kit): Seconds {
  const spun = Math.max(Math.PI - arcSine(halfWidth(kit) / kit.robot.barAhead), MODEL.leastHalfTurn);
  return spun / MODEL.spin + 2 * MODEL.motorLag;
}

/** So far beyond the edge of the ink all readings together are faint. Fitted to the run, at a round end. */
const FAINT_FROM: Mm = 0.45;

/**
 * How far past a loose end, before it where negative, the axle stands when the robot has lost the line, has
 * gone on over white and begins to search.
 */
export const pastEnd = (width: Mm, kit: Kit): Mm => width / 2 + FAINT_FROM + MODEL.gap - kit.robot.barAhead;

/** Time in which a robot searches both sides before it gives up. Its motors lag at first, and twice as much when it turns round. */
export const SEARCH_TIME: Seconds = (3 * MODEL.search) / MODEL.spin + 3 * MODEL.motorLag;

/** The same where it then turns on until it is back on its line. */
export const endTurnTime = (kit: Kit): Seconds =>
  SEARCH_TIME +
  (Math.PI - MODEL.search - arcSine(halfWidth(kit) / kit.robot.barAhead)) / MODEL.spin +
  MODEL.motorLag;
