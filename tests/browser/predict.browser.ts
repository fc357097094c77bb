import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { SeatCode } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { post } from '../rooms/harness.ts';
import { expectClean, picture, watchedPage } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { deskPage } from './room.ts';
import { stage } from './stage.ts';
import { keptAnswers } from './tablet-page.ts';

const TABLETS = [
  { width: 1180, height: 820 },
  { width: 820, height: 1180 },
  { width: 1366, height: 768 },
];

const here = stage('test');
const { watched } = here;

async function tablet(key: string, size = TABLETS[0]!): Promise<Page> {
  await here.room.ask({ kind: 'choose-challenge', key }, { kind: 'start-building', seconds: null });
  const page = await watchedPage(here.browser, `${here.room.server.url}/`, { ...size, touch: true });
  watched.push(page);
  await page.page.goto(`${here.room.server.url}/j?word=${here.room.word}`);
  await page.page.getByText(/Question 1 of/).waitFor();
  return page.page;
}

async function look(page: Page, name: string): Promise<void> {
  await picture(page, name);
  await expectTidy(page, name);
  expect(await axeFindings(page), name).toEqual([]);
}

const say = (page: Page, answer: string) =>
  page.locator('.question').getByText(answer, { exact: true }).tap();
const next = (page: Page) => page.getByRole('button', { name: 'Next' }).tap();

it.each(TABLETS)('answers by touch at $width × $height, hands in, and sees which are right', async (size) => {
  const page = await tablet('two-travellers', size);
  const at = `predict-${size.width}`;
  await look(page, `${at}-1`);
  // Met from the boathouse the mark says faster, from the lighthouse slower; the run starts steady.
  await say(page, 'faster');
  await next(page);
  await say(page, 'brisk');
  await keptAnswers(page, 2);
  await page.reload();
  await page.getByText('2 of 4 answered').waitFor();
  await next(page);
  await next(page);
  await say(page, 'faster');
  await look(page, `${at}-3`);
  await page.getByRole('button', { name: 'What marks mean' }).tap();
  await look(page, `${at}-chart`);
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.getByRole('button', { name: 'Hand in' }).tap();
  await page.getByRole('dialog').getByText('no answer yet').waitFor();
  await look(page, `${at}-hand-in`);
  await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).tap();
  await page.getByText('50 points').first().waitFor();
  await page.locator('.answer-rows [data-stand="right"]').first().waitFor();
  expect(await page.locator('.answer-rows [data-stand="right"]').count()).toBe(2);
  await look(page, `${at}-entry`);
  expectClean(watched[0]!);
});

it('answers go on at another tablet, and the desk sees them while they are made', async () => {
  const page = await tablet('two-travellers');
  const desk = await deskPage(here.browser, here.room, { width: 1366, height: 768 });
  watched.push(desk);
  await desk.page.keyboard.press('1');
  await desk.page.getByText('Nothing answered yet.').waitFor();
  await say(page, 'faster');
  await desk.page.locator('.answer-rows').getByText('faster', { exact: true }).waitFor();
  await picture(desk.page, 'predict-desk-answering');
  await expectTidy(desk.page, 'answering');
  const { url } = here.room.server;
  const team = here.room.desk.state!.teams[0]!.id;
  const asked = await post(`${url}${ROUTES.seatCode}`, { room: here.room.room, team }, here.room.owner);
  const { code } = (await asked.json()) as SeatCode;
  const other = await watchedPage(here.browser, url, { ...TABLETS[1]!, touch: true });
  watched.push(other);
  await other.page.goto(`${url}/j?word=${code}`);
  await other.page.getByText('1 of 4 answered').waitFor();
  for (const one of watched) expectClean(one);
});

it('a number of robots is said by keys, and half of twenty is right at an unmarked junction', async () => {
  const page = await tablet('no-mark-at-the-junction');
  await say(page, 'nobody knows: it is left to chance');
  await next(page);
  await page.getByRole('slider').focus();
  for (let i = 0; i < 10; i++) await page.keyboard.press('ArrowRight');
  await page.getByText('10 of 20 robots').waitFor();
  await look(page, 'predict-how-many');
  await page.getByRole('button', { name: 'Hand in' }).tap();
  await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).tap();
  await page.getByText('100 points').first().waitFor();
});

it('letters stand at the ends that a robot may stop at', async () => {
  const page = await tablet('end-of-the-line');
  await look(page, 'predict-ends');
});

it.each([
  { width: 1024, height: 768 },
  { width: 1920, height: 1080 },
])(
  'desk and board at $width × $height show both travellers, and tell at the end what was right',
  async (size) => {
    const page = await tablet('two-travellers');
    await say(page, 'faster');
    await page.getByRole('button', { name: 'Hand in' }).tap();
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).tap();
    await page.getByText('25 points').first().waitFor();
    await here.room.desk.until('the verdict', () => here.room.desk.state?.entries[0]?.verdict !== null);
    await here.room.ask(
      { kind: 'end-building' },
      { kind: 'go-to', phase: 'show' },
      { kind: 'stage', entries: [here.room.desk.state!.entries[0]!.id] },
    );
    const board = await watchedPage(here.browser, here.room.server.url, size);
    watched.push(board);
    await board.page.goto(here.room.server.boardLink);
    await board.page.locator('.answer-rows [data-stand="open"]').first().waitFor();
    await picture(board.page, `predict-board-${size.width}-before`);
    here.room.desk.socket.emit('latest', {
      kind: 'stage-clock',
      clock: { playing: false, speed: 1, at: 600 },
    });
    await board.page.locator('.answer-rows [data-stand="right"]').first().waitFor();
    await picture(board.page, `predict-board-${size.width}-after`);
    await expectTidy(board.page, 'board');
    const desk = await watchedPage(here.browser, here.room.server.url, { width: 1366, height: 768 });
    watched.push(desk);
    await desk.page.goto(here.room.server.deskLink);
    await desk.page.goto(`${here.room.server.url}/desk?room=${here.room.room}`);
    await desk.page.locator('.show-why .answer-rows').waitFor();
    await look(desk.page, 'predict-desk-show');
    for (const one of watched) expectClean(one);
  },
);
