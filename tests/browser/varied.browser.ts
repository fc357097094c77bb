import { expect, it } from 'vitest';
import { designIn } from '../../shared/library/variants.ts';
import { joinCookie } from '../rooms/harness.ts';
import { expectClean, picture, watchedPage } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { challengeNamed, deskPage } from './room.ts';
import { stage } from './stage.ts';

const FERRY = challengeNamed('ferry-junction');
const SIZES = [
  { width: 1024, height: 768 },
  { width: 1366, height: 768 },
];

const here = stage('test');
const { watched } = here;

it('the desk gives neighbours other sheets before building, and sees each drawing on its own', async () => {
  await here.room.arrive(3);
  await here.room.ask({ kind: 'choose-challenge', key: 'ferry-junction' }, { kind: 'go-to', phase: 'brief' });
  const desk = await deskPage(here.browser, here.room, SIZES[1]!);
  watched.push(desk);
  const { page } = desk;
  await page.getByLabel('Weather of this round').selectOption('stormy');
  const box = page.getByRole('checkbox', { name: /mirrored or turned sheets/ });
  await box.click();
  await here.room.desk.until('varied sheets', () => here.room.desk.state!.variedSheets);
  expect(await box.isChecked()).toBe(true);
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await picture(page, `desk-${size.width}-varied`);
    await expectTidy(page, 'varied');
  }
  expect(await axeFindings(page)).toEqual([]);
  const board = await watchedPage(
    here.browser,
    `${here.room.server.url}/board?room=${here.room.room}`,
    SIZES[0]!,
  );
  watched.push(board);
  await board.page.goto(`${here.room.server.url}/board?room=${here.room.room}`);
  await board.page.getByText('Neighbours have other sheets').waitFor();
  await board.page.getByText('Twenty robots will drive it in a storm.').waitFor();
  await picture(board.page, 'board-1024-varied');
  await expectTidy(board.page, 'varied');

  // In calm weather the same robots make each sheet.
  await here.room.ask(
    { kind: 'set-weather', team: null, weather: null },
    { kind: 'start-building', seconds: null },
  );
  // A sheet that teams draw on stays as it is.
  await page.getByText('building').first().waitFor();
  await here.room.handIn(0, FERRY.model!);
  await here.room.handIn(1, designIn('mirrored', FERRY, FERRY.model!)!);
  await here.room.handIn(2, designIn('turned', FERRY, FERRY.model!)!);
  const points = here.room.desk.state!.entries.map((entry) => entry.verdict?.points);
  expect(new Set(points).size).toBe(1);
  await page.locator('.team-card').nth(2).waitFor();
  const pictures = await Promise.all(
    [0, 1, 2].map((i) =>
      page.locator(`.team-card[data-team="${here.room.desk.state!.teams[i]!.id}"] svg`).first().innerHTML(),
    ),
  );
  expect(new Set(pictures).size).toBe(3);
  await picture(page, 'desk-1366-varied-build');

  await here.room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
  const mirrored = here.room.desk.state!.entries[1]!.id;
  await here.room.ask({ kind: 'stage', entries: [mirrored] });
  await board.page.locator('.stage-sheet').waitFor();
  await board.page.getByText(FERRY.mirroredSentence!.en).waitFor();
  await picture(board.page, 'board-1024-varied-stage');
  expectClean(desk);
  expectClean(board);
});

it('a tablet shows the sheet of its berth', async () => {
  await here.room.arrive(1);
  const cookie = await joinCookie(here.room.server.url, here.room.word);
  await here.room.ask(
    { kind: 'choose-challenge', key: 'ferry-junction' },
    { kind: 'vary-sheets', on: true },
    { kind: 'go-to', phase: 'brief' },
  );
  const tablet = await watchedPage(here.browser, here.room.server.url, { width: 820, height: 1180 });
  watched.push(tablet);
  const [name, value] = cookie.split(/=(.*)/s) as [string, string];
  await tablet.context.addCookies([{ name, value, url: here.room.server.url }]);
  await tablet.page.goto(here.room.server.url);
  // The sentence of the mirrored sheet: what is left there is right here.
  await tablet.page.getByText(FERRY.mirroredSentence!.en).first().waitFor();
  await picture(tablet.page, 'tablet-820-varied');
  expectClean(tablet);
});
