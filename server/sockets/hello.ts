import type { RoomEvent, Seat } from '../../shared/room/events.ts';
import { seen, view } from '../../shared/room/seen.ts';
import type { Hello, Welcome, WireRefusal } from '../../shared/wire/protocol.ts';
import type { OpenRoom } from '../rooms/outlet.ts';
import type { Rooms } from '../rooms/rooms.ts';
import type { Accesses } from '../seats/access.ts';
import type { AddressOf } from '../seats/address.ts';
import type { RateLimits } from '../seats/rates.ts';
import { roomFollowed, roomNamed } from '../seats/room-named.ts';
import type { Session, Sessions } from './session.ts';

/** A page that has missed more than this gets the whole state, which is smaller. */
const MOST_MISSED = 200;

export type Found =
  | {
      readonly ok: true;
      readonly open: OpenRoom;
      readonly seat: Seat;
      /** The link that this desk sits there by. */
      readonly link?: string;
    }
  | { readonly ok: false; readonly refusal: WireRefusal };

export interface FindParts {
  readonly rooms: Rooms;
  readonly accesses: Accesses;
  readonly rates: RateLimits;
  readonly addressOf: AddressOf;
}

const refused = (code: 'no-seat' | 'seat-freed' | 'unknown-room' | 'no-room-named' | 'too-fast'): Found => ({
  ok: false,
  refusal: { code },
});

/** Which seat a page means and whether its browser may sit there. */
export async function findSeat(session: Session, parts: FindParts): Promise<Found> {
  const { page, room } = session.shake;
  const { rooms, accesses } = parts;
  if (page === 'tablet') {
    const seat = await rooms.seat(session.carried.teamToken);
    const open = seat && (await rooms.byId(seat.room));
    if (!open) return refused('no-seat');
    await rooms.refresh(open);
    const rests = open.room.state.teams.some((team) => team.id === seat.team && team.seatFree);
    return rests ? refused('seat-freed') : { ok: true, open, seat: { role: 'team', team: seat.team } };
  }
  const access = await accesses.of(session.carried);
  if (page === 'desk' && access.kind === 'none') return refused('no-seat');
  const asked =
    room === null
      ? { allowed: true as const, found: await roomFollowed(parts, access) }
      : await roomNamed(parts, room, parts.addressOf(session.socket.request));
  if (!asked.allowed) return refused('too-fast');
  const open = asked.found;
  if (open === 'name-it') return refused('no-room-named');
  if (open) await rooms.refresh(open);
  if (page === 'board') return open ? { ok: true, open, seat: { role: 'board' } } : refused('unknown-room');
  if (!open || !(await accesses.has(access, open.room.state.id))) return refused('unknown-room');
  return { ok: true, open, seat: { role: 'desk' }, ...(access.kind === 'link' && { link: access.link.id }) };
}

/** What a page that has `hello.seq` events of `hello.room` still needs. Call inside the room's turn. */
export function welcome(
  hello: Hello,
  { open, seat }: { open: OpenRoom; seat: Seat },
  sessions: Sessions,
  now: number,
): Welcome {
  const { state, events } = open.room;
  const isOfThese = hello.at === undefined || events[hello.seq - 1]?.at === hello.at;
  const missed = hello.room === state.id && isOfThese ? events.slice(hello.seq) : undefined;
  const difference = missed && hello.seq > 0 && hello.seq <= state.seq && missed.length <= MOST_MISSED;
  const isHere = (team: string) => sessions.ofTeam(state.id, team).length > 0;
  return {
    ok: true,
    room: state.id,
    you: youOf(seat),
    now,
    events: difference ? missed.map((event): RoomEvent => seen(seat, event, state)) : [],
    snapshot: difference ? null : view(state, seat),
    at: events.at(-1)?.at ?? now,
    latest: open.newest.seenBy(seat, state, isHere),
  };
}

function youOf(seat: Seat): Extract<Welcome, { ok: true }>['you'] {
  if (seat.role === 'team') return { role: 'team', team: seat.team };
  return { role: seat.role === 'board' ? 'board' : 'desk' };
}
