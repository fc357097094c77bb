import type { Variant } from '../documents/challenge.ts';
import type { ClosingKey } from '../documents/closing-check.ts';
import type { Millis } from '../geometry/units.ts';
import type { BoardFact } from './board.ts';
import type { CalibrationFact } from './calibration.ts';
import type { CoachingFact, HelpStep } from './coaching.ts';
import type { ConditionsFact } from './conditions.ts';
import type { DrivingFact } from './driving.ts';
import type { PlanFact } from './plan.ts';
import type {
  Because,
  CheckAnswer,
  CheckResult,
  DocumentId,
  EntryId,
  EntryVerdict,
  Phase,
  RoomId,
  Round,
  TeamId,
  Try,
  WallWish,
} from './state.ts';

/** What has happened. References only, never bodies. Version of the set: EVENT_VERSION. */
export const EVENT_VERSION = 2;

/** A verdict that a board gets to know. */
export type ToldVerdict = { readonly entry: EntryId } & EntryVerdict;

export type RoomFact =
  | BoardFact
  | DrivingFact
  | {
      readonly kind: 'opened';
      readonly room: RoomId;
      readonly word: string;
      readonly chargerWatched: boolean;
    }
  | { readonly kind: 'charger-watched' }
  | CalibrationFact
  | {
      readonly kind: 'team-joined';
      readonly team: TeamId;
      readonly emblem: string;
      /** Absent: the next free one. */
      readonly berth?: number | undefined;
    }
  /** Another emblem, by the team's own wish. */
  | { readonly kind: 'emblem-changed'; readonly team: TeamId; readonly emblem: string }
  /** Out of the room, with its work kept; the desk may put it back. */
  | { readonly kind: 'team-removed'; readonly team: TeamId }
  | {
      readonly kind: 'team-put-back';
      readonly team: TeamId;
      /** Its own, unless another team has it now. */
      readonly emblem: string;
      readonly berth: number;
    }
  /** Its tablet must rest; another one may take the seat. */
  | { readonly kind: 'seat-freed'; readonly team: TeamId }
  /** The desk took that back. */
  | { readonly kind: 'seat-kept'; readonly team: TeamId }
  /** Another tablet has the seat now; earlier tokens of the team are void. */
  | { readonly kind: 'seat-moved'; readonly team: TeamId }
  /** `team` null: the class's. `step` null: the team's is the class's again. */
  | { readonly kind: 'help-set'; readonly team: TeamId | null; readonly step: HelpStep | null }
  | { readonly kind: 'wall-wished'; readonly team: TeamId; readonly wish: WallWish }
  | ({ readonly kind: 'tried' } & Omit<Try, 'because'>)
  /** Of the team's last try in that round. */
  | ({ readonly kind: 'explained'; readonly team: TeamId; readonly round: number } & Because)
  | { readonly kind: 'mended'; readonly team: TeamId; readonly round: number }
  /** `kit` null: the demo kit. */
  | { readonly kind: 'kit-chosen'; readonly kit: DocumentId | null }
  | ({ readonly kind: 'challenge-chosen' } & Omit<Round, 'varied'>)
  /** Neighbours get mirrored or turned sheets, or no longer: for rounds in which nobody has built yet. */
  | { readonly kind: 'sheets-varied'; readonly on: boolean }
  | { readonly kind: 'phase-changed'; readonly phase: Phase }
  | { readonly kind: 'building-started'; readonly until: Millis | null }
  | { readonly kind: 'building-extended'; readonly until: Millis }
  | { readonly kind: 'building-ended'; readonly by: 'desk' | 'time' }
  | { readonly kind: 'look-here'; readonly on: boolean }
  /** All tablets rest and time stands still. */
  | { readonly kind: 'paused' }
  /** Time goes on; what was due is due so many ms later. */
  | { readonly kind: 'resumed'; readonly after: Millis }
  | {
      readonly kind: 'standings-shown';
      readonly on: boolean;
      /** Those that the board has not known before; empty in a team's copy. */
      readonly verdicts: readonly ToldVerdict[];
    }
  | {
      readonly kind: 'handed-in';
      readonly entry: EntryId;
      readonly team: TeamId;
      /** null in the copy of a seat that may not see it. */
      readonly design: DocumentId | null;
      readonly late: boolean;
      /** Whether it counts from the start. Absent: from a time when late ones did too. */
      readonly taken?: boolean | undefined;
      /** Of its sheet. Absent where the tablet has not said so, and in the copy of a seat that may not see it. */
      readonly variant?: Variant | null | undefined;
    }
  /** The desk has these late entries count, or no longer. */
  | { readonly kind: 'late-taken'; readonly entries: readonly EntryId[]; readonly on: boolean }
  | ({
      readonly kind: 'judged';
      /** Whether the board knows it at once. */
      readonly counted: boolean;
    } & ToldVerdict)
  /** The judge has failed on this entry as often as it is tried. */
  | { readonly kind: 'not-judged'; readonly entry: EntryId }
  /** The desk wants it judged once more. */
  | { readonly kind: 'judging-again'; readonly entry: EntryId }
  | {
      readonly kind: 'staged';
      readonly entries: readonly EntryId[];
      readonly designs: readonly DocumentId[];
      /** Those of the entries; empty in a team's copy. */
      readonly verdicts: readonly ToldVerdict[];
      /** Their sheets, in the copies of seats that have not known them before. */
      readonly variants?: readonly (Variant | null)[] | undefined;
    }
  /** At the closing the board learns how all entries did. */
  | { readonly kind: 'verdicts-told'; readonly verdicts: readonly ToldVerdict[] }
  /** `key` null in the copy of a seat that may not know yet what is right. */
  | { readonly kind: 'check-started'; readonly check: DocumentId; readonly key: ClosingKey | null }
  /** Of the check that is asked; it takes the place of an earlier answer. */
  | ({ readonly kind: 'check-answered' } & CheckAnswer)
  | { readonly kind: 'check-ended'; readonly key: ClosingKey }
  /** The end was taken back. `key` null in the copy of a seat that must not know any longer what is right. */
  | { readonly kind: 'check-resumed'; readonly key: ClosingKey | null }
  /** On the board, or no longer. `result` null in a team's copy. */
  | { readonly kind: 'check-shown'; readonly result: CheckResult | null }
  | CoachingFact
  | ConditionsFact
  | PlanFact
  /** Stands where a damaged file has lost what happened. */
  | { readonly kind: 'lost' };

export interface RoomEvent {
  readonly seq: number;
  readonly at: Millis;
  readonly version: number;
  /** null where the seat that receives it may not see it; the number alone keeps the count whole. */
  readonly fact: RoomFact | null;
}

/** Who is looking or acting. */
export type Seat =
  | { readonly role: 'desk' }
  | { readonly role: 'board' }
  | { readonly role: 'team'; readonly team: TeamId }
  | { readonly role: 'server' };
