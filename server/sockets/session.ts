import type { Socket } from 'socket.io';
import type { Seat } from '../../shared/room/events.ts';
import type { RoomId, TeamId } from '../../shared/room/state.ts';
import type { Handshake } from '../../shared/wire/protocol.ts';
import type { OpenRoom } from '../rooms/outlet.ts';
import type { Carried } from '../seats/cookies.ts';

/** Where a connected page stands. Only a seated one gets events and may speak. */
export type Standing =
  /** Has not said hello yet, or was refused. */
  | { readonly kind: 'unseated' }
  | { readonly kind: 'seated'; readonly open: OpenRoom; readonly seat: Seat; readonly link?: string }
  /** Another tab has this seat now. */
  | { readonly kind: 'quiet' };

export interface Session {
  readonly socket: Socket;
  readonly shake: Handshake;
  readonly carried: Carried;
  /** Set by Sessions.stand alone. */
  standing: Standing;
}

/** Whether `a` is an earlier connection of the tab whose later one is `b`. */
export function isOutrun({ tab }: Pick<Handshake, 'tab'>, { tab: other }: Pick<Handshake, 'tab'>): boolean {
  return tab !== undefined && tab.id === other?.id && tab.connection < other.connection;
}

/** Whether both speak for one connection of one tab, which the network has doubled. */
function isTwinOf(a: Session, b: Session): boolean {
  const [tab, other] = [a.shake.tab, b.shake.tab];
  return tab !== undefined && tab.id === other?.id && tab.connection === other.connection;
}

/** All connected pages, and at hand by room: an event must not look at every page of every room. */
export class Sessions {
  readonly #all = new Set<Session>();
  readonly #seated = new Map<RoomId, Set<Session>>();

  get count(): number {
    return this.#all.size;
  }

  add(session: Session): void {
    this.#all.add(session);
  }

  drop(session: Session): void {
    this.#leave(session);
    this.#all.delete(session);
  }

  stand(session: Session, standing: Standing): void {
    this.#leave(session);
    session.standing = standing;
    if (standing.kind !== 'seated') return;
    const { id } = standing.open.room.state;
    const here = this.#seated.get(id) ?? new Set();
    this.#seated.set(id, here.add(session));
  }

  #leave(session: Session): void {
    const { standing } = session;
    if (standing.kind !== 'seated') return;
    const { id } = standing.open.room.state;
    const here = this.#seated.get(id);
    here?.delete(session);
    if (here?.size === 0) this.#seated.delete(id);
  }

  /** Whether a later connection of the same tab is here: this one came back to life, and nobody listens. */
  isOutrun(session: Session): boolean {
    return [...this.#all].some((other) => isOutrun(session.shake, other.shake));
  }

  /** Earlier connections of the same tab, of which the server has not noticed yet that they are gone. */
  outrunBy(session: Session): Session[] {
    return [...this.#all].filter((other) => isOutrun(other.shake, session.shake));
  }

  /** Pages that wait for a room or follow the newest one. */
  followers(): Session[] {
    return [...this.#all].filter((s) => s.shake.page !== 'tablet' && s.shake.room === null);
  }

  isIn(room: RoomId): boolean {
    return this.#seated.has(room);
  }

  *seatedIn(room: RoomId): Generator<{ session: Session; seat: Seat }> {
    for (const session of this.#seated.get(room) ?? []) {
      const { standing } = session;
      if (standing.kind === 'seated') yield { session, seat: standing.seat };
    }
  }

  /** Desks that sit here by a link: by this one, or by any. */
  byLink(link?: string): Session[] {
    return [...this.#all].filter(
      ({ standing: s }) => s.kind === 'seated' && s.link !== undefined && (link ?? s.link) === s.link,
    );
  }

  /** Those have no seat from now on, and may ask for one: they are told to say hello again. */
  unseat(sessions: readonly Session[]): void {
    for (const session of sessions) {
      this.stand(session, { kind: 'unseated' });
      session.socket.emit('moved');
    }
  }

  /** Everybody in a room. */
  inRoom(room: string): Session[] {
    return [...this.seatedIn(room)].map(({ session }) => session);
  }

  /** The connections that hold a team's seat. */
  ofTeam(room: RoomId, team: TeamId): Session[] {
    return [...this.seatedIn(room)]
      .filter(({ seat }) => seat.role === 'team' && seat.team === team)
      .map(({ session }) => session);
  }

  /** Other tabs that hold a team's seat, and earlier connections of this one. */
  rivals(room: RoomId, team: TeamId, session: Session): Session[] {
    return this.ofTeam(room, team).filter((other) => other !== session && !isTwinOf(other, session));
  }
}
