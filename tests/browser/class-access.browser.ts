import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { cutOff, expectClean, overlaps, picture } from './browser.ts';
import { type ClassPages, classPages, everyLeafAndScene } from './class-pages.ts';
import { axeFindings, smallTargets, still, textOf } from './looks.ts';
import { stage } from './stage.ts';

/** WCAG 2.2, 2.5.8 Target Size (Minimum), level AA, CSS pixels. */
const TARGET = 24;

const here = stage('test');
let pages: ClassPages;
beforeEach(async () => {
  pages = await classPages(here.browser, here.room);
});
afterEach(async () => {
  for (const { context } of Object.values(pages)) await context.close();
});

const all = (): Page[] => Object.values(pages).map(({ page }) => page);

it('desk, board and check page have no finding of axe and nothing to press under 24 px', async () => {
  await everyLeafAndScene(pages, here.room, async (page, name) => {
    await still(page);
    const [axe, small] = [await axeFindings(page), await smallTargets(page, TARGET)];
    expect.soft({ name, axe, small }).toEqual({ name, axe: [], small: [] });
  });
  for (const watched of Object.values(pages)) expectClean(watched);
});

it('with text of 200 % nothing is cut off or lies over something else on desk and check page', async () => {
  await everyLeafAndScene(pages, here.room, async (page, name) => {
    // The board's letters are measured by its height, for eyes at 8 m: it has nothing to enlarge.
    if (page === pages.board.page) return;
    await textOf(page, 200);
    await still(page);
    await picture(page, `large-${name}`);
    const [cut, over] = [await cutOff(page, true), await overlaps(page)];
    await textOf(page, 100);
    expect.soft({ name, cut, over }).toEqual({ name, cut: [], over: [] });
  });
});

/** A blink of a change that nobody sees as movement, ms. */
const AT_ONCE = 10;

/** Animations and transitions that elements would run, as `length: element`. */
const movements = (page: Page, most: number): Promise<string[]> =>
  page.evaluate((longest) => {
    const longestOf = (value: string) =>
      Math.max(
        ...value.split(',').map((one) => Number.parseFloat(one) * (one.trim().endsWith('ms') ? 1 : 1000)),
      );
    return [...document.querySelectorAll('body *')].flatMap((element) => {
      const { transitionDuration, animationName, animationDuration } = getComputedStyle(element);
      const moves = animationName === 'none' ? 0 : longestOf(animationDuration);
      const length = Math.max(longestOf(transitionDuration), moves);
      return length > longest ? [`${length} ms: ${element.outerHTML.slice(0, 80)}`] : [];
    });
  }, most);

it('where a device asks for less motion nothing slides, fades or grows', async () => {
  const [first] = all();
  expect(await movements(first!, AT_ONCE)).not.toEqual([]);
  for (const page of all()) await page.emulateMedia({ reducedMotion: 'reduce' });
  await everyLeafAndScene(pages, here.room, async (page, name) => {
    expect.soft({ name, moves: await movements(page, AT_ONCE) }).toEqual({ name, moves: [] });
  });
});

/** Buttons that nothing sets apart from what lies round them, where the colours are forced. */
const unframed = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const framed = (style: CSSStyleDeclaration) =>
      (style.borderTopStyle !== 'none' && Number.parseFloat(style.borderTopWidth) >= 1) ||
      (style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 1);
    return [...document.querySelectorAll('button, .button')].flatMap((element) =>
      element.getClientRects().length === 0 || framed(getComputedStyle(element))
        ? []
        : [element.outerHTML.slice(0, 100)],
    );
  });

/** Pressed, chosen or current things that look like their neighbours that are not. */
const unmarked = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const pairs = [
      ['[aria-pressed="true"]', '[aria-pressed="false"]'],
      ['[aria-selected="true"]', '[aria-selected="false"]'],
      ['[aria-current]', 'button:not([aria-current])'],
    ] as const;
    const looks = (element: Element) => {
      const s = getComputedStyle(element);
      return [
        s.backgroundColor,
        s.color,
        s.borderColor,
        s.borderWidth,
        s.outlineStyle,
        s.outlineWidth,
      ].join();
    };
    return pairs.flatMap(([on, off]) =>
      [...document.querySelectorAll(on)].flatMap((element) => {
        const other = [...(element.parentElement?.parentElement?.querySelectorAll(off) ?? [])].find(
          (one) => one.className === element.className,
        );
        return other && looks(other) === looks(element) ? [element.outerHTML.slice(0, 100)] : [];
      }),
    );
  });

/** What has the focus, where neither it nor the label or card that it fills has a ring. */
const focusWithoutRing = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const focused = document.activeElement;
    if (!focused || focused === document.body) return [];
    const around = [focused, focused.parentElement, focused.closest('label')];
    const ring = around.some((one) => {
      const style = one && getComputedStyle(one);
      return style?.outlineStyle === 'solid' && Number.parseFloat(style.outlineWidth) >= 3;
    });
    return ring ? [] : [focused.outerHTML.slice(0, 120)];
  });

it('in forced colours buttons have frames, what is pressed looks pressed, and the focus can be seen', async () => {
  for (const page of all()) await page.emulateMedia({ forcedColors: 'active' });
  await everyLeafAndScene(pages, here.room, async (page, name) => {
    await still(page);
    await picture(page, `forced-${name}`);
    expect
      .soft({ name, unframed: await unframed(page), unmarked: await unmarked(page) })
      .toEqual({ name, unframed: [], unmarked: [] });
    if (page === pages.board.page) return;
    await page.keyboard.press('Tab');
    expect.soft({ name, ring: await focusWithoutRing(page) }).toEqual({ name, ring: [] });
  });
});
