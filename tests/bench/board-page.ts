import { type Browser, chromium, type Page } from 'playwright-core';
import { browserPath, watchedPage } from '../browser/browser.ts';
import { challengeNamed, classDrawings, type TestRoom, testRoom } from '../browser/room.ts';

export const CHALLENGE = 'one-fast-stretch';
const WALL = { width: 1920, height: 1080 };

export interface BenchBoard {
  readonly browser: Browser;
  readonly room: TestRoom;
  readonly page: Page;
}

/** The loader of these files marks functions by their names; pages don't know how. */
export const NAMES = 'globalThis.__name = (named) => named';

/** Runs `work` in a browser with a room of its own. */
export async function inRoom<T>(work: (browser: Browser, room: TestRoom) => Promise<T>): Promise<T> {
  const browser = await chromium.launch({ executablePath: browserPath(), args: ['--no-sandbox'] });
  const room = await testRoom();
  try {
    return await work(browser, room);
  } finally {
    await browser.close();
    await room.end();
  }
}

/** Runs `work` on the board of such a room, 1920 × 1080. */
export const onBoard = <T>(work: (board: BenchBoard) => Promise<T>): Promise<T> =>
  inRoom(async (browser, room) => {
    const { page, context } = await watchedPage(browser, room.server.url, WALL);
    await context.addInitScript({ content: NAMES });
    await page.goto(`${room.server.url}/board?room=${room.word}`);
    return work({ browser, room, page });
  });

/** Four teams have handed in drawings that all drive for some seconds, and showing has begun. The entries' ids. */
export async function fourHandedIn(room: TestRoom): Promise<string[]> {
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await room.arrive(4);
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: 600 });
  for (let i = 0; i < 4; i++) await room.handIn(i, drawings[[0, 1, 4, 3][i]!]!);
  await room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
  return room.desk.state!.entries.map(({ id }) => id);
}
