import type { DocumentKind } from '../../shared/documents/kinds.ts';
import type { Millis } from '../../shared/geometry/units.ts';
import type { RoomEvent } from '../../shared/room/events.ts';
import type { DocumentId, RoomId, TeamId } from '../../shared/room/state.ts';
import type { Answer, CommandId } from '../../shared/wire/protocol.ts';

/**
 * Where rooms are kept. One append is one transaction: its events, documents, seats and the answers to
 * its commands stand together or not at all, and a resolved promise means that they outlive a crash.
 */

export interface StoredDocument {
  readonly id: DocumentId;
  readonly kind: DocumentKind;
  /** Canonical JSON of the file form; `id` is its hash. */
  readonly body: string;
}

export interface RoomRecord {
  readonly id: RoomId;
  readonly word: string;
  readonly openedAt: Millis;
}

/** A team's seat. Only the hash of its token is kept. */
export interface SeatRecord {
  readonly tokenHash: string;
  readonly room: RoomId;
  readonly team: TeamId;
}

export interface AnswerRecord {
  /** Whose command it was; ids of two seats do not meet. */
  readonly seat: string;
  readonly command: CommandId;
  readonly answer: Answer;
}

/** A newest value beside the log, as JSON. */
export interface LatestRecord {
  readonly key: string;
  readonly value: string;
}

/** What belongs to the server rather than to a room, as JSON: its links, what it has erased. */
export interface Values {
  value(key: string): Promise<string | undefined>;
  /** In the order of their keys. */
  values(prefix: string): Promise<LatestRecord[]>;
  setValue(key: string, value: string): Promise<'done' | 'full'>;
  /** Whether there was one: of many callers at once one hears true. */
  dropValue(key: string): Promise<boolean>;
}

export interface Append {
  readonly events: readonly RoomEvent[];
  readonly documents?: readonly StoredDocument[];
  readonly seats?: readonly SeatRecord[];
  /** Takes away all earlier seats of this team. */
  readonly freed?: TeamId;
  readonly answers?: readonly AnswerRecord[];
}

/**
 * `clash`: another event has one of these numbers; read on and decide again. `answered`: one of these
 * commands has an answer already. `full`: no space left. `gone`: there is no such room, or no longer. In all
 * four nothing was written.
 */
export type Appended = 'done' | 'clash' | 'answered' | 'full' | 'gone';

/** The store cannot be reached now. Whether what was asked of it was done is not known; ask again. */
export class StoreAway extends Error {
  readonly code: string = 'STORE_AWAY';
}

/** The same, until the server has been started again: its disk failed it, or its file is damaged. */
export class RestartNeeded extends StoreAway {
  override readonly code = 'RESTART_NEEDED';
}

/** What somebody is told whose request failed with `error`. */
export function troubleOf(error: unknown): {
  readonly code: 'store-away' | 'restart-needed' | 'server-trouble';
} {
  if (error instanceof RestartNeeded) return { code: 'restart-needed' };
  return { code: error instanceof StoreAway ? 'store-away' : 'server-trouble' };
}

/** All of it may reject with StoreAway: where the store is a database elsewhere, or a restart is needed. */
export interface EventLog extends Values {
  /** A new room with its first events; `taken` where its word or id is in use. */
  openRoom(room: RoomRecord, first: Append): Promise<'done' | 'taken' | 'full'>;
  /** Newest first. */
  rooms(): Promise<RoomRecord[]>;
  roomByWord(word: string): Promise<RoomRecord | undefined>;
  append(room: RoomId, parts: Append): Promise<Appended>;
  /** Resolves where the store answers and takes what is written. */
  check(): Promise<void>;
  /** Events with a number above `seq`, in order. */
  eventsAfter(room: RoomId, seq: number): Promise<RoomEvent[]>;
  document(room: RoomId, id: DocumentId): Promise<StoredDocument | undefined>;
  documents(room: RoomId): Promise<StoredDocument[]>;
  answer(room: RoomId, seat: string, command: CommandId): Promise<Answer | undefined>;
  seat(tokenHash: string): Promise<SeatRecord | undefined>;
  /** All newest values of a room, or those of some keys. */
  latest(room: RoomId, keys?: readonly string[]): Promise<LatestRecord[]>;
  /** Replaces the values of these keys; of a room that is gone none. May be lost in a crash, never half. */
  keepLatest(room: RoomId, values: readonly LatestRecord[]): Promise<void>;
  /** When each of these rooms was last used: opened here, or its last event. null: all rooms. */
  lastUsed(rooms: readonly RoomId[] | null): Promise<ReadonlyMap<RoomId, Millis>>;
  /** Removes everything of a room for good. */
  remove(room: RoomId): Promise<void>;
  close(): Promise<void>;
}
