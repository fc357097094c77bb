import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openRoom, ownerCookie, seated, type TestServer, testServer } from '../rooms/harness.ts';
import { openBrowser, PAGES, picture, watchedPage } from './browser.ts';
import { TestHand } from './hand.ts';
import { challengeNamed } from './room.ts';
import { kept, ofLines } from './tablet-page.ts';

/** Bytes that an old tablet on a bad network may be asked for before it shows anything. */
const FIRST_LOAD = 200_000;
const KEY = 'one-fast-stretch';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('the tablet page asks for at most 200 kB, packed, before it stands', () => {
  const html = readFileSync(join(PAGES, 'tablet/index.html'), 'utf8');
  const files = [...html.matchAll(/\/assets\/[\w.-]+\.(?:js|css)/g)].map(([file]) => file);
  expect(files.length).toBeGreaterThan(2);
  const packed = (file: string) => gzipSync(readFileSync(join(PAGES, file))).length;
  // One language comes too, before anything is shown.
  const languages = readdirSync(join(PAGES, 'assets')).filter((name) => /^(en|es)-[\w-]+\.js$/.test(name));
  expect(languages.length).toBe(2);
  const language = Math.max(...languages.map((name) => packed(join('assets', name))));
  const sum = files.reduce((all, file) => all + packed(file), gzipSync(html).length + language);
  expect(sum).toBeLessThan(FIRST_LOAD);
});

/** A server that can be ended and begun again where it was. */
class Ended {
  server: TestServer;
  readonly #pages: string;

  private constructor(server: TestServer, pages: string) {
    this.server = server;
    this.#pages = pages;
  }

  static async begin(pages = PAGES): Promise<Ended> {
    return new Ended(await testServer({ pages }), pages);
  }

  async again(pages = this.#pages): Promise<void> {
    const { dataDir, url } = this.server;
    this.server = await testServer({ pages, dataDir, port: Number(new URL(url).port) });
  }
}

/** A tablet in the building phase, and the desk's socket. */
async function building(ended: Ended) {
  const { url } = ended.server;
  const owner = await ownerCookie(ended.server);
  const { room, word } = await openRoom(url, owner);
  const desk = await seated(url, 'desk', owner, room);
  await desk.command({ kind: 'choose-challenge', key: KEY });
  await desk.command({ kind: 'start-building', seconds: null });
  desk.close();
  const { page, context } = await watchedPage(browser, url, { width: 1180, height: 820 });
  await page.goto(`${url}/j?word=${word}`);
  const hand = await TestHand.on(page, challengeNamed(KEY).sheet);
  hand.pointer = 'mouse';
  return { page, context, hand, owner, room };
}

const offlineReady = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });

/** Draws, is told what is wrong, drives. */
async function drawAndTry(page: Page, hand: TestHand): Promise<void> {
  await hand.drag([50, 160], [120, 160], [200, 160]);
  await hand.drag([200, 160], [160, 135], [120, 110]);
  await page.locator('.callout', { hasText: 'Sharp corner' }).waitFor();
  await page.getByRole('button', { name: 'Try it' }).click();
  await page.getByRole('button', { name: 'Not sure' }).click();
  await page.getByText('4×').click();
  await page.locator('.trying-goals').getByText('missing').first().waitFor();
  await page.getByRole('button', { name: 'Back to the drawing' }).click();
}

describe('while the server is away', () => {
  it('a page that stays open goes on drawing, checking and trying, and is current after', async () => {
    const ended = await Ended.begin();
    const { page, context, hand, owner, room } = await building(ended);
    await page.waitForLoadState('networkidle');
    await ended.server.close();
    await page.getByText('Go on drawing, nothing gets lost').first().waitFor();
    await drawAndTry(page, hand);
    await picture(page, 'tablet-server-away');
    await ended.again();
    await page.getByText('Go on drawing, nothing gets lost').first().waitFor({ state: 'detached' });
    const desk = await seated(ended.server.url, 'desk', owner, room);
    await desk.until('the draft', () =>
      desk.latest
        .concat(desk.welcome?.ok ? desk.welcome.latest : [])
        .some((value) => value.kind === 'draft' && JSON.stringify(value.design).includes('12000')),
    );
    desk.close();
    await context.close();
    await ended.server.end();
  });

  it('where browsers allow it, a page that is opened again goes on too, and hands in when it can', async () => {
    const ended = await Ended.begin();
    const { page, context, owner, room } = await building(ended);
    await offlineReady(page);
    await ended.server.close();
    await page.reload();
    const hand = await TestHand.on(page, challengeNamed(KEY).sheet);
    hand.pointer = 'mouse';
    await drawAndTry(page, hand);
    await kept(page, ofLines(1));
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await page.reload();
    await TestHand.on(page, challengeNamed(KEY).sheet);
    await ended.again();
    const desk = await seated(ended.server.url, 'desk', owner, room);
    await desk.until('the entry', () => desk.state?.entries.length === 1);
    desk.close();
    await context.close();
    await ended.server.end();
  });
});

/** Whether the browser has taken up the newer build, whole. Runs in the page. */
async function newerIsKept(): Promise<boolean> {
  const registration = await navigator.serviceWorker.ready;
  const newer = (await caches.keys()).find((name) => name.includes('newer'));
  if (newer === undefined || registration.installing || registration.waiting) return false;
  const page = await (await caches.open(newer)).match('/');
  return page !== undefined && registration.active?.state === 'activated';
}

it('a new build is shown as soon as a server with it answers, and is the one that is kept', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'harbour-pages-'));
  const pages = join(folder, 'pages');
  cpSync(PAGES, pages, { recursive: true });
  for (const [file, from, to] of [
    ['tablet/index.html', '<title>Harbour Lines</title>', '<title>Harbour Lines, newer</title>'],
    ['offline-worker.js', 'self.BUILD="', 'self.BUILD="newer-'],
  ] as const)
    writeFileSync(join(pages, file), readFileSync(join(pages, file), 'utf8').replace(from, to));
  const ended = await Ended.begin();
  const { page, context } = await building(ended);
  await offlineReady(page);
  await ended.server.close();
  await ended.again(pages);
  await page.reload();
  expect(await page.title()).toBe('Harbour Lines, newer');
  await expect.poll(() => page.evaluate(newerIsKept), { timeout: 15_000 }).toBe(true);
  await ended.server.close();
  await page.reload();
  expect(await page.title()).toBe('Harbour Lines, newer');
  await context.close();
  await ended.server.end();
  rmSync(folder, { recursive: true, force: true });
});

it('a page over plain http works without any of it', async () => {
  const server = await testServer({ pages: PAGES });
  const { word } = await openRoom(server.url, await ownerCookie(server));
  const { page, context, trouble } = await watchedPage(browser, server.url, { width: 820, height: 1180 });
  await page.addInitScript(() => Object.defineProperty(window, 'isSecureContext', { value: false }));
  await page.goto(`${server.url}/j?word=${word}`);
  await page.getByRole('heading', { name: 'Sailboat' }).waitFor();
  expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
  expect(trouble).toEqual([]);
  await context.close();
  await server.end();
});
