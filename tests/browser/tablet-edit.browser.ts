import { afterEach, describe, expect, it } from 'vitest';
import { expectClean, picture, type Watched } from './browser.ts';
import type { Pointer, TestHand } from './hand.ts';
import { stage } from './stage.ts';
import { kept, ofLines, ofMarks, tabletIn, tool } from './tablet-page.ts';

let watched: Watched;
let hand: TestHand;
const here = stage('file');
afterEach(() => watched.context.close());

const open = async () => {
  ({ hand, watched } = await tabletIn(here.browser, here.room, 'one-fast-stretch'));
};
const press = (name: string) => watched.page.getByRole('button', { name, exact: true }).click();

describe.each<Pointer>(['touch', 'pen', 'mouse'])('editing by %s', (pointer) => {
  it('several are chosen by a box, moved, turned, mirrored, copied and rubbed out', async () => {
    await open();
    hand.pointer = pointer;
    const { page } = watched;
    await hand.drag([60, 100], [90, 100], [120, 100]);
    await hand.drag([60, 130], [90, 130], [120, 130]);
    await kept(page, ofLines(2));
    await tool(page, 'Move');
    await hand.drag([45, 85], [90, 110], [140, 145]);
    await page.getByRole('button', { name: 'Turn' }).waitFor();
    if (pointer === 'touch') await picture(page, 'tablet-edit-several');
    await hand.drag([90, 100], [100, 105], [110, 110]);
    await kept(page, (d) => d.drawing.lines[0]?.from.x === 80 && d.drawing.lines[1]?.from.y === 140);
    await press('Mirror');
    await kept(page, (d) => d.drawing.lines[0]?.from.x === 140);
    await press('Turn');
    await kept(page, (d) => d.drawing.lines[0]?.from.x !== 140);
    await press('Copy');
    await kept(page, ofLines(4));
    await page.locator('.chosen-buttons').getByText('Rub out').click();
    await kept(page, ofLines(2));
    for (let i = 0; i < 7; i++) await press('Undo');
    await kept(page, ofLines(0));
    expectClean(watched);
  });

  it('a mark is flipped by one tap, and painted, pulled and rubbed band by band', async () => {
    await open();
    hand.pointer = pointer;
    const { page } = watched;
    await hand.drag([60, 100], [120, 100], [200, 100]);
    await page.getByText('faster ▸').click();
    await hand.tap(90, 100);
    await kept(page, ofMarks(1));
    await hand.tap(170, 160);
    await hand.tap(90, 100);
    await kept(page, (d) => d.drawing.marks[0]?.bands[0]?.ink === 'A');

    await tool(page, 'Bands');
    await page.getByText('violet', { exact: true }).click();
    await hand.drag([140, 100], [143, 100], [146, 100]);
    await kept(page, ofMarks(2));
    await page.locator('.mark-reads', { hasText: 'not in the chart' }).waitFor();
    if (pointer === 'touch') await picture(page, 'tablet-edit-bands');
    await page.getByText('aqua', { exact: true }).click();
    await hand.drag([147, 100], [149, 100], [152, 100]);
    let design = await kept(page, (d) =>
      d.drawing.marks.some((mark) => mark.bands.length === 2 && mark.at > 70),
    );
    const painted = design.drawing.marks.at(-1)!;
    expect(painted.bands.map(({ ink, gap }) => [ink, gap])).toEqual([
      ['V', 0],
      ['A', 0],
    ]);
    await page.locator('.mark-reads', { hasText: 'take right' }).waitFor();
    // The handle of the last band's end stands beside the line: 26 pixels and half a line.
    const scale = ((await hand.place(100, 0)).x - (await hand.place(0, 0)).x) / 100;
    const end = 60 + painted.at + painted.bands.reduce((sum, band) => sum + band.length, 0);
    const off = 2.5 + 26 / scale;
    await hand.drag([end, 100 - off], [end + 4, 100 - off], [end + 6, 100 - off]);
    design = await kept(page, (d) => (d.drawing.marks.at(-1)?.bands[1]?.length ?? 0) > 10);
    expectClean(watched);
  });
});

describe('holding snapping off', () => {
  it('with Alt and with the button a line ends where the hand is', async () => {
    await open();
    const { page } = watched;
    hand.pointer = 'mouse';
    hand.alt = true;
    await hand.drag([61.5, 98.2], [90, 99], [121.3, 101.4]);
    hand.alt = false;
    let design = await kept(page, ofLines(1));
    expect(design.drawing.lines[0]!.from.x % 5).not.toBe(0);
    await press('Free');
    await hand.drag([61.5, 58.2], [90, 57], [121.3, 54.4]);
    design = await kept(page, ofLines(2));
    expect(design.drawing.lines[1]!.from.x % 5).not.toBe(0);
    await press('Free');
    await hand.drag([61.5, 158.2], [90, 157], [121.3, 154.4]);
    design = await kept(page, ofLines(3));
    expect(design.drawing.lines[2]!.from.x % 5).toBe(0);
    expectClean(watched);
  });
});
