import { expect, it } from 'vitest';
import { expectClean, picture, watchedPage } from './browser.ts';
import { expectTidy } from './looks.ts';
import { stage } from './stage.ts';
import { tabletIn } from './tablet-page.ts';

/** What a team agrees on: roles that are passed on, and its wish about the wall. */

const here = stage('file');

it('roles move on by one seat at each hand-in, and a wish takes the emblem off the board', async () => {
  const { hand, watched } = await tabletIn(here.browser, here.room, 'one-fast-stretch');
  const { page } = watched;
  const board = await watchedPage(here.browser, `${here.room.server.url}/`, { width: 1920, height: 1080 });
  await board.page.goto(here.room.server.boardLink);
  await board.page.locator('.doing', { hasText: 'Sailboat' }).waitFor();
  const seats = () => page.locator('.roles li strong').allTextContents();
  const handIn = async () => {
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await page.locator('.roles').waitFor();
  };
  await hand.drag([50, 160], [200, 160]);
  await handIn();
  await expect.poll(seats).toEqual(['lookout', 'pen', 'chart']);
  for (const [width, height] of [
    [820, 1180],
    [1180, 820],
    [1366, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expectTidy(page, `entries at ${width}`);
    await picture(page, `together-${width}`);
  }
  await page.getByRole('button', { name: 'Read it out for paper' }).click();
  const steps = page.locator('.read-out li');
  // Drawn from (50, 160) to (200, 160), which the berth and the grid catch.
  expect(await steps.allTextContents()).toEqual([
    'Put the pen at 5 across, 16 down.',
    'Straight to 20 across, 16 down.',
  ]);
  await steps.first().click();
  expect(await steps.first().getByRole('checkbox').isChecked()).toBe(true);
  await expectTidy(page, 'read out');
  await picture(page, 'read-out');
  await page.getByText('Yes, without our emblem').click();
  await board.page.locator('.doing', { hasText: 'a team' }).waitFor();
  expect(await board.page.getByText('Sailboat').count()).toBe(0);
  await picture(board.page, 'together-board');
  await page.getByText('Not on the wall, please').click();
  await board.page.locator('.doing').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Back to the drawing' }).click();
  await handIn();
  await expect.poll(seats).toEqual(['chart', 'lookout', 'pen']);
  expectClean(board);
  expectClean(watched);
  await board.context.close();
  await watched.context.close();
});
