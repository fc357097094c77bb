import { Kysely, PostgresDialect, type PostgresPool, type PostgresPoolClient } from 'kysely';
import pg from 'pg';
import { StoreAway } from './event-log.ts';
import { migrate } from './migrations.ts';
import { SqlLog } from './sql-log.ts';
import type { Tables } from './tables.ts';

/** Connections of one server process; commands wait for a free one. */
const MOST_CONNECTIONS = 10;
/** How long a database may take before it counts as away, ms: to connect, for a statement, to answer. */
const CONNECT_MS = 4000;
const STATEMENT_MS = 8000;
const ANSWER_MS = 10_000;

/**
 * SQLSTATE classes and codes of PostgreSQL's appendix "Error Codes" that say nothing of the statement
 * but that now is no time for it: no connection, too many of them, cancelled, shutting down or starting,
 * a stand-by that may not write yet, and a deadlock that was resolved.
 */
const AWAY = /^(08...|53300|57014|57P0[1-5]|25006|40001|40P01)$/;
const DISK_FULL = '53100';

const codeOf = (error: unknown) => (error instanceof pg.DatabaseError ? (error.code ?? null) : null);

/** What the driver throws without a SQLSTATE never came from the database: the connection is gone. */
export function isAway(error: unknown): boolean {
  if (!(error instanceof Error) || error instanceof TypeError) return false;
  const code = codeOf(error);
  return code === null || AWAY.test(code);
}

function translated(error: unknown): never {
  throw isAway(error) ? new StoreAway('the database does not answer', { cause: error }) : error;
}

/** A connection that says StoreAway where the database is what failed, and is not used again then. */
function watched(client: pg.PoolClient): PostgresPoolClient {
  let broken = false;
  const query = async (text: string, values: readonly unknown[]) => {
    try {
      return await client.query(text, [...values]);
    } catch (error) {
      broken ||= isAway(error) && codeOf(error) === null;
      return translated(error);
    }
  };
  // Kysely's type speaks of cursors too, which only streams use.
  return { query: query as unknown as PostgresPoolClient['query'], release: () => client.release(broken) };
}

export const connectionConfig = (url: string): pg.ClientConfig => ({
  connectionString: url,
  connectionTimeoutMillis: CONNECT_MS,
  statement_timeout: STATEMENT_MS,
  query_timeout: ANSWER_MS,
  keepAlive: true,
  application_name: 'harbour-lines',
});

function openPool(url: string): PostgresPool {
  const pool = new pg.Pool({ ...connectionConfig(url), max: MOST_CONNECTIONS });
  // A connection that breaks fails its query; one that breaks between two must not end the process.
  pool.on('error', () => undefined);
  pool.on('connect', (client) => client.on('error', () => undefined));
  return {
    connect: async () => watched(await pool.connect().catch(translated)),
    end: () => pool.end(),
  };
}

/**
 * The log in a PostgreSQL database, which any number of server processes may share. A commit is on the
 * database's disk before it returns, as `synchronous_commit` has it by default. Whole rows are
 * PostgreSQL's own to keep (data checksums, backup): sums are written, and not looked at.
 */
export async function openPostgresLog(url: string): Promise<SqlLog> {
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool: openPool(url) }) });
  try {
    await migrate(db as unknown as Kysely<never>);
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return new SqlLog(db, {
    isFull: (error) => codeOf(error) === DISK_FULL,
    locksRows: true,
    beforeLossyWrite: 'set local synchronous_commit to off',
  });
}
