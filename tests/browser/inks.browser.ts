import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, it } from 'vitest';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { SCREEN_INKS } from '../../shared/kit/screen-inks.ts';
import { picture, watchedPage } from './browser.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';
import { tabletIn, tool } from './tablet-page.ts';

const CHALLENGE = 'one-fast-stretch';
/** How many pixels of a colour make a band: a hatch and a rim take the rest. */
const BAND = 20;

const here = stage('test');
const { watched } = here;

/** Which of these colours a band's worth of pixels has inside an element. */
async function coloursIn(page: Page, selector: string, colours: readonly string[]): Promise<string[]> {
  const { data } = PNG.sync.read(await page.locator(selector).first().screenshot());
  const counts = new Map<number, number>();
  for (let i = 0; i < data.length; i += 4) {
    const color = (data[i]! << 16) | (data[i + 1]! << 8) | data[i + 2]!;
    counts.set(color, (counts.get(color) ?? 0) + 1);
  }
  return colours.filter((hex) => (counts.get(Number.parseInt(hex.slice(1), 16)) ?? 0) >= BAND);
}

const own = DEMO_KIT.inks.map(({ color }) => color);
const other = SCREEN_INKS.map(({ color }) => color);
/** The mark for faster, CA: the kit's first two inks. */
const FASTER = { own: own.slice(0, 2), other: other.slice(0, 2) };

const shows = (page: Page, selector: string, wanted: readonly string[]) =>
  expect.poll(() => coloursIn(page, selector, [...own, ...other]), { timeout: 5000 }).toEqual(wanted);

async function chooseInks(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Language, lengths and text' }).first().click();
  await page.getByText(name, { exact: true }).click();
  await page.getByText('On paper use the pens of your kit').waitFor();
  await picture(page, 'inks-settings');
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
}

it('inks on a tablet change colour and name at once, in the sheet and the chart, and back again', async () => {
  const { hand, watched: tablet } = await tabletIn(here.browser, here.room, CHALLENGE);
  watched.push(tablet);
  const { page } = tablet;
  await hand.drag([50, 160], [130, 160], [225, 160]);
  await page.locator('.tray').getByText('faster ▸').click();
  await hand.tap(90, 160);
  await shows(page, '.sheet-view', FASTER.own);
  await chooseInks(page, 'amber, blue, brown');
  await shows(page, '.sheet-view', FASTER.other);
  await shows(page, '.tray', other);
  await tool(page, 'Bands');
  await page.getByText('blue (A)', { exact: true }).waitFor();
  await picture(page, 'inks-tablet');
  await page.reload();
  await shows(page, '.sheet-view', FASTER.other);
  await chooseInks(page, 'as in the kit');
  await shows(page, '.sheet-view', FASTER.own);
});

it('desk and board show a drawing in the colours that each is set to', async () => {
  const drawing = classDrawings(challengeNamed(CHALLENGE))[0]!;
  await here.room.arrive(1);
  await here.room.ask(
    { kind: 'choose-challenge', key: CHALLENGE },
    { kind: 'start-building', seconds: null },
  );
  here.room.draft(0, drawing);
  await here.room.handIn(0, drawing);
  await here.room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
  await here.room.ask({ kind: 'stage', entries: [here.room.desk.state!.entries[0]!.id] });
  const desk = await deskPage(here.browser, here.room, { width: 1366, height: 768 });
  const board = await watchedPage(here.browser, here.room.server.url, { width: 1024, height: 768 });
  watched.push(desk, board);
  await board.page.goto(`${here.room.server.url}/board?room=${here.room.room}`);
  await shows(board.page, '.sheet-view', own);
  await board.page.keyboard.press('l');
  await board.page.getByText('amber, blue, brown').click();
  await board.page.keyboard.press('Escape');
  await shows(board.page, '.sheet-view', other);
  await picture(board.page, 'inks-board');
  await shows(desk.page, '.stage-sheet', own);
  await chooseInks(desk.page, 'amber, blue, brown');
  await shows(desk.page, '.stage-sheet', other);
  await desk.page.keyboard.press('[');
  const bands = desk.page.locator('.team-card').first().locator('.miniature-band');
  await bands.nth(2).waitFor();
  const fills = await bands.evaluateAll((all) => all.map((band) => getComputedStyle(band).fill));
  expect(fills.toSorted()).toEqual(['rgb(116, 85, 22)', 'rgb(255, 165, 0)', 'rgb(30, 124, 181)']);
  await picture(desk.page, 'inks-desk');
});
