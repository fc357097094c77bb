import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MemoryLog } from '../../server/log/memory.ts';
import type { ErasedRoom, RoomInList } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  buildingRoom,
  codeOf,
  lineDesign,
  openRoom,
  ownerCookie,
  pagesOfTest,
  post,
  quickJudging,
  seqOf,
  type TestServer,
  testServer,
} from './harness.ts';

/** Erasing a room for good, from outside. */

let server: TestServer;
let owner: string;
const { pages, page, closePages } = pagesOfTest();
const DAY = 24 * 3_600_000;

const begin = async (config: Parameters<typeof testServer>[0] = {}) => {
  server = await testServer({ judging: quickJudging, ...config });
  owner = await ownerCookie(server);
};
afterEach(async () => {
  closePages();
  await server.end();
});

const send = (route: string, room: string) => post(server.url + route, { room }, owner);
const read = async <T>(route: string) =>
  (await (await fetch(server.url + route, { headers: { cookie: owner } })).json()) as T;
const words = async () => (await read<RoomInList[]>(ROUTES.rooms)).map(({ word }) => word);
const erased = async () => (await read<ErasedRoom[]>(ROUTES.erasedRooms)).map(({ word, why }) => [word, why]);
/** Waits for something that the server does by itself. */
async function eventually(what: string, holds: () => boolean | Promise<boolean>): Promise<void> {
  const end = Date.now() + 15_000;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

describe('a room that its desk erases', () => {
  it('is gone for everybody at once, and back as it was when that is taken back', async () => {
    await begin();
    const { word, desk, tablet, team } = await buildingRoom(server);
    pages.push(desk, tablet);
    const room = desk.state?.id ?? '';
    seqOf(await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }));
    await desk.until('a verdict', () => desk.state?.entries[0]?.verdict != null);
    const before = desk.state;
    expect((await send(ROUTES.eraseRoom, room)).status).toBe(204);
    for (const one of [desk, tablet]) await one.until('moved', () => one.moved > 0);
    expect(codeOf(await desk.hello())).toBe('unknown-room');
    expect(codeOf(await tablet.hello())).toBe('no-seat');
    expect(await words()).toEqual([]);
    expect(await erased()).toEqual([[word, 'desk']]);
    expect((await post(`${server.url}${ROUTES.join}`, { word })).status).toBe(404);
    expect(
      (await fetch(`${server.url}${ROUTES.roomFile}?room=${room}`, { headers: { cookie: owner } })).status,
    ).toBe(404);
    expect((await send(ROUTES.keepRoom, room)).status).toBe(204);
    expect(await words()).toEqual([word]);
    expect(await erased()).toEqual([]);
    expect(codeOf((await page(server.url, 'tablet', team)).welcome)).toBe('accepted');
    const again = await page(server.url, 'desk', owner, room);
    expect(again.state).toEqual(before);
  });

  it('leaves nothing in the store after ten seconds, in no page of the file either', async () => {
    await begin();
    const { desk, tablet } = await buildingRoom(server);
    pages.push(desk, tablet);
    const room = desk.state?.id ?? '';
    seqOf(await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(137) }));
    await desk.until('a verdict', () => desk.state?.entries[0]?.verdict != null);
    const [entry] = desk.state?.entries ?? [];
    const secrets = [entry?.id ?? '', entry?.design ?? '', '"handed-in"'];
    await send(ROUTES.eraseRoom, room);
    closePages();
    const bytes = () => {
      const files = ['rooms.db', 'rooms.db-wal'].map((name) => {
        try {
          return readFileSync(join(server.dataDir, name));
        } catch {
          return Buffer.alloc(0);
        }
      });
      return Buffer.concat(files);
    };
    expect(secrets.filter((secret) => bytes().includes(secret))).toEqual(secrets);
    await eventually('nothing left', () => !secrets.some((secret) => bytes().includes(secret)));
    expect((await send(ROUTES.keepRoom, room)).status).toBe(404);
  });

  it('comes back from its file, here or on another machine', async () => {
    await begin();
    const { word, desk, tablet } = await buildingRoom(server);
    pages.push(desk, tablet);
    const room = desk.state?.id ?? '';
    const file = await (
      await fetch(`${server.url}${ROUTES.roomFile}?room=${room}`, { headers: { cookie: owner } })
    ).text();
    await send(ROUTES.eraseRoom, room);
    const restored = await post(`${server.url}${ROUTES.restoreRoom}`, file, owner);
    expect(restored.status).toBe(201);
    const { room: again } = (await restored.json()) as { room: string };
    const there = await page(server.url, 'desk', owner, again);
    expect(there.state?.teams).toEqual(desk.state?.teams);
    expect(await erased()).toEqual([[word, 'desk']]);
  });
});

describe('an erasure that was cut off', () => {
  it('is carried out at the next start', async () => {
    const log = new MemoryLog();
    let now = 1_800_000_000_000;
    await begin({ log, now: () => now });
    const { room } = await openRoom(server.url, owner);
    await send(ROUTES.eraseRoom, room);
    await server.end();
    expect((await log.eventsAfter(room, 0)).length).toBe(1);
    now += 11_000;
    await begin({ log, now: () => now });
    await eventually('removed', async () => (await log.eventsAfter(room, 0)).length === 0);
  });
});

describe('rooms that nobody has used for long', () => {
  let log: MemoryLog;
  let now: number;
  beforeEach(() => {
    log = new MemoryLog();
    now = 1_800_000_000_000;
  });
  const restart = async (roomDays?: number | null) => {
    await server.end();
    await begin({ log, now: () => now, ...(roomDays !== undefined && { roomDays }) });
  };

  it('are erased after 90 days, counted from their last use, and the desk says so', async () => {
    await begin({ log, now: () => now });
    const [old, used] = [await openRoom(server.url, owner), await openRoom(server.url, owner)];
    now += 80 * DAY;
    const desk = await page(server.url, 'desk', owner, used.room);
    seqOf(await desk.command({ kind: 'look-here', on: true }));
    const due = (await read<RoomInList[]>(ROUTES.rooms)).map(({ word, erasedOn }) => [
      word,
      (erasedOn ?? 0) - now,
    ]);
    expect(new Map(due as [string, number][])).toEqual(
      new Map([
        [old.word, 10 * DAY],
        [used.word, 90 * DAY],
      ]),
    );
    now += 10 * DAY;
    await restart();
    await eventually('erased', async () => (await words()).length === 1);
    expect(await words()).toEqual([used.word]);
    expect(await erased()).toEqual([[old.word, 'age']]);
    now += 11_000;
    await restart();
    await eventually('removed', async () => (await log.eventsAfter(old.room, 0)).length === 0);
    now += 31 * DAY;
    await restart();
    await eventually('forgotten', async () => (await erased()).length === 0);
  });

  it('are kept for ever where that is set to 0', async () => {
    await begin({ log, now: () => now, roomDays: null });
    const { word } = await openRoom(server.url, owner);
    now += 1000 * DAY;
    await restart(null);
    expect(await words()).toEqual([word]);
    expect((await read<RoomInList[]>(ROUTES.rooms))[0]?.erasedOn).toBeNull();
  });
});
