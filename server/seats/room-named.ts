import type { OpenRoom } from '../rooms/outlet.ts';
import type { Rooms } from '../rooms/rooms.ts';
import { wordTyped } from '../rooms/words.ts';
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
