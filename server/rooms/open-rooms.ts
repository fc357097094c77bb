import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import type { Millis } from '../../shared/geometry/units.ts';
import type { RoomEvent } from '../../shared/room/events.ts';
import type { RoomId, TeamId } from '../../shared/room/state.ts';
import type { Handshake, LatestDown } from '../../shared/wire/protocol.ts';
import { EntryJudge } from '../judging/entries.ts';
import type { Judging } from '../judging/judging.ts';
import type { EventLog, RoomRecord } from '../log/event-log.ts';
import type { Neighbours } from '../log/neighbours.ts';
import type { Meter } from '../meter.ts';
import { settledWithin } from '../settled.ts';
import { Deadlines } from './deadlines.ts';
import type { Erasing } from './erasing.ts';
import { LiveRoom } from './live-room.ts';
import { Newest } from './newest.ts';
import { News } from './news.ts';
import { NOBODY, type OpenRoom, type Outlet } from './outlet.ts';

export interface RoomsParts {
  readonly log: EventLog;
  readonly neighbours: Neighbours;
  readonly judging: Judging;
  readonly now: () => number;
  /** A challenge by its key: a ready one made for this kit, or one of the room's desk. */
  readonly challenge: (key: string, room: RoomId, kit: Kit) => Promise<Challenge | undefined>;
  readonly erased: Pick<Erasing, 'isErased' | 'rooms'>;
  readonly trouble: (what: string, error: unknown) => void;
  readonly meter: Meter;
  /** How long another process may take over an entry before this one judges it too, ms. */
  readonly patienceMs?: number | undefined;
}

/** An entry without a verdict for so long may be judged by any process, ms. */
const PATIENCE_MS = 10_000;
/** Whatever else stands in an address is no room's, and nothing that a store should be asked. */
const ROOM_ID = /^[\w-]{1,64}$/;
/** A room that nobody has used for so long leaves memory, ms; and how often that is looked at. */
const IDLE_MS = 10 * 60_000;
const LOOK_EVERY_MS = 60_000;
/** How long the judge's threads may take to be gone when they are broken off, ms. */
const BREAK_OFF_MS = 500;
/** Rooms in which time may be running or an entry waiting when the server comes back. */
const ROOMS_WOKEN = 20;

/**
 * The rooms that this process has at hand: loads them, keeps time and judging going in them, tells its
 * pages and its neighbours what happens in them.
 */
export class OpenRooms {
  protected readonly parts: RoomsParts;
  readonly #judge: EntryJudge;
  readonly #deadlines: Deadlines;
  readonly #open = new Map<string, Promise<OpenRoom | undefined>>();
  /** When each of them was asked for last. */
  readonly #used = new Map<string, Millis>();
  #looking: NodeJS.Timeout | undefined;
  #outlet: Outlet = NOBODY;
  #newest: string | null = null;

  constructor(parts: RoomsParts) {
    this.parts = parts;
    this.#deadlines = new Deadlines(parts.now, (error) => parts.trouble('deadline', error));
    this.#judge = new EntryJudge({
      log: parts.log,
      judging: parts.judging,
      patienceMs: parts.neighbours.alone ? 0 : (parts.patienceMs ?? PATIENCE_MS),
      failed: (room, entry, error) => parts.trouble(`judging entry ${entry} of room ${room}`, error),
    });
  }

  /** Names who hears of events. Call before anything else. */
  tell(outlet: Outlet): void {
    this.#outlet = outlet;
  }

  /** Goes on where the last process stopped: running building times, entries without a verdict. */
  async start(): Promise<void> {
    const { neighbours, trouble } = this.parts;
    const records = await this.records();
    this.#newest = records[0]?.id ?? null;
    for (const { id } of records.slice(0, ROOMS_WOKEN)) await this.byId(id);
    neighbours.hear(new News({ neighbours, trouble, rooms: this, outlet: () => this.#outlet }));
    this.#looking = setInterval(() => void this.#putAwayIdle(), LOOK_EVERY_MS);
  }

  /** All rooms that are not erased, the newest first. */
  async records(): Promise<RoomRecord[]> {
    const erased = await this.parts.erased.rooms();
    return (await this.parts.log.rooms()).filter(({ id }) => !erased.has(id));
  }

  /** Closes a room that is to be erased; whoever is in it has to leave. */
  async hide(id: RoomId): Promise<void> {
    const open = await this.#open.get(id);
    this.#open.delete(id);
    if (!open) return;
    await this.#close(open);
    await open.newest.close();
    if (this.#newest === id) this.#newest = (await this.records())[0]?.id ?? null;
    this.#outlet.hidden(id);
  }

  async #close({ room }: OpenRoom): Promise<void> {
    const { id } = room.state;
    this.#used.delete(id);
    await room.end();
    this.#deadlines.drop(id);
    this.#judge.drop(id);
  }

  /** Whoever asks for one of them later gets it from the log, as after a restart. */
  async #putAwayIdle(): Promise<void> {
    for (const [id, opening] of this.#open) {
      const open = await opening.catch(() => undefined);
      if (!open || this.#open.get(id) !== opening || !this.#isIdle(open)) continue;
      this.#open.delete(id);
      await this.#close(open);
    }
  }

  /** Nobody is there, nothing runs, waits for its verdict or has still to be written. */
  #isIdle({ room, newest }: OpenRoom): boolean {
    const { id, entries } = room.state;
    const since = this.parts.now() - (this.#used.get(id) ?? 0);
    if (since < IDLE_MS || this.#outlet.isIn(id) || this.#deadlines.has(id) || !newest.isKept) return false;
    return entries.every(({ verdict, unjudged }) => verdict !== null || unjudged);
  }

  /** What another process has erased without this one hearing of it. */
  async hideErased(): Promise<void> {
    const erased = await this.parts.erased.rooms();
    for (const id of this.ids()) if (erased.has(id)) await this.hide(id);
  }

  /** Hides a room here and at every other process. */
  async hideEverywhere(id: RoomId): Promise<void> {
    await this.hide(id);
    this.parts.neighbours.tell({ kind: 'hidden', room: id });
  }

  /** A link is no more, here and at every other process. */
  revoked(link: string): void {
    this.#outlet.revoked(link);
    this.parts.neighbours.tell({ kind: 'revoked', link });
  }

  /** Rooms that are open here, or opening. */
  ids(): RoomId[] {
    return [...this.#open.keys()];
  }

  /** A room that is open here; undefined for any other. */
  async atHand(id: RoomId): Promise<OpenRoom | undefined> {
    return this.#open.get(id);
  }

  /** Whether no other process opens rooms in this store. */
  get alone(): boolean {
    return this.parts.neighbours.alone;
  }

  /** The newest room of all, or of these. */
  async newest(of: readonly RoomId[] | null = null): Promise<OpenRoom | undefined> {
    const id = of ? (await this.records()).find((record) => of.includes(record.id))?.id : this.#newest;
    return id === null || id === undefined ? undefined : this.byId(id);
  }

  /** Has the pages follow that follow the newest room. */
  async moveTo(id: RoomId): Promise<void> {
    this.#newest = id;
    if (await this.byId(id)) this.#outlet.opened();
  }

  async lookForNewest(): Promise<void> {
    const [first] = await this.records();
    if (first && first.id !== this.#newest) await this.moveTo(first.id);
  }

  async byId(id: string): Promise<OpenRoom | undefined> {
    if (!ROOM_ID.test(id)) return undefined;
    this.#used.set(id, this.parts.now());
    return this.#open.get(id) ?? this.#opening(id);
  }

  #opening(id: string): Promise<OpenRoom | undefined> {
    const loading = this.#load(id);
    this.#open.set(id, loading);
    const forget = () => {
      this.#open.delete(id);
      this.#used.delete(id);
    };
    void loading.then((found) => !found && forget(), forget);
    return loading;
  }

  async #load(id: string): Promise<OpenRoom | undefined> {
    const { log, now, meter, neighbours, erased } = this.parts;
    if (await erased.isErased(id)) return undefined;
    const kept = (key: string) => {
      if (key.startsWith('draft ')) neighbours.tell({ kind: 'kept', room: id, key });
    };
    const newest = await Newest.load({ log, room: id, kept });
    const told = (room: LiveRoom, events: readonly RoomEvent[], own: boolean) => {
      newest.look(events, own);
      this.#told(room, events, own);
    };
    const room = await LiveRoom.load({ log, now, meter, told }, id);
    if (!room) return undefined;
    this.#deadlines.look(room);
    this.#judge.look(room);
    neighbours.tell({ kind: 'who', room: id });
    return { room, newest };
  }

  #told(room: LiveRoom, events: readonly RoomEvent[], own: boolean): void {
    const { id, seq } = room.state;
    if (own) this.parts.neighbours.tell({ kind: 'events', room: id, seq });
    // Pages first: what follows of it may take its time.
    this.#outlet.events(room, events);
    this.#deadlines.look(room);
    this.#judge.look(room, own ? events : []);
  }

  /** Brings a room up to what other processes have appended. */
  async refresh({ room }: OpenRoom): Promise<void> {
    if (!this.parts.neighbours.alone) await room.catchUp();
  }

  /** A newest value from a page of this process, for the pages of all others. */
  pass({ room, newest }: OpenRoom, value: LatestDown): void {
    newest.put(value);
    // A drawing may be too large for news: others read it when it has been kept.
    if (value.kind !== 'draft') this.parts.neighbours.tell({ kind: 'latest', room: room.state.id, value });
  }

  /** A tablet of this team has sat down here. */
  satDown({ room }: OpenRoom, team: TeamId, tab: Handshake['tab']): void {
    this.parts.neighbours.tell({ kind: 'sits', room: room.state.id, team, tab });
  }

  counts(): { readonly rooms: number; readonly judging: number } {
    return { rooms: this.#open.size, judging: this.#judge.size };
  }

  /** Begins nothing more; lets judging that has begun end within `withinMs`, then breaks it off. */
  async stopJudging(withinMs: Millis): Promise<void> {
    clearInterval(this.#looking);
    this.#deadlines.close();
    this.#judge.stop();
    await settledWithin(this.#judge.stopped(), withinMs);
    await settledWithin(this.parts.judging.close(), BREAK_OFF_MS);
  }

  /** Writes what is still only in memory, of all rooms at once; leaves behind what takes over `withinMs`. */
  async keepAll(withinMs: Millis): Promise<void> {
    const unkept = new Set(this.#open.keys());
    const keep = async ([id, opening]: [string, Promise<OpenRoom | undefined>]) => {
      const open = await opening.catch(() => undefined);
      await open?.room.inTurn(() => undefined);
      await open?.newest.close();
      if (!open || open.newest.isKept) unkept.delete(id);
    };
    const ended = Promise.all([this.#judge.stopped(), ...[...this.#open].map(keep)]);
    await settledWithin(ended, withinMs);
    if (unkept.size > 0)
      this.parts.trouble('ending', new Error(`drafts of ${unkept.size} rooms are not kept`));
  }
}
