import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { cutOff, overlaps, picture } from './browser.ts';

/** How far the page is larger than its window, CSS pixels: nothing to scroll is 0 and 0. */
export const scrolls = (page: Page): Promise<{ x: number; y: number }> =>
  page.evaluate(() => {
    const { scrollWidth, scrollHeight } = document.documentElement;
    return { x: Math.max(0, scrollWidth - innerWidth), y: Math.max(0, scrollHeight - innerHeight) };
  });

/** Texts smaller than this many CSS pixels, as `size: text`. */
const smallTexts = (page: Page, least: number): Promise<string[]> =>
  page.evaluate(
    (smallest) =>
      [...document.querySelectorAll('body *')].flatMap((element) => {
        const own = [...element.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim());
        if (!own || element.closest('.only-read-aloud') || element.getClientRects().length === 0) return [];
        const size = Number.parseFloat(getComputedStyle(element).fontSize);
        return size < smallest - 0.01 ? [`${size}: ${element.textContent?.slice(0, 40)}`] : [];
      }),
    least,
  );

/**
 * Texts with less contrast to what lies behind them than `least`, as `ratio: text`. Relative luminance
 * and contrast ratio as WCAG 2.2 defines them; only plain backgrounds are looked at.
 */
const faintTexts = (page: Page, least: number): Promise<string[]> =>
  page.evaluate((wanted) => {
    const channels = (color: string) => (color.match(/[\d.]+/g) ?? []).map(Number);
    const light = (color: string) => {
      const [r = 0, g = 0, b = 0] = channels(color).map((c) => {
        const s = c / 255;
        return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const behind = (element: Element): string => {
      for (let up: Element | null = element; up; up = up.parentElement) {
        const color = getComputedStyle(up).backgroundColor;
        if ((channels(color)[3] ?? 1) > 0) return color;
      }
      return 'rgb(255, 255, 255)';
    };
    return [...document.querySelectorAll('body *')].flatMap((element) => {
      const own = [...element.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim());
      if (!own || element.closest('.only-read-aloud') || element.getClientRects().length === 0) return [];
      const [a, b] = [light(getComputedStyle(element).color), light(behind(element))];
      const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
      return ratio < wanted ? [`${ratio.toFixed(2)}: ${element.textContent?.slice(0, 40)}`] : [];
    });
  }, least);

/** A thirtieth of the picture's height is read from 8 m. */
const SMALLEST = 1 / 30;
/** WCAG 2.2, 1.4.6: enhanced contrast. */
const CONTRAST = 7;

/**
 * What can't be read from the back of a room: texts of a board that are small, and those that are faint on its
 * light ground or on its dark one. The ground is as it was afterwards.
 */
export async function unreadable(page: Page): Promise<string[]> {
  const { height } = page.viewportSize()!;
  const ground = (name: string) =>
    page.evaluate((wanted) => {
      const { dataset } = document.documentElement;
      const before = dataset.ground ?? 'light';
      dataset.ground = wanted;
      return before;
    }, name);
  const faintOn = async (name: string) => {
    await ground(name);
    await still(page);
    return faintTexts(page, CONTRAST);
  };
  const small = await smallTexts(page, height * SMALLEST);
  const before = await ground('light');
  const [light, dark] = [await faintOn('light'), await faintOn('dark')];
  await ground(before);
  return [...small, ...light, ...dark.map((text) => `dark ${text}`)];
}

/** What axe-core finds against WCAG 2.2 A and AA, as `rule: element`. */
export async function axeFindings(page: Page): Promise<string[]> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations } = await new AxeBuilder({ page }).withTags(tags).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 120)}`));
}

/**
 * Nothing is cut off, lies over something else or makes the whole page scroll, once the page has come to
 * rest: what is still on its way is given a few seconds.
 */
export async function expectTidy(page: Page, state: string): Promise<void> {
  const look = async () => ({
    cut: await cutOff(page),
    over: await overlaps(page),
    scrolls: await scrolls(page),
  });
  const tidy = { cut: [], over: [], scrolls: { x: 0, y: 0 } };
  await expect.poll(look, { timeout: 20_000, message: state }).toEqual(tidy);
}

/**
 * Things to touch or click that are smaller than `least` CSS pixels either way, as `size: element`. A
 * control inside its label is as large as the label; a link in a sentence is as large as its words
 * (WCAG 2.2, 2.5.8, exception "inline").
 */
export const smallTargets = (page: Page, least: number): Promise<string[]> =>
  page.evaluate((smallest) => {
    const things = 'a[href], button, input, select, textarea, summary, [role="button"], [tabindex="0"]';
    return [...document.querySelectorAll<HTMLElement>(things)].flatMap((element) => {
      const style = getComputedStyle(element);
      if (element.closest('.only-read-aloud, [inert]') || style.visibility === 'hidden') return [];
      if (element.tagName === 'A' && style.display === 'inline') return [];
      const touched = element.tagName === 'INPUT' ? (element.closest('label') ?? element) : element;
      const { width, height } = touched.getBoundingClientRect();
      if (width === 0 || (width >= smallest - 0.5 && height >= smallest - 0.5)) return [];
      return [`${width.toFixed(1)} × ${height.toFixed(1)}: ${element.outerHTML.slice(0, 100)}`];
    });
  }, least);

/** Text so many percent as large as usual, as a reader's browser makes it. */
export async function textOf(page: Page, percent: 100 | 200): Promise<void> {
  await page.evaluate((size) => {
    document.documentElement.style.fontSize = `${size}%`;
    // No event tells a page that its reader's text grew; a turned tablet or a reload does.
    window.dispatchEvent(new Event('resize'));
  }, percent);
}

/** Slides last 200 ms and pictures take a moment to load: what is looked at is how it stands then. */
export const still = (page: Page): Promise<unknown> =>
  page.waitForFunction(
    () =>
      document.getAnimations().every((a) => a.playState === 'finished') &&
      [...document.images].every((image) => image.complete && image.naturalWidth > 0),
  );

/** The sizes of tablets and of a small laptop, CSS pixels. */
const TABLETS = [
  [820, 1180],
  [1180, 820],
  [1366, 768],
] as const;

/** Looks at a tablet's page as it stands, in every size, and keeps the pictures. */
export async function lookAtTablet(page: Page, name: string): Promise<void> {
  for (const [width, height] of TABLETS) {
    await page.setViewportSize({ width, height });
    await expectTidy(page, `${name} at ${width}`);
    await picture(page, `${name}-${width}`);
  }
  await page.setViewportSize({ width: 1180, height: 820 });
}
