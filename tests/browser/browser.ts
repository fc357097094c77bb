import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect } from 'vitest';

/** The built pages; HARBOUR_PAGES names a folder that was built before. */
export const PAGES =
  process.env.HARBOUR_PAGES ?? fileURLToPath(new URL('../../.build/pages', import.meta.url));
const ARTEFACTS = fileURLToPath(new URL('../../.artefacts/browser', import.meta.url));

const CANDIDATES = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The browser that HARBOUR_BROWSER names, or the first one found in the usual places. */
export function browserPath(): string {
  const named = process.env.HARBOUR_BROWSER;
  if (named !== undefined) {
    if (existsSync(named)) return named;
    throw new Error(`HARBOUR_BROWSER names ${named}, but there is no such file.`);
  }
  const found = CANDIDATES.find((path) => existsSync(path));
  if (found !== undefined) return found;
  throw new Error(
    'No browser was found for the browser tests. Install one (on Debian: apt-get install chromium-headless-shell) or name one: HARBOUR_BROWSER=/path/to/chromium npm test',
  );
}

/** A headless browser of its own; close it when done. */
export const openBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: browserPath(), args: ['--no-sandbox', '--force-color-profile=srgb'] });

export interface Watched {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console errors, uncaught errors, and requests to any host but the server's. */
  readonly trouble: readonly string[];
}

export interface WatchOptions {
  readonly width: number;
  readonly height: number;
  readonly touch?: boolean;
  /** What the browser asks for, as BCP 47 has it; the pages take their language from it. */
  readonly locale?: string;
  /** Whether each way to play is new to this tablet; otherwise nobody is told by itself how it goes. */
  readonly newcomer?: boolean;
}

/** Runs in the page. One of another address, like an empty one, has nothing to keep it in. */
function haveMetAllPlays(): void {
  if (location.protocol.startsWith('http'))
    localStorage.setItem('harbour-lines.met-plays', '["draw","fill-in","mend","predict"]');
}

/** A page in a context of its own, watched from its first request on. */
export async function watchedPage(browser: Browser, url: string, options: WatchOptions): Promise<Watched> {
  const { width, height, touch = false, locale = 'en-US', newcomer = false } = options;
  const context = await browser.newContext({ viewport: { width, height }, hasTouch: touch, locale });
  if (!newcomer) await context.addInitScript(haveMetAllPlays);
  const page = await context.newPage();
  const trouble: string[] = [];
  const own = new URL(url).host;
  page.on('console', (message) => {
    if (message.type() === 'error') trouble.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => trouble.push(`uncaught: ${error.message}`));
  const asked = (address: string) => {
    const { host, protocol } = new URL(address);
    if (host !== own && protocol !== 'data:' && protocol !== 'blob:') trouble.push(`asked ${address}`);
  };
  // Of the whole context: workers and further tabs ask too.
  context.on('request', (request) => asked(request.url()));
  page.on('websocket', (socket) => asked(socket.url()));
  return { page, context, trouble };
}

/** Keeps a picture of the page for people to look at; where nobody will, `HARBOUR_PICTURES=no` saves the time. */
export async function picture(page: Page, name: string): Promise<void> {
  if (process.env.HARBOUR_PICTURES === 'no') return;
  mkdirSync(ARTEFACTS, { recursive: true });
  await page.screenshot({ path: join(ARTEFACTS, `${name}.png`), animations: 'disabled' });
}

/**
 * Elements with text of their own that is cut off or lies outside the page, as `selector: text`. What
 * is only for reading aloud does not count; nor does what scrolls on purpose. `mayScroll`: the whole page
 * may be longer than its window.
 */
export async function cutOff(page: Page, mayScroll = false): Promise<string[]> {
  return page.evaluate((long) => {
    const scrolls = (element: Element) => /auto|scroll/.test(getComputedStyle(element).overflow);
    const clipper = (element: Element): Element | null => {
      for (let up = element.parentElement; up; up = up.parentElement)
        if (getComputedStyle(up).overflow !== 'visible') return up;
      return null;
    };
    const outside = (box: DOMRect, frame: DOMRect) =>
      box.left < frame.left - 1 ||
      box.right > frame.right + 1 ||
      box.top < frame.top - 1 ||
      box.bottom > frame.bottom + 1;
    const whole = document.documentElement.getBoundingClientRect();
    const sheet = long
      ? new DOMRect(whole.x, whole.y, whole.width, document.documentElement.scrollHeight)
      : whole;
    const found: string[] = [];
    for (const element of document.querySelectorAll('body *')) {
      const own = [...element.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim());
      if (!own || element.closest('.only-read-aloud, svg, canvas, details:not([open]) > :not(summary)'))
        continue;
      const box = element.getBoundingClientRect();
      if (box.width === 0 || box.height === 0) continue;
      const frame = clipper(element);
      const cut =
        frame && scrolls(frame)
          ? box.left < frame.getBoundingClientRect().left - 1 ||
            box.right > frame.getBoundingClientRect().right + 1
          : outside(box, frame?.getBoundingClientRect() ?? sheet);
      const overflows =
        element.scrollWidth > element.clientWidth + 1 && getComputedStyle(element).display !== 'inline';
      if (cut || overflows)
        found.push(`${element.className || element.tagName}: ${element.textContent?.trim().slice(0, 50)}`);
    }
    return found;
  }, mayScroll);
}

/** Pairs of texts that lie over one another, where both can be seen. */
export async function overlaps(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const visible = (box: DOMRect, element: Element): DOMRect => {
      let { left, right, top, bottom } = box;
      for (let up: Element | null = element; up; up = up.parentElement) {
        if (getComputedStyle(up).overflow === 'visible') continue;
        const frame = up.getBoundingClientRect();
        left = Math.max(left, frame.left);
        right = Math.min(right, frame.right);
        top = Math.max(top, frame.top);
        bottom = Math.min(bottom, frame.bottom);
      }
      return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    };
    const texts = [...document.querySelectorAll('body *')].flatMap((element) => {
      const unseen = '.only-read-aloud, svg, [aria-hidden="true"], [inert], dialog';
      if (element.closest(`${unseen}, details:not([open]) > :not(summary)`)) return [];
      if (getComputedStyle(element).visibility === 'hidden') return [];
      return [...element.childNodes]
        .filter((n) => n.nodeType === 3 && n.textContent?.trim())
        .map((node) => {
          const range = document.createRange();
          range.selectNodeContents(node);
          const boxes = [...range.getClientRects()].map((box) => visible(box, element));
          return { text: node.textContent?.trim().slice(0, 30) ?? '', boxes };
        });
    });
    const meet = (a: DOMRect, b: DOMRect) =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > Math.max(2, Math.min(a.height, b.height) / 3);
    const found: string[] = [];
    for (const [i, a] of texts.entries())
      for (const b of texts.slice(i + 1))
        if (a.boxes.some((x) => b.boxes.some((y) => meet(x, y)))) found.push(`${a.text} × ${b.text}`);
    return found;
  });
}

export function expectClean({ trouble }: Watched): void {
  expect(trouble).toEqual([]);
}
