import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { cutOff, expectClean, openBrowser, overlaps, picture, watchedPage } from './browser.ts';
import { axeFindings, smallTargets, still, textOf } from './looks.ts';
import { testRoom } from './room.ts';
import { everyTabletState } from './tablet-states.ts';

const SIZES = [
  { width: 820, height: 1180 },
  { width: 1180, height: 820 },
  { width: 1366, height: 768 },
] as const;
/** What a finger finds, CSS pixels: the look's own promise; WCAG 2.2 AA asks for 24. */
const FINGER = 44;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it.each(SIZES)(
  'the tablet at $width × $height has no finding of axe, nothing small, and text of 200 %',
  async (size) => {
    const room = await testRoom();
    const watched = await watchedPage(browser, `${room.server.url}/`, size);
    const { page, context } = watched;
    await everyTabletState(page, room, async (name) => {
      await still(page);
      const axe = await axeFindings(page);
      const small = await smallTargets(page, FINGER);
      await textOf(page, 200);
      await still(page);
      await picture(page, `large-${size.width}-${name}`);
      const large = { cut: await cutOff(page, true), over: await overlaps(page) };
      await textOf(page, 100);
      expect
        .soft({ name, axe, small, large })
        .toEqual({ name, axe: [], small: [], large: { cut: [], over: [] } });
    });
    // A room word that is wrong is answered with 404, which the browser reports.
    const trouble = watched.trouble.filter((line) => !line.includes('404'));
    expectClean({ ...watched, trouble });
    await context.close();
    await room.end();
  },
);
