import Database from 'libsql';
import { MIGRATION_NAMES } from './migrations.ts';
import { isWhole, type Row, SUMMED } from './sums.ts';
import type { Tables } from './tables.ts';

/** Finds out whether a database file is damaged, and reads what can still be read of one. */

/** Where a part of a table cannot be read, so many row numbers behind it are tried one by one. */
const STEPS_OF_ONE = 1000;
const MOST_STEPS = 2200;
/**
 * Summing takes longer than all else at a start, and old lessons are seldom opened again: those are summed
 * when they are. As many as a server loads by itself when it starts.
 */
const NEWEST_ROOMS = 20;

const tables = Object.keys(SUMMED) as (keyof Tables)[];

const countOf = (database: Database.Database, query: string): number =>
  (database.prepare(`select count(*) as n from ${query}`).all([]) as { n: number }[])[0]?.n ?? 0;

/**
 * A file of a newer version has all steps that this one knows and more; one that has others in place
 * of them has been damaged.
 */
function hasSteps(database: Database.Database): boolean {
  if (countOf(database, "sqlite_schema where name = 'kysely_migration'") === 0) return true;
  const all = countOf(database, 'kysely_migration');
  const names = MIGRATION_NAMES.map((name) => `'${name}'`).join();
  const ours = countOf(database, `kysely_migration where name in (${names})`);
  return ours === all || ours === MIGRATION_NAMES.length;
}

const NUMBERS: readonly string[] = ['seq', 'at', 'version', 'opened_at', 'sum'];

/**
 * Reads rows so that nothing in them can upset the reader: bytes that are no text come as bytes, and
 * whatever stands in the place of a number is made one.
 */
function rowsQuery(database: Database.Database, table: keyof Tables): string {
  const hasSums = countOf(database, `pragma_table_info('${table}') where name = 'sum'`) > 0;
  const columns = SUMMED[table].map((column) =>
    NUMBERS.includes(column)
      ? `cast(${column} as integer) as ${column}`
      : `cast(${column} as blob) as ${column}`,
  );
  const sum = hasSums ? 'cast(sum as integer) as sum' : 'null as sum';
  return `select rowid as row_number, ${columns.join(', ')}, ${sum} from ${table}`;
}

const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** A row as it was written; undefined where a text of it is none any more. */
function decoded(row: Row): Row | undefined {
  try {
    const entries = Object.entries(row).map(([column, value]) => [
      column,
      ArrayBuffer.isView(value) || value instanceof ArrayBuffer ? utf8.decode(value) : value,
    ]);
    return Object.fromEntries(entries) as Row;
  } catch {
    return undefined;
  }
}

/** The rows of a table that are looked at when a server starts. */
function newestQuery(database: Database.Database, table: keyof Tables): string {
  const all = rowsQuery(database, table);
  if (table === 'rooms' || table === 'seats' || table === 'server_values') return all;
  return `${all} where room in (select id from rooms order by opened_at desc limit ${NEWEST_ROOMS})`;
}

function areWhole(table: keyof Tables, rows: Iterable<unknown>): boolean {
  for (const row of rows) {
    const text = decoded(row as Row);
    if (!text || !isWhole(table, text)) return false;
  }
  return true;
}

const isWholeTable = (database: Database.Database, table: keyof Tables): boolean =>
  areWhole(table, database.prepare(newestQuery(database, table)).iterate([]));

/** False where `look` finds damage, or stumbles over it. */
function soundBy(look: () => boolean): boolean {
  try {
    return look();
  } catch (error) {
    if (isDamage(error)) return false;
    throw error;
  }
}

export type PartOfRoom = 'events' | 'documents' | 'answers' | 'latest';

/** Whether a part of a room, or the one document `id` of it, is as it was written. */
export function isSoundPart(
  database: Database.Database,
  part: PartOfRoom,
  room: string,
  id?: string,
): boolean {
  const one = id === undefined ? '' : 'and id = ?';
  const values = id === undefined ? [room] : [room, id];
  return soundBy(() => {
    const query = `${rowsQuery(database, part)} where room = ? ${one}`;
    return areWhole(part, database.prepare(query).iterate(values));
  });
}

/**
 * Whether the file is as it was written: SQLite's own check of tables and indices, some 3 ms a
 * megabyte, then the sums of the newest rooms, some 50 ms a full lesson on a busy laptop.
 */
export function isSound(path: string): boolean {
  return soundBy(() => {
    const database = new Database(path, { readonly: true });
    try {
      if (countOf(database, "pragma_integrity_check(1) where integrity_check = 'ok'") !== 1) return false;
      const made = tables.filter((name) => countOf(database, `sqlite_schema where name = '${name}'`) > 0);
      return hasSteps(database) && made.every((table) => isWholeTable(database, table));
    } finally {
      database.close();
    }
  });
}

/** What SQLite says of a file that is no longer what it wrote. Other errors are not about damage. */
const isDamage = (error: unknown): boolean =>
  error instanceof Error &&
  'code' in error &&
  /^SQLITE_(CORRUPT|NOTADB|ERROR|FORMAT|IOERR_SHORT_READ)/.test(String(error.code));

function hasTable(database: Database.Database, table: keyof Tables): boolean {
  try {
    return countOf(database, `sqlite_schema where name = '${table}'`) > 0;
  } catch (error) {
    if (isDamage(error)) return false;
    throw error;
  }
}

/** Behind the last row that was read: one by one at first, then in ever longer steps. */
const skipAfter = (failures: number) =>
  failures <= STEPS_OF_ONE ? failures : STEPS_OF_ONE + (failures - STEPS_OF_ONE) ** 2;

/** All rows of a table that can be read, whichever of its pages are lost. */
export function* readableRows(database: Database.Database, table: keyof Tables): Generator<Row> {
  if (!hasTable(database, table)) return;
  let last = 0;
  for (let failures = 0; failures <= MOST_STEPS; failures++) {
    try {
      const query = `${rowsQuery(database, table)} not indexed where rowid > ? order by rowid`;
      for (const row of database.prepare(query).iterate([last + skipAfter(failures)])) {
        last = Number((row as Row).row_number);
        failures = 0;
        const text = decoded(row as Row);
        if (text) yield text;
      }
      return;
    } catch (error) {
      if (!isDamage(error)) throw error;
    }
  }
}
