import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { expectClean, openBrowser, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, faintTexts, smallTexts } from './looks.ts';
import { challengeNamed, classDrawings, deskPage, type TestRoom, testRoom } from './room.ts';

const CHALLENGE = 'one-fast-stretch';
const FORETOLD = 'from-the-other-end';
const SIZES = [
  { width: 1024, height: 768 },
  { width: 1920, height: 1080 },
];
/** A thirtieth of the picture's height is read from 8 m; 7:1 is WCAG's enhanced contrast. */
const SMALLEST = 1 / 30;
const CONTRAST = 7;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

let room: TestRoom;
const watched: Watched[] = [];
beforeEach(async () => {
  room = await testRoom();
});
afterEach(async () => {
  for (const { context } of watched.splice(0)) await context.close();
  await room.end();
});

const still = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.getAnimations().every((a) => a.playState === 'finished'));

async function boardOf(size: { width: number; height: number }) {
  const board = await watchedPage(browser, room.server.url, size);
  watched.push(board);
  await board.page.goto(`${room.server.url}/board?room=${room.room}`);
  return board;
}

/** A class of `teams`, every one of which has handed in, at the step of showing. */
async function showing(teams: number): Promise<void> {
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await room.arrive(teams);
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: null });
  for (let i = 0; i < teams; i++) await room.handIn(i, drawings[(i + 1) % drawings.length]!);
  await room.handIn(0, drawings[0]!);
  await room.teams[1]!.command({ kind: 'wish-wall', wish: 'shown' });
  await room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
}

const idOf = (team: number, number: number): string => {
  const { teams, entries } = room.desk.state!;
  return entries.find((entry) => entry.team === teams[team]!.id && entry.number === number)!.id;
};

it.each(SIZES)('gallery, fleet, drive and closing at $width × $height: read from 8 m on both grounds, whole', async (size) => {
  await showing(5);
  const board = await boardOf(size);
  const { page } = board;
  const see = async (name: string, sign: string | RegExp) => {
    await page.getByText(sign).first().waitFor();
    for (const ground of ['light', 'dark'] as const) {
      if (ground === 'dark') await room.ask({ kind: 'set-board', setting: 'dark', on: true });
      await page.locator(`html[data-ground="${ground}"]`).waitFor();
      await still(page);
      await picture(page, `scenes-${size.width}-${name}-${ground}`);
      await expectTidy(page, name);
      expect(await smallTexts(page, size.height * SMALLEST), name).toEqual([]);
      expect(await faintTexts(page, CONTRAST), name).toEqual([]);
      if (size === SIZES[0]) expect(await axeFindings(page), name).toEqual([]);
    }
    await room.ask({ kind: 'set-board', setting: 'dark', on: false });
    await page.locator('html[data-ground="light"]').waitFor();
  };
  await room.ask({ kind: 'hang', entries: [0, 1, 2, 3, 4].map((team) => idOf(team, 1)) });
  await see('gallery', '5 drawings');
  await room.ask({ kind: 'show-fleet', entry: idOf(0, 2), weather: 'stormy' });
  await page.getByText(/still do as planned/).waitFor();
  await see('fleet', /still do as planned/);
  await see('fleet-end', /^\d+ of 20 make it$/);
  await room.ask({ kind: 'foretell', entry: idOf(0, 2) });
  await see('foretell', 'Hands up: what does this mark say?');
  await room.ask({ kind: 'count-hands', stop: 0, hands: [4, 11, 2, 7] });
  await see('foretell-hands', '11');
  await room.ask({ kind: 'drive-on', passed: 1 });
  await see('foretell-told', 'This mark says');
  await room.ask({ kind: 'go-to', phase: 'close' });
  await see('closing', 'Robots back in their berths');
  await room.ask(
    { kind: 'count-back', what: 'robots', counted: { there: 5, of: 5 } },
    { kind: 'count-back', what: 'caps', counted: { there: 14, of: 15 } },
  );
  await see('closing-counted', /14 of 15/);
  expectClean(board);
});

it('the desk chooses', async () => {
  await showing(3);
  const desk = await deskPage(browser, room, { width: 1366, height: 768 });
  watched.push(desk);
  const { page } = desk;
  await picture(page, 'scenes-desk');
  await page.keyboard.press('f');
  await page.getByText('Once more').waitFor();
  await picture(page, 'scenes-desk-fleet');
  await page.keyboard.press('c');
  await page.getByText('Drive on').waitFor();
  await picture(page, 'scenes-desk-foretell');
  await page.setViewportSize({ width: 1024, height: 768 });
  await picture(page, 'scenes-desk-1024');
  await expectTidy(page, 'desk');
});
void FORETOLD;
