import jsQR from 'jsqr';
import type { Browser, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type TestServer, testServer } from '../rooms/harness.ts';
import { expectClean, openBrowser, PAGES, picture, type Watched, watchedPage } from './browser.ts';
import { TestHand } from './hand.ts';
import { challengeNamed } from './room.ts';
import { tryIt } from './tablet-page.ts';

/**
 * One lesson as people play it: a desk worked by its buttons and keys, a board that is only looked at,
 * six tablets drawn on by touch at once. Nothing is done behind the pages' backs.
 */

const CHALLENGE = 'one-fast-stretch';
/** Whose tablets come after the first two, in the order in which emblems are given. */
const OTHERS = ['Key', 'Feather', 'Umbrella', 'Shell'];

let browser: Browser;
let server: TestServer;
beforeAll(async () => {
  browser = await openBrowser();
  server = await testServer({ pages: PAGES });
});
afterAll(async () => {
  await browser.close();
  await server.end();
});

/** What a tablet's camera would find on the board. */
async function scanned(board: Page): Promise<string> {
  const { data, width, height } = PNG.sync.read(await board.screenshot());
  const code = jsQR(new Uint8ClampedArray(data), width, height);
  if (!code) throw new Error('no QR code can be read from the board');
  return code.data;
}

/** Three straights from berth to berth, by tapping. */
async function drawTrack(page: Page, hand: TestHand): Promise<void> {
  const corners = [
    [50, 160],
    [240, 160],
    [240, 50],
    [60, 50],
  ] as const;
  for (const [i, [x, y]] of corners.entries()) {
    await hand.tap(x, y);
    // The end of one straight is the beginning of the next.
    if (i > 0 && i < corners.length - 1) await hand.tap(x, y);
  }
  await page.getByText('48 cm of line').waitFor();
}

async function placeMark(page: Page, hand: TestHand, name: string, [x, y]: [number, number]): Promise<void> {
  await page.locator('.tray').getByText(name).first().click();
  await hand.tap(x, y);
}

/** A tablet of one of the others: it comes in by the link, and is back on its sheet once it has handed in. */
async function joins(page: Page, link: URL, emblem: string): Promise<void> {
  await page.goto(`${server.url}${link.pathname}${link.search}`);
  await page.getByRole('heading', { name: emblem }).waitFor();
}

async function drawsAndHandsIn(page: Page): Promise<void> {
  const hand = await TestHand.on(page, challengeNamed(CHALLENGE).sheet);
  await hand.drag([50, 160], [200, 160]);
  await page.getByText('15 cm of line').waitFor();
  await handIn(page);
  await page.getByText('0 of 45').waitFor();
  await page.getByRole('button', { name: 'Back to the drawing' }).click();
}

async function handIn(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Hand in' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
}

it('plays from the prepared desk to the saved results', async () => {
  const desk = await watchedPage(browser, server.url, { width: 1366, height: 768 });
  const board = await watchedPage(browser, server.url, { width: 1920, height: 1080 });
  const first = await watchedPage(browser, server.url, { width: 1180, height: 820, touch: true });
  const second = await watchedPage(browser, server.url, { width: 820, height: 1180, touch: true });
  const others = await Promise.all(
    OTHERS.map(() => watchedPage(browser, server.url, { width: 1180, height: 820, touch: true })),
  );
  const all: Watched[] = [desk, board, first, second, ...others];

  // Prepare: the tick, then the room.
  await board.page.goto(server.boardLink);
  await board.page.getByText('No room is open yet').waitFor();
  await desk.page.goto(server.deskLink);
  expect(desk.page.url()).not.toContain('key=');
  await desk.page.getByLabel(/Somebody stays with the charger/).click();
  await desk.page.getByRole('button', { name: 'Open a room', exact: true }).click();
  await desk.page.waitForURL(/\/desk\?room=/);

  // Gather: one team scans, the other types.
  await board.page.locator('.join-code').first().waitFor();
  await board.page.waitForLoadState('networkidle');
  const link = new URL(await scanned(board.page));
  await first.page.goto(`${server.url}${link.pathname}${link.search}`);
  await first.page.getByRole('heading', { name: 'Sailboat' }).waitFor();
  await second.page.goto(`${server.url}/`);
  await second.page.getByLabel('Room word').fill((await board.page.locator('.join-word').textContent())!);
  await second.page.getByRole('button', { name: 'Go in' }).click();
  await second.page.getByRole('heading', { name: 'Bell' }).waitFor();
  await board.page.getByText('2 teams are in').waitFor();
  for (const [i, emblem] of OTHERS.entries()) await joins(others[i]!.page, link, emblem);
  await board.page.getByText('6 teams are in').waitFor();
  await first.page.reload();
  await first.page.getByRole('heading', { name: 'Sailboat' }).waitFor();

  // Brief and build.
  await desk.page.keyboard.press('n');
  await desk.page.getByRole('radio', { name: /One fast stretch/ }).check({ force: true });
  await desk.page.keyboard.press('n');
  await board.page.getByText('one, and only one').first().waitFor();
  await desk.page.getByRole('button', { name: 'Start building', disabled: false }).click();
  await desk.page.getByText(/\d:\d\d left/).waitFor();
  await desk.page.keyboard.press('+');
  await desk.page.getByText(/1[12]:\d\d left/).waitFor();

  const { sheet } = challengeNamed(CHALLENGE);
  const left = await TestHand.on(first.page, sheet);
  const right = await TestHand.on(second.page, sheet);
  await drawTrack(first.page, left);
  await placeMark(first.page, left, 'faster', [85, 160]);
  await placeMark(first.page, left, 'faster', [140, 160]);
  await placeMark(first.page, left, 'steady', [190, 50]);
  await drawTrack(second.page, right);
  await placeMark(second.page, right, 'faster', [85, 160]);
  await placeMark(second.page, right, 'steady', [190, 50]);
  await Promise.all(others.map(({ page }) => drawsAndHandsIn(page)));
  await expect
    .poll(() => desk.page.locator('.team-card', { hasText: 'entry 1' }).count())
    .toBe(OTHERS.length);

  // A word to one of them, which puts it away.
  await desk.page.keyboard.press('3');
  await desk.page.keyboard.press('m');
  await desk.page.getByLabel('Take one goal first.').check();
  await desk.page.getByRole('button', { name: 'Send' }).click();
  const [key] = others;
  await key!.page.getByRole('button', { name: 'A note for you' }).click();
  await key!.page.getByText('Take one goal first.').waitFor();
  await key!.page.getByRole('button', { name: 'Put it away' }).click();
  await desk.page.getByText('Said so far (1)').click();
  await desk.page.getByText(/, put away$/).waitFor();

  // Look here: the drawing waits.
  await desk.page.keyboard.press('h');
  await second.page.getByText('Look at the board').waitFor();
  await desk.page.keyboard.press('h');
  await second.page.getByText('Look at the board').waitFor({ state: 'detached' });

  // Try it, see that it is not enough, hand in all the same.
  await tryIt(second.page);
  await second.page.getByText('4×').click();
  await second.page.locator('.trying-goals').getByText('missing').waitFor();
  await second.page.getByRole('button', { name: 'Back to the drawing' }).click();
  await handIn(second.page);
  await second.page.getByText('0 of 45').waitFor();
  await handIn(first.page);
  await first.page.getByText('45 of 45').waitFor();
  await picture(desk.page, 'lesson-desk');

  // Bell hands in again; its best counts.
  await second.page.getByRole('button', { name: 'Back to the drawing' }).click();
  await placeMark(second.page, right, 'faster', [140, 160]);
  await handIn(second.page);
  await second.page.getByText('45 of 45').waitFor();
  expect(await board.page.getByText(/\b100\b/).count()).toBe(0);

  // Show: the best of a team by one key, then both side by side, then the standings.
  await desk.page.getByRole('button', { name: /End building/ }).click();
  await desk.page.getByText('building is over').waitFor();
  await desk.page.keyboard.press('n');
  await desk.page.getByRole('heading', { name: 'The stage' }).waitFor();
  await desk.page.keyboard.press('2');
  await board.page.getByText('entry 2').waitFor();
  await desk.page.keyboard.press('p');
  await board.page
    .getByText(/^read C A/)
    .first()
    .waitFor();
  await picture(board.page, 'lesson-board');
  await board.page.getByText(/^Arrived after /).waitFor();
  await desk.page.keyboard.press('Shift+1');
  await board.page.getByText('Side by side').waitFor();
  await desk.page
    .getByRole('button', { name: /Standings/ })
    .first()
    .click();
  await desk.page.keyboard.press('x');
  await board.page.getByRole('heading', { name: 'Standings' }).waitFor();

  // The drawings of the others, one key each.
  for (const emblem of OTHERS) {
    await desk.page
      .locator('.desk-head')
      .getByRole('button', { name: 'Next drawing', disabled: false })
      .waitFor();
    await desk.page.keyboard.press('n');
    await desk.page.locator('.show-team[data-on="true"]', { hasText: emblem }).waitFor();
  }

  // Drive on paper: one turn, as there are as many robots as teams.
  await desk.page.keyboard.press('n');
  await desk.page.getByRole('heading', { name: 'Robots on paper' }).waitFor();
  await first.page.getByText('Your turn: take robot 1.').waitFor();
  await board.page.getByText('robot 2').waitFor();

  // Close: results and room as files.
  await desk.page.keyboard.press('n');
  await desk.page.getByRole('heading', { name: 'Count back in' }).waitFor();
  const download = desk.page.waitForEvent('download');
  await desk.page.getByRole('link', { name: 'Save the results (CSV)' }).click();
  expect((await download).suggestedFilename()).toMatch(/\.csv$/);
  const saved = desk.page.waitForEvent('download');
  await desk.page.getByRole('link', { name: 'Save the room (JSON)' }).click();
  expect((await saved).suggestedFilename()).toMatch(/\.json$/);
  await Promise.all([first, second, ...others].map(({ page }) => page.getByText('Well done').waitFor()));

  for (const one of all) expectClean(one);
  for (const { context } of all) await context.close();
});
