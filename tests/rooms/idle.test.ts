import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  joinCookie,
  lineDesign,
  openRoom,
  ownerCookie,
  pagesOfTest,
  quickJudging,
  sample,
  seqOf,
  type TestServer,
  testServer,
} from './harness.ts';

/** Rooms that nobody uses leave memory, and come back from the log. */

const MINUTE_MS = 60_000;
let minutes = 0;
let server: TestServer;
let owner: string;
let letJudge: () => void;
const { pages, page: sit, closePages } = pagesOfTest();

beforeEach(async () => {
  vi.useFakeTimers({ toFake: ['setInterval'] });
  minutes = 0;
  const allowed = new Promise<void>((resolve) => {
    letJudge = resolve;
  });
  const judge: typeof quickJudging.judge = async (asked) => {
    await allowed;
    return quickJudging.judge(asked);
  };
  const began = Date.now();
  const now = () => began + minutes * MINUTE_MS;
  server = await testServer({ judging: { ...quickJudging, judge }, now });
  owner = await ownerCookie(server);
});
afterEach(async () => {
  letJudge();
  closePages();
  await server.end();
  vi.useRealTimers();
});

async function figure(name: string): Promise<number> {
  const text = await (await fetch(server.url + ROUTES.metrics)).text();
  return sample(text, name);
}
const roomsInMemory = () => figure('harbour_rooms');

/** Lets time pass, and has the server look until so many rooms are left. */
async function leaves(rooms: number, afterMinutes: number): Promise<void> {
  minutes += afterMinutes;
  const look = async () => {
    vi.advanceTimersByTime(MINUTE_MS);
    expect(await roomsInMemory()).toBe(rooms);
  };
  await vi.waitFor(look, { timeout: 10_000 });
}

/** A room in the building phase, its desk and a tablet. */
async function building(seconds: number | null) {
  const { room, word } = await openRoom(server.url, owner);
  const team = await joinCookie(server.url, word);
  const desk = await sit(server.url, 'desk', owner, room);
  const tablet = await sit(server.url, 'tablet', team);
  seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' }));
  seqOf(await desk.command({ kind: 'start-building', seconds }));
  const leave = async () => {
    for (const page of [desk, tablet]) page.close();
    await vi.waitFor(async () =>
      expect(await figure('harbour_sockets')).toBe(pages.filter((p) => p.socket.connected).length),
    );
  };
  return { room, team, desk, tablet, leave };
}

it('a room that nobody has used for ten minutes leaves memory, and is as it was when somebody comes', async () => {
  const { room, team, desk, tablet, leave } = await building(null);
  seqOf(await desk.command({ kind: 'look-here', on: true }));
  await tablet.reaches(desk.state!.seq);
  const before = desk.state;
  await leave();
  await leaves(1, 9);
  await leaves(0, 1);
  const again = await sit(server.url, 'desk', owner, room);
  expect(again.state).toEqual(before);
  const tabletAgain = await sit(server.url, 'tablet', team);
  const seq = seqOf(await tabletAgain.command({ kind: 'hand-in', round: 0, design: lineDesign(60) }));
  expect(seq).toBe(before!.seq + 1);
  await again.reaches(seq);
  expect(again.state?.entries.length).toBe(1);
  expect(await roomsInMemory()).toBe(1);
});

it('a room stays while a page is there, while time runs, and while an entry waits for its verdict', async () => {
  const abandoned = await building(null);
  await abandoned.leave();
  const watched = await building(null);
  const timed = await building(3600);
  await timed.leave();
  const waiting = await building(null);
  seqOf(await waiting.tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(60) }));
  await waiting.leave();
  await leaves(3, 11);
  letJudge();
  await leaves(2, 11);
  await watched.leave();
  await leaves(1, 11);
});
