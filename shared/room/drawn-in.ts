import type { DrawnIn, Variant } from '../documents/challenge.ts';
import { type OwnSheet, ownOf } from './conditions.ts';
import type { RoomState, Round, Team } from './state.ts';

/** On which sheet and in which weather a team draws. */

const VARIANT_OF_BERTH: readonly (Variant | null)[] = [null, 'mirrored', 'turned'];

/** Which variant of a round's sheet a berth has; null: as it is. No two berths side by side have the same. */
export const variantFor = (round: Round | undefined, { berth }: Pick<Team, 'berth'>): Variant | null =>
  round?.varied ? VARIANT_OF_BERTH[(berth - 1) % VARIANT_OF_BERTH.length]! : null;

/** The same for a team with this sheet of its own, or with none. */
export const variantOn = (
  sheet: OwnSheet | null,
  round: Round | undefined,
  team: Pick<Team, 'berth'>,
): Variant | null => (sheet === null ? variantFor(round, team) : sheet === 'as-drawn' ? null : sheet);

/** In what a team draws the current round. An entry keeps it. */
export const conditionsFor = (
  { rounds, conditions }: Pick<RoomState, 'rounds' | 'conditions'>,
  team: Pick<Team, 'id' | 'berth'>,
): DrawnIn => {
  const { weather, sheet } = ownOf(conditions, team.id);
  return { variant: variantOn(sheet, rounds.at(-1), team), weather: weather ?? conditions.weather };
};

/** Whether a team has, or had before in this round, the sheet that something was drawn on. */
export function hasHad(
  { rounds, conditions }: Pick<RoomState, 'rounds' | 'conditions'>,
  team: Pick<Team, 'id' | 'berth'>,
  variant: Variant | null,
): boolean {
  const { sheet, earlier } = ownOf(conditions, team.id);
  return [sheet, ...earlier].some((one) => variantOn(one, rounds.at(-1), team) === variant);
}
