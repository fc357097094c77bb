import * as z from 'zod/mini';

/** What a team taps before a run: whether the robot makes it. */
export const GUESSES = ['makes-it', 'fails', 'not-sure'] as const;
export const Guess = z.enum(GUESSES);
export type Guess = (typeof GUESSES)[number];

/** What may be asked next of a drawing that meets its challenge. */
export type NextKind = 'fewer-marks' | 'other-end' | 'storm';

/** Why a run went as it went, as the engine knows it. */
export const TRUE_REASONS = [
  'no-line-in-berth',
  'line-lost',
  'line-ends',
  'off-paper',
  'time-up',
  'mark-overlooked',
  'mark-unknown',
  'left-to-luck',
  'taken-for-junction',
  'met-from-behind',
  'falls-short',
  'all-as-drawn',
  /** Of a real robot: robots that are a little different leave the line there in the model too. */
  'some-robots-stray',
] as const;

/** Mistakes that children are known to make about such robots: none of them is ever true of one. */
export const MISTAKEN_REASONS = [
  'sees-the-sheet',
  'knows-the-wish',
  'acts-at-once',
  'same-from-both-sides',
  'first-colour-counts',
  'shortest-way',
  'got-tired',
] as const;

export const REASONS = [...TRUE_REASONS, ...MISTAKEN_REASONS] as const;
export const Reason = z.enum(REASONS);
export const isMistaken = (reason: Reason): reason is MistakenReason =>
  MISTAKEN_REASONS.some((one) => one === reason);

export type TrueReason = (typeof TRUE_REASONS)[number];
export type MistakenReason = (typeof MISTAKEN_REASONS)[number];
export type Reason = (typeof REASONS)[number];
