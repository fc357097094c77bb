import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, it } from 'vitest';
import { expectClean, openBrowser, picture, watchedPage } from './browser.ts';
import { TestHand } from './hand.ts';
import { expectTidy, still } from './looks.ts';
import { challengeNamed, type TestRoom, testRoom } from './room.ts';
import { tryIt } from './tablet-page.ts';

const SIZES = [
  { name: 'portrait', width: 820, height: 1180, touch: true },
  { name: 'landscape', width: 1180, height: 820, touch: true },
  { name: 'laptop', width: 1366, height: 768, touch: false },
] as const;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

describe.each(SIZES)('tablet, $name', (size) => {
  let room: TestRoom;
  beforeAll(async () => {
    room = await testRoom();
  });
  afterAll(() => room.end());

  it('every screen of a lesson is whole, nothing cut off or over another', async () => {
    const { sheet } = challengeNamed('one-fast-stretch');
    const watched = await watchedPage(browser, `${room.server.url}/`, size);
    const { page, context } = watched;
    const shot = async (name: string) => {
      await still(page);
      await picture(page, `tablet-${size.name}-${name}`);
      await expectTidy(page, name);
    };
    await page.goto(`${room.server.url}/`);
    await page.getByLabel('Room word').fill('fern-7');
    await page.getByRole('button', { name: 'Go in' }).click();
    await page.getByRole('alert').waitFor();
    await shot('01-join');
    await page.getByLabel('Room word').fill(room.word);
    await page.getByRole('button', { name: 'Go in' }).click();
    await page.getByRole('heading', { name: 'Sailboat' }).waitFor();
    await shot('02-waiting');
    await room.ask({ kind: 'choose-challenge', key: 'one-fast-stretch' }, { kind: 'go-to', phase: 'brief' });
    await page.getByText('one, and only one').waitFor();
    await shot('03-brief');
    await room.ask({ kind: 'start-building', seconds: 600 });
    const hand = await TestHand.on(page, sheet);
    hand.pointer = size.touch ? 'touch' : 'mouse';
    await shot('04-empty');
    await hand.drag([50, 160], [130, 160], [225, 160]);
    await hand.tap(225, 160);
    await hand.tap(150, 110);
    await page.locator('.callout').first().waitFor({ timeout: 8000 });
    await shot('05-finding');
    await page.getByRole('button', { name: 'Undo' }).click();
    await hand.drag([225, 160], [225, 100], [225, 50]);
    await hand.drag([225, 50], [120, 50], [60, 50]);
    await page.getByText('Curve', { exact: true }).click();
    await hand.drag([225, 160], [219, 155], [215, 150]);
    await hand.drag([225, 50], [219, 55], [215, 60]);
    await shot('06-curve');
    await page.getByText('faster ▸').click();
    await hand.tap(85, 160);
    await hand.tap(130, 160);
    await page.locator('.chosen-buttons').waitFor();
    await shot('07-mark');
    await page.getByText('steady', { exact: true }).click();
    await hand.tap(155, 50);
    await page.getByText('Move', { exact: true }).click();
    await hand.tap(60, 50);
    await shot('08-move');
    await page.getByText('Rub out', { exact: true }).click();
    await shot('09-rub');
    await tryIt(page);
    await page.locator('.reading').first().waitFor();
    await shot('10-try-reading');
    await page.locator('.run-dash[visibility="visible"]').first().waitFor({ state: 'attached' });
    await shot('10b-try-fast');
    await page.getByText('4×').click();
    await page.locator('.trying-goals').getByText('reached').waitFor();
    await shot('11-tried');
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('dialog').waitFor();
    await shot('12-hand-in');
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await page.getByText('Go on from this one').waitFor();
    await page.locator('.handing .goal-row').first().waitFor();
    await shot('13-entries');
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await room.ask({ kind: 'look-here', on: true });
    await page.getByText('Look at the board').waitFor();
    await shot('14-look-here');
    await room.ask({ kind: 'look-here', on: false }, { kind: 'go-to', phase: 'show' });
    await page.getByText('Your best drawing').waitFor();
    await shot('15-show');
    await room.ask({ kind: 'go-to', phase: 'close' });
    await page.getByText('Well done').waitFor();
    await shot('16-close');
    const second = await context.newPage();
    await second.goto(`${room.server.url}/`);
    await page.getByText('Open in a newer tab').waitFor();
    await shot('17-quiet');
    const trouble = watched.trouble.filter((line) => !line.includes('404'));
    expectClean({ ...watched, trouble });
    await context.close();
  });
});
