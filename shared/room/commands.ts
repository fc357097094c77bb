import type { Variant } from '../documents/challenge.ts';
import type { ClosingKey } from '../documents/closing-check.ts';
import type { BoardCommand } from './board.ts';
import type { CalibrationCommand } from './calibration.ts';
import type { HelpStep, NoteWords, ReturnReason } from './coaching.ts';
import type { ConditionsCommand } from './conditions.ts';
import type { DrivingCommand } from './driving.ts';
import type {
  Because,
  CheckAnswer,
  DocumentId,
  EntryId,
  EntryVerdict,
  Phase,
  Round,
  TeamId,
  Try,
  WallWish,
} from './state.ts';

/**
 * What a seat asks for, after the server has checked its form and stored nothing yet. Bodies have
 * been turned into document ids, so that deciding stays pure.
 */
export type RoomCommand =
  | BoardCommand
  | CalibrationCommand
  | ConditionsCommand
  | DrivingCommand
  | { readonly kind: 'watch-charger' }
  /** `before`: the team that this tablet was in the lesson from which this one goes on. */
  | { readonly kind: 'join'; readonly team: TeamId; readonly before?: TeamId | undefined }
  | { readonly kind: 'swap-emblem'; readonly emblem: string }
  | { readonly kind: 'remove-team'; readonly team: TeamId }
  | { readonly kind: 'put-back-team'; readonly team: TeamId }
  /** Has the team's tablet rest, so that another one can take the seat. */
  | { readonly kind: 'free-seat'; readonly team: TeamId }
  /** Takes that back, as long as no other tablet has come. */
  | { readonly kind: 'keep-seat'; readonly team: TeamId }
  /** By the server only: another tablet has come with the desk's leave. */
  | { readonly kind: 'move-seat'; readonly team: TeamId }
  /** `kit` null: the demo kit again, with which every room begins. */
  | { readonly kind: 'choose-kit'; readonly kit: DocumentId | null }
  | ({ readonly kind: 'choose-challenge' } & Omit<Round, 'varied'>)
  /** `place` from 0, the end where it is beyond that; null takes it off. */
  | { readonly kind: 'queue-challenge'; readonly key: string; readonly place: number | null }
  /** Whether neighbours get mirrored or turned sheets. Not once teams have built in this round. */
  | { readonly kind: 'vary-sheets'; readonly on: boolean }
  | { readonly kind: 'go-to'; readonly phase: Phase }
  /** `seconds` null: without a time limit. */
  | { readonly kind: 'start-building'; readonly seconds: number | null }
  | { readonly kind: 'extend-building'; readonly seconds: number }
  | { readonly kind: 'end-building' }
  | { readonly kind: 'look-here'; readonly on: boolean }
  | { readonly kind: 'pause'; readonly on: boolean }
  | { readonly kind: 'show-standings'; readonly on: boolean }
  /** For the class, or for one team; of a team, null is the class's step. */
  | { readonly kind: 'set-help'; readonly team: null; readonly step: HelpStep }
  | { readonly kind: 'set-help'; readonly team: TeamId; readonly step: HelpStep | null }
  | { readonly kind: 'wish-wall'; readonly wish: WallWish }
  | ({ readonly kind: 'try' } & Omit<Try, 'team' | 'because'>)
  /** Of the last try in this round. */
  | ({ readonly kind: 'explain'; readonly round: number } & Because)
  | { readonly kind: 'mend'; readonly round: number }
  | { readonly kind: 'send-note'; readonly team: TeamId; readonly words: NoteWords }
  | { readonly kind: 'put-note-away'; readonly note: number }
  | { readonly kind: 'take-note-back'; readonly note: number }
  | { readonly kind: 'set-gentler'; readonly team: TeamId; readonly on: boolean }
  | { readonly kind: 'return-entry'; readonly entry: EntryId; readonly reason: ReturnReason }
  | { readonly kind: 'accept-entry'; readonly entry: EntryId }
  | { readonly kind: 'stage'; readonly entries: readonly EntryId[] }
  /** `round` is the one the design was drawn for, `variant` its sheet, where the tablet has said so. */
  | {
      readonly kind: 'hand-in';
      readonly round: number;
      readonly entry: EntryId;
      readonly design: DocumentId;
      readonly variant?: Variant | null | undefined;
    }
  /** Has late entries count, or not. */
  | { readonly kind: 'take-late'; readonly entries: readonly EntryId[]; readonly on: boolean }
  /** Has an entry judged once more on which the judge has failed. */
  | { readonly kind: 'judge-again'; readonly entry: EntryId }
  | { readonly kind: 'start-check'; readonly check: DocumentId; readonly key: ClosingKey }
  /** `check`: which of the room's checks is meant, from 0. */
  | ({ readonly kind: 'answer-check'; readonly check: number } & Omit<CheckAnswer, 'team'>)
  /** What a team has answered on paper. */
  | ({ readonly kind: 'note-answer'; readonly check: number } & CheckAnswer)
  | { readonly kind: 'end-check' }
  /** Takes the end back. */
  | { readonly kind: 'resume-check' }
  | { readonly kind: 'show-check'; readonly on: boolean }
  /** By the server only. */
  | { readonly kind: 'give-up-judging'; readonly entry: EntryId }
  | ({ readonly kind: 'judge'; readonly entry: EntryId } & EntryVerdict)
  | { readonly kind: 'time-is-up' };

/** Why a command was not carried out. The sentence is made by `shared/wording`. */
export type Refusal =
  | { readonly code: 'not-for-this-seat' }
  | { readonly code: 'not-now'; readonly phase: Phase }
  | { readonly code: 'room-full'; readonly most: number }
  | { readonly code: 'unknown-team' }
  /** The desk has taken this team out of the room. */
  | { readonly code: 'team-removed' }
  | { readonly code: 'emblem-taken' }
  | { readonly code: 'no-challenge' }
  | { readonly code: 'unknown-challenge'; readonly key: string }
  | { readonly code: 'other-round' }
  /** This was drawn on a sheet that the team has not had. */
  | { readonly code: 'other-sheet' }
  | { readonly code: 'unknown-entry'; readonly entry: string }
  | { readonly code: 'already-judged' }
  | { readonly code: 'not-building' }
  | { readonly code: 'already-so' }
  | { readonly code: 'not-judged' }
  | { readonly code: 'not-on-the-wall' }
  | { readonly code: 'unknown-trial' }
  | { readonly code: 'too-many-trials'; readonly most: number }
  /** Nothing has been chosen yet that this scene could show. */
  | { readonly code: 'nothing-to-show' }
  /** Nothing has been handed in that could be asked about. */
  | { readonly code: 'nothing-to-ask' }
  /** No closing check is asked now, or not this one. */
  | { readonly code: 'no-check' }
  | { readonly code: 'unknown-answer' }
  | { readonly code: 'too-many-on-stage'; readonly most: number }
  | { readonly code: 'queue-full'; readonly most: number };
