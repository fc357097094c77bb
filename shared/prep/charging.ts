import { expMinus } from '../geometry/exact-math.ts';

/**
 * How long a lithium-ion cell charges: constant current, then constant voltage with a current that falls
 * (the usual scheme of chargers). A model for planning: the maker's instructions and the robot's own light
 * say when it is really full.
 */

/** Whole minutes. */
export type Minutes = number;

export interface Battery {
  /** mAh */
  readonly capacity: number;
  /** Share of the capacity that is in it, 0 to 1. */
  readonly charge: number;
}

/** Up to this share the current is constant (Battery University BU-409, table 2; from memory). */
export const CONSTANT_CURRENT_UNTIL = 0.85;
/** Full when the current has fallen to this share of its first value (the same; as quoted by others). */
export const FULL_CURRENT = 0.03;

const MINUTES_AN_HOUR = 60;

/**
 * Minutes until the battery is full at `current` mA, rounded up. In the second stage what is missing
 * shrinks by the same share every minute, since the current is in proportion to it.
 */
export function minutesToFull({ capacity, charge }: Battery, current: number): Minutes {
  const whole = (capacity / current) * MINUTES_AN_HOUR;
  const constant = Math.max(0, CONSTANT_CURRENT_UNTIL - charge) * whole;
  const falling = (1 - CONSTANT_CURRENT_UNTIL) * whole;
  const missing = (1 - Math.max(charge, CONSTANT_CURRENT_UNTIL)) / (1 - CONSTANT_CURRENT_UNTIL);
  let minutes = Math.ceil(constant);
  while (missing * expMinus((minutes - constant) / falling) > FULL_CURRENT) minutes++;
  return minutes;
}
