import { expect, it } from 'vitest';
import type { Design } from '../../shared/documents/design.ts';
import { designIn } from '../../shared/library/variants.ts';
import { expectClean, picture } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { challengeNamed, deskPage } from './room.ts';
import { stage } from './stage.ts';
import { kept, ofLines, tabletIn, tryIt } from './tablet-page.ts';

/** Weather and sheet of one team, chosen at the desk, and what its tablet makes of them. */

const here = stage('test');
const KEY = 'one-fast-stretch';
const challenge = challengeNamed(KEY);

it('a storm and a mirrored sheet reach the team that they are for, and can be taken back', async () => {
  const { browser, room } = here;
  const { hand, watched } = await tabletIn(browser, room, KEY);
  const tablet = watched.page;
  const desk = await deskPage(browser, room, { width: 1366, height: 768 });
  const { page } = desk;
  here.watched.push(watched, desk);
  const conditions = () => room.desk.state!.conditions;
  await hand.drag([50, 160], [100, 160], [200, 160]);
  await hand.drag([50, 60], [100, 60], [150, 60]);
  const drawn = await kept(tablet, ofLines(2));

  // The class's weather stands beside the challenge, a team's own and its sheet with the team.
  await page.getByLabel('Weather of this round').selectOption('breezy');
  await room.desk.until('a breeze for all', () => conditions().weather === 'breezy');
  await picture(page, 'desk-1366-weather');
  await page.locator('.team-card').first().click();
  await page.getByText('Weather and sheet').press('Enter');
  await page.getByLabel('Weather for its robots').selectOption('stormy');
  await page.getByRole('region', { name: 'From now on robots drive in a storm for Sailboat.' }).waitFor();
  await tryIt(tablet);
  await tablet.getByText(/robots? (make it|do the same) in a storm/).waitFor();
  await tablet.getByRole('button', { name: 'Back to the drawing' }).click();

  const there = designIn('mirrored', challenge, drawn)!;
  const from = there.drawing.lines[0]!.from;
  const isThere = (design: Design) => design.drawing.lines[0]?.from.x === from.x;
  const sheet = page.getByLabel('Its sheet', { exact: true });
  await sheet.selectOption('mirrored');
  await page.getByRole('region', { name: /The sheet of Sailboat is mirrored now/ }).waitFor();
  await kept(tablet, isThere);
  await page.getByRole('button', { name: 'Take it back' }).click();
  await room.desk.until('the usual sheet', () => conditions().own[0]?.sheet === null);
  expect(await kept(tablet, (design) => !isThere(design))).toEqual(drawn);
  await sheet.selectOption('mirrored');
  expect(await kept(tablet, isThere)).toEqual(there);
  await tablet.getByRole('button', { name: 'A note for you' }).waitFor();
  await page.getByText('Weather and sheet: a storm, mirrored').waitFor();
  await picture(tablet, 'tablet-1180-mirrored');
  await expectTidy(tablet, 'a mirrored sheet');
  for (const [width, height] of [
    [1024, 768],
    [390, 844],
    [1366, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    await picture(page, `desk-${width}-conditions`);
    await expectTidy(page, `conditions at ${width}`);
  }
  expect(await axeFindings(page)).toEqual([]);

  // The way back has come along.
  await tablet.getByRole('button', { name: 'Undo' }).click();
  expect((await kept(tablet, ofLines(1))).drawing.lines[0]).toEqual(there.drawing.lines[0]);
  await tablet.getByRole('button', { name: 'Redo' }).click();
  expect(await kept(tablet, ofLines(2))).toEqual(there);

  // To a tablet that was away meanwhile too.
  const address = tablet.url();
  await tablet.goto('about:blank');
  await sheet.selectOption('turned');
  await room.desk.until('a turned sheet', () => conditions().own[0]?.sheet === 'turned');
  await tablet.goto(address);
  const turned = designIn('turned', challenge, drawn)!;
  const isTurned = ({ drawing }: Design) => drawing.lines[0]?.from.y === turned.drawing.lines[0]!.from.y;
  expect(await kept(tablet, isTurned)).toEqual(turned);
  await tablet.getByRole('button', { name: 'Undo' }).click();
  expect((await kept(tablet, ofLines(1))).drawing.lines[0]).toEqual(turned.drawing.lines[0]);
  expectClean(desk);
  expectClean(watched);
});
