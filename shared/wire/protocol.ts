import type { Variant } from '../documents/challenge.ts';
import type { DocumentKind } from '../documents/kinds.ts';
import type { KitProblemCode } from '../documents/refusal.ts';
import type { Millis } from '../geometry/units.ts';
import type { BoardCommand } from '../room/board.ts';
import type { CalibrationCommand } from '../room/calibration.ts';
import type { HelpStep, NoteWords, ReturnReason } from '../room/coaching.ts';
import type { Refusal } from '../room/commands.ts';
import type { ConditionsCommand } from '../room/conditions.ts';
import type { DrivingCommand } from '../room/driving.ts';
import type { RoomEvent } from '../room/events.ts';
import type {
  Because,
  CheckAnswer,
  DocumentId,
  Emblem,
  EntryId,
  Phase,
  RoomId,
  RoomState,
  TeamId,
  Try,
  WallWish,
} from '../room/state.ts';
import type { StageClock } from './stage.ts';

export { ROUTES } from './routes.ts';

/**
 * The protocol between pages and server: websocket transport only, JSON.
 *
 * client → server `command`   a ClientCommand; acknowledged with an Answer once it is durable
 * client → server `hello`     Hello; acknowledged with a Welcome (what was missed, or a snapshot)
 * client → server `fetch`     a document id; acknowledged with Fetched
 * client → server `latest`    a lossy value (LatestUp); no acknowledgement
 * server → client `events`    RoomEvent[], in order, without holes
 * server → client `latest`    LatestDown
 * server → client `quiet`     this seat is open in a newer tab; no argument
 * server → client `moved`     this page now belongs to another room: say hello again; no argument
 * server → client `ending`    Ending: this server is about to go; what it does not answer is asked again
 *
 * Cookies are read when the socket connects: a page that has just got its seat connects anew.
 * Every HTTP refusal is JSON: HttpRefusal.
 */
export const PROTOCOL_VERSION = 1;

/**
 * The handshake's `auth`. It only says which of this browser's seats is meant: who may sit there
 * comes from the cookie. `room` names a room; null is the seat's own, or the newest of this browser's desk,
 * or of all where one person opens all rooms.
 */
export interface Handshake {
  readonly page: 'desk' | 'board' | 'tablet';
  readonly room: RoomId | null;
  /**
   * Which tab this is, and the how manieth of its connections: an older one may come back to life after
   * a newer one has spoken. Absent: a program that connects once.
   */
  readonly tab?: { readonly id: string; readonly connection: number } | undefined;
}

export const LIMITS = {
  /** The largest message that the server reads, bytes: a command, or a lossy value. */
  messageBytes: 256_000,
  /** The same of what only names something: a handshake, a hello, a document. */
  shortMessageBytes: 2000,
  /** The largest drawing in its file form, bytes. */
  designBytes: 200_000,
  /** The largest kit in its file form, bytes. */
  kitBytes: 64_000,
  /** The same with earlier versions, as a desk keeps it; how many of these, and how many kits. */
  ownKitBytes: 300_000,
  earlierKits: 8,
  ownKits: 40,
  commandsPerSecond: 20,
  handInsPerMinute: 30,
  latestPerSecond: 30,
  fetchesPerSecond: 200,
  /** The largest challenge in its file form that a desk keeps, bytes; and how many it may keep. */
  challengeBytes: 400_000,
  ownChallenges: 60,
  /** Late entries that the desk takes in one command. */
  lateAtOnce: 500,
} as const;

/** Made by the client, at most 64 characters; a repeat gets the first answer. */
export type CommandId = string;

export type ClientAsk =
  | BoardCommand
  | CalibrationCommand
  | ConditionsCommand
  | DrivingCommand
  | { readonly kind: 'watch-charger' }
  /** `key` names a ready challenge of the library, or one that the room's desk has made. */
  | { readonly kind: 'choose-challenge'; readonly key: string }
  /** In its file form; it has to pass its checks. */
  | { readonly kind: 'choose-kit'; readonly kit: unknown }
  /** `place` from 0, the end where it is beyond that; null takes it off the queue. */
  | { readonly kind: 'queue-challenge'; readonly key: string; readonly place: number | null }
  | { readonly kind: 'vary-sheets'; readonly on: boolean }
  | { readonly kind: 'go-to'; readonly phase: Phase }
  | { readonly kind: 'start-building'; readonly seconds: number | null }
  | { readonly kind: 'extend-building'; readonly seconds: number }
  | { readonly kind: 'end-building' }
  | { readonly kind: 'look-here'; readonly on: boolean }
  | { readonly kind: 'pause'; readonly on: boolean }
  | { readonly kind: 'swap-emblem'; readonly emblem: Emblem }
  | { readonly kind: 'remove-team' | 'put-back-team' | 'free-seat' | 'keep-seat'; readonly team: TeamId }
  | { readonly kind: 'show-standings'; readonly on: boolean }
  | { readonly kind: 'stage'; readonly entries: readonly EntryId[] }
  /** For the class, or for one team; of a team, null is the class's step. */
  | { readonly kind: 'set-help'; readonly team: null; readonly step: HelpStep }
  | { readonly kind: 'set-help'; readonly team: TeamId; readonly step: HelpStep | null }
  | { readonly kind: 'wish-wall'; readonly wish: WallWish }
  | ({ readonly kind: 'try' } & Omit<Try, 'team' | 'because'>)
  | ({ readonly kind: 'explain'; readonly round: number } & Because)
  | { readonly kind: 'mend'; readonly round: number }
  | { readonly kind: 'take-late'; readonly entries: readonly EntryId[]; readonly on: boolean }
  /** With at most so many questions. */
  | { readonly kind: 'start-check'; readonly questions: number }
  | ({ readonly kind: 'answer-check'; readonly check: number } & Omit<CheckAnswer, 'team'>)
  | ({ readonly kind: 'note-answer'; readonly check: number } & CheckAnswer)
  | { readonly kind: 'end-check' | 'resume-check' }
  | { readonly kind: 'show-check'; readonly on: boolean }
  | { readonly kind: 'judge-again' | 'accept-entry'; readonly entry: EntryId }
  | { readonly kind: 'return-entry'; readonly entry: EntryId; readonly reason: ReturnReason }
  | { readonly kind: 'send-note'; readonly team: TeamId; readonly words: NoteWords }
  /** By the team; by the desk. */
  | { readonly kind: 'put-note-away' | 'take-note-back'; readonly note: number }
  | { readonly kind: 'set-gentler'; readonly team: TeamId; readonly on: boolean }
  /** `design` in its file form, and on which sheet it was drawn. */
  | {
      readonly kind: 'hand-in';
      readonly round: number;
      readonly design: unknown;
      readonly variant?: Variant | null | undefined;
    }
  /** Where the challenge is predicted; `answers` in their file form. */
  | { readonly kind: 'hand-in-answers'; readonly round: number; readonly answers: unknown };

export interface ClientCommand {
  readonly version: number;
  readonly id: CommandId;
  readonly ask: ClientAsk;
}

export type WireRefusal =
  | Refusal
  | { readonly code: 'bad-form'; readonly path: string; readonly problem: string }
  | { readonly code: 'too-large'; readonly bytes: number; readonly most: number }
  | { readonly code: 'too-fast' }
  | { readonly code: 'other-version'; readonly ours: number }
  | { readonly code: 'no-seat' }
  | { readonly code: 'other-site' }
  /** The desk has had this seat's tablet rest. */
  | { readonly code: 'seat-freed' }
  | { readonly code: 'unknown-room' }
  /** Several people open rooms here: a page that is no desk's has to say which one it means. */
  | { readonly code: 'no-room-named' }
  | { readonly code: 'unknown-document' }
  | { readonly code: 'unknown-page' }
  | { readonly code: 'wrong-key' }
  /** A kit's checks find something wrong: the first thing, its place, and how many more. */
  | {
      readonly code: 'kit-not-sound';
      readonly problem: KitProblemCode;
      readonly path: string;
      readonly more: number;
    }
  | { readonly code: 'cannot-print'; readonly why: CannotPrint }
  /** The code of a seat is used up, too old, or was never given. */
  | { readonly code: 'wrong-code' }
  | { readonly code: 'unknown-link' }
  /** This desk has saved as many as it may, or what it means is not there. */
  | { readonly code: 'shelf-full'; readonly most: number }
  | { readonly code: 'not-on-shelf' }
  | { readonly code: 'store-full' }
  /** The store cannot be reached. Whether it was done is not known: send the same id again. */
  | { readonly code: 'store-away' }
  /** Nothing can be kept, or the room cannot be read, until the server has been started again. */
  | { readonly code: 'restart-needed' }
  | { readonly code: 'server-trouble' };

/** Why there is nothing to put on paper. */
export type CannotPrint =
  | 'no-challenge'
  | 'no-drawing'
  /** Questions: nothing is drawn, no robot comes from the other end, no fault makes it fail. */
  | 'nothing-drawn'
  | 'one-end'
  | 'no-fault'
  /** A closing check: its questions are made when they are asked. */
  | 'not-asked'
  | 'no-page';

export type Answer =
  | { readonly ok: true; readonly seq: number }
  | { readonly ok: false; readonly refusal: WireRefusal };

/** The body of every HTTP answer that refuses. */
export interface HttpRefusal {
  readonly refusal: WireRefusal;
}

export interface Hello {
  readonly version: number;
  /** The room that `seq` counts in, as an earlier Welcome named it; null for none. */
  readonly room: RoomId | null;
  /** The last event that this page has; 0 for none. */
  readonly seq: number;
  /**
   * When that event was. Where a store has lost its end, other events have got its numbers: then the page
   * gets everything anew. Absent: not known.
   */
  readonly at?: Millis | undefined;
}

export type Welcome =
  | {
      readonly ok: true;
      readonly room: RoomId;
      readonly you: { readonly role: 'desk' | 'board' } | { readonly role: 'team'; readonly team: TeamId };
      /** Server time now, for showing time by offset. */
      readonly now: Millis;
      /** Either the missing events, or a whole state that replaces the page's own. */
      readonly events: readonly RoomEvent[];
      readonly snapshot: RoomState | null;
      /** When the newest event was that the page now has. */
      readonly at: Millis;
      /** Newest lossy values that this seat may see. */
      readonly latest: readonly LatestDown[];
    }
  | { readonly ok: false; readonly refusal: WireRefusal };

export type Fetched =
  | { readonly ok: true; readonly kind: DocumentKind; readonly body: unknown }
  | { readonly ok: false; readonly refusal: WireRefusal };

/** How long pages may take to come back, spread over it so that they don't come all at once, ms. */
export interface Ending {
  readonly within: number;
}

/** What a team is doing, as one word on the board. */
export type Doing = 'drawing' | 'answering' | 'trying' | 'handed-in' | 'away';

/** What a team has at work, in its file form: a drawing and its sheet, or where the challenge is predicted answers. */
export type Work =
  | { readonly design: unknown; readonly variant?: Variant | null | undefined; readonly answers?: undefined }
  | { readonly answers: unknown; readonly design?: undefined; readonly variant?: undefined };

export type LatestUp =
  | ({ readonly kind: 'draft'; readonly round: number } & Work)
  | { readonly kind: 'doing'; readonly doing: Doing }
  | { readonly kind: 'stage-clock'; readonly clock: Omit<StageClock, 'since'> };

export type LatestDown =
  | ({ readonly kind: 'draft'; readonly team: TeamId; readonly round: number } & Work)
  | { readonly kind: 'doing'; readonly team: TeamId; readonly doing: Doing }
  | { readonly kind: 'stage-clock'; readonly clock: StageClock };

export interface JoinAddress {
  readonly address: string;
  /** What the system calls the network; empty where an address was given from outside. */
  readonly network: string;
}

export interface JoinAddresses {
  /** As the QR code carries it. */
  readonly join: string;
  /** Set from outside: the desk has no choice. */
  readonly fixed: boolean;
  readonly all: readonly JoinAddress[];
}

/** What a device measured of its way to the server. */
export interface CheckReport {
  /** Median of some short questions, ms. */
  readonly roundTripMs: number;
  /** How long the bytes of a tablet's page took, ms. */
  readonly pageMs: number;
  /** Whether a websocket came through. */
  readonly live: boolean;
}

export interface Arrivals {
  /** Visits from other devices since the server started. */
  readonly visits: number;
  /** How long ago the last one was, ms. */
  readonly lastAgo: number | null;
  readonly check: (CheckReport & { readonly ago: number }) | null;
}

export type { DocumentId };
