import type { Server as HttpServer, IncomingMessage } from 'node:http';
import { Server, type Socket } from 'socket.io';
import type { RoomEvent, Seat } from '../../shared/room/events.ts';
import { seen } from '../../shared/room/seen.ts';
import type { LatestDown, WireRefusal } from '../../shared/wire/protocol.ts';
import {
  type Checked,
  checkCommand,
  checkDocumentId,
  checkHandshake,
  checkHello,
  checkLatest,
} from '../../shared/wire/schemas.ts';
import { seatKey } from '../rooms/live-room.ts';
import { mayHave } from '../rooms/newest.ts';
import type { OpenRoom, Outlet, Rooms } from '../rooms/rooms.ts';
import { carriedBy } from '../seats/cookies.ts';
import type { RateLimits, RateName } from '../seats/rates.ts';
import { findSeat, welcome } from './hello.ts';
import { passedOn } from './latest.ts';
import { type Session, Sessions } from './session.ts';

export interface SocketsParts {
  readonly http: HttpServer;
  readonly rooms: Rooms;
  readonly rates: RateLimits;
  readonly isOwner: (key: string | undefined) => boolean;
  readonly now: () => number;
  readonly trouble: (what: string, error: unknown) => void;
}

export interface Sockets {
  readonly outlet: Outlet;
  readonly close: () => Promise<void>;
}

/** What is far too large is cut off while it arrives; what is only too large gets a refusal. */
const HARD_LIMIT_BYTES = 1_000_000;

type Reply = (answer: unknown) => void;
const refused = (refusal: WireRefusal) => ({ ok: false, refusal }) as const;
const replyOf = (ack: unknown): Reply => (typeof ack === 'function' ? (ack as Reply) : () => undefined);

/** A page of another site must not speak with this browser's cookies. Programs send no Origin. */
function isSameSite(request: IncomingMessage): boolean {
  const { origin, host } = request.headers;
  if (origin === undefined) return true;
  try {
    return new URL(origin).host === host;
  } catch {
    return false;
  }
}

/** Everything that pages say over sockets: one instance a server. */
class Talk {
  readonly #parts: SocketsParts;
  readonly #sessions = new Sessions();

  constructor(parts: SocketsParts) {
    this.#parts = parts;
  }

  readonly connect = (socket: Socket): void => {
    const shake = checkHandshake(socket.handshake.auth);
    if (!shake.ok) {
      socket.disconnect(true);
      return;
    }
    const carried = carriedBy(socket.handshake.headers.cookie);
    const session: Session = { socket, shake: shake.value, carried, standing: { kind: 'unseated' } };
    this.#sessions.add(session);
    socket.on('hello', (body, ack) =>
      this.#guarded('hello', replyOf(ack), () => this.#hello(session, body, ack)),
    );
    socket.on('command', (body, ack) =>
      this.#guarded('command', replyOf(ack), () => this.#command(session, body, replyOf(ack))),
    );
    socket.on('fetch', (body, ack) =>
      this.#guarded('fetch', replyOf(ack), () => this.#fetch(session, body, replyOf(ack))),
    );
    socket.on('latest', (body, ack) =>
      this.#guarded('latest', replyOf(ack), () => this.#latest(session, body, replyOf(ack))),
    );
    socket.on('disconnect', () => this.#left(session));
  };

  /** Whatever goes wrong with one message is that message's answer; the room goes on. */
  async #guarded(what: string, reply: Reply, work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      this.#parts.trouble(what, error);
      reply(refused({ code: 'server-trouble' }));
    }
  }

  /** A message's value when seat, rate and form are right, the cheapest first; otherwise the refusal. */
  async #admit<T>(
    session: Session,
    rate: RateName,
    check: () => Checked<T>,
  ): Promise<{ ok: true; value: T; open: OpenRoom; seat: Seat } | { ok: false; refusal: WireRefusal }> {
    const { standing } = session;
    if (standing.kind !== 'seated') return refused({ code: 'no-seat' });
    const { open, seat } = standing;
    const allowed = await this.#parts.rates.allows(rate, `${open.room.state.id} ${seatKey(seat)}`);
    if (!allowed) return refused({ code: 'too-fast' });
    const checked = check();
    if (!checked.ok) return checked;
    return { ok: true, value: checked.value, open, seat };
  }

  async #hello(session: Session, body: unknown, ack: unknown): Promise<void> {
    const reply = replyOf(ack);
    const hello = checkHello(body);
    if (!hello.ok) return reply(hello);
    const { rates, rooms, isOwner, now } = this.#parts;
    if (!(await rates.allows('hello', session.socket.id))) return reply(refused({ code: 'too-fast' }));
    const found = await findSeat(session, rooms, isOwner(session.carried.ownerKey));
    if (!found.ok) {
      session.standing = { kind: 'unseated' };
      return reply(found);
    }
    await found.open.room.inTurn(() => {
      if (this.#sessions.isOutrun(session)) return reply(refused({ code: 'no-seat' }));
      this.#sit(session, found.open, found.seat);
      reply(welcome(hello.value, found, this.#sessions, now()));
    });
  }

  /** The newest tab has the seat; older ones are told to rest. */
  #sit(session: Session, open: OpenRoom, seat: Seat): void {
    const wasHere = session.standing.kind === 'seated' && session.standing.open === open;
    session.standing = { kind: 'seated', open, seat };
    const older = seat.role === 'team' ? this.#sessions.ofTeam(open.room.state.id, seat.team, session) : [];
    for (const other of older) {
      other.standing = { kind: 'quiet' };
      other.socket.emit('quiet');
    }
    for (const ghost of this.#sessions.outrunBy(session)) ghost.socket.disconnect(true);
    if (seat.role !== 'team') return;
    if (!wasHere && older.length === 0) {
      this.#pass(open, { kind: 'doing', team: seat.team, doing: 'drawing' }, session);
    }
  }

  async #command(session: Session, body: unknown, reply: Reply): Promise<void> {
    const admitted = await this.#admit(session, 'command', () => checkCommand(body));
    if (!admitted.ok) return reply(admitted);
    const { open, seat, value } = admitted;
    reply(await this.#parts.rooms.take(open.room, seat, value));
  }

  async #fetch(session: Session, body: unknown, reply: Reply): Promise<void> {
    const admitted = await this.#admit(session, 'fetch', () => checkDocumentId(body));
    if (!admitted.ok) return reply(admitted);
    reply(await this.#parts.rooms.read(admitted.open.room, admitted.seat, admitted.value));
  }

  async #latest(session: Session, body: unknown, reply: Reply): Promise<void> {
    const admitted = await this.#admit(session, 'latest', () => checkLatest(body));
    if (!admitted.ok) return reply(admitted);
    const { open, seat } = admitted;
    const value = passedOn(admitted.value, seat, open.room.state, this.#parts.now());
    if (!value.ok) return reply(value);
    this.#pass(open, value.value, session);
    reply({ ok: true });
  }

  #pass(open: OpenRoom, value: LatestDown, from: Session): void {
    open.newest.put(value);
    for (const { session, seat } of this.#sessions.seatedIn(open.room.state.id)) {
      if (session !== from && mayHave(seat, value)) session.socket.emit('latest', value);
    }
  }

  #left(session: Session): void {
    const { standing } = session;
    this.#sessions.drop(session);
    if (standing.kind !== 'seated' || standing.seat.role !== 'team') return;
    this.#pass(standing.open, { kind: 'doing', team: standing.seat.team, doing: 'away' }, session);
  }

  readonly outlet: Outlet = {
    events: (room, events) => {
      for (const { session, seat } of this.#sessions.seatedIn(room.state.id)) {
        const own: RoomEvent[] = events.map((event) => seen(seat, event, room.state));
        session.socket.emit('events', own);
      }
    },
    opened: () => {
      for (const session of this.#sessions.followers()) session.socket.emit('moved');
    },
  };
}

/** Puts the protocol of `shared/wire` on an HTTP server. */
export function startSockets(parts: SocketsParts): Sockets {
  const io = new Server(parts.http, {
    transports: ['websocket'],
    maxHttpBufferSize: HARD_LIMIT_BYTES,
    serveClient: false,
    // Tablets sleep without a word: without an answer for so long they count as away.
    pingInterval: 10_000,
    pingTimeout: 8_000,
    allowRequest: (request, decide) => decide(null, isSameSite(request)),
  });
  const talk = new Talk(parts);
  io.on('connection', talk.connect);
  return {
    outlet: talk.outlet,
    close: () => io.close(),
  };
}
