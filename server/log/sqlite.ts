import { mkdirSync } from 'node:fs';
import { Kysely, type SqliteDatabase, SqliteDialect, type SqliteStatement } from 'kysely';
import Database from 'libsql';
import type { EventLog } from './event-log.ts';
import { migrate } from './migrations.ts';
import { type OpenFile, type Recovery, soundFile } from './recovery.ts';
import { SqlLog } from './sql-log.ts';
import type { Tables } from './tables.ts';

/** How long a second process may hold the file before a write gives up, ms. */
const BUSY_MS = 5000;

const isFull = (error: unknown) =>
  error instanceof Error && 'code' in error && (error.code === 'SQLITE_FULL' || error.code === 'ENOSPC');

/**
 * A commit is synced to the disk before it returns (`synchronous = FULL`), which is what an
 * acknowledgement promises.
 */
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

/** Leaves everything in the one file, and nothing old beside it: what somebody copies to keep it safe. */
function checkpoint(database: Database.Database): void {
  try {
    database.pragma('wal_checkpoint(truncate)');
  } catch {
    // The next start reads what is beside the file just as well.
  }
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
  return new SqlLog(db, {
    isFull,
    afterRemoval: () => checkpoint(database),
    atEnd: () => checkpoint(database),
  });
}
