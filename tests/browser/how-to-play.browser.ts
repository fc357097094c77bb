import type { Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { expectClean, picture, type Watched, type WatchOptions, watchedPage } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { stage } from './stage.ts';

/** How each way to play is played, told in pictures. */

const TABLETS = [
  { width: 820, height: 1180 },
  { width: 1180, height: 820 },
  { width: 1366, height: 768 },
];
const CHALLENGES = ['one-fast-stretch', 'park-on-the-landing', 'sharp-corner', 'two-travellers'];

const here = stage('test');
let watched: Watched;
afterEach(() => watched.context.close());

async function tablet(options: WatchOptions): Promise<Page> {
  watched = await watchedPage(here.browser, `${here.room.server.url}/`, { ...options, touch: true });
  await watched.page.goto(`${here.room.server.url}/j?word=${here.room.word}`);
  return watched.page;
}

async function look(page: Page, name: string): Promise<void> {
  await picture(page, name);
  await expectTidy(page, name);
  expect(await axeFindings(page), name).toEqual([]);
}

async function brief(key: string): Promise<void> {
  if (here.room.desk.state!.phase === 'build') await here.room.ask({ kind: 'go-to', phase: 'brief' });
  await here.room.ask({ kind: 'choose-challenge', key });
  if (here.room.desk.state!.phase === 'gather') await here.room.ask({ kind: 'go-to', phase: 'brief' });
}
const pictures = (page: Page) => page.locator('.how-pictures > li');

it.each(TABLETS)('a tablet of $width × $height shows each way in three pictures', async (size) => {
  const page = await tablet({ ...size, newcomer: true });
  for (const key of CHALLENGES) {
    await brief(key);
    await page.locator('.brief h1').waitFor();
    await expect.poll(() => pictures(page).count()).toBe(3);
    await look(page, `how-${size.width}-${key}-brief`);
    await here.room.ask({ kind: 'start-building', seconds: null });
    await page.getByRole('button', { name: 'Help' }).click();
    await page.getByRole('dialog', { name: 'How to play' }).waitFor();
    await look(page, `how-${size.width}-${key}-help`);
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  }
  expectClean(watched);
});

it('who comes while the others build is told once, and asks again by keys', async () => {
  await here.room.ask(
    { kind: 'choose-challenge', key: 'sharp-corner' },
    { kind: 'start-building', seconds: null },
  );
  const page = await tablet({ ...TABLETS[1]!, newcomer: true });
  await page.getByRole('dialog', { name: 'How to play' }).waitFor();
  expect(await pictures(page).allTextContents()).toEqual([
    'Something here is wrong.',
    'Change only a little.',
    'Try it, then hand in.',
  ]);
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.reload();
  const help = page.getByRole('button', { name: 'Help' });
  await help.waitFor();
  expect(await page.getByRole('dialog').count()).toBe(0);
  await help.focus();
  await page.keyboard.press('Enter');
  await pictures(page).first().waitFor();
  await page.keyboard.press('Escape');
  await expect.poll(() => help.evaluate((button) => button === document.activeElement)).toBe(true);
  expectClean(watched);
});

it('its pictures stand still where motion is not wanted', async () => {
  await here.room.ask(
    { kind: 'choose-challenge', key: 'sharp-corner' },
    { kind: 'start-building', seconds: null },
  );
  const page = await tablet(TABLETS[1]!);
  const animated = async (): Promise<string> => {
    await page.getByRole('button', { name: 'Help' }).click();
    const name = await page.locator('.how-robot').evaluate((robot) => getComputedStyle(robot).animationName);
    await page.keyboard.press('Escape');
    return name;
  };
  expect(await animated()).toBe('how-drive');
  await page.emulateMedia({ reducedMotion: 'reduce' });
  expect(await animated()).toBe('none');
});
