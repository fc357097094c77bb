import type { Challenge, DrawnIn } from '../../shared/documents/challenge.ts';
import { challengeUnder } from '../../shared/library/conditions.ts';
import { conditionsFor } from '../../shared/room/drawn-in.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';

/** Each made once: the judge knows by the object that sheet and kit are the same. */
const made = new WeakMap<Challenge, Map<string, Challenge>>();

/** A challenge on the sheet and in the weather that an entry was drawn in. */
export function onSheetOf({ variant, weather }: DrawnIn, challenge: Challenge): Challenge {
  // Rooms that an older page has kept know of no variants and no weather.
  const drawnIn: DrawnIn = { variant: variant ?? null, weather: weather ?? null };
  const known = made.get(challenge) ?? new Map<string, Challenge>();
  made.set(challenge, known);
  const key = `${drawnIn.variant} ${drawnIn.weather}`;
  const one = known.get(key) ?? challengeUnder(drawnIn, challenge);
  known.set(key, one);
  return one;
}

/** The challenge of the current round as a team draws it. */
export const onTeamsSheet = (room: RoomState, team: Team, challenge: Challenge): Challenge =>
  onSheetOf(conditionsFor(room, team), challenge);
