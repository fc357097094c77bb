import type { Browser, Page } from 'playwright-core';
import { expect } from 'vitest';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import { type Watched, watchedPage } from './browser.ts';
import { TestHand } from './hand.ts';
import { challengeNamed, type TestRoom } from './room.ts';

/** A tablet that has joined and sees the sheet of a challenge, in a building time of its own. */
export async function tabletIn(
  browser: Browser,
  room: TestRoom,
  key: string,
): Promise<{ readonly hand: TestHand; readonly watched: Watched }> {
  if (room.desk.state?.phase === 'build') await room.ask({ kind: 'go-to', phase: 'brief' });
  await room.ask({ kind: 'choose-challenge', key }, { kind: 'start-building', seconds: null });
  const watched = await watchedPage(browser, `${room.server.url}/`, {
    width: 1180,
    height: 820,
    touch: true,
  });
  await watched.page.goto(`${room.server.url}/j?word=${room.word}`);
  return { hand: await TestHand.on(watched.page, challengeNamed(key).sheet), watched };
}

/** Chooses a tool by its word. */
export const tool = (page: Page, name: string): Promise<void> =>
  page.locator('.tools').getByText(name, { exact: true }).click();

/** Has the drawing driven; what the robot will do is left open where it is asked. */
export async function tryIt(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Try it' }).click();
  await page.getByRole('button', { name: 'Not sure' }).click();
  await page.getByRole('button', { name: 'Pause' }).waitFor();
}

/** What the browser keeps of a team's work, in its file form. */
const onShelf = (page: Page): Promise<unknown> =>
  page.evaluate(
    () =>
      new Promise<unknown>((resolve, reject) => {
        const opening = indexedDB.open('harbour-lines');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const all = db.transaction('drafts').objectStore('drafts').getAll();
          all.onsuccess = () => {
            db.close();
            resolve(all.result.at(-1));
          };
        };
      }),
  );

/** Waits until the browser keeps so many answers. */
export const keptAnswers = (page: Page, count: number): Promise<void> =>
  expect
    .poll(async () => ((await onShelf(page)) as { answers?: unknown[] } | undefined)?.answers?.length)
    .toBe(count);

/** The draft that the browser keeps, once it is as wanted. */
export async function kept(page: Page, wanted: (design: Design) => boolean): Promise<Design> {
  const end = Date.now() + 5000;
  for (;;) {
    const raw = await onShelf(page);
    const read = parseDocument(Design, (raw as { design?: unknown } | undefined)?.design ?? raw);
    if (read.ok && wanted(read.value)) return read.value;
    if (Date.now() > end) throw new Error(`the draft never became as wanted: ${JSON.stringify(raw)}`);
    await page.waitForTimeout(30);
  }
}

export const ofLines = (n: number) => (design: Design) => design.drawing.lines.length === n;
export const ofMarks = (n: number) => (design: Design) => design.drawing.marks.length === n;
