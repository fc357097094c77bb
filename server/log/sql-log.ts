import { type Kysely, sql } from 'kysely';
import type { RoomEvent, RoomFact } from '../../shared/room/events.ts';
import type { Answer } from '../../shared/wire/protocol.ts';
import type { PartOfRoom } from './damage.ts';
import {
  type Append,
  type Appended,
  type EventLog,
  type LatestRecord,
  type RoomRecord,
  StoreAway,
} from './event-log.ts';
import { holdRoom, insertParts, RoomGone } from './sql-parts.ts';
import { dropValue, lastUsed, oneValue, removeRows, setValue, someValues } from './sql-values.ts';
import { summed } from './sums.ts';
import type { Tables } from './tables.ts';

/** What a database says in its own words. */
export interface Dialect {
  readonly isFull: (error: unknown) => boolean;
  /** Resolves when all commits so far outlive a crash; absent where a commit returns only then. */
  readonly durable?: () => Promise<void>;
  /** Makes a transaction faster that may be lost in a crash. */
  readonly beforeLossyWrite?: string;
  /** Several processes write: a row that others may remove has to be locked. */
  readonly locksRows?: boolean;
  /** Called after rows were removed that nobody must be able to read any longer. */
  readonly afterRemoval?: () => void;
  /** Throws RestartNeeded where what is about to be read of a room is no longer what was written. */
  readonly beforeReading?: (part: PartOfRoom, room: string, id?: string) => void;
  /** Throws RestartNeeded where the store is known to be no longer what it promises. */
  readonly check?: () => void;
  /** Called before the database is let go. */
  readonly atEnd?: () => void;
}

const roomOf = (row: Tables['rooms']): RoomRecord => ({
  id: row.id,
  word: row.word,
  openedAt: Number(row.opened_at),
});

const eventOf = (row: Pick<Tables['events'], 'seq' | 'at' | 'version' | 'fact'>): RoomEvent => ({
  seq: row.seq,
  at: Number(row.at),
  version: row.version,
  fact: JSON.parse(row.fact) as RoomFact,
});

/**
 * The log in any SQL database that kysely speaks to. A failed insert is understood by looking at what
 * is there, never by the wording of an error, so that the same code serves several databases.
 */
export class SqlLog implements EventLog {
  readonly #db: Kysely<Tables>;
  readonly #dialect: Dialect;

  constructor(db: Kysely<Tables>, dialect: Dialect) {
    this.#db = db;
    this.#dialect = dialect;
  }

  /** A failure that has already rolled back, as on a full disk, must not be hidden by a second one. */
  #transaction(work: (trx: Kysely<Tables>) => Promise<void>): Promise<void> {
    return this.#db.connection().execute(async (trx) => {
      await sql`begin`.execute(trx);
      try {
        await work(trx);
        await sql`commit`.execute(trx);
      } catch (error) {
        await sql`rollback`.execute(trx).catch(() => undefined);
        throw error;
      }
    });
  }

  async openRoom(room: RoomRecord, first: Append): Promise<'done' | 'taken' | 'full'> {
    try {
      await this.#transaction(async (trx) => {
        await trx
          .insertInto('rooms')
          .values(summed('rooms', { id: room.id, word: room.word, opened_at: room.openedAt }))
          .execute();
        await insertParts(trx, room.id, first);
      });
    } catch (error) {
      if (error instanceof StoreAway) throw error;
      if (this.#dialect.isFull(error)) return 'full';
      const found = await this.#db
        .selectFrom('rooms')
        .select('id')
        .where((eb) => eb.or([eb('id', '=', room.id), eb('word', '=', room.word)]))
        .executeTakeFirst();
      if (found) return 'taken';
      throw error;
    }
    await this.#dialect.durable?.();
    return 'done';
  }

  async append(room: string, parts: Append): Promise<Appended> {
    const result = await this.#written(room, parts);
    // Also where others wrote before: what is said of them must not be taken back by a crash either.
    if (result !== 'full') await this.#dialect.durable?.();
    return result;
  }

  async #written(room: string, parts: Append): Promise<Appended> {
    try {
      await this.#transaction(async (trx) => {
        await holdRoom(trx, room, this.#dialect.locksRows ?? false);
        await insertParts(trx, room, parts);
      });
      return 'done';
    } catch (error) {
      if (error instanceof RoomGone) return 'gone';
      if (error instanceof StoreAway) throw error;
      if (this.#dialect.isFull(error)) return 'full';
      const { answers = [], events } = parts;
      for (const { seat, command } of answers) if (await this.answer(room, seat, command)) return 'answered';
      const first = events[0];
      if (first && (await this.#lastSeq(room)) >= first.seq) return 'clash';
      throw error;
    }
  }

  async #lastSeq(room: string): Promise<number> {
    const row = await this.#db
      .selectFrom('events')
      .select((eb) => eb.fn.max('seq').as('last'))
      .where('room', '=', room)
      .executeTakeFirst();
    return Number(row?.last ?? 0);
  }

  async rooms(): Promise<RoomRecord[]> {
    const rows = await this.#db.selectFrom('rooms').selectAll().orderBy('opened_at', 'desc').execute();
    return rows.map(roomOf);
  }

  async roomByWord(word: string): Promise<RoomRecord | undefined> {
    const row = await this.#db.selectFrom('rooms').selectAll().where('word', '=', word).executeTakeFirst();
    return row && roomOf(row);
  }

  async check(): Promise<void> {
    this.#dialect.check?.();
    await this.roomByWord('');
  }

  async eventsAfter(room: string, seq: number): Promise<RoomEvent[]> {
    // A room that is being loaded; later ones have only just been written.
    if (seq === 0)
      for (const part of ['events', 'answers'] as const) this.#dialect.beforeReading?.(part, room);
    const rows = await this.#db
      .selectFrom('events')
      .select(['seq', 'at', 'version', 'fact'])
      .where('room', '=', room)
      .where('seq', '>', seq)
      .orderBy('seq')
      .execute();
    return rows.map(eventOf);
  }

  async document(room: string, id: string) {
    this.#dialect.beforeReading?.('documents', room, id);
    return this.#db
      .selectFrom('documents')
      .select(['id', 'kind', 'body'])
      .where('room', '=', room)
      .where('id', '=', id)
      .executeTakeFirst();
  }

  async documents(room: string) {
    this.#dialect.beforeReading?.('documents', room);
    return this.#db
      .selectFrom('documents')
      .select(['id', 'kind', 'body'])
      .where('room', '=', room)
      .orderBy('id')
      .execute();
  }

  async answer(room: string, seat: string, command: string): Promise<Answer | undefined> {
    const row = await this.#db
      .selectFrom('answers')
      .select('answer')
      .where('room', '=', room)
      .where('seat', '=', seat)
      .where('command', '=', command)
      .executeTakeFirst();
    return row && (JSON.parse(row.answer) as Answer);
  }

  async seat(tokenHash: string) {
    const row = await this.#db
      .selectFrom('seats')
      .selectAll()
      .where('token_hash', '=', tokenHash)
      .executeTakeFirst();
    return row && { tokenHash: row.token_hash, room: row.room, team: row.team };
  }

  async latest(room: string, keys?: readonly string[]): Promise<LatestRecord[]> {
    this.#dialect.beforeReading?.('latest', room);
    const all = this.#db.selectFrom('latest').select(['key', 'value']).where('room', '=', room);
    return (keys ? all.where('key', 'in', keys) : all).execute();
  }

  async keepLatest(room: string, values: readonly LatestRecord[]): Promise<void> {
    // In one order everywhere, so that two processes cannot wait for one another.
    const inOrder = [...values].sort((a, b) => (a.key < b.key ? -1 : 1));
    const { beforeLossyWrite, locksRows = false } = this.#dialect;
    const writing = this.#transaction(async (trx) => {
      if (beforeLossyWrite) await sql.raw(beforeLossyWrite).execute(trx);
      await holdRoom(trx, room, locksRows);
      for (const { key, value } of inOrder) {
        const row = summed('latest', { room, key, value });
        await trx
          .insertInto('latest')
          .values(row)
          .onConflict((c) => c.columns(['room', 'key']).doUpdateSet({ value, sum: row.sum }))
          .execute();
      }
    });
    await writing.catch((error: unknown) => error instanceof RoomGone || Promise.reject(error));
  }

  async lastUsed(rooms: readonly string[] | null) {
    return lastUsed(this.#db, rooms);
  }

  async remove(room: string): Promise<void> {
    await this.#transaction((trx) => removeRows(trx, room));
    await this.#dialect.durable?.();
    this.#dialect.afterRemoval?.();
  }

  value(key: string) {
    return oneValue(this.#db, key);
  }

  values(prefix: string) {
    return someValues(this.#db, prefix);
  }

  async setValue(key: string, value: string): Promise<'done' | 'full'> {
    try {
      await setValue(this.#db, key, value);
    } catch (error) {
      if (this.#dialect.isFull(error)) return 'full';
      throw error;
    }
    await this.#dialect.durable?.();
    return 'done';
  }

  async dropValue(key: string): Promise<boolean> {
    const dropped = await dropValue(this.#db, key);
    if (dropped) await this.#dialect.durable?.();
    return dropped;
  }

  async close(): Promise<void> {
    this.#dialect.atEnd?.();
    await this.#db.destroy();
  }
}
