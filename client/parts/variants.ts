import type { Challenge, Variant } from '../../shared/documents/challenge.ts';
import { challengeIn } from '../../shared/library/variants.ts';
import { type RoomState, type Team, variantFor } from '../../shared/room/state.ts';
import { currentRound } from './figures.ts';

/** Each made once: the judge knows by the object that sheet and kit are the same. */
const made = new WeakMap<Challenge, Partial<Record<Variant, Challenge>>>();

/** A challenge on the sheet that an entry was drawn on. */
export function onSheetOf(
  { variant }: { readonly variant: Variant | null },
  challenge: Challenge,
): Challenge {
  // Rooms that an older page has kept know of no variants.
  if (!variant) return challenge;
  const known = made.get(challenge) ?? {};
  made.set(challenge, known);
  known[variant] ??= challengeIn(variant, challenge);
  return known[variant];
}

/** The challenge of the current round on the sheet that a team has. */
export const onTeamsSheet = (room: RoomState, team: Team, challenge: Challenge): Challenge =>
  onSheetOf({ variant: variantFor(room.rounds[currentRound(room)], team) }, challenge);
