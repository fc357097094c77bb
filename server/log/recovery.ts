import {
  closeSync,
  copyFileSync,
  existsSync,
  ftruncateSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { type Kysely, sql } from 'kysely';
import Database from 'libsql';
import { isSound, readableRows } from './damage.ts';
import { type FoundRows, type Rows, type Salvaged, salvaged } from './salvage.ts';
import { SUMMED } from './sums.ts';
import type { Tables } from './tables.ts';
import { mendedWrites } from './write-ahead.ts';

/**
 * Which file of a data folder holds the rooms. The first is rooms.db; a damaged one stays as it is, and
 * what can be read of it goes into the next: rooms-2.db, rooms-3.db, … Nothing is renamed or replaced,
 * which systems that lock open files would not allow, and a crash at any moment leaves a folder from
 * which the next start goes on.
 */

export interface Recovery extends Omit<Salvaged, 'rows'> {
  readonly damagedFile: string;
  readonly file: string;
}

const NAME = /^rooms(?:-(\d+))?\.db$/;
const nameOf = (number: number) => (number === 1 ? 'rooms.db' : `rooms-${number}.db`);
/** `user_version` of a recovered file that is complete. No single turned bit makes it 0. */
const COMPLETE = 0x48_61_72_62;
/** That of every file that this server makes. */
const PAGE_BYTES = 4096;
/** Where the header says how many pages there are (SQLite file format 1.3.7). */
const PAGE_COUNT_AT = 28;
const ROWS_AT_ONCE = 100;
const SIDE_FILES = ['-wal', '-shm', '-journal'] as const;

/** Stands beside a file in which damage was found while it was in use, for the next start to see. */
const markOf = (file: string) => `${file}-damaged`;
export const markDamaged = (file: string): void => writeFileSync(markOf(file), '');

const writesOf = (file: string) => `${file}-wal`;
const isAsWritten = (file: string) =>
  !existsSync(markOf(file)) && mendedWrites(writesOf(file)) === undefined && isSound(file);

/** A recovered file whose making was cut off. Damaged ones are not taken for one. */
function isUnfinished(path: string): boolean {
  try {
    const database = new Database(path, { readonly: true });
    const [row] = database.prepare('pragma user_version').all([]) as { user_version: number }[];
    database.close();
    return row?.user_version === 0;
  } catch {
    return false;
  }
}

/** The number of the newest complete file; removes unfinished ones. 0 in a new folder. */
function newestIn(folder: string): number {
  const numbers = readdirSync(folder).flatMap((name) => {
    const match = NAME.exec(name);
    return match ? [Number(match[1] ?? 1)] : [];
  });
  for (const number of numbers.sort((a, b) => b - a)) {
    const path = join(folder, nameOf(number));
    if (number === 1 || !isUnfinished(path)) return number;
    for (const side of ['', ...SIDE_FILES]) rmSync(path + side, { force: true });
  }
  return 0;
}

/** The first page of a file: its header, and where each of its tables begins. */
function firstPageOf(path: string): Buffer {
  const page = Buffer.alloc(PAGE_BYTES);
  const file = openSync(path, 'r');
  readSync(file, page, 0, PAGE_BYTES, 0);
  closeSync(file);
  return page;
}

/** Puts a first page in place, or leaves it, and writes into it how many pages there really are. */
function mendFirstPage(copy: string, page: Buffer): void {
  const pages = Math.ceil(statSync(copy).size / PAGE_BYTES);
  page.writeUInt32BE(pages, PAGE_COUNT_AT);
  const file = openSync(copy, 'r+');
  writeSync(file, page, 0, PAGE_BYTES, 0);
  ftruncateSync(file, pages * PAGE_BYTES);
  closeSync(file);
}

function rowsIn(database: Database.Database): FoundRows {
  const names = Object.keys(SUMMED) as (keyof Tables)[];
  const tables = names.map((table) => [table, [...readableRows(database, table)]]);
  return Object.fromEntries(tables) as FoundRows;
}

function eventsIn(database: Database.Database): number {
  let events = 0;
  for (const _ of readableRows(database, 'events')) events++;
  return events;
}

/** What can be read of the copy that has more events, the first where both have as many. */
function rowsOfBetter(copies: readonly [string, string]): FoundRows {
  const [first, second] = [new Database(copies[0]), new Database(copies[1])];
  try {
    return rowsIn(eventsIn(second) > eventsIn(first) ? second : first);
  } finally {
    first.close();
    second.close();
  }
}

/**
 * Reads copies, so that the damaged file stays as it was found. Its first page may be what is damaged;
 * every file begins with the same tables in the same order, so the first page of a new one fits too.
 */
function read(path: string, sparePage: Buffer): FoundRows {
  const home = mkdtempSync(`${path}-reading-`);
  const copies = ['as-it-is.db', 'spare-page.db'].map((name) => join(home, name)) as [string, string];
  try {
    const writes = writesOf(path);
    const mended = mendedWrites(writes);
    for (const copy of copies) {
      copyFileSync(path, copy);
      if (mended) writeFileSync(writesOf(copy), mended);
      else if (existsSync(writes)) copyFileSync(writes, writesOf(copy));
    }
    mendFirstPage(copies[0], firstPageOf(copies[0]));
    mendFirstPage(copies[1], sparePage);
    return rowsOfBetter(copies);
  } finally {
    rmSync(home, { recursive: true, force: true, maxRetries: 3 });
  }
}

async function insertRows(trx: Kysely<Tables>, rows: Rows): Promise<void> {
  for (const table of Object.keys(SUMMED) as (keyof Tables)[]) {
    for (let i = 0; i < rows[table].length; i += ROWS_AT_ONCE) {
      await trx
        .insertInto(table)
        .values(rows[table].slice(i, i + ROWS_AT_ONCE))
        .onConflict((c) => c.doNothing())
        .execute();
    }
  }
}

export type OpenFile = (path: string) => Promise<Kysely<Tables>>;

/** Puts what can be read of `damagedFile` into a new `file`, all of it or nothing. */
async function recover(damagedFile: string, file: string, open: OpenFile): Promise<Recovery> {
  const db = await open(file);
  try {
    await sql`pragma wal_checkpoint(truncate)`.execute(db);
    const { rows, ...counts } = salvaged(read(damagedFile, firstPageOf(file)));
    await db.transaction().execute(async (trx) => {
      await insertRows(trx, rows);
      await sql.raw(`pragma user_version = ${COMPLETE}`).execute(trx);
    });
    return { ...counts, damagedFile, file };
  } finally {
    await db.destroy();
  }
}

/** The file that holds the rooms of `folder`, and what was done where the last one was damaged. */
export async function soundFile(
  folder: string,
  open: OpenFile,
): Promise<{ file: string; recovery: Recovery | null }> {
  const number = newestIn(folder);
  const file = join(folder, nameOf(Math.max(1, number)));
  if (number === 0 || isAsWritten(file)) return { file, recovery: null };
  const recovery = await recover(file, join(folder, nameOf(number + 1)), open);
  return { file: recovery.file, recovery };
}
