import { VARIANTS } from '../documents/challenge.ts';
import type { Weather } from '../documents/outlook.ts';
import type { TeamId } from './ids.ts';

/**
 * In which weather robots are driven, where the desk has said so, for the class and for single teams; and on which
 * sheet single teams draw. It is said of a round and ends with it. What is said of a team is known to it and the desk
 * alone: from outside it looks like any other.
 */

/** The sheets that a team may be given, whatever its berth has. */
export const OWN_SHEETS = ['as-drawn', ...VARIANTS] as const;
export type OwnSheet = (typeof OWN_SHEETS)[number];

export interface Conditions {
  /** null: what the challenge says. */
  readonly weather: Weather | null;
  readonly own: readonly OwnConditions[];
}

/** What differs from the class for one team. */
export interface OwnConditions {
  readonly team: TeamId;
  /** null: the class's. */
  readonly weather: Weather | null;
  /** null: that of its berth. */
  readonly sheet: OwnSheet | null;
  /** What it had before in this round: a tablet that was away may hand in what it drew on one of these. */
  readonly earlier: readonly (OwnSheet | null)[];
}

export const USUAL_CONDITIONS: Conditions = { weather: null, own: [] };

export type ConditionsCommand =
  /** `team` null: the class's. `weather` null: what the challenge says, or of a team the class's. */
  | { readonly kind: 'set-weather'; readonly team: TeamId | null; readonly weather: Weather | null }
  /** What the team has drawn goes with its sheet. */
  | { readonly kind: 'set-sheet'; readonly team: TeamId; readonly sheet: OwnSheet | null };

export type ConditionsFact =
  | { readonly kind: 'weather-set'; readonly team: TeamId | null; readonly weather: Weather | null }
  | { readonly kind: 'sheet-set'; readonly team: TeamId; readonly sheet: OwnSheet | null };

export const ownOf = ({ own }: Conditions, team: TeamId): OwnConditions =>
  own.find((one) => one.team === team) ?? { team, weather: null, sheet: null, earlier: [] };

/** What of it those know who know only some teams' part. */
export const conditionsTo = ({ weather, own }: Conditions, knows: (team: TeamId) => boolean): Conditions => ({
  weather,
  own: own.filter(({ team }) => knows(team)),
});
