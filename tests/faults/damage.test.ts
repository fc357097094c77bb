import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RestartNeeded } from '../../server/log/event-log.ts';
import type { Recovery } from '../../server/log/recovery.ts';
import { openSqliteLog } from '../../server/log/sqlite.ts';
import { storedDocument } from '../../server/rooms/documents.ts';
import type { RoomFact } from '../../shared/room/events.ts';
import { SEED } from '../seed.ts';
import { ALL, ENTRIES, expectSound, fill } from './known-rooms.ts';
import { bundleOnce, startProcess } from './process.ts';
import { randomFrom } from './random.ts';

/** Data files that lost their end, or a bit of which has turned. */

const FLIPS = 80;

let home: string;
let whole: Buffer;
beforeAll(async () => {
  home = mkdtempSync(join(tmpdir(), 'harbour-damage-'));
  const log = await openSqliteLog(join(home, 'whole'));
  await fill(log);
  await log.close();
  whole = readFileSync(join(home, 'whole', 'rooms.db'));
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

/** The file with one bit of `text` turned, wherever it stands. */
function turnedIn(text: string): Buffer {
  const bytes = Buffer.from(whole);
  for (let at = bytes.indexOf(text); at >= 0; at = bytes.indexOf(text)) bytes[at + 2]! ^= 1;
  return bytes;
}

async function openDamaged(bytes: Buffer) {
  const folder = mkdtempSync(join(home, 'case-'));
  writeFileSync(join(folder, 'rooms.db'), bytes);
  const told: Recovery[] = [];
  const log = await openSqliteLog(folder, { told: (recovery) => told.push(recovery) });
  return { folder, told, log };
}

describe('a whole data file', () => {
  it('opens without a word, and has everything', async () => {
    const { folder, told, log } = await openDamaged(whole);
    expect(told).toEqual([]);
    expect(await expectSound(log)).toBe(ALL);
    expect((await log.seat('hash-2'))?.team).toBe('t2');
    await log.close();
    expect(readdirSync(folder).filter((name) => /^rooms-\d+\.db$/.test(name))).toEqual([]);
  });
});

describe('a data file that has lost its end', () => {
  it.each([[0.99], [0.8], [0.5], [0.25], [0.1]])('gives back what is in the first %d of it', async (part) => {
    const { folder, told, log } = await openDamaged(whole.subarray(0, Math.floor(whole.length * part)));
    expect(told.length).toBe(1);
    const kept = await expectSound(log);
    if (part > 0.75) expect(kept).toBeGreaterThan(ALL / 2);
    await log.close();
    expect(readFileSync(join(folder, 'rooms.db')).length).toBe(Math.floor(whole.length * part));
  });

  it('is a new beginning when hardly anything is left, and the rest is kept', async () => {
    const { folder, told, log } = await openDamaged(Buffer.from('SQLite format 3\0 and no more'));
    expect(told).toMatchObject([{ rooms: 0, events: 0 }]);
    expect(await log.rooms()).toEqual([]);
    await log.close();
    expect(readFileSync(join(folder, 'rooms.db'), 'utf8')).toContain('and no more');
  });
});

describe('a data file in which a bit has turned', () => {
  it(`gives back everything else, ${FLIPS} times (seed ${SEED})`, async () => {
    const random = randomFrom(SEED);
    const kept: number[] = [];
    for (let i = 0; i < FLIPS; i++) {
      const bytes = Buffer.from(whole);
      bytes[Math.floor(random() * bytes.length)]! ^= 1 << Math.floor(random() * 8);
      const { folder, told, log } = await openDamaged(bytes);
      kept.push(await expectSound(log));
      // A bit that no row and no page of the structure uses harms nobody.
      if (told.length === 0) expect(kept.at(-1)).toBe(ALL);
      else expect(readFileSync(join(folder, 'rooms.db')).equals(bytes)).toBe(true);
      await log.close();
      rmSync(folder, { recursive: true });
    }
    const most = kept.sort((a, b) => a - b)[Math.floor(FLIPS / 20)];
    expect(most).toBeGreaterThan(ALL * 0.9);
  });

  it('in its first page gives everything back', async () => {
    for (const at of [0, 17, 21, 105, 1500, 3900]) {
      const bytes = Buffer.from(whole);
      bytes[at]! ^= 4;
      const { log } = await openDamaged(bytes);
      expect([at, await expectSound(log)]).toEqual([at, ALL]);
      await log.close();
    }
  });

  it('is recovered once: the next start opens the new file without a word', async () => {
    const bytes = turnedIn('"e1-7"');
    const { folder, told, log } = await openDamaged(bytes);
    expect(told).toMatchObject([{ rooms: 3, events: ALL - 1, lost: 1 }]);
    await log.append('r1', { events: [{ seq: ENTRIES + 3, at: 9000, version: 1, fact: { kind: 'lost' } }] });
    await log.close();
    const again = await openSqliteLog(folder, { told: (recovery) => told.push(recovery) });
    expect(told.length).toBe(1);
    const events = await again.eventsAfter('r1', 0);
    expect(events.length).toBe(ENTRIES + 3);
    expect(events.filter((event) => event.fact?.kind === 'lost').map((event) => event.seq)).toEqual([
      10,
      ENTRIES + 3,
    ]);
    await again.close();
  });

  it('and whose recovery was cut off is recovered anew', async () => {
    const bytes = turnedIn('"e0-3"');
    const folder = mkdtempSync(join(home, 'case-'));
    writeFileSync(join(folder, 'rooms.db'), bytes);
    const empty = mkdtempSync(join(home, 'empty-'));
    await (await openSqliteLog(empty)).close();
    copyFileSync(join(empty, 'rooms.db'), join(folder, 'rooms-2.db'));
    const log = await openSqliteLog(folder);
    expect(await expectSound(log)).toBe(ALL - 1);
    await log.close();
  });
});

describe('a bit that has turned in a room older than those that are summed at a start', () => {
  const OLD_AND_NEW = 25;
  const joined = (room: number): RoomFact => ({ kind: 'team-joined', team: `team-${room}-`, emblem: 'bell' });

  async function manyRooms(folder: string): Promise<Buffer> {
    const log = await openSqliteLog(folder);
    for (let i = 0; i < OLD_AND_NEW; i++) {
      const record = { id: `r${i}`, word: `plum-${10 + i}`, openedAt: 1000 + i };
      const facts: RoomFact[] = [
        { kind: 'opened', room: record.id, word: record.word, chargerWatched: false },
        joined(i),
      ];
      const events = facts.map((fact, n) => ({ seq: n + 1, at: 1000 + n, version: 1, fact }));
      const documents = [storedDocument('design', { of: `drawing-${i}-` })];
      await log.openRoom(record, { events, documents });
    }
    await log.close();
    return readFileSync(join(folder, 'rooms.db'));
  }

  // 0x80 makes a byte that no text in UTF-8 has there.
  it.each([
    ['a letter', 'team-0-', 0x01],
    ['what was text', 'team-0-', 0x80],
    ['a bracket', '{"kind":"team-joined","team":"team-0-', 0x04],
    ['a drawing', 'drawing-0-', 0x01],
  ])('%s: is not given out, the next start recovers the rest', async (_, text, bit) => {
    const source = mkdtempSync(join(home, 'case-'));
    const bytes = await manyRooms(source);
    bytes[bytes.indexOf(text)]! ^= bit;
    const { folder, told, log } = await openDamaged(bytes);
    expect(told).toEqual([]);
    await log.check();
    const inDrawing = text.startsWith('drawing');
    const reading = () => (inDrawing ? log.documents('r0') : log.eventsAfter('r0', 0));
    for (const _ of ['once', 'again']) await expect(reading()).rejects.toThrow(RestartNeeded);
    if (inDrawing) {
      const { id } = storedDocument('design', { of: 'drawing-0-' });
      await expect(log.document('r0', id)).rejects.toThrow(RestartNeeded);
    }
    await expect(log.check()).rejects.toThrow('Restart the server');
    // The other rooms go on.
    expect((await log.eventsAfter('r1', 0)).map(({ fact }) => fact).at(-1)).toEqual(joined(1));
    const more = { seq: 3, at: 2000, version: 1, fact: { kind: 'look-here', on: true } } as const;
    expect(await log.append('r1', { events: [more] })).toBe('done');
    await log.close();

    const again = await openSqliteLog(folder, { told: (recovery) => told.push(recovery) });
    expect(told).toMatchObject([
      { rooms: OLD_AND_NEW, lost: 0, events: OLD_AND_NEW * 2 + (inDrawing ? 1 : 0) },
    ]);
    expect((await again.eventsAfter('r1', 0)).length).toBe(3);
    expect((await again.eventsAfter('r0', 0)).length).toBe(inDrawing ? 2 : 1);
    expect((await again.documents('r0')).length).toBe(inDrawing ? 0 : 1);
    await again.check();
    await again.close();
    expect(readFileSync(join(folder, 'rooms.db')).length).toBeGreaterThanOrEqual(bytes.length);
    const third = await openSqliteLog(folder, { told: (recovery) => told.push(recovery) });
    expect(told.length).toBe(1);
    await third.close();
  });
});

describe('a server on a damaged data file', () => {
  it('says so in words, names both files and goes on', async () => {
    const bundle = await bundleOnce();
    const folder = mkdtempSync(join(home, 'case-'));
    writeFileSync(join(folder, 'rooms.db'), whole.subarray(0, Math.floor(whole.length / 2)));
    const server = await startProcess(bundle, folder, { LOG_LEVEL: 'silent' });
    expect(server.printed()).toMatch(
      /was damaged\. What could be read of it, \d rooms with \d+ events, is in .*rooms-2\.db/,
    );
    expect(server.printed()).toContain(`is kept: ${join(folder, 'rooms.db')}`);
    expect((await fetch(`${server.url}/ready`)).status).toBe(200);
    expect(await server.end('SIGTERM')).toBe(0);
    bundle.remove();
  });
});
