import { afterEach, beforeEach, expect, it } from 'vitest';
import { expectClean, picture, type Watched } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';

/** Drawings that come after the time: the desk has them count or not, and can take that back. */

const CHALLENGE = 'one-fast-stretch';
const SIZES = [
  { width: 1366, height: 768 },
  { width: 1024, height: 768 },
];

const here = stage('test');
let desk: Watched;
beforeEach(async () => {
  await here.room.arrive(3);
  await here.room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: 600 });
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await here.room.handIn(2, drawings[0]!);
  await here.room.ask({ kind: 'end-building' });
  for (const team of [0, 1]) await here.room.handIn(team, drawings[team]!);
});
afterEach(() => desk.context.close());

const taken = () => here.room.desk.state!.entries.map((entry) => entry.taken);

it.each(SIZES)('at $width × $height late ones count by one press, and U takes that back', async (size) => {
  desk = await deskPage(here.browser, here.room, size);
  const { page } = desk;
  await page.getByText('2 entries came late and do not count yet').waitFor();
  await page.keyboard.press('1');
  await page.locator('.entry-tabs button').nth(1).click();
  await page.getByText('late, does not count').waitFor();
  await picture(page, `desk-${size.width}-late`);
  await expectTidy(page, 'late');
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Count them' }).click();
  await page.getByText('late, counts').waitFor();
  await page.getByText('2 late entries count.').first().waitFor();
  expect(taken()).toEqual([true, true, true]);
  await page.keyboard.press('u');
  await page.getByText('2 entries came late and do not count yet').waitFor();
  expectClean(desk);
});

it('one entry counts alone, and no longer; the stage’s list says the same', async () => {
  desk = await deskPage(here.browser, here.room, SIZES[0]!);
  const { page } = desk;
  await page.keyboard.press('1');
  await page.locator('.entry-tabs button').nth(1).click();
  await page.locator('.entry-line').getByRole('button', { name: 'Count it' }).click();
  await page.getByText('One entry came late and does not count yet').waitFor();
  await page.getByRole('button', { name: 'Don’t count it' }).click();
  await page.getByText('2 entries came late and do not count yet').waitFor();
  await here.room.ask({ kind: 'go-to', phase: 'show' });
  await page.getByText('Best of each team').first().waitFor();
  await picture(page, 'desk-1366-late-show');
  await expectTidy(page, 'late show');
  expectClean(desk);
});
