import { readFile } from 'node:fs/promises';
import { parse } from 'csv-parse/sync';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { expectClean, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, unreadable } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';

/** After the lesson: the last questions on desk, tablet and board, and what is kept of the lesson. */

const CHALLENGE = 'one-fast-stretch';
const here = stage('test');

async function look(page: Page, name: string): Promise<void> {
  await picture(page, name);
  await expectTidy(page, name);
  expect(await axeFindings(page), name).toEqual([]);
}

/** A class that has handed in, at the close of its lesson. */
async function closing(): Promise<void> {
  const { room } = here;
  await room.arrive(3);
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: null });
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await room.handIn(0, drawings[1]!);
  await room.handIn(0, drawings[0]!);
  await room.handIn(1, drawings[0]!);
  await room.handIn(2, drawings[1]!);
  await room.ask({ kind: 'go-to', phase: 'close' });
}

async function opened(
  path: string,
  size: { width: number; height: number; touch?: boolean },
): Promise<Watched> {
  const { server } = here.room;
  const page = await watchedPage(here.browser, `${server.url}/`, size);
  here.watched.push(page);
  await page.page.goto(`${server.url}${path}`);
  return page;
}

const TABLET = { width: 1180, height: 820, touch: true };
const UPRIGHT = { width: 820, height: 1180 };
const say = (page: Page, answer: string) =>
  page.locator('.question').getByText(answer, { exact: true }).tap();
const next = (page: Page) => page.getByRole('button', { name: 'Next' }).tap();

it('the last questions are asked, answered by touch and on paper, ended, explained and shown', async () => {
  const { room } = here;
  await closing();
  const desk = await deskPage(here.browser, room, { width: 1366, height: 768 });
  here.watched.push(desk);
  const tablet = await opened(`/j?word=${room.word}`, TABLET);
  const board = await opened(`/board?room=${room.word}`, { width: 1024, height: 768 });
  await desk.page.getByRole('heading', { name: 'Closing check' }).waitFor();
  await look(desk.page, 'evidence-desk-before');
  // Until they are asked the questions may change, so that there is no paper yet.
  const toPaper = desk.page.getByRole('link', { name: 'Questions and key (PDF)' });
  expect(await toPaper.count()).toBe(0);
  await desk.page.getByRole('button', { name: 'Ask on the tablets' }).click();
  await tablet.page.getByRole('heading', { name: 'Three last questions' }).waitFor();
  await board.page.getByText('They are on your tablets.').waitFor();
  await look(board.page, 'evidence-board-asked');
  expect(await unreadable(board.page)).toEqual([]);

  // The first mark is C A: faster to the robot from the boathouse, slower to the one from the lighthouse.
  await say(tablet.page, 'faster');
  const team = room.desk.state!.teams.at(-1)!.id;
  await room.ask({ kind: 'send-note', team, words: { kind: 'hint', hint: 'which-side' } });
  await tablet.page.getByRole('button', { name: 'A note for you' }).waitFor();
  await look(tablet.page, 'evidence-tablet-1');
  await next(tablet.page);
  await say(tablet.page, 'faster');
  await next(tablet.page);
  await look(tablet.page, 'evidence-tablet-3');
  await tablet.page.setViewportSize(UPRIGHT);
  await look(tablet.page, 'evidence-tablet-upright');
  await desk.page.getByText('2 of 3', { exact: true }).waitFor();
  await toPaper.waitFor();
  await desk.page.getByText('Answered on paper').click();
  await desk.page.getByLabel('Team', { exact: true }).selectOption({ label: 'Bell' });
  await desk.page.locator('.close-paper-question').first().getByText('faster').click();
  await room.desk.until('what was noted', () => room.desk.state!.checks[0]!.answers.length === 3);
  await look(desk.page, 'evidence-desk-asked');

  const end = desk.page.getByRole('button', { name: 'End, and say what is right' });
  await end.click();
  await tablet.page.getByRole('heading', { name: 'The answers' }).waitFor();
  await desk.page.getByRole('button', { name: 'Take it back' }).click();
  await tablet.page.getByRole('heading', { name: 'Three last questions' }).waitFor();
  await end.click();
  await tablet.page.getByRole('heading', { name: 'The answers' }).waitFor();
  await tablet.page.getByText('You gave no answer here.').waitFor();
  await tablet.page.getByRole('button', { name: 'Back' }).tap();
  await tablet.page.getByText('It is: slower').waitFor();
  await tablet.page.getByText('It meets aqua and coral, in this order.').waitFor();
  await tablet.page.getByText('Read from the other end, the colours come in another order.').waitFor();
  await look(tablet.page, 'evidence-tablet-known-upright');
  await tablet.page.setViewportSize({ width: 1180, height: 820 });
  await look(tablet.page, 'evidence-tablet-known');
  await desk.page.getByText('one side was taken for the other: 1 team').waitFor();
  await desk.page.getByLabel('Show the result on the board, without teams').click();
  await board.page.getByRole('heading', { name: 'What we know' }).waitFor();
  await board.page.getByText('2 of 2 teams').waitFor();
  // Sheets of paper are read when the check is over.
  await desk.page.getByText('Answered on paper').click();
  await desk.page.getByLabel('Team', { exact: true }).selectOption({ label: 'Key' });
  await desk.page.locator('.close-paper-question').first().getByText('faster').click();
  await board.page.getByText('3 of 3 teams').waitFor();
  await look(board.page, 'evidence-board-result');
  expect(await unreadable(board.page)).toEqual([]);
  await look(desk.page, 'evidence-desk-ended');
  await desk.page.setViewportSize({ width: 1024, height: 768 });
  await look(desk.page, 'evidence-desk-1024');
  await tablet.page.getByRole('button', { name: 'Go on' }).tap();
  await tablet.page.getByRole('button', { name: 'See the questions again' }).waitFor();
  await picture(tablet.page, 'evidence-tablet-farewell');
  for (const page of [desk, tablet, board]) expectClean(page);
});

it('what was shown is kept as PDF and CSV, for the desk alone', async () => {
  const { room } = here;
  await closing();
  const desk = await deskPage(here.browser, room, { width: 1366, height: 768 });
  here.watched.push(desk);
  const saved = async (name: string) => {
    const [download] = await Promise.all([
      desk.page.waitForEvent('download'),
      desk.page.getByText(name, { exact: true }).click(),
    ]);
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  };
  const pdf = await saved('Save the evidence (PDF)');
  expect(pdf.name).toBe('harbour-lines-evidence.pdf');
  expect(pdf.bytes.subarray(0, 5).toString()).toBe('%PDF-');
  expect((await saved('Save the class picture (PDF)')).name).toBe('harbour-lines-picture.pdf');
  const csv = await saved('Save the evidence (CSV)');
  const rows: Record<string, string>[] = parse(csv.bytes, { bom: true, columns: true });
  const row = (team: string, kind: string) =>
    rows.find((one) => one.team === team && one.evidence === kind) ?? {};
  // The sailboat met the challenge at its second entry, the bell at its first, the key not yet.
  expect(row('class', 'met')).toMatchObject({ shown: '2', of: '3', room: room.word });
  expect(row('sailboat', 'met-first')).toMatchObject({ shown: '0', of: '1', berth: '1' });
  expect(row('bell', 'met-first')).toMatchObject({ shown: '1', of: '1' });
  expect(row('key', 'met')).toMatchObject({ shown: '0', of: '1' });
  expect(row('bell', 'reasons')['points to']).toBe('CSTA 1B-AP-17; England KS2 explain');
  const team = await opened(`/j?word=${room.word}`, TABLET);
  for (const path of [ROUTES.evidenceCsv, '/api/print/evidence.pdf', '/api/print/closing.pdf']) {
    const answer = await team.page.request.get(`${room.server.url}${path}?room=${room.word}`);
    expect(answer.ok(), path).toBe(false);
  }
  expectClean(desk);
});
