import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectClean, picture } from './browser.ts';
import { axeFindings, expectTidy, smallTargets } from './looks.ts';
import { stage } from './stage.ts';
import { tabletIn } from './tablet-page.ts';

/** A drawing true to size on the glass, and a glass that does nothing while paper lies on it. */

const here = stage('file');

/** Length of a path on the screen, CSS pixels. */
const lengthOf = (page: Page, path: string): Promise<number> =>
  page
    .locator(path)
    .evaluate((node: SVGPathElement) => node.getTotalLength() * (node.getScreenCTM()?.a ?? Number.NaN));

const cardWidth = (page: Page): Promise<number> =>
  page.locator('.tracing-card').evaluate((node) => node.getBoundingClientRect().width);

const button = (page: Page, name: string) =>
  page.locator('.tracing').getByRole('button', { name, exact: true });

/** From a drawing to its tracing table. */
async function openTable(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Hand in' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
  await page.getByRole('button', { name: 'Trace it on the glass' }).click();
}
const HOLD = 'Hold for 2 seconds to unlock';

async function setCard(page: Page, width: number): Promise<void> {
  await page.getByRole('slider', { name: 'Width of the picture' }).fill(String(width));
  expect(await cardWidth(page)).toBeCloseTo(width, 1);
}

/** Whether the glass has taken that it is held, as its button shows. */
const isHeld = (page: Page, held: boolean) => page.locator(`.tracing-hold[data-held="${held}"]`).waitFor();

it('a drawing lies on the glass as large as the card says, part by part, locked until a hold', async () => {
  const { hand, watched } = await tabletIn(here.browser, here.room, 'one-fast-stretch');
  const { page } = watched;
  await hand.drag([50, 160], [200, 160]);
  await openTable(page);
  // 428 px are 5 px a mm; the buttons change that by half a pixel each.
  await setCard(page, 428);
  await button(page, 'Larger').click();
  expect(await cardWidth(page)).toBeCloseTo(428.5, 1);
  await button(page, 'Smaller').press('Enter');
  for (const [width, height] of [
    [820, 1180],
    [1180, 820],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expectTidy(page, `card at ${width}`);
    await picture(page, `tracing-card-${width}`);
  }
  expect(await axeFindings(page)).toEqual([]);
  expect(await smallTargets(page, 44)).toEqual([]);
  await button(page, 'It fits').click();
  await button(page, 'Lay it out').waitFor();
  await expectTidy(page, 'before');
  await picture(page, 'tracing-before');
  expect(await axeFindings(page)).toEqual([]);
  await button(page, 'Lay it out').click();

  await page.locator('.tracing-ruler').waitFor();
  // 428 px / 85.6 mm = 5 px a mm: 100 mm are 500 px, the line of 150 mm from berth to berth 750 px.
  expect(await lengthOf(page, '.tracing-ruler-line')).toBeCloseTo(500, 1);
  expect(await lengthOf(page, '.traced-line')).toBeCloseTo(750, 0);
  const status = page.locator('.tracing-strip [role="status"]');
  const first = await status.textContent();
  expect(first).toMatch(/^Part 1 of \d+: column 1, row 1/);
  for (const [width, height] of [
    [820, 1180],
    [1180, 820],
  ] as const) {
    await page.setViewportSize({ width, height });
    expect(await lengthOf(page, '.tracing-ruler-line')).toBeCloseTo(500, 1);
    await expectTidy(page, `glass at ${width}`);
    await picture(page, `tracing-glass-${width}`);
  }
  expect(await axeFindings(page)).toEqual([]);
  expect(await smallTargets(page, 44)).toEqual([]);
  expect(await button(page, 'Previous part').isDisabled()).toBe(true);
  await button(page, 'Next part').click();
  expect(await status.textContent()).toMatch(/^Part 2 of \d+: column 2, row 1/);
  await picture(page, 'tracing-part-2');

  const before = await page.locator('.traced').boundingBox();
  await button(page, 'Lock the glass').click();
  const hold = button(page, HOLD);
  await hold.waitFor();
  expect(await page.locator('.traced').boundingBox()).toEqual(before);
  await expectTidy(page, 'locked');
  await picture(page, 'tracing-locked');
  expect(await button(page, 'Next part').count()).toBe(0);
  // Keys, a wheel, taps on the drawing and a short tap on the button change nothing.
  for (const key of ['ArrowRight', 'PageDown', 'a', 'Control+Equal', 'Escape', 'Enter'])
    await page.keyboard.press(key);
  await page.mouse.move(400, 300);
  await page.mouse.wheel(0, 400);
  await page.touchscreen.tap(400, 300);
  await hold.hover();
  await page.mouse.down();
  await isHeld(page, true);
  await page.mouse.up();
  await isHeld(page, false);
  expect(await page.locator('.traced').boundingBox()).toEqual(before);
  expect(await status.textContent()).toContain('Locked');
  await page.mouse.down();
  await button(page, 'Next part').waitFor();
  await page.mouse.up();

  await button(page, 'Lock the glass').press('Enter');
  await hold.waitFor();
  await isHeld(page, false);
  await page.keyboard.down('Escape');
  await button(page, 'Lock the glass').waitFor();
  await page.keyboard.up('Escape');
  expect(await page.locator('.tracing').isVisible()).toBe(true);
  expectClean(watched);
  await watched.context.close();
});

it('keeps what the card said over a reload, and does not trust it at another zoom', async () => {
  // Its faulty drawing has marks.
  const { watched } = await tabletIn(here.browser, here.room, 'painted-in-a-hurry');
  const { page } = watched;
  await openTable(page);
  await setCard(page, 513.5);
  await button(page, 'It fits').click();
  await page.reload();
  await page.locator('.entries-button').click();
  await page.getByRole('button', { name: 'Trace it on the glass' }).click();
  await button(page, 'Lay it out').click();
  // 513.5 / 85.6 × 100.
  expect(await lengthOf(page, '.tracing-ruler-line')).toBeCloseTo(599.88, 1);
  expect(await page.locator('.traced-band').count()).toBeGreaterThan(0);
  await picture(page, 'tracing-bands');
  const devtools = await watched.context.newCDPSession(page);
  await devtools.send('Emulation.setDeviceMetricsOverride', {
    width: 1073,
    height: 745,
    deviceScaleFactor: 1.1,
    mobile: false,
  });
  await page.getByRole('alert').getByText('The zoom or the screen is another one').waitFor();
  expect(await button(page, 'Lay it out').count()).toBe(0);
  await button(page, 'Hold the card again').click();
  await setCard(page, 467);
  await button(page, 'It fits').click();
  await button(page, 'Lay it out').click();
  // 467 / 85.6 × 100.
  expect(await lengthOf(page, '.tracing-ruler-line')).toBeCloseTo(545.56, 1);
  await button(page, 'Back').click();
  await button(page, 'Close').click();
  await page.locator('.tracing').waitFor({ state: 'detached' });
  expectClean(watched);
  await watched.context.close();
});
