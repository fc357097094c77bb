import type { Millis } from '../../shared/geometry/units.ts';
import type { RoomState, TeamId } from '../../shared/room/state.ts';
import type { Doing, Welcome, WireRefusal, Work } from '../../shared/wire/protocol.ts';
import type { StageClock } from '../../shared/wire/stage.ts';

/** How the link stands. Each state has only its own fields. */
export type LinkStatus =
  /** No welcome yet since the page was opened. */
  | { readonly kind: 'connecting' }
  | { readonly kind: 'live' }
  /** It was live and dropped; the room on the page is the last one known. Tries again by itself. */
  | { readonly kind: 'away'; readonly since: Millis }
  /** The seat is open in a newer tab. Only `takeOver` makes it live again. */
  | { readonly kind: 'quiet' }
  /** The server does not know this seat or room, or speaks another version. Tries again by itself. */
  | { readonly kind: 'refused'; readonly refusal: WireRefusal };

export type You = Extract<Welcome, { ok: true }>['you'];

/** What a browser may keep of a room, to show it while no server answers. */
export interface Kept {
  readonly room: RoomState;
  readonly you: You;
  readonly clockOffset: number;
}

export type Draft = { readonly round: number } & Work;

/** Everything that a page shows of the room. A new object with every change; parts that stay are the same. */
export interface LinkState {
  readonly status: LinkStatus;
  readonly room: RoomState | null;
  /** When the last event of the room was, by the server; null where that is not known. */
  readonly lastAt: Millis | null;
  /** So many events that this page had seen of the room the server has no more. */
  readonly lost: number;
  readonly you: You | null;
  /** Server time minus the page's own clock, ms. */
  readonly clockOffset: number;
  /** Newest drafts and doings that this seat may see, by team. */
  readonly drafts: Readonly<Record<TeamId, Draft>>;
  readonly doings: Readonly<Record<TeamId, Doing>>;
  readonly stageClock: StageClock | null;
  /** Commands that have no answer yet. */
  readonly waiting: number;
  /** Those of them that hand something in. */
  readonly handingIn: number;
  /** Why this page's newest draft was not sent; null: it was, or waits for the link. */
  readonly draftRefusal: WireRefusal | null;
}

export const FIRST_STATE: LinkState = {
  status: { kind: 'connecting' },
  room: null,
  lastAt: null,
  lost: 0,
  you: null,
  clockOffset: 0,
  drafts: {},
  doings: {},
  stageClock: null,
  waiting: 0,
  handingIn: 0,
  draftRefusal: null,
};
