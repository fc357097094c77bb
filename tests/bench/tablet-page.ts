import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { browserPath } from '../browser/browser.ts';
import type { TestHand } from '../browser/hand.ts';
import { type TestRoom, testRoom } from '../browser/room.ts';
import { kept, ofLines, tabletIn } from '../browser/tablet-page.ts';

/** The sheet that all of this is measured on: A4, two berths, lines are the team's. */
export const SHEET_KEY = 'one-fast-stretch';

export interface BenchTablet {
  readonly page: Page;
  readonly cdp: CDPSession;
  readonly hand: TestHand;
}

/** The loader of these files marks functions by their names; pages don't know how. */
const NAMES = 'globalThis.__name = (named) => named';

/** How much slower than this machine the tablet is. */
export const SLOWER = 4;

/** Runs `work` on a tablet page of 1180 × 820 in a browser and a room of its own. */
export async function onTablet<T>(work: (tablet: BenchTablet) => Promise<T>): Promise<T> {
  const browser: Browser = await chromium.launch({ executablePath: browserPath(), args: ['--no-sandbox'] });
  const room: TestRoom = await testRoom();
  try {
    const { hand, watched } = await tabletIn(browser, room, SHEET_KEY);
    await watched.context.addInitScript({ content: NAMES });
    await watched.page.evaluate(NAMES);
    const cdp = await watched.context.newCDPSession(watched.page);
    return await work({ page: watched.page, cdp, hand });
  } finally {
    await browser.close();
    await room.end();
  }
}

/** Puts a drawing on the sheet, as if this browser had kept it. */
export async function putDrawing({ page, hand }: BenchTablet, design: Design): Promise<void> {
  await hand.drag([50, 160], [100, 160], [150, 160]);
  await kept(page, ofLines(1));
  await page.evaluate(
    (raw) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('harbour-lines');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const store = opening.result.transaction('drafts', 'readwrite').objectStore('drafts');
          const keys = store.getAllKeys();
          keys.onsuccess = () => {
            store.put(raw, keys.result.at(-1)!).onsuccess = () => {
              opening.result.close();
              resolve();
            };
          };
        };
      }),
    writeDocument(Design, design),
  );
  await page.reload();
  await page.locator('.surface').waitFor();
  await kept(page, ofLines(design.drawing.lines.length));
}
