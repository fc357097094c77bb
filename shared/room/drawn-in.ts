import type { DrawnIn, Variant } from '../documents/challenge.ts';
import { ownOf } from './conditions.ts';
import type { RoomState, Round, Team } from './state.ts';

/** On which sheet and in which weather a team draws. */

const VARIANT_OF_BERTH: readonly (Variant | null)[] = [null, 'mirrored', 'turned'];

/** Which variant of a round's sheet a berth has; null: as it is. No two berths side by side have the same. */
export const variantFor = (round: Round | undefined, { berth }: Pick<Team, 'berth'>): Variant | null =>
  round?.varied ? VARIANT_OF_BERTH[(berth - 1) % VARIANT_OF_BERTH.length]! : null;

/** In what a team draws the current round. An entry keeps it. */
export const conditionsFor = (
  { rounds, conditions }: Pick<RoomState, 'rounds' | 'conditions'>,
  team: Pick<Team, 'id' | 'berth'>,
): DrawnIn => ({
  variant: variantFor(rounds.at(-1), team),
  weather: ownOf(conditions, team.id).weather ?? conditions.weather,
});
