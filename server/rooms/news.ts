import type { RoomId, TeamId } from '../../shared/room/state.ts';
import type { LatestDown } from '../../shared/wire/protocol.ts';
import type { Neighbours, NewsListener, ProcessId, News as Told } from '../log/neighbours.ts';
import type { OpenRoom, Outlet } from './outlet.ts';

/** The rooms of this process, as news need them. */
export interface RoomsAtHand {
  ids(): readonly RoomId[];
  atHand(id: RoomId): Promise<OpenRoom | undefined>;
  moveTo(id: RoomId): Promise<void>;
  lookForNewest(): Promise<void>;
  hide(id: RoomId): Promise<void>;
  hideErased(): Promise<void>;
}

export interface NewsParts {
  readonly neighbours: Neighbours;
  readonly rooms: RoomsAtHand;
  readonly outlet: () => Outlet;
  readonly trouble: (what: string, error: unknown) => void;
}

/** Brings this process up to what others tell: reads what its rooms lack, and passes it to its pages. */
export class News implements NewsListener {
  readonly #parts: NewsParts;
  /** Keys of newest values that others have kept, by room, until they are read. */
  readonly #toRead = new Map<RoomId, Set<string>>();

  constructor(parts: NewsParts) {
    this.#parts = parts;
  }

  readonly rooms = (): readonly RoomId[] => this.#parts.rooms.ids();

  readonly news = (news: Told, from: ProcessId): void => {
    void this.#guarded(`news ${news.kind}`, () => this.#take(news, from));
  };

  async #guarded(what: string, work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      // The line looks again whether every room is current.
      this.#parts.trouble(what, error);
    }
  }

  async #take(news: Told, from: ProcessId): Promise<void> {
    const { rooms, outlet, neighbours } = this.#parts;
    if (news.kind === 'opened') return rooms.moveTo(news.room);
    if (news.kind === 'hidden') return rooms.hide(news.room);
    if (news.kind === 'revoked') return outlet().revoked(news.link);
    const open = await rooms.atHand(news.room);
    if (!open) return;
    switch (news.kind) {
      case 'events':
        return open.room.catchUp(news.seq);
      case 'latest':
        return this.#hear(open, news.value, from);
      case 'kept':
        return this.#readSoon(open, news.key);
      case 'sits':
        outlet().rest(open, news.team, news.tab);
        return;
      case 'who': {
        const here = outlet().teamsIn(open);
        for (const value of open.newest.doings(here))
          neighbours.tell({ kind: 'latest', room: news.room, value });
      }
    }
  }

  #hear(open: OpenRoom, value: LatestDown, from: ProcessId): void {
    const outlet = this.#parts.outlet();
    const here = new Set<TeamId>(outlet.teamsIn(open));
    if (open.newest.hear(value, from, (team) => here.has(team))) outlet.latest(open, value);
  }

  /** Reads at once what arrives at once. */
  async #readSoon(open: OpenRoom, key: string): Promise<void> {
    const { id } = open.room.state;
    const waiting = this.#toRead.get(id);
    if (waiting) return void waiting.add(key);
    const keys = new Set([key]);
    this.#toRead.set(id, keys);
    await Promise.resolve();
    this.#toRead.delete(id);
    await this.#readKept(open, [...keys]);
  }

  async #readKept(open: OpenRoom, keys?: readonly string[]): Promise<void> {
    for (const value of await open.newest.readKept(keys)) this.#parts.outlet().latest(open, value);
  }

  readonly missed = (): void => {
    void this.#guarded('catching up', async () => {
      await this.#parts.outlet().checkLinks();
      await this.#parts.rooms.hideErased();
      await this.#parts.rooms.lookForNewest();
      for (const id of this.rooms()) {
        const open = await this.#parts.rooms.atHand(id);
        if (!open) continue;
        await open.room.catchUp();
        await this.#readKept(open);
        this.#parts.neighbours.tell({ kind: 'who', room: id });
      }
    });
  };

  readonly gone = (process: ProcessId): void => {
    void this.#guarded('a process that is gone', async () => {
      for (const id of this.rooms()) {
        const open = await this.#parts.rooms.atHand(id);
        for (const value of open?.newest.gone(process) ?? []) this.#parts.outlet().latest(open!, value);
      }
    });
  };
}
