import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { storedDocument } from '../../server/rooms/documents.ts';
import type { ClientAsk } from '../../shared/wire/protocol.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import type { RoomFile } from '../../shared/wire/room-file.ts';
import { post, seated, seqOf } from '../rooms/harness.ts';
import { expectClean, openBrowser, picture, type Watched, watchedPage } from './browser.ts';
import { challengeNamed, classDrawings, deskPage, type TestRoom, testRoom } from './room.ts';

/** A room file of somebody else, in which every text that people read is markup: pages show it as text. */

const HOSTILE = `<img src=x onerror="window.hurt=1"><script>window.hurt=1</script>{{7*7}}"'>&lt;`;
const CHALLENGE = 'two-jobs';

let browser: Browser;
let room: TestRoom;
const watched: Watched[] = [];
beforeAll(async () => {
  browser = await openBrowser();
  room = await testRoom();
});
afterAll(async () => {
  for (const { context } of watched) await context.close();
  await browser.close();
  await room.end();
});

/** The same document with every text in it made hostile; the words of a language stand under its key. */
function spoiled(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(spoiled);
  if (typeof value !== 'object' || value === null) return value;
  const pairs = Object.entries(value).map(([key, each]) => {
    const isText = typeof each === 'string' && ['en', 'es', 'note'].includes(key);
    return [key, isText ? HOSTILE : spoiled(each)] as const;
  });
  return Object.fromEntries(pairs);
}

/** The room's file with hostile challenges, and references to them as they are called then. */
function spoiledFile(file: RoomFile): unknown {
  const documents = file.documents.map((document) => {
    if (document.kind !== 'challenge') return { was: document.id, now: document };
    const { id, kind, body } = storedDocument('challenge', spoiled(document.body));
    return { was: document.id, now: { id, kind, body: JSON.parse(body) as unknown } };
  });
  const renamed = documents.reduce(
    (text, { was, now }) => text.replaceAll(was, now.id),
    JSON.stringify(file.events),
  );
  return { ...file, events: JSON.parse(renamed) as unknown, documents: documents.map(({ now }) => now) };
}

async function restoredRoom(): Promise<TestRoom> {
  const { server, owner, room: id } = room;
  await room.arrive(1);
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: null });
  await room.handIn(0, classDrawings(challengeNamed(CHALLENGE))[0]!);
  const response = await fetch(`${server.url}${ROUTES.roomFile}?room=${id}`, { headers: { cookie: owner } });
  const file = spoiledFile((await response.json()) as RoomFile);
  const restored = await post(server.url + ROUTES.restoreRoom, file, owner);
  expect(restored.status).toBe(201);
  return { ...room, ...((await restored.json()) as { room: string; word: string }) };
}

/** What of the markup has become elements, and whether any of it was carried out. */
const harm = (page: Page) =>
  page.evaluate(() => ({
    elements: document.querySelectorAll('img[src="x"], [onerror], script:not([src])').length,
    hurt: 'hurt' in window,
  }));

it('shows markup in the texts of a restored room as text, on desk, board and tablet', async () => {
  const hostile = await restoredRoom();
  const { server, owner, word } = hostile;
  const socket = await seated(server.url, 'desk', owner, hostile.room);
  const ask = async (...asks: ClientAsk[]) => {
    for (const one of asks) await socket.reaches(seqOf(await socket.command(one)));
  };
  const desk = await deskPage(browser, hostile, { width: 1366, height: 768 });
  const board = await watchedPage(browser, server.url, { width: 1024, height: 768 });
  await board.page.goto(`${server.url}/board?room=${hostile.room}`);
  const tablet = await watchedPage(browser, server.url, { width: 1180, height: 820, touch: true });
  await tablet.page.goto(`${server.url}/j?word=${word}`);
  watched.push(desk, board, tablet);
  /** Looks at a page once a sign of the scene is there. */
  const seen = async (name: string, { page }: Watched, sign: string | RegExp = '<img src=x') => {
    await page.getByText(sign).first().waitFor();
    expect(await harm(page), name).toEqual({ elements: 0, hurt: false });
    await picture(page, `hostile-${name}`);
  };
  await ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'brief' });
  await seen('desk-brief', desk, 'Choose a challenge');
  await seen('board-brief', board);
  await seen('tablet-brief', tablet);
  await ask({ kind: 'start-building', seconds: null });
  await desk.page.keyboard.press('1');
  await seen('desk-build', desk, 'Entry 1');
  await seen('board-build', board, 'Take your time');
  await seen('tablet-build', tablet, 'Hand in');
  await tablet.page.getByRole('button', { name: 'Hand in' }).tap();
  await seen('tablet-hand-in', tablet, 'Hand in this drawing?');
  await ask({ kind: 'go-to', phase: 'show' }, { kind: 'stage', entries: [socket.state!.entries[0]!.id] });
  await seen('desk-show', desk, 'Best of each team');
  await seen('board-show', board, 'Sailboat');
  await desk.page.keyboard.press('o');
  await seen('desk-paper', desk, 'Paper');
  socket.close();
  for (const one of watched) expectClean(one);
});

it('prints them as outlines of letters, not as elements', async () => {
  const { server, owner, room: id } = room;
  const rooms = (await (await fetch(server.url + ROUTES.rooms, { headers: { cookie: owner } })).json()) as {
    room: string;
  }[];
  const restored = rooms.find((one) => one.room !== id)!.room;
  const svg = await fetch(`${server.url}/api/print/sheet.svg?room=${restored}`, {
    headers: { cookie: owner },
  });
  expect(svg.status).toBe(200);
  const text = await svg.text();
  expect(['<img', '<script', 'onerror="'].filter((bad) => text.includes(bad))).toEqual([]);
});
