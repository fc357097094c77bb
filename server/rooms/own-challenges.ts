import { Challenge } from '../../shared/documents/challenge.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import type { Millis } from '../../shared/geometry/units.ts';
import { checkChallenge } from '../../shared/judge/check-challenge.ts';
import type { RoomId } from '../../shared/room/state.ts';
import { LIMITS } from '../../shared/wire/protocol.ts';
import type { Values } from '../log/event-log.ts';
import type { Links } from '../seats/links.ts';
import { OWNERS_SHELF, Shelf } from '../seats/shelf.ts';

/** What desks have made for themselves and keep across rooms. */
export interface Kept {
  readonly challenges: Shelf;
  readonly kits: Shelf;
  /** A challenge of the desk whose room it is, by its key; undefined also for one that can't be played yet. */
  readonly ownChallenge: (room: RoomId, key: string) => Promise<Challenge | undefined>;
  /** Forgets revoked links that can't be given back any more, with all that was made at their desks. */
  readonly forgetRevoked: () => Promise<void>;
}

export function keptByDesks(
  values: Values,
  links: Pick<Links, 'deskOf' | 'forgetRevoked'>,
  now: () => Millis,
): Kept {
  const challenges = new Shelf(values, 'challenge', LIMITS.ownChallenges, now);
  const kits = new Shelf(values, 'kit', LIMITS.ownKits, now);
  const ownChallenge: Kept['ownChallenge'] = async (room, key) => {
    const body = await challenges.find((await links.deskOf(room)) ?? OWNERS_SHELF, key);
    const read = parseDocument(Challenge, body);
    return read.ok && checkChallenge(read.value).length === 0 ? read.value : undefined;
  };
  const forgetRevoked = () =>
    links.forgetRevoked(async ({ id }) => {
      await challenges.forget(id);
      await kits.forget(id);
    });
  return { challenges, kits, ownChallenge, forgetRevoked };
}
