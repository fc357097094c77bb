import type { Challenge } from '../../shared/documents/challenge.ts';
import { checkChallenge } from '../../shared/judge/check-challenge.ts';
import type { ReadyChallenge } from '../../shared/library/ready.ts';

/** `gone`: erased, by its desk or with it. `not-playable`: not with this kit, or not finished. */
export type Stuck = 'gone' | 'not-playable';

/**
 * Why a challenge of the queue can't be taken; null where it can, and as long as that is not known. `ready` is empty
 * until the room's kit is here, `own` null until this desk's own challenges are.
 */
export function whyStuck(
  key: string,
  ready: readonly ReadyChallenge[],
  own: readonly Challenge[] | null,
): Stuck | null {
  const known = ready.find((each) => each.key === key);
  if (known) return known.playable ? null : 'not-playable';
  if (ready.length === 0 || own === null) return null;
  const made = own.find(({ id }) => id === key);
  if (!made) return 'gone';
  return checkChallenge(made).length === 0 ? null : 'not-playable';
}
