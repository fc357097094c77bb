import type { RoomId, TeamId } from '../../shared/room/state.ts';
import type { Handshake, LatestDown } from '../../shared/wire/protocol.ts';

/**
 * What server processes on one store tell one another. The store alone says what is true; news wake the
 * others, which then read. News may be lost with the line or with a process, never half.
 */
export type News =
  /** Events of a room up to `seq` are in the log. */
  | { readonly kind: 'events'; readonly room: RoomId; readonly seq: number }
  | { readonly kind: 'opened'; readonly room: RoomId }
  /** A room is to be erased. */
  | { readonly kind: 'hidden'; readonly room: RoomId }
  | { readonly kind: 'revoked'; readonly link: string }
  /** A small newest value itself: what a team is doing, the stage's clock. */
  | { readonly kind: 'latest'; readonly room: RoomId; readonly value: LatestDown }
  /** The newest value of this key may be any size: it is kept beside the log, read it there. */
  | { readonly kind: 'kept'; readonly room: RoomId; readonly key: string }
  /** A tablet of this team has just sat down at the process that says so. */
  | { readonly kind: 'sits'; readonly room: RoomId; readonly team: TeamId; readonly tab: Handshake['tab'] }
  /** Which teams of this room sit elsewhere, and what are they doing? */
  | { readonly kind: 'who'; readonly room: RoomId };

export type ProcessId = string;

export interface NewsListener {
  readonly news: (news: News, from: ProcessId) => void;
  /** The line has just been made, or made again: anything may have been missed before. */
  readonly missed: () => void;
  /** That process has ended or fallen silent. */
  readonly gone: (process: ProcessId) => void;
  /** Rooms that this process has at hand: whether they are current is looked at now and then. */
  readonly rooms: () => readonly RoomId[];
}

export interface Neighbours {
  /** No other process uses this store. */
  readonly alone: boolean;
  /** Returns at once. Of news with the same key only the newest is sent, as soon as the line stands. */
  tell(news: News): void;
  /** Names who hears. Call once. */
  hear(listener: NewsListener): void;
  close(): Promise<void>;
}

/** News with the same key replace one another. */
export function newsKey(news: News): string {
  switch (news.kind) {
    case 'latest':
      return `latest ${news.room} ${news.value.kind === 'stage-clock' ? '' : news.value.team} ${news.value.kind}`;
    case 'kept':
      return `kept ${news.room} ${news.key}`;
    case 'revoked':
      return `revoked ${news.link}`;
    case 'sits':
      return `sits ${news.room} ${news.team}`;
    default:
      return `${news.kind} ${news.room}`;
  }
}

/** One process with a store of its own. */
export const ALONE: Neighbours = {
  alone: true,
  tell: () => undefined,
  hear: () => undefined,
  close: async () => undefined,
};
