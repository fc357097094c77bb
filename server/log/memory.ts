import type { RoomEvent } from '../../shared/room/events.ts';
import type {
  AnswerRecord,
  Append,
  Appended,
  EventLog,
  LatestRecord,
  RoomRecord,
  SeatRecord,
  StoredDocument,
} from './event-log.ts';

interface Shelf {
  readonly record: RoomRecord;
  readonly events: RoomEvent[];
  readonly documents: Map<string, StoredDocument>;
  readonly answers: Map<string, AnswerRecord>;
  readonly latest: Map<string, LatestRecord>;
}

const answerKey = (seat: string, command: string) => JSON.stringify([seat, command]);

/** A log that lives as long as its process: for tests, and for lessons that nobody wants to keep. */
export class MemoryLog implements EventLog {
  readonly #shelves = new Map<string, Shelf>();
  readonly #seats = new Map<string, SeatRecord>();
  readonly #values = new Map<string, string>();

  async openRoom(record: RoomRecord, first: Append): Promise<'done' | 'taken' | 'full'> {
    const taken = [...this.#shelves.values()].some(
      (s) => s.record.id === record.id || s.record.word === record.word,
    );
    if (taken) return 'taken';
    this.#shelves.set(record.id, {
      record,
      events: [],
      documents: new Map(),
      answers: new Map(),
      latest: new Map(),
    });
    await this.append(record.id, first);
    return 'done';
  }

  async append(room: string, parts: Append): Promise<Appended> {
    const shelf = this.#shelves.get(room);
    if (!shelf) return 'gone';
    const { answers = [], events } = parts;
    if (answers.some(({ seat, command }) => shelf.answers.has(answerKey(seat, command)))) return 'answered';
    const last = shelf.events.at(-1)?.seq ?? 0;
    if (events[0] && events[0].seq <= last) return 'clash';
    for (const seat of parts.seats ?? []) {
      if (this.#seats.has(seat.tokenHash)) throw new Error('a token has one seat');
    }
    if (parts.freed !== undefined) this.#free(room, parts.freed);
    shelf.events.push(...structuredClone(events));
    for (const d of parts.documents ?? []) if (!shelf.documents.has(d.id)) shelf.documents.set(d.id, d);
    for (const seat of parts.seats ?? []) this.#seats.set(seat.tokenHash, seat);
    for (const one of answers) shelf.answers.set(answerKey(one.seat, one.command), structuredClone(one));
    return 'done';
  }

  async rooms(): Promise<RoomRecord[]> {
    return [...this.#shelves.values()].map((s) => s.record).sort((a, b) => b.openedAt - a.openedAt);
  }

  async roomByWord(word: string) {
    return [...this.#shelves.values()].find((s) => s.record.word === word)?.record;
  }

  async eventsAfter(room: string, seq: number): Promise<RoomEvent[]> {
    return structuredClone(this.#shelves.get(room)?.events.filter((e) => e.seq > seq) ?? []);
  }

  async document(room: string, id: string) {
    return this.#shelves.get(room)?.documents.get(id);
  }

  async documents(room: string) {
    return [...(this.#shelves.get(room)?.documents.values() ?? [])].sort((a, b) => (a.id < b.id ? -1 : 1));
  }

  async answer(room: string, seat: string, command: string) {
    return this.#shelves.get(room)?.answers.get(answerKey(seat, command))?.answer;
  }

  async seat(tokenHash: string) {
    return this.#seats.get(tokenHash);
  }

  async latest(room: string, keys?: readonly string[]): Promise<LatestRecord[]> {
    const all = [...(this.#shelves.get(room)?.latest.values() ?? [])];
    return keys ? all.filter(({ key }) => keys.includes(key)) : all;
  }

  async keepLatest(room: string, values: readonly LatestRecord[]): Promise<void> {
    for (const value of values) this.#shelves.get(room)?.latest.set(value.key, value);
  }

  #free(room: string, team?: string): void {
    for (const [hash, seat] of this.#seats) {
      if (seat.room === room && (team === undefined || seat.team === team)) this.#seats.delete(hash);
    }
  }

  async lastUsed(rooms: readonly string[] | null) {
    const used = [...this.#shelves.values()].map(
      ({ record, events }) => [record.id, Math.max(record.openedAt, events.at(-1)?.at ?? 0)] as const,
    );
    return new Map(used.filter(([id]) => rooms?.includes(id) ?? true));
  }

  async remove(room: string): Promise<void> {
    this.#shelves.delete(room);
    this.#free(room);
  }

  async value(key: string) {
    return this.#values.get(key);
  }

  async values(prefix: string): Promise<LatestRecord[]> {
    const found = [...this.#values].filter(([key]) => key.startsWith(prefix));
    return found.map(([key, value]) => ({ key, value })).sort((a, b) => (a.key < b.key ? -1 : 1));
  }

  async setValue(key: string, value: string): Promise<'done' | 'full'> {
    this.#values.set(key, value);
    return 'done';
  }

  async dropValue(key: string): Promise<boolean> {
    return this.#values.delete(key);
  }

  async check(): Promise<void> {}

  async close(): Promise<void> {}
}
