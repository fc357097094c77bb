import type { RoomEvent } from '../../shared/room/events.ts';
import type { RoomId, TeamId } from '../../shared/room/state.ts';
import type { Handshake, LatestDown } from '../../shared/wire/protocol.ts';
import type { LiveRoom } from './live-room.ts';
import type { Newest } from './newest.ts';

/** A room as this process has it at hand. */
export interface OpenRoom {
  readonly room: LiveRoom;
  readonly newest: Newest;
}

/** The pages of this process, as rooms speak to them. The sockets listen; a test may listen too. */
export interface Outlet {
  readonly events: (room: LiveRoom, events: readonly RoomEvent[]) => void;
  /** A room was opened: pages that follow the newest one move. */
  readonly opened: () => void;
  /** This room is to be erased: everybody leaves. */
  readonly hidden: (room: RoomId) => void;
  /** This link opens no desk any longer: those that sit by it are closed. */
  readonly revoked: (link: string) => void;
  /** Links may have been revoked without a word: desks are looked at anew. */
  readonly checkLinks: () => Promise<void>;
  /** A newest value of another process, for those here who may have it. */
  readonly latest: (open: OpenRoom, value: LatestDown) => void;
  /** A tablet of this team has sat down at another process: those here rest. */
  readonly rest: (open: OpenRoom, team: TeamId, tab: Handshake['tab']) => void;
  /** Whether any page is in this room. */
  readonly isIn: (room: RoomId) => boolean;
  /** The teams whose tablet is here. */
  readonly teamsIn: (open: OpenRoom) => readonly TeamId[];
}

export const NOBODY: Outlet = {
  events: () => undefined,
  opened: () => undefined,
  hidden: () => undefined,
  revoked: () => undefined,
  checkLinks: async () => undefined,
  latest: () => undefined,
  rest: () => undefined,
  isIn: () => false,
  teamsIn: () => [],
};
