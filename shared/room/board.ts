import type { Variant } from '../documents/challenge.ts';
import type { Weather } from '../documents/outlook.ts';
import type { Millis } from '../geometry/units.ts';

/**
 * What the desk has the board show beside the lesson's own scene, and how. Desk and board know it, teams
 * don't. Ids are those of `state.ts`.
 */

/** The scenes that can be chosen, in the order of the lesson. */
export const BOARD_SCENES = [
  'wall',
  'brief',
  'building',
  'stage',
  'gallery',
  'fleet',
  'forecast',
  'closing',
] as const;
export type BoardScene = (typeof BOARD_SCENES)[number];

/** What is off until the desk turns it on: the dark ground, tones, and a picture that stands still. */
export const BOARD_SETTINGS = ['dark', 'sound', 'still'] as const;
export type BoardSetting = (typeof BOARD_SETTINGS)[number];

export const BOARD_LIMITS = {
  /** Drawings on one page of the gallery. */
  gallery: 12,
  /** Answers to a question about a mark, and hands for one of them. */
  answers: 6,
  hands: 200,
  /** Marks at which a drive may stop. */
  stops: 200,
  /** Robots or caps that are counted. */
  counted: 500,
} as const;

/** An entry with its drawing, so that a board may read it. */
export interface Hung {
  readonly entry: string;
  readonly design: string;
  /** Of its sheet, in a board's copy: of an entry that has not been staged it does not know that. */
  readonly variant?: Variant | null | undefined;
}

/** Twenty disturbed robots on one drawing; `since` is the server's time, so that once more is once more. */
export interface Fleet extends Hung {
  readonly weather: Weather;
  readonly since: Millis;
}

/** A drive that stops before each mark, while the class foretells what the mark says. */
export interface Forecast {
  /** null: what the challenge itself gives. */
  readonly hung: Hung | null;
  /** How many marks the class has let it drive over, and the server's time of the last time. */
  readonly passed: number;
  readonly since: Millis;
  /** For each mark, hands for each answer in the order of the answers. Evidence, never ranked. */
  readonly hands: readonly (readonly number[])[];
}

/** So many of so many. */
export interface Counted {
  readonly there: number;
  readonly of: number;
}

export interface BoardState extends Readonly<Record<BoardSetting, boolean>> {
  /** null: the scene of the lesson. A new step of the lesson goes back to that. */
  readonly scene: BoardScene | null;
  readonly gallery: readonly Hung[];
  readonly fleet: Fleet | null;
  readonly forecast: Forecast | null;
  /** Counted at the end; null: not yet. */
  readonly robots: Counted | null;
  readonly caps: Counted | null;
}

export const FIRST_BOARD: BoardState = {
  scene: null,
  dark: false,
  sound: false,
  still: false,
  gallery: [],
  fleet: null,
  forecast: null,
  robots: null,
  caps: null,
};

export type BoardCommand =
  | { readonly kind: 'show-scene'; readonly scene: BoardScene | null }
  | { readonly kind: 'set-board'; readonly setting: BoardSetting; readonly on: boolean }
  | { readonly kind: 'hang'; readonly entries: readonly string[] }
  | { readonly kind: 'show-fleet'; readonly entry: string; readonly weather: Weather }
  /** `entry` null: over what the challenge itself gives. */
  | { readonly kind: 'foretell'; readonly entry: string | null }
  /** Lets it drive until it stands before the mark after `passed` others. */
  | { readonly kind: 'drive-on'; readonly passed: number }
  /** Hands for the answers about the mark at which the drive stands. */
  | { readonly kind: 'count-hands'; readonly stop: number; readonly hands: readonly number[] }
  | { readonly kind: 'count-back'; readonly what: 'robots' | 'caps'; readonly counted: Counted | null };

export type BoardFact =
  | { readonly kind: 'scene-shown'; readonly scene: BoardScene | null }
  | { readonly kind: 'board-set'; readonly setting: BoardSetting; readonly on: boolean }
  | { readonly kind: 'hung'; readonly drawings: readonly Hung[] }
  | { readonly kind: 'fleet-shown'; readonly drawing: Hung; readonly weather: Weather }
  | { readonly kind: 'foretold'; readonly drawing: Hung | null }
  | { readonly kind: 'driven-on'; readonly passed: number }
  | { readonly kind: 'hands-counted'; readonly stop: number; readonly hands: readonly number[] }
  | { readonly kind: 'counted-back'; readonly what: 'robots' | 'caps'; readonly counted: Counted | null };
