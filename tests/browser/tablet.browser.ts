import AxeBuilder from '@axe-core/playwright';
import { afterEach, describe, expect, it } from 'vitest';
import { pathOf } from '../../shared/geometry/path.ts';
import { expectClean, type Watched } from './browser.ts';
import type { Pointer, TestHand } from './hand.ts';
import { challengeNamed } from './room.ts';
import { stage } from './stage.ts';
import { kept, ofLines, ofMarks, tabletIn, tool, tryIt } from './tablet-page.ts';

let watched: Watched;
let hand: TestHand;
const here = stage('file');
afterEach(() => watched.context.close());

const open = async (key = 'one-fast-stretch') => {
  ({ hand, watched } = await tabletIn(here.browser, here.room, key));
};

describe.each<Pointer>(['touch', 'pen', 'mouse'])('drawing by %s', (pointer) => {
  it('every tool does its work on the paper', async () => {
    await open();
    hand.pointer = pointer;
    const { page } = watched;
    await hand.tap(50, 160);
    await hand.tap(201, 161);
    let design = await kept(page, ofLines(1));
    expect(design.drawing.lines[0]).toMatchObject({
      from: { x: 50, y: 160 },
      pieces: [{ to: { x: 200, y: 160 } }],
    });

    await tool(watched.page, 'Curve');
    await hand.drag([125, 160], [125, 150], [125, 140]);
    design = await kept(page, (d) => d.drawing.lines[0]?.pieces[0]?.bulge !== 0);
    // Pulled up by 20 mm on a chord of 150: bulge is sagitta over half chord.
    expect(design.drawing.lines[0]!.pieces[0]!.bulge).toBeCloseTo(20 / 75, 1);

    await tool(watched.page, 'Freehand');
    const round = Array.from({ length: 30 }, (_, i): [number, number] => [
      200 + 40 * Math.sin((i / 29) * Math.PI),
      110 + 50 * Math.cos((i / 29) * Math.PI),
    ]);
    await hand.drag(...round);
    design = await kept(page, (d) => (d.drawing.lines[0]?.pieces.length ?? 0) > 1);
    expect(design.drawing.lines).toHaveLength(1);
    expect(design.drawing.lines[0]!.pieces.length).toBeLessThan(8);

    await page.getByText('faster ▸').click();
    await hand.tap(90, 144);
    design = await kept(page, ofMarks(1));
    expect(design.drawing.marks[0]!.bands.map((band) => band.ink)).toEqual(['C', 'A']);
    const before = design.drawing.marks[0]!.at;
    await page.getByRole('button', { name: 'Flip' }).click();
    await kept(page, (d) => d.drawing.marks[0]?.bands[0]?.ink === 'A');
    await hand.drag([90, 144], [110, 141], [125, 140]);
    design = await kept(page, (d) => (d.drawing.marks[0]?.at ?? 0) > before + 20);

    await tool(watched.page, 'Move');
    await hand.drag([50, 160], [50, 150], [50, 140]);
    design = await kept(page, (d) => d.drawing.lines[0]?.from.y === 140);

    await tool(watched.page, 'Rub out');
    await hand.tap(125, 130);
    design = await kept(page, ofMarks(0));
    await page.getByText('Whole line').click();
    await hand.tap(238, 110);
    await kept(page, ofLines(0));
    expectClean(watched);
  });
});

describe('the tablet', () => {
  it('takes back and does again by keyboard, nudges and deletes what is chosen', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [100, 160], [150, 160]);
    await hand.drag([150, 160], [150, 110]);
    await kept(page, (d) => d.drawing.lines[0]?.pieces.length === 2);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await kept(page, ofLines(0));
    await page.keyboard.press('Control+Shift+z');
    await page.keyboard.press('Control+y');
    await kept(page, (d) => d.drawing.lines[0]?.pieces.length === 2);
    await page.getByText('faster ▸').click();
    await hand.tap(100, 160);
    const design = await kept(page, ofMarks(1));
    const { at } = design.drawing.marks[0]!;
    await page.keyboard.press('ArrowRight');
    await kept(page, (d) => d.drawing.marks[0]?.at === at + 1);
    await page.keyboard.press('Delete');
    await kept(page, ofMarks(0));
    expectClean(watched);
  });

  it('drives the robot over the drawing and says what comes of it', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [200, 160]);
    await tryIt(page);
    const first = await page.locator('.trying-sheet').screenshot();
    await page.waitForTimeout(700);
    const second = await page.locator('.trying-sheet').screenshot();
    expect(first.equals(second)).toBe(false);
    await page.getByText('4×').click();
    await page.getByText('stopped where the line ends').waitFor();
    await page.locator('.trying-goals').getByText('missing').waitFor();
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await page.getByText('15 cm of line').waitFor();
    expectClean(watched);
  });

  it('hands in, says why it scored, and takes an entry up again', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [200, 160]);
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await page.getByText('0 of 45').waitFor();
    const entry = await kept(page, ofLines(1));
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await page.getByRole('button', { name: 'Start again' }).click();
    await kept(page, ofLines(0));
    await page.getByRole('button', { name: /0 points/ }).click();
    await page.getByRole('button', { name: 'Go on from this one' }).click();
    expect(await kept(page, ofLines(1))).toEqual(entry);
    expectClean(watched);
  });

  it('finishes a stroke in progress before it rests at "Look here", and keeps the drawing', async () => {
    await open();
    const { page } = watched;
    await tool(watched.page, 'Freehand');
    const lift = await hand.hold([60, 160], [80, 160], [110, 160]);
    await here.room.ask({ kind: 'look-here', on: true });
    await page.waitForTimeout(400);
    expect(await page.getByText('Look at the board').count()).toBe(0);
    await lift();
    await page.getByText('Look at the board').waitFor();
    await kept(page, ofLines(1));
    await hand.drag([60, 60], [100, 60], [140, 60]);
    await page.waitForTimeout(200);
    await kept(page, ofLines(1));
    await here.room.ask({ kind: 'look-here', on: false });
    await page.getByText('Look at the board').waitFor({ state: 'detached' });
    await hand.drag([60, 60], [100, 60], [140, 60]);
    await kept(page, ofLines(2));
    expectClean(watched);
  });

  it('lets only marks be placed where the lines are given', async () => {
    await open('park-on-the-landing');
    const { page } = watched;
    expect(await page.locator('.tools').getByText('Straight').count()).toBe(0);
    const { sheet } = challengeNamed('park-on-the-landing');
    const { x, y } = pathOf(sheet.given.lines[0]!).pieces[0]!.to;
    const { from } = sheet.given.lines[0]!;
    await page.getByText('park', { exact: true }).click();
    await hand.tap((from.x + x) / 2, (from.y + y) / 2);
    const design = await kept(page, ofMarks(1));
    expect(design.drawing.lines).toEqual([]);
    await page.locator('.chosen-buttons').waitFor();
    await tool(page, 'Move');
    await hand.drag([from.x, from.y], [from.x, from.y + 30]);
    await page.getByText('This belongs to the sheet').waitFor();
    await kept(page, (d) => d.drawing.marks.length === 1 && d.drawing.lines.length === 0);
    expectClean(watched);
  });

  it('has no violation that axe-core finds, while drawing, trying and handing in', async () => {
    await open();
    const { page } = watched;
    const violations = async () => {
      const { violations: found } = await new AxeBuilder({ page }).analyze();
      return found.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
    };
    await hand.drag([50, 160], [200, 160]);
    await hand.drag([200, 160], [120, 110]);
    await page.locator('.callout').waitFor();
    await page.waitForTimeout(400);
    expect(await violations()).toEqual([]);
    await tryIt(page);
    expect(await violations()).toEqual([]);
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.waitForTimeout(400);
    expect(await violations()).toEqual([]);
  });
});
