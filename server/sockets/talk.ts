import type { Server, Socket } from 'socket.io';
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
import { troubleOf } from '../log/event-log.ts';
import type { Meter } from '../meter.ts';
import { seatKey } from '../rooms/live-room.ts';
import { mayHave } from '../rooms/newest.ts';
import type { OpenRoom, Outlet } from '../rooms/outlet.ts';
import type { Rooms } from '../rooms/rooms.ts';
import type { Accesses } from '../seats/access.ts';
import type { AddressOf } from '../seats/address.ts';
import { carriedBy } from '../seats/cookies.ts';
import type { RateLimits, RateName } from '../seats/rates.ts';
import { hashOf } from '../seats/tokens.ts';
import { type Found, findSeat, welcome } from './hello.ts';
import { passedOn } from './latest.ts';
import { isOutrun, type Session, Sessions } from './session.ts';
import type { Silent } from './silence.ts';

export interface TalkParts {
  readonly rooms: Rooms;
  readonly rates: RateLimits;
  readonly addressOf: AddressOf;
  readonly accesses: Accesses;
  readonly now: () => number;
  readonly meter: Meter;
  readonly trouble: (what: string, error: unknown) => void;
}

type Reply = (answer: unknown) => void;
type SocketId = Socket['id'];
const MOST_PROVEN = 10_000;
const refused = (refusal: WireRefusal) => ({ ok: false, refusal }) as const;
const TOO_FAST = refused({ code: 'too-fast' });
const replyOf = (ack: unknown): Reply => (typeof ack === 'function' ? (ack as Reply) : () => undefined);

/** Everything that pages say over sockets: one instance a server. */
export class Talk {
  readonly #parts: TalkParts;
  readonly #io: Server;
  readonly #silent: Silent;
  readonly #sessions = new Sessions();
  /** Messages that have no answer yet. */
  readonly #atWork = new Set<Promise<void>>();
  /** Secrets, as hashes, that have opened a seat here: a flood of others does not keep these out. */
  readonly #proven = new Set<string>();
  #ending = false;

  constructor(parts: TalkParts, io: Server, silent: Silent) {
    this.#parts = parts;
    this.#io = io;
    this.#silent = silent;
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
    this.#hear(session, 'hello', (body, reply) => this.#hello(session, body, reply));
    this.#hear(session, 'command', (body, reply) => this.#command(session, body, reply));
    this.#hear(session, 'fetch', (body, reply) => this.#fetch(session, body, reply));
    this.#hear(session, 'latest', (body, reply) => this.#latest(session, body, reply));
    socket.on('disconnect', () => this.#left(session));
  };

  /** A message that comes while the server ends gets no answer: its page asks the next server. */
  #hear({ socket }: Session, way: string, work: (body: unknown, reply: Reply) => Promise<void>): void {
    socket.on(way, (body: unknown, ack: unknown) => {
      if (this.#ending) return;
      const answering = this.#answer(way, replyOf(ack), (reply) => work(body, reply));
      this.#atWork.add(answering);
      void answering.finally(() => this.#atWork.delete(answering));
    });
  }

  /** Whatever goes wrong with one message is that message's answer; the room goes on. */
  async #answer(way: string, ack: Reply, work: (reply: Reply) => Promise<void>): Promise<void> {
    const reply: Reply = (answer) => {
      const { ok, refusal } = answer as { ok: boolean; refusal?: WireRefusal };
      if (!ok && refusal) this.#parts.meter.refused(way, refusal.code);
      ack(answer);
    };
    try {
      await work(reply);
    } catch (error) {
      this.#parts.trouble(way, error);
      reply(refused(troubleOf(error)));
    }
  }

  /** Anybody may open a board: by its address, so that none uses up what the class's own may ask for. */
  #allows(rate: RateName, { room }: OpenRoom, seat: Seat, { socket }: Session): Promise<boolean> {
    const who = seat.role === 'board' ? `board ${this.#parts.addressOf(socket.request)}` : seatKey(seat);
    return this.#parts.rates.allows(rate, `${room.state.id} ${who}`);
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
    if (!(await this.#allows(rate, open, seat, session))) return TOO_FAST;
    const checked = check();
    if (!checked.ok) return checked;
    return { ok: true, value: checked.value, open, seat };
  }

  async #hello(session: Session, body: unknown, reply: Reply): Promise<void> {
    const hello = checkHello(body);
    if (!hello.ok) return reply(hello);
    const found = await this.#find(session);
    if (!found.ok) {
      this.#silent.asked(session.socket.request.socket);
      this.#sessions.stand(session, { kind: 'unseated' });
      return reply(found);
    }
    await found.open.room.inTurn(() => {
      if (this.#sessions.isOutrun(session)) return reply(refused({ code: 'no-seat' }));
      if (found.open.room.ended) return reply(refused({ code: 'unknown-room' }));
      this.#sit(session, found);
      reply(welcome(hello.value, found, this.#sessions, this.#parts.now()));
    });
    // The link may have been revoked between the look at it and sitting down, when it closed nothing yet.
    if (found.link !== undefined) await this.#checkLink(session);
  }

  async #checkLink({ socket, carried }: Session): Promise<void> {
    if ((await this.#parts.accesses.of(carried)).kind === 'none') socket.disconnect(true);
  }

  /** By seat, not by connection: a page may connect anew as often as it likes. Boards have no seat. */
  async #find(session: Session): Promise<Found> {
    const { shake, carried, socket } = session;
    const { rates, addressOf } = this.#parts;
    const address = addressOf(socket.request);
    const secret = shake.page === 'desk' ? (carried.ownerKey ?? carried.deskToken) : carried.teamToken;
    if (shake.page === 'board' || secret === undefined) {
      return (await rates.allows('helloUnknown', address)) ? findSeat(session, this.#parts) : TOO_FAST;
    }
    const hash = hashOf(secret);
    if (!(await rates.allows('hello', hash))) return TOO_FAST;
    if (this.#proven.has(hash)) return findSeat(session, this.#parts);
    // Anybody can make secrets up: those that open nothing are counted by address.
    let found: Found = TOO_FAST;
    await rates.guess('wrongSeat', address, async () => {
      found = await findSeat(session, this.#parts);
      if (!found.ok && found.refusal.code === 'no-seat') return undefined;
      if (this.#proven.size >= MOST_PROVEN) this.#proven.clear();
      return this.#proven.add(hash);
    });
    return found;
  }

  /** The newest tab has the seat; older ones are told to rest. */
  #sit(session: Session, { open, seat, link }: Extract<Found, { ok: true }>): void {
    const wasHere = session.standing.kind === 'seated' && session.standing.open === open;
    this.#sessions.stand(session, { kind: 'seated', open, seat, ...(link !== undefined && { link }) });
    this.#silent.leave(session.socket.request.socket);
    const older = seat.role === 'team' ? this.#sessions.rivals(open.room.state.id, seat.team, session) : [];
    for (const other of older) {
      this.#sessions.stand(other, { kind: 'quiet' });
      other.socket.emit('quiet');
    }
    for (const ghost of this.#sessions.outrunBy(session)) ghost.socket.disconnect(true);
    if (seat.role !== 'team') return;
    this.#parts.rooms.satDown(open, seat.team, session.shake.tab);
    if (!wasHere && older.length === 0) {
      this.#pass(open, { kind: 'doing', team: seat.team, doing: 'drawing' }, session);
    }
  }

  async #command(session: Session, body: unknown, reply: Reply): Promise<void> {
    const admitted = await this.#admit(session, 'command', () => checkCommand(body));
    if (!admitted.ok) return reply(admitted);
    const { open, seat, value } = admitted;
    // Anybody may open a board: what it says shall leave nothing in the store, no answer either.
    if (seat.role === 'board') return reply(refused({ code: 'not-for-this-seat' }));
    const { kind } = value.ask;
    const isHandIn = kind === 'hand-in' || kind === 'hand-in-answers';
    if (isHandIn && !(await this.#allows('handIn', open, seat, session))) return reply(TOO_FAST);
    const answer = await this.#parts.rooms.take(open.room, seat, value);
    if (answer.ok) this.#parts.meter.took(kind);
    reply(answer);
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
    this.#parts.rooms.pass(open, value);
    this.#show(open, value, from);
  }

  #show(open: OpenRoom, value: LatestDown, but?: Session): void {
    const others: SocketId[] = [];
    for (const { session, seat } of this.#sessions.seatedIn(open.room.state.id)) {
      if (session !== but && mayHave(seat, value)) others.push(session.socket.id);
    }
    this.#send(others, 'latest', value);
  }

  /** Encodes once for all of `to`. */
  #send(to: SocketId[], name: 'events' | 'latest', value: unknown): void {
    if (to.length > 0) this.#io.to(to).emit(name, value);
  }

  #left(session: Session): void {
    const { standing } = session;
    this.#sessions.drop(session);
    if (standing.kind !== 'seated' || standing.seat.role !== 'team') return;
    const { open, seat } = standing;
    // Another tablet of the team is here, or at another process.
    if (this.#sessions.ofTeam(open.room.state.id, seat.team).length > 0) return;
    if (open.newest.isElsewhere(seat.team)) return;
    this.#pass(open, { kind: 'doing', team: seat.team, doing: 'away' }, session);
  }

  get count(): number {
    return this.#sessions.count;
  }

  /** Takes nothing more; resolves when everything has its answer. */
  async end(): Promise<void> {
    this.#ending = true;
    await Promise.allSettled(this.#atWork);
  }

  readonly outlet: Outlet = {
    events: (room, events) => {
      const groups = new Map<string, { readonly own: RoomEvent[]; readonly to: SocketId[] }>();
      for (const { session, seat } of this.#sessions.seatedIn(room.state.id)) {
        const own = events.map((event) => seen(seat, event, room.state));
        const key = JSON.stringify(own);
        const group = groups.get(key) ?? { own, to: [] };
        groups.set(key, group);
        group.to.push(session.socket.id);
      }
      for (const { own, to } of groups.values()) this.#send(to, 'events', own);
      // After everybody has heard: whose seat is free, or another tablet's, has to leave it.
      for (const { fact } of events) {
        if (fact?.kind !== 'seat-freed' && fact?.kind !== 'seat-moved') continue;
        this.#sessions.unseat(this.#sessions.ofTeam(room.state.id, fact.team));
      }
    },
    opened: () => {
      for (const session of this.#sessions.followers()) session.socket.emit('moved');
    },
    hidden: (room) => this.#sessions.unseat(this.#sessions.inRoom(room)),
    revoked: (link) => {
      for (const { socket } of this.#sessions.byLink(link)) socket.disconnect(true);
    },
    checkLinks: async () => {
      for (const session of this.#sessions.byLink()) await this.#checkLink(session);
    },
    latest: (open, value) => this.#show(open, value),
    rest: ({ room }, team, tab) => {
      for (const session of this.#sessions.ofTeam(room.state.id, team)) {
        if (isOutrun({ tab }, session.shake)) continue;
        this.#sessions.stand(session, { kind: 'quiet' });
        session.socket.emit('quiet');
      }
    },
    isIn: (room) => this.#sessions.isIn(room),
    teamsIn: ({ room }) =>
      [...this.#sessions.seatedIn(room.state.id)].flatMap(({ seat }) =>
        seat.role === 'team' ? [seat.team] : [],
      ),
  };
}
