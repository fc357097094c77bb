import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { UNDO_MS } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { expectClean, picture, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, smallTargets, unreadable } from './looks.ts';
import { deskPage } from './room.ts';
import { stage } from './stage.ts';

const LAPTOP = { width: 1366, height: 768 };
const SMALL = { width: 1024, height: 768 };

const here = stage('test');

async function lobby(): Promise<Page> {
  const desk = await watchedPage(here.browser, here.room.server.url, LAPTOP);
  here.watched.push(desk);
  await desk.page.goto(here.room.server.deskLink);
  await desk.page.getByRole('heading', { name: 'Five minutes before' }).waitFor();
  return desk.page;
}

const leaf = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

/** Pictures at both sizes, with nothing cut off or over one another. */
async function see(page: Page, name: string): Promise<void> {
  for (const size of [LAPTOP, SMALL]) {
    await page.setViewportSize(size);
    await picture(page, `before-${size.width}-${name}`);
    await expectTidy(page, name);
  }
  await page.setViewportSize(LAPTOP);
}

it('five minutes: keys tick, what is seen is ticked by itself, a reload remembers, and the room opens', async () => {
  const page = await lobby();
  const line = (n: number) => page.locator('.five li').nth(n - 1);
  await line(1).getByText('seen by itself').waitFor();
  await line(4).getByText('Demo kit').waitFor();
  expect(await line(1).getByRole('checkbox').count()).toBe(0);
  for (const key of ['5', '7', '8', '8']) await page.keyboard.press(key);
  expect(await line(5).getByRole('checkbox').isChecked()).toBe(true);
  expect(await line(7).getByRole('checkbox').isChecked()).toBe(true);
  expect(await line(8).getByRole('checkbox').isChecked()).toBe(false);
  // The same tick as beside the button that opens a room.
  expect(await page.getByLabel(/Somebody stays with the charger/).isChecked()).toBe(true);
  await see(page, 'five');
  await page.reload();
  await line(7).waitFor();
  expect(await line(7).getByRole('checkbox').isChecked()).toBe(true);
  expect(await line(5).getByRole('checkbox').isChecked(), 'a promise is asked for again').toBe(false);
  await line(5).click();
  await page.getByRole('button', { name: 'Open the room' }).click();
  await page.waitForURL(/\/desk\?room=/);
  await page.getByText('Nobody is here yet.').waitFor();
  expect(await page.getByText('Nobody has said that they stay with the charger.').count()).toBe(0);
  expectClean(here.watched[0]!);
});

it('a tap on a berth calibrates its robot on the board, until the light changes; U takes that back', async () => {
  await here.room.arrive(3);
  const desk = await deskPage(here.browser, here.room, LAPTOP);
  const board = await watchedPage(here.browser, here.room.server.url, SMALL);
  here.watched.push(desk, board);
  await board.page.goto(`${here.room.server.url}/board?room=${here.room.room}`);
  const { page } = desk;
  await leaf(page, 'Robots');
  await page.getByRole('radio', { name: 'lamps', exact: true }).check();
  const berth = (n: number) => page.locator('.robot-berth').nth(n - 1);
  await berth(2).click();
  await page.getByText('Robot 2 is calibrated, lamps.', { exact: true }).waitFor();
  await berth(3).click();
  await page.getByText('2 of 3 robots calibrated').waitFor();
  const onBoard = board.page.locator('.berth-calibrated');
  await onBoard.nth(1).waitFor();
  await picture(board.page, 'before-board-calibrated');
  await expectTidy(board.page, 'board');
  expect(await unreadable(board.page)).toEqual([]);
  await page.getByRole('button', { name: 'The light changed' }).click();
  await berth(2).getByText('due again').waitFor();
  await onBoard.first().waitFor({ state: 'detached' });
  await page.keyboard.press('u');
  await onBoard.nth(1).waitFor();
  await page.getByText('Calibration log').click();
  await page.getByText('Robot 3 calibrated, lamps').waitFor();
  await see(page, 'robots');
  expect(await smallTargets(page, 24)).toEqual([]);
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Take the last calibration of robot 3 back' }).click();
  await page.getByText('1 of 3 robots calibrated').waitFor();
  // Twelve berths: a class with more robots has a place for each.
  await page.getByRole('button', { name: 'One more robot' }).click();
  await berth(13).click();
  await page.getByText('Robot 13 is calibrated, lamps.', { exact: true }).waitFor();
  expectClean(desk);
  expectClean(board);
});

it('supplies and a lesson plan are counted for the class and saved as PDF before any room is open', async () => {
  const page = await lobby();
  await leaf(page, 'Supplies');
  await page.getByLabel('How many teams').fill('12');
  // Twelve, and three spare.
  await page.getByRole('row', { name: /^15 black markers with a tip of 5 mm \(3 of them spare\)/ }).waitFor();
  await see(page, 'supplies');
  await leaf(page, 'Lesson plan');
  await page.getByLabel('Minutes of the lesson').fill('60');
  // Four thirds of the 13 minutes of a usual lesson, rounded.
  await page.getByRole('row', { name: /^Build 17 min/ }).waitFor();
  await page.getByRole('combobox', { name: 'Challenge' }).selectOption('ferry-junction');
  await see(page, 'plan');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the plan as PDF' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('harbour-lines-lesson-plan.pdf');
  expectClean(here.watched[0]!);
});

it('what is kept is listed with its dates, and erased from one place with ten seconds to take it back', async () => {
  const page = await lobby();
  await page.clock.install();
  await page.keyboard.press('7');
  await leaf(page, 'What is kept');
  const erase = page.getByRole('button', { name: `Erase the room ${here.room.word}` });
  await erase.waitFor();
  // Kept for 90 days after its last use.
  await page.getByText(new RegExp(`${here.room.word}, opened .*, until `)).waitFor();
  await page.getByText('ticks of the five minutes before a lesson, until it is erased').waitFor();
  await see(page, 'kept');
  await erase.click();
  await erase.waitFor({ state: 'detached' });
  await page.keyboard.press('u');
  await erase.waitFor();
  await page.getByRole('button', { name: 'Erase everything' }).click();
  await page.getByRole('button', { name: 'Yes, erase everything' }).click();
  await erase.waitFor({ state: 'detached' });
  // Once nobody has taken it back the page begins anew, and this browser has nothing left.
  await page.clock.fastForward(UNDO_MS);
  await page.getByRole('heading', { name: 'Five minutes before' }).waitFor();
  expect(
    await page.evaluate(() => Object.keys(localStorage).filter((key) => key !== 'harbour-lines.met-plays')),
  ).toEqual([]);
  expectClean(here.watched[0]!);
});

it('a desk that erases the room it is in can take that back', async () => {
  const desk = await deskPage(here.browser, here.room, LAPTOP);
  here.watched.push(desk);
  const { page } = desk;
  await page.locator('.rail-step', { hasText: 'Prepare' }).click();
  await leaf(page, 'What is kept');
  await page.getByRole('button', { name: `Erase the room ${here.room.word}` }).click();
  await page.getByText('This room is not on this server any more.').waitFor();
  await Promise.all([
    page.waitForResponse((answer) => answer.url().endsWith(ROUTES.keepRoom)),
    page.keyboard.press('u'),
  ]);
  await page.getByRole('button', { name: 'All rooms' }).click();
  await page.getByText(here.room.word, { exact: true }).waitFor();
});
