import type { RoomEvent, Seat } from '../../shared/room/events.ts';
import { seen, view } from '../../shared/room/seen.ts';
import type { Hello, Welcome, WireRefusal } from '../../shared/wire/protocol.ts';
import type { OpenRoom } from '../rooms/outlet.ts';
import type { Rooms } from '../rooms/rooms.ts';
import type { Session, Sessions } from './session.ts';

/** A page that has missed more than this gets the whole state, which is smaller. */
const MOST_MISSED = 200;

export type Found =
  | { readonly ok: true; readonly open: OpenRoom; readonly seat: Seat }
  | { readonly ok: false; readonly refusal: WireRefusal };

const refused = (code: 'no-seat' | 'unknown-room'): Found => ({ ok: false, refusal: { code } });

/** Which seat a page means and whether its browser may sit there. */
export async function findSeat(session: Session, rooms: Rooms, isOwner: boolean): Promise<Found> {
  const { page, room } = session.shake;
  if (page === 'tablet') {
    const seat = await rooms.seat(session.carried.teamToken);
    const open = seat && (await rooms.byId(seat.room));
    return open ? { ok: true, open, seat: { role: 'team', team: seat.team } } : refused('no-seat');
  }
  if (page === 'desk' && !isOwner) return refused('no-seat');
  const open =
    room === null ? await rooms.newest() : ((await rooms.byId(room)) ?? (await rooms.byWord(room)));
  return open ? { ok: true, open, seat: { role: page } } : refused('unknown-room');
}

/** What a page that has `hello.seq` events of `hello.room` still needs. Call inside the room's turn. */
export function welcome(
  hello: Hello,
  { open, seat }: { open: OpenRoom; seat: Seat },
  sessions: Sessions,
  now: number,
): Welcome {
  const { state, events } = open.room;
  const missed = hello.room === state.id ? events.slice(hello.seq) : undefined;
  const difference = missed && hello.seq > 0 && hello.seq <= state.seq && missed.length <= MOST_MISSED;
  const isHere = (team: string) => sessions.ofTeam(state.id, team).length > 0;
  return {
    ok: true,
    room: state.id,
    you: youOf(seat),
    now,
    events: difference ? missed.map((event): RoomEvent => seen(seat, event, state)) : [],
    snapshot: difference ? null : view(state, seat),
    latest: open.newest.seenBy(seat, state, isHere),
  };
}

function youOf(seat: Seat): Extract<Welcome, { ok: true }>['you'] {
  if (seat.role === 'team') return { role: 'team', team: seat.team };
  return { role: seat.role === 'board' ? 'board' : 'desk' };
}
