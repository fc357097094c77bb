import type { Challenge, DrawnIn } from '../documents/challenge.ts';
import { USUAL_WEATHER, type Weather } from '../documents/outlook.ts';
import { challengeIn } from './variants.ts';

/** The weather that a challenge says. */
export const weatherOf = ({ weather = USUAL_WEATHER }: Challenge): Weather => weather;

/**
 * A challenge as an entry was drawn and is judged: on its sheet and in its weather. The same object where neither
 * differs; where the weather alone does, sheet and kit are the same objects.
 */
export function challengeUnder({ variant, weather }: DrawnIn, challenge: Challenge): Challenge {
  const on = challengeIn(variant, challenge);
  return weather === null || weather === weatherOf(on) ? on : { ...on, weather };
}
