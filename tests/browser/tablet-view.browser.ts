import { afterEach, describe, expect, it } from 'vitest';
import { expectClean, picture, type Watched } from './browser.ts';
import type { TestHand } from './hand.ts';
import { expectTidy } from './looks.ts';
import { stage } from './stage.ts';
import { kept, ofLines, ofMarks, tabletIn, tool } from './tablet-page.ts';

let watched: Watched;
let hand: TestHand;
const here = stage('file');
afterEach(() => watched.context.close());

const open = async () => {
  ({ hand, watched } = await tabletIn(here.browser, here.room, 'one-fast-stretch'));
};

/** Pixels a millimetre, as the paper lies now. */
const scale = async () => {
  const [a, b] = [await hand.place(0, 0), await hand.place(100, 0)];
  return (b.x - a.x) / 100;
};

const PINCH = [
  [
    [140, 120],
    [90, 120],
  ],
  [
    [180, 120],
    [230, 120],
  ],
] as const;

describe('looking closely', () => {
  it('two fingers enlarge the paper, and the stroke that the first began is gone', async () => {
    await open();
    const { page } = watched;
    await tool(page, 'Freehand');
    const before = await scale();
    const under = await hand.place(160, 120);
    await hand.pinch(PINCH[0], PINCH[1]);
    await expect.poll(scale).toBeGreaterThan(before * 3);
    const now = await hand.place(160, 120);
    expect(Math.abs(now.x - under.x)).toBeLessThan(3);
    expect(Math.abs(now.y - under.y)).toBeLessThan(3);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);

    // Drawing, marking and what was found go on at this size.
    await tool(page, 'Straight');
    await hand.drag([150, 120], [160, 120], [190, 120]);
    const design = await kept(page, ofLines(1));
    expect(design.drawing.lines[0]).toMatchObject({
      from: { x: 150, y: 120 },
      pieces: [{ to: { x: 190, y: 120 } }],
    });
    await page.getByText('faster ▸').click();
    await hand.tap(170, 121);
    await kept(page, ofMarks(1));
    await page.locator('.chosen-buttons').waitFor();
    await page.locator('.foot-things').click();
    await page.locator('.callout').waitFor();
    await page.waitForTimeout(400);
    await picture(page, 'tablet-view-close');
    await page.getByRole('button', { name: 'Whole sheet' }).click();
    await expect.poll(scale).toBeCloseTo(before, 3);
    expectClean(watched);
  });

  it('wheel, keys and buttons enlarge and bring the whole sheet back', async () => {
    await open();
    const { page } = watched;
    const before = await scale();
    const at = await hand.place(250, 50);
    await page.mouse.move(at.x, at.y);
    await page.mouse.wheel(0, -300);
    await expect.poll(scale).toBeGreaterThan(before * 1.9);
    const now = await hand.place(250, 50);
    expect(Math.abs(now.x - at.x)).toBeLessThan(2);
    await page.locator('.surface').focus();
    await page.keyboard.press('0');
    await expect.poll(scale).toBeCloseTo(before, 3);
    await page.keyboard.press('+');
    await expect.poll(scale).toBeCloseTo(before * 1.5, 3);
    await page.keyboard.press('-');
    await expect.poll(scale).toBeCloseTo(before, 3);
    await page.getByRole('button', { name: 'Larger' }).click();
    await expect.poll(scale).toBeCloseTo(before * 1.5, 3);
    await page.getByRole('button', { name: 'Smaller' }).click();
    await expect.poll(scale).toBeCloseTo(before, 3);
    expectClean(watched);
  });

  it('once a pen has drawn, a finger moves the paper, until fingers are told to draw again', async () => {
    await open();
    const { page } = watched;
    hand.pointer = 'pen';
    await hand.drag([50, 160], [100, 160], [150, 160]);
    await kept(page, ofLines(1));
    await page.keyboard.press('+');
    hand.pointer = 'touch';
    const before = await hand.place(100, 100);
    await hand.drag([100, 100], [110, 100], [120, 100]);
    const moved = await hand.place(100, 100);
    expect(moved.x).toBeGreaterThan(before.x + 20);
    await kept(page, ofLines(1));
    await page.getByRole('button', { name: 'Draw with fingers again' }).click();
    await hand.drag([100, 100], [120, 100], [140, 100]);
    await kept(page, ofLines(2));
    expectClean(watched);
  });
});

describe('the loupe', () => {
  it('shows above a drawing finger what is under it, and nothing for a mouse', async () => {
    await open();
    const { page } = watched;
    const lift = await hand.hold([60, 160], [100, 150], [140, 140]);
    const loupe = page.locator('.loupe');
    await loupe.waitFor();
    const finger = await hand.place(140, 140);
    const box = (await loupe.boundingBox())!;
    expect(box.y + box.height).toBeLessThan(finger.y - 40);
    // Its middle shows the end of the line under the finger: ink, not paper.
    const dark = await loupe.evaluate((canvas) => {
      const { width, height } = canvas as HTMLCanvasElement;
      const ctx = (canvas as HTMLCanvasElement).getContext('2d')!;
      const { data } = ctx.getImageData(width / 2 - 10, height / 2 - 10, 20, 20);
      return data.filter((value, i) => i % 4 === 0 && value < 60).length;
    });
    expect(dark).toBeGreaterThan(40);
    await picture(page, 'tablet-view-loupe');
    await lift();
    await loupe.waitFor({ state: 'hidden' });
    await kept(page, ofLines(1));
    hand.pointer = 'mouse';
    const release = await hand.hold([60, 60], [100, 60], [140, 60]);
    await page.waitForTimeout(100);
    expect(await loupe.isVisible()).toBe(false);
    await release();
    await kept(page, ofLines(2));
    expectClean(watched);
  });
});

describe('a small window', () => {
  it.each([
    ['a page enlarged to 400 %, or a phone', 320, 640],
    ['a phone that lies on its side', 844, 390],
  ])('%s: nothing is cut off or over another, and all can be reached', async (_, width, height) => {
    await open();
    await hand.drag([50, 160], [100, 160], [200, 160]);
    await kept(watched.page, ofLines(1));
    await watched.page.setViewportSize({ width, height });
    await expectTidy(watched.page, `at ${width}`);
    await picture(watched.page, `tablet-small-${width}`);
    await tool(watched.page, 'Rub out');
    await hand.tap(120, 160);
    await kept(watched.page, ofLines(0));
    await watched.page.getByRole('button', { name: 'Hand in' }).click();
    await watched.page.getByRole('dialog').waitFor();
    await expectTidy(watched.page, `handing in at ${width}`);
    expectClean(watched);
  });
});
