import type { Challenge, DrawnIn, Variant } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import { challengeUnder } from '../../shared/library/conditions.ts';
import { designOn } from '../../shared/library/variants.ts';
import type { Hung } from '../../shared/room/board.ts';
import { conditionsFor } from '../../shared/room/drawn-in.ts';
import type { Entry, RoomState, Team } from '../../shared/room/state.ts';

/** Each made once: the judge knows by the object that sheet and kit are the same. */
const made = new WeakMap<Challenge, Map<string, Challenge>>();

/** A challenge on the sheet and in the weather that an entry was drawn in. */
export function onSheetOf({ variant, weather }: DrawnIn, challenge: Challenge): Challenge {
  // Rooms that an older page has kept know of no variants and no weather.
  const drawnIn: DrawnIn = { variant: variant ?? null, weather: weather ?? null };
  const known = made.get(challenge) ?? new Map<string, Challenge>();
  made.set(challenge, known);
  const key = `${drawnIn.variant} ${drawnIn.weather}`;
  const one = known.get(key) ?? madeFor(drawnIn, challenge);
  known.set(key, one);
  return one;
}

/** Its sheet is the same object in each weather. */
const madeFor = ({ variant, weather }: DrawnIn, challenge: Challenge): Challenge =>
  weather === null
    ? challengeUnder({ variant, weather }, challenge)
    : challengeUnder({ variant: null, weather }, onSheetOf({ variant, weather: null }, challenge));

/** The challenge of the current round as a team draws it. */
export const onTeamsSheet = (room: RoomState, team: Team, challenge: Challenge): Challenge =>
  onSheetOf(conditionsFor(room, team), challenge);

/** The challenge of what hangs on the board, of which a board knows the sheet by that alone. */
export const onSheetOfHung = ({ variant }: Hung, entry: Entry, challenge: Challenge): Challenge =>
  onSheetOf({ ...entry, variant: variant ?? entry.variant }, challenge);

/** A challenge that lies on one of its sheets, on another one. */
export function onOtherSheet(challenge: Challenge, from: Variant | null, to: Variant | null): Challenge {
  if (from === to) return challenge;
  // Each variant is its own way back.
  return onSheetOf({ variant: to, weather: null }, onSheetOf({ variant: from, weather: null }, challenge));
}

const moved = new WeakMap<Design, Map<string, Design>>();

/** What was drawn on one sheet of a challenge as it is on another; each made once, as above. */
export function drawnOn(
  design: Design,
  from: Variant | null,
  to: Variant | null,
  challenge: Challenge,
): Design {
  const known = moved.get(design) ?? new Map<string, Design>();
  moved.set(design, known);
  const key = `${from} ${to}`;
  const one = known.get(key) ?? designOn(from, to, challenge, design);
  known.set(key, one);
  return one;
}
