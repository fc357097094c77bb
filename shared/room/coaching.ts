import type { Variant } from '../documents/challenge.ts';
import type { Millis } from '../geometry/units.ts';
import type { EntryId, TeamId } from './ids.ts';

/**
 * What the desk says to single teams, how they are helped, and in which form they get a challenge. Desk and team know it,
 * nobody else does: from outside a team that is helped looks like any other.
 */

/** How much a tablet helps: each step gives what the one before gives, and more. */
export const HELP_STEPS = ['after-try', 'place', 'sentence', 'mend'] as const;
export type HelpStep = (typeof HELP_STEPS)[number];
export const USUAL_HELP: HelpStep = 'mend';

/** Ready-made hints; each language has a sentence for each. */
export const HINTS = [
  'follow-the-line',
  'one-goal',
  'try-it',
  'chart-again',
  'which-side',
  'acts-later',
  'room-for-marks',
  'round-corners',
  'pass-it-on',
  'call-us',
] as const;
export type Hint = (typeof HINTS)[number];

/** Why an entry is given back. */
export const RETURN_REASONS = ['by-mistake', 'not-finished', 'goals-again', 'talk-first'] as const;
export type ReturnReason = (typeof RETURN_REASONS)[number];

/** The longest note that a desk may write, in characters. */
export const LONGEST_NOTE = 160;

export type NoteWords =
  | { readonly kind: 'hint'; readonly hint: Hint }
  | { readonly kind: 'text'; readonly text: string };

export interface Note {
  /** Number of the event that brought it. */
  readonly number: number;
  readonly team: TeamId;
  /** Of the challenge that was being played; -1 before the first. */
  readonly round: number;
  readonly at: Millis;
  readonly words:
    | NoteWords
    | { readonly kind: 'returned'; readonly entry: EntryId; readonly reason: ReturnReason }
    /** Its sheet is this one now, and its drawing has come along. */
    | { readonly kind: 'sheet'; readonly variant: Variant | null };
  /** The team has put it away. */
  readonly away: boolean;
}

export interface Coaching {
  readonly notes: readonly Note[];
  /** Teams that get the lines where others draw them, and put in the marks. */
  readonly gentler: readonly TeamId[];
}

export const NO_COACHING: Coaching = { notes: [], gentler: [] };

export type CoachingFact =
  | {
      readonly kind: 'note-sent';
      readonly note: number;
      readonly team: TeamId;
      readonly words: Note['words'];
    }
  | { readonly kind: 'note-put-away'; readonly note: number; readonly team: TeamId }
  /** By the desk, before the team has put it away or after. */
  | { readonly kind: 'note-taken-back'; readonly note: number; readonly team: TeamId }
  | { readonly kind: 'gentler-set'; readonly team: TeamId; readonly on: boolean }
  /** The entry counts no longer, and the team may hand in another one. */
  | { readonly kind: 'entry-returned'; readonly entry: EntryId }
  | { readonly kind: 'entry-accepted'; readonly entry: EntryId };

/** What of it is still so in the next round: what nobody has read of a sheet was about the one before. */
export const inNextRound = ({ notes, gentler }: Coaching): Coaching => ({
  notes: notes.filter(({ words, away }) => away || words.kind !== 'sheet'),
  gentler,
});

/** What of it those know who know only some teams' part. */
export const coachingOf = ({ notes, gentler }: Coaching, knows: (team: TeamId) => boolean): Coaching => ({
  notes: notes.filter(({ team }) => knows(team)),
  gentler: gentler.filter(knows),
});
