import { closeSync, fdatasync, mkdirSync, openSync } from 'node:fs';
import { promisify } from 'node:util';
import { Kysely, type SqliteDatabase, SqliteDialect, type SqliteStatement } from 'kysely';
import Database from 'libsql';
import { isSoundPart, type PartOfRoom } from './damage.ts';
import { type EventLog, RestartNeeded } from './event-log.ts';
import { migrate } from './migrations.ts';
import { markDamaged, type OpenFile, type Recovery, soundFile } from './recovery.ts';
import { SqlLog } from './sql-log.ts';
import { Syncing } from './syncing.ts';
import type { Tables } from './tables.ts';

/** How long a second process may hold the file before a write gives up, ms. */
const BUSY_MS = 5000;
/**
 * So many pages are written before they are copied from the log of writes into the file proper, with two
 * syncs for which the event loop waits: in thirty busy rooms every ten seconds or so, some 16 MB.
 */
const PAGES_BETWEEN_CHECKPOINTS = 4000;

const isFull = (error: unknown) =>
  error instanceof Error && 'code' in error && (error.code === 'SQLITE_FULL' || error.code === 'ENOSPC');

/** Every commit is synced to the disk before it returns. */
async function openDatabase(path: string) {
  const database = new Database(path);
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  // What is erased is overwritten with zeros; its pages are used again, the file does not shrink.
  database.pragma('secure_delete = ON');
  database.pragma(`busy_timeout = ${BUSY_MS}`);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: keepingStatements(database) }) });
  try {
    await migrate(db as unknown as Kysely<never>);
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return { database, db };
}

/** The log asks the same few things over and over: each is prepared once. */
function keepingStatements(database: Database.Database): SqliteDatabase {
  const prepared = new Map<string, SqliteStatement>();
  return {
    close: () => database.close(),
    prepare: (text) => {
      const statement = prepared.get(text) ?? database.prepare(text);
      prepared.set(text, statement);
      return statement;
    },
  };
}

const openFile: OpenFile = async (path) => (await openDatabase(path)).db;

/**
 * From here on a commit is only written, and we sync the log of writes ourselves (`Syncing`), which is
 * what an acknowledgement promises: the event loop goes on meanwhile, and commits share a sync. What is
 * lossy is not synced at all.
 */
function syncingOurselves(
  database: Database.Database,
  file: string,
): { syncing: Syncing; close: () => void } {
  // The file stays the same as long as the database is open. Windows syncs only what may be written to.
  const writes = openSync(`${file}-wal`, 'r+');
  database.pragma('synchronous = NORMAL');
  database.pragma(`wal_autocheckpoint = ${PAGES_BETWEEN_CHECKPOINTS}`);
  const sync = promisify(fdatasync);
  return { syncing: new Syncing(() => sync(writes)), close: () => closeSync(writes) };
}

/** Leaves everything in the one file, and nothing old beside it: what somebody copies to keep it safe. */
function checkpoint(database: Database.Database): void {
  try {
    database.pragma('wal_checkpoint(truncate)');
  } catch {
    // The next start reads what is beside the file just as well.
  }
}

/**
 * Sums what is read of a room when it is loaded, and its documents as they are. What is damaged is not
 * given out until the next start, which recovers the rest; the other rooms go on.
 */
function summing(database: Database.Database, file: string) {
  let damaged = false;
  const check = () => {
    if (damaged) throw new RestartNeeded(`${file} is damaged. Restart the server: it recovers the rest.`);
  };
  const beforeReading = (part: PartOfRoom, room: string, id?: string) => {
    if (isSoundPart(database, part, room, id)) return;
    damaged = true;
    try {
      markDamaged(file);
    } catch {
      // On a full disk. The room stays closed, and is found out again by whoever opens it.
    }
    check();
  };
  return { check, beforeReading };
}

export interface SqliteOptions {
  readonly told?: (recovery: Recovery) => void;
  readonly mostPages?: number;
}

/**
 * The log in one SQLite file of `folder`, which is made where it is missing. A damaged file is kept and
 * its good part goes into a new one; `told` hears of it. Beyond `mostPages` of 4096 bytes it
 * is full, as a disk may be.
 */
export async function openSqliteLog(
  folder: string,
  { told, mostPages }: SqliteOptions = {},
): Promise<EventLog> {
  mkdirSync(folder, { recursive: true });
  const { file, recovery } = await soundFile(folder, openFile);
  if (recovery) told?.(recovery);
  const { database, db } = await openDatabase(file);
  if (mostPages !== undefined) database.pragma(`max_page_count = ${mostPages}`);
  const { syncing, close } = syncingOurselves(database, file);
  const sums = summing(database, file);
  return new SqlLog(db, {
    isFull,
    durable: () => syncing.synced(),
    beforeReading: sums.beforeReading,
    check: () => {
      syncing.check();
      sums.check();
    },
    afterRemoval: () => checkpoint(database),
    atEnd: () => {
      close();
      checkpoint(database);
    },
  });
}
