import type { Millis } from '../../shared/geometry/units.ts';
import type { RoomId } from '../../shared/room/state.ts';
import { type ErasedRoom, UNDO_MS } from '../../shared/wire/desks.ts';
import type { EventLog, RoomRecord } from '../log/event-log.ts';

export interface ErasingParts {
  readonly log: EventLog;
  readonly now: () => Millis;
  /** Rooms that nobody has used for so long are erased; null: none. */
  readonly afterDays: number | null;
  /** The room is hidden from now on: whoever is in it has to leave. */
  readonly hidden: (room: RoomId) => Promise<void>;
  /** Whose room it was may be forgotten too. */
  readonly forget: (room: RoomId) => Promise<void>;
  /** Forgets what was erased beside rooms by a server that has ended before it could. */
  readonly forgetOthers: () => Promise<void>;
  readonly trouble: (what: string, error: unknown) => void;
}

/** What the store keeps of an erasure. */
interface Erasure extends ErasedRoom {
  /** null while it can be taken back. */
  readonly doneAt: Millis | null;
}

const DAY_MS = 24 * 3_600_000;
const LOOK_EVERY_MS = DAY_MS;
const ROOMS_AT_ONCE = 500;
/** How long the desk says that a room has been erased. */
const SAID_FOR_MS = 30 * DAY_MS;
const PREFIX = 'erased ';
const keyOf = (room: RoomId) => PREFIX + room;

/**
 * Erases rooms for good: first a room is hidden, and after the time in which that can be taken back all
 * rows of it go. A server that was killed in between does that at its next start.
 */
export class Erasing {
  readonly #parts: ErasingParts;
  readonly #timers = new Map<RoomId, NodeJS.Timeout>();
  /** Of what is erased beside rooms. */
  readonly #others = new Set<NodeJS.Timeout>();
  #daily: NodeJS.Timeout | undefined;

  constructor(parts: ErasingParts) {
    this.#parts = parts;
  }

  async start(): Promise<void> {
    await this.#look();
    this.#daily = setInterval(() => void this.#look(), LOOK_EVERY_MS);
  }

  async #all(): Promise<Erasure[]> {
    const found = await this.#parts.log.values(PREFIX);
    return found.map(({ value }) => JSON.parse(value) as Erasure);
  }

  /** Rooms that are erased or about to be. */
  async rooms(): Promise<ReadonlySet<RoomId>> {
    return new Set((await this.#all()).map(({ room }) => room));
  }

  async isErased(room: RoomId): Promise<boolean> {
    return (await this.#parts.log.value(keyOf(room))) !== undefined;
  }

  /** What has been erased in the last weeks, the newest first. */
  async list(): Promise<Erasure[]> {
    return (await this.#all()).sort((a, b) => b.at - a.at);
  }

  /** When a room is erased by itself, as things are. */
  dueOn(lastUsed: Millis): Millis | null {
    const { afterDays } = this.#parts;
    return afterDays === null ? null : lastUsed + afterDays * DAY_MS;
  }

  /** Hides a room and erases it after the time to take that back. */
  async erase({ id, word, openedAt }: RoomRecord, why: ErasedRoom['why']): Promise<'done' | 'full'> {
    const erasure: Erasure = { room: id, word, openedAt, at: this.#parts.now(), why, doneAt: null };
    const kept = await this.#parts.log.setValue(keyOf(id), JSON.stringify(erasure));
    if (kept === 'full') return kept;
    await this.#parts.hidden(id);
    this.#soon(erasure);
    return 'done';
  }

  /** Takes an erasure back; false where it is too late. */
  async keep(room: RoomId): Promise<boolean> {
    const value = await this.#parts.log.value(keyOf(room));
    const { doneAt } = value === undefined ? { doneAt: 0 } : (JSON.parse(value) as Erasure);
    if (doneAt !== null) return false;
    clearTimeout(this.#timers.get(room));
    this.#timers.delete(room);
    return this.#parts.log.dropValue(keyOf(room));
  }

  /** Forgets something else that was erased, in so many ms, when that can't be taken back any more. */
  later(forget: () => Promise<unknown>, waitMs: number): void {
    const timer = setTimeout(() => {
      this.#others.delete(timer);
      forget().catch((error: unknown) => this.#parts.trouble('forgetting what was erased', error));
    }, waitMs);
    this.#others.add(timer);
  }

  #soon(erasure: Erasure): void {
    const wait = Math.max(0, erasure.at + UNDO_MS - this.#parts.now());
    const timer = setTimeout(() => void this.#finish(erasure), wait);
    this.#timers.set(erasure.room, timer);
  }

  async #finish(erasure: Erasure): Promise<void> {
    const { log, now, trouble } = this.#parts;
    this.#timers.delete(erasure.room);
    try {
      // Taken back at another process meanwhile.
      if (!(await this.isErased(erasure.room))) return;
      await log.remove(erasure.room);
      await log.setValue(keyOf(erasure.room), JSON.stringify({ ...erasure, doneAt: now() }));
    } catch (error) {
      trouble(`erasing room ${erasure.room}`, error);
    }
  }

  /** At the start and once a day: erasures to carry out, rooms that are too old, notes that are. */
  async #look(): Promise<void> {
    const { log, now, forget, trouble } = this.#parts;
    try {
      for (const erasure of await this.#all()) {
        const { room, doneAt } = erasure;
        // Begun by a process that has ended since.
        if (doneAt === null && !this.#timers.has(room)) this.#soon(erasure);
        if (doneAt === null || doneAt + SAID_FOR_MS >= now()) continue;
        await forget(room);
        await log.dropValue(keyOf(room));
      }
      await this.#parts.forgetOthers();
      await this.#eraseOld();
    } catch (error) {
      trouble('looking for rooms that are too old', error);
    }
  }

  async #eraseOld(): Promise<void> {
    const { log, now } = this.#parts;
    const hidden = await this.rooms();
    const records = await log.rooms();
    // In parts, so that neither a database with very many rooms nor the event loop is held up.
    for (let i = 0; i < records.length; i += ROOMS_AT_ONCE) {
      const some = records.slice(i, i + ROOMS_AT_ONCE);
      const used = await log.lastUsed(some.map(({ id }) => id));
      for (const record of some) {
        const due = this.dueOn(used.get(record.id) ?? record.openedAt);
        if (due !== null && due <= now() && !hidden.has(record.id)) await this.erase(record, 'age');
      }
    }
  }

  close(): void {
    clearInterval(this.#daily);
    for (const timer of [...this.#timers.values(), ...this.#others]) clearTimeout(timer);
    this.#timers.clear();
    this.#others.clear();
  }
}
