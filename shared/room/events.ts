import type { Millis } from '../geometry/units.ts';
import type { DocumentId, EntryId, EntryVerdict, Phase, RoomId, TeamId } from './state.ts';

/** What has happened. References only, never bodies. Version of the set: EVENT_VERSION. */
export const EVENT_VERSION = 1;

export type RoomFact =
  | {
      readonly kind: 'opened';
      readonly room: RoomId;
      readonly word: string;
      readonly chargerWatched: boolean;
    }
  | { readonly kind: 'charger-watched' }
  | { readonly kind: 'team-joined'; readonly team: TeamId; readonly emblem: string }
  | { readonly kind: 'challenge-chosen'; readonly challenge: DocumentId; readonly key: string }
  | { readonly kind: 'phase-changed'; readonly phase: Phase }
  | { readonly kind: 'building-started'; readonly until: Millis | null }
  | { readonly kind: 'building-extended'; readonly until: Millis }
  | { readonly kind: 'building-ended'; readonly by: 'desk' | 'time' }
  | { readonly kind: 'look-here'; readonly on: boolean }
  | { readonly kind: 'standings-shown'; readonly on: boolean }
  | {
      readonly kind: 'handed-in';
      readonly entry: EntryId;
      readonly team: TeamId;
      /** null in the copy of a seat that may not see it. */
      readonly design: DocumentId | null;
      readonly late: boolean;
    }
  | ({ readonly kind: 'judged'; readonly entry: EntryId } & EntryVerdict)
  | {
      readonly kind: 'staged';
      readonly entries: readonly EntryId[];
      readonly designs: readonly DocumentId[];
    }
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
