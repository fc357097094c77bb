import type { Millis } from '../geometry/units.ts';
import type { RoomId } from '../room/state.ts';

/** What desks and the server tell one another over HTTP: rooms as a whole, links, codes of seats. */

/** What gives a team's seat to another tablet, once. It is typed in place of the room word, or scanned. */
export interface SeatCode {
  readonly code: string;
  readonly until: Millis;
  /** The picture of its QR code, as a data address. */
  readonly qr: string;
}

/** One room of a server, as the owner's list shows it. */
export interface RoomInList {
  readonly room: RoomId;
  readonly word: string;
  readonly openedAt: Millis;
  /** When it is erased by itself unless somebody uses it; null: never. */
  readonly erasedOn: Millis | null;
  /** Whether this desk may erase it and give links to it away. */
  readonly managed: boolean;
}

/** How long a destructive act can be taken back, ms. */
export const UNDO_MS = 10_000;

/** A room that is no more: nothing of it is kept but this line, for some weeks. */
export interface ErasedRoom {
  readonly room: RoomId;
  readonly word: string;
  readonly openedAt: Millis;
  readonly at: Millis;
  readonly why: 'desk' | 'age';
}

/** Something that a desk has made for itself and keeps across rooms. */
export interface Shelved {
  /** Of the desk's choice. */
  readonly id: string;
  readonly savedAt: Millis;
  /** In its file form. */
  readonly body: unknown;
}

export interface DeskAccess {
  readonly kind: 'owner' | 'desk' | 'room' | 'none';
  /** The one room of a link to a room. */
  readonly room: RoomId | null;
}

/** A link that owner or desk has given away. The secret itself is shown once, when it is made. */
export interface LinkInList {
  readonly id: string;
  /** A desk of one's own, or the desk of one room. */
  readonly kind: 'desk' | 'room';
  /** A plain word to tell links apart; nobody types a name. */
  readonly word: string;
  readonly room: RoomId | null;
  readonly madeAt: Millis;
  readonly revokedAt: Millis | null;
}
export type LinkAsked = { readonly kind: 'desk' } | { readonly kind: 'room'; readonly room: RoomId };
export interface MadeLink {
  readonly link: LinkInList;
  readonly address: string;
}
