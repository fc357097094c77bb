import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Recovery } from '../../server/log/recovery.ts';
import { openSqliteLog } from '../../server/log/sqlite.ts';
import { mendedWrites } from '../../server/log/write-ahead.ts';
import { SEED } from '../seed.ts';
import { ALL, expectSound, fill } from './known-rooms.ts';
import { randomFrom } from './random.ts';

/** What a killed server leaves beside its data file, in which a bit has turned or whose end is lost. */

const FLIPS = 8;
/** SQLite file format, section 4.1 and 4.2: a header of 32 bytes, then frames of 24 bytes and a page each. */
const HEADER = 32;
const FRAME = 24 + 4096;

let home: string;
let main: Buffer;
let writes: Buffer;
beforeAll(async () => {
  home = mkdtempSync(join(tmpdir(), 'harbour-writes-'));
  const log = await openSqliteLog(join(home, 'whole'));
  await fill(log);
  // As it lies there while the server runs, and after it is killed.
  main = readFileSync(join(home, 'whole', 'rooms.db'));
  writes = readFileSync(join(home, 'whole', 'rooms.db-wal'));
  await log.close();
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

function leftBehind(left: Buffer): string {
  const folder = mkdtempSync(join(home, 'case-'));
  writeFileSync(join(folder, 'rooms.db'), main);
  writeFileSync(join(folder, 'rooms.db-wal'), left);
  return folder;
}

async function opened(left: Buffer) {
  const folder = leftBehind(left);
  const told: Recovery[] = [];
  const log = await openSqliteLog(folder, { told: (recovery) => told.push(recovery) });
  const kept = await expectSound(log);
  await log.close();
  return { folder, told, kept };
}

function flipped(at: number, bit = 1): Buffer {
  const bytes = Buffer.from(writes);
  bytes[at]! ^= bit;
  return bytes;
}

describe('what a killed server leaves', () => {
  it('is taken without a word, with everything in it', async () => {
    const { told, kept } = await opened(writes);
    expect([told, kept]).toEqual([[], ALL]);
  });

  it('with its end cut off gives back what is in the rest', async () => {
    for (const part of [0.9, 0.5, 0.2]) {
      const { told, kept } = await opened(writes.subarray(0, Math.floor(writes.length * part)));
      expect(told).toEqual([]);
      expect(kept).toBeGreaterThan(ALL * (part - 0.15));
    }
  });
});

/** The number of the page in each frame. */
const pagesOf = (left: Buffer): number[] =>
  Array.from({ length: (left.length - HEADER) / FRAME }, (_, i) => left.readUInt32BE(HEADER + i * FRAME));

describe('a turned bit in what a killed server leaves', () => {
  it(`is found, said and costs a row at most, ${FLIPS} times (seed ${SEED})`, async () => {
    const random = randomFrom(SEED);
    for (let i = 0; i < FLIPS; i++) {
      const left = flipped(Math.floor(random() * (writes.length - FRAME)), 1 << Math.floor(random() * 8));
      const { folder, told, kept } = await opened(left);
      expect(told).toMatchObject([{ damagedFile: join(folder, 'rooms.db') }]);
      expect(kept).toBeGreaterThan(ALL * 0.9);
      expect(readFileSync(join(folder, 'rooms.db-wal')).equals(left)).toBe(true);
      expect(readFileSync(join(folder, 'rooms.db')).equals(main)).toBe(true);
      rmSync(folder, { recursive: true });
    }
  });

  it.each([
    ['the header: its mark', 3],
    ['the header: the size of a page', 10],
    ['the header: its salts', 17],
    ['the header: its sum', 25],
    ['a frame: its salts', HEADER + 5 * FRAME + 9],
    ['a frame: its sum', HEADER + 5 * FRAME + 17],
  ])('in %s costs nothing', async (_, at) => {
    const { told, kept } = await opened(flipped(at));
    expect([told.length, kept]).toEqual([1, ALL]);
  });

  it('in the number of a page costs nothing, where it would stand for the first page from then on', async () => {
    const pages = pagesOf(writes);
    const near = [2, 4, 8, 16, 32, 64].map((bit) => bit + 1);
    const at = pages.findLastIndex((page, i) => near.includes(page) && i < pages.length - 1);
    expect(at).toBeGreaterThan(pages.lastIndexOf(1));
    const { told, kept } = await opened(flipped(HEADER + at * FRAME + 3, pages[at]! ^ 1));
    expect([told.length, kept]).toEqual([1, ALL]);
  });

  // SQLite file format, section 1.3 and 1.6: the size of a page, and what kind of page the first one is.
  it.each([16, 100])('and another in byte %i of the newest first page cost nothing', async (at) => {
    const newest = HEADER + pagesOf(writes).lastIndexOf(1) * FRAME + 24;
    const { told, kept } = await opened(flipped(newest + at, 3));
    expect([told.length, kept]).toEqual([1, ALL]);
  });
});

describe('mendedWrites', () => {
  const mended = (left: Buffer) => mendedWrites(join(leftBehind(left), 'rooms.db-wal'));

  it('turns a single bit back, also in the page from which all events are found', () => {
    const whole = new Database(join(leftBehind(writes), 'rooms.db'));
    const query = "select rootpage from sqlite_schema where name = 'events'";
    const [root] = whole.prepare(query).all([]) as { rootpage: number }[];
    whole.close();
    const newest = HEADER + pagesOf(writes).lastIndexOf(root!.rootpage) * FRAME + 24;
    expect(mended(flipped(newest, 4))!.equals(writes)).toBe(true);
  });

  it('gives SQLite what it takes to its end', () => {
    // In the middle of the page of a frame, where only that page is another one.
    const folder = leftBehind(mended(flipped(HEADER + 5 * FRAME + 24 + 2000))!);
    const database = new Database(join(folder, 'rooms.db'));
    const count = database.prepare('select count(*) as n from events').all([]);
    expect(count).toEqual([{ n: ALL }]);
    database.close();
  });

  it('is undefined of what is whole, empty or not there', () => {
    expect(mended(writes)).toBeUndefined();
    expect(mended(writes.subarray(0, HEADER + 100))).toBeUndefined();
    expect(mendedWrites(join(home, 'nowhere'))).toBeUndefined();
  });

  it('goes by the newest writes where a header is damaged over many older ones', () => {
    const folder = mkdtempSync(join(home, 'case-'));
    const [path, killed] = [join(folder, 'a.db'), join(folder, 'b.db')];
    const database = new Database(path);
    database.pragma('journal_mode = WAL');
    database.exec("create table t(x text); insert into t values('older')");
    for (let i = 0; i < 5; i++) database.prepare('update t set x = ?').run([`older ${i}`]);
    // All of it is in the data file then, and the log is written anew from its beginning: one page.
    database.pragma('wal_checkpoint(RESTART)');
    database.exec("update t set x = 'newest'");
    copyFileSync(path, killed);
    const left = readFileSync(`${path}-wal`);
    expect(left.length).toBeGreaterThan(HEADER + 5 * FRAME);
    database.close();
    left[17]! ^= 1;
    writeFileSync(`${killed}-wal`, left);
    writeFileSync(`${killed}-wal`, mendedWrites(`${killed}-wal`)!);
    const again = new Database(killed);
    expect(again.prepare('select x from t').all([])).toEqual([{ x: 'newest' }]);
    again.close();
  });

  it('takes what a killed write has left behind a later one for no damage', () => {
    const folder = mkdtempSync(join(home, 'case-'));
    const [path, killed] = [join(folder, 'a.db'), join(folder, 'b.db')];
    const database = new Database(path);
    database.pragma('journal_mode = WAL');
    database.exec('create table t(x text)');
    const before = readFileSync(`${path}-wal`).length;
    // Many pages in one commit, of which the last one with its mark was not written any more.
    database.prepare('insert into t values(?)').run(['x'.repeat(60_000)]);
    copyFileSync(path, killed);
    const all = readFileSync(`${path}-wal`);
    expect(all.length - before).toBeGreaterThan(5 * FRAME);
    writeFileSync(`${killed}-wal`, all.subarray(0, all.length - FRAME));
    database.close();
    const later = new Database(killed);
    later.prepare('insert into t values(?)').run(['short']);
    expect(readFileSync(`${killed}-wal`).length).toBe(all.length - FRAME);
    expect(mendedWrites(`${killed}-wal`)).toBeUndefined();
    later.close();
  });
});
