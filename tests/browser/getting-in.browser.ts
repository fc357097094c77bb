import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openRoom, ownerCookie, type TestServer, testServer } from '../rooms/harness.ts';
import { expectClean, openBrowser, PAGES, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

let server: TestServer;
let later = 0;
let room: string;
const watched: Watched[] = [];
beforeEach(async () => {
  later = 0;
  server = await testServer({ pages: PAGES, now: () => Date.now() + later });
  ({ room } = await openRoom(server.url, await ownerCookie(server)));
});
afterEach(async () => {
  for (const { context } of watched.splice(0)) await context.close();
  await server.end();
});

async function opened(url: string, width: number, height: number): Promise<Watched> {
  const one = await watchedPage(browser, server.url, { width, height });
  watched.push(one);
  await one.page.goto(url);
  return one;
}
const deskAt = (width: number, height: number) => opened(`${server.deskLink}&room=${room}`, width, height);

it('the check page says in words whether a device gets through, and the desk shows that it did', async () => {
  const desk = await deskAt(1366, 768);
  await desk.page.getByText('No tablet gets through?').waitFor();
  const tablet = await opened(`${server.url}/check`, 820, 1180);
  await tablet.page
    .getByText(/This device gets through/)
    .first()
    .waitFor();
  await tablet.page.getByText('The desk shows this too.').waitFor();
  await picture(tablet.page, 'check');
  await expectTidy(tablet.page, 'check');
  expect(await axeFindings(tablet.page)).toEqual([]);
  await desk.page.getByText(/A device made the check/).waitFor();
  await picture(desk.page, 'desk-1366-check');
  await expectTidy(desk.page, 'desk');
  for (const one of [desk, tablet]) expectClean(one);
});

it('the check page says that the laptop has stopped answering, and measures again', async () => {
  const tablet = await opened(`${server.url}/check`, 820, 1180);
  await tablet.page.getByText('The desk shows this too.').waitFor();
  await tablet.context.setOffline(true);
  await tablet.page.getByRole('button', { name: 'Measure again' }).click();
  await tablet.page.getByText('The laptop has stopped answering.').waitFor();
  await picture(tablet.page, 'check-gone');
  await tablet.context.setOffline(false);
  await tablet.page.getByRole('button', { name: 'Measure again' }).click();
  await tablet.page.getByText('The desk shows this too.').waitFor();
});

describe('after a minute without any device', () => {
  it.each([
    [1366, 768],
    [1024, 768],
  ])('the desk names three causes and what to do, whole and tidy at %i × %i', async (width, height) => {
    later = 61_000;
    const desk = await deskAt(width, height);
    await desk.page.getByText('Devices kept apart.').waitFor();
    for (const cause of ['Another network.', 'A firewall.'])
      expect(await desk.page.getByText(cause).isVisible()).toBe(true);
    expect(await desk.page.getByText(/To find out which: open .*\/check/).isVisible()).toBe(true);
    await picture(desk.page, `desk-${width}-nobody`);
    await expectTidy(desk.page, 'nobody');
    expect(await axeFindings(desk.page)).toEqual([]);
    expectClean(desk);
  });
});

it('one key flips the screen between desk and board, and the secret never stays in the address', async () => {
  const desk = await deskAt(1366, 768);
  await desk.page.getByText('No tablet gets through?').waitFor();
  expect(desk.page.url()).toBe(`${server.url}/desk?room=${room}`);
  await desk.page.keyboard.press('b');
  await desk.page.locator('.join-word').waitFor();
  await desk.page.getByText('Back to the desk').waitFor();
  await picture(desk.page, 'board-flipped');
  await desk.page.keyboard.press('b');
  await desk.page.getByText('No tablet gets through?').waitFor();
  expect(desk.page.url()).not.toContain('key=');
  expectClean(desk);
});

it('a board of its own has no way to the desk', async () => {
  const board = await opened(`${server.url}/board?room=${room}`, 1024, 768);
  await board.page.locator('.join-word').waitFor();
  expect(await board.page.getByText('Back to the desk').count()).toBe(0);
});
