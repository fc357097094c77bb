import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import Database from 'libsql';
import type { EventLog } from './event-log.ts';
import { migrate } from './migrations.ts';
import { SqlLog } from './sql-log.ts';
import type { Tables } from './tables.ts';

const FILE = 'rooms.db';
/** How long a second process may hold the file before a write gives up, ms. */
const BUSY_MS = 5000;

const isFull = (error: unknown) =>
  error instanceof Error && 'code' in error && (error.code === 'SQLITE_FULL' || error.code === 'ENOSPC');

/**
 * The log in one SQLite file of `folder`, which is made where it is missing. A commit is synced to the
 * disk before it returns (`synchronous = FULL`), which is what an acknowledgement promises.
 */
export async function openSqliteLog(folder: string): Promise<EventLog> {
  mkdirSync(folder, { recursive: true });
  const database = new Database(join(folder, FILE));
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.pragma(`busy_timeout = ${BUSY_MS}`);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
  try {
    await migrate(db as unknown as Kysely<never>);
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return new SqlLog(db, { isFull });
}
