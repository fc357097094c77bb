import type { OpenRoom } from '../rooms/outlet.ts';
import type { Rooms } from '../rooms/rooms.ts';
import { wordTyped } from '../rooms/words.ts';
import type { Access, Accesses } from './access.ts';
import type { Guess, RateLimits } from './rates.ts';

/**
 * A room by its id, which nobody can guess, or by its word: wrong ones are counted for whoever asks from
 * `address`, as where words are typed. Whatever tells strangers of a room asks here.
 */
export async function roomNamed(
  { rooms, rates }: { readonly rooms: Rooms; readonly rates: RateLimits },
  name: string,
  address: string,
): Promise<Guess<OpenRoom>> {
  const found = await rooms.byId(name);
  // A board whose room was erased goes on asking for its id, and guesses nothing by that.
  if (found || wordTyped(name) === undefined) return { allowed: true, found };
  return rates.guess('wrongWord', address, () => rooms.byWord(name));
}

interface FollowParts {
  readonly rooms: Rooms;
  readonly accesses: Accesses;
}

/** The newest of the rooms that a browser has as a desk. */
export async function ownNewest(
  { rooms, accesses }: FollowParts,
  access: Access,
): Promise<OpenRoom | undefined> {
  const own = await accesses.rooms(access);
  return own?.length === 0 ? undefined : rooms.newest(own);
}

/**
 * The room that a page follows which names none: the newest of its browser's desk. Where one person opens
 * all rooms, anybody's board follows the newest of all. Where several do, that would show strangers
 * somebody's lesson, so a page that is no desk's has to name its room.
 */
export async function roomFollowed(
  parts: FollowParts,
  access: Access,
): Promise<OpenRoom | 'name-it' | undefined> {
  if (access.kind !== 'none') return ownNewest(parts, access);
  const { rooms, accesses } = parts;
  const isOnePersons = rooms.alone && !(await accesses.links.areSeveral());
  return isOnePersons ? rooms.newest() : 'name-it';
}
