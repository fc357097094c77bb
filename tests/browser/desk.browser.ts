import { describe, expect, it } from 'vitest';
import { type TestServer, testServer } from '../rooms/harness.ts';
import { expectClean, PAGES, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';

const CHALLENGE = 'one-fast-stretch';
const LAPTOP = { width: 1366, height: 768 };
const SIZES = [LAPTOP, { width: 1024, height: 768 }];

const here = stage('test');
const { watched } = here;

/** A browser that opened the desk's secret link. */
async function deskBrowser(size = LAPTOP, server: TestServer = here.room.server): Promise<Watched> {
  const desk = await watchedPage(here.browser, server.url, size);
  watched.push(desk);
  await desk.page.goto(server.deskLink);
  return desk;
}

async function deskOf(size = LAPTOP): Promise<Watched> {
  const desk = await deskPage(here.browser, here.room, size);
  watched.push(desk);
  return desk;
}

const drawings = classDrawings(challengeNamed(CHALLENGE));
const chooseAndBuild = () =>
  here.room.ask(
    { kind: 'choose-challenge', key: CHALLENGE },
    { kind: 'go-to', phase: 'brief' },
    { kind: 'start-building', seconds: 600 },
  );

describe('every step', () => {
  it.each(SIZES)('at $width × $height is whole, tidy and without findings of axe', async (size) => {
    const desk = await deskBrowser(size);
    const { page } = desk;
    const see = async (name: string, sign: string | RegExp) => {
      await page.getByText(sign).first().waitFor();
      await page.waitForFunction(() => document.getAnimations().every((a) => a.playState === 'finished'));
      await picture(page, `desk-${size.width}-${name}`);
      await expectTidy(page, name);
      if (size === LAPTOP) expect(await axeFindings(page), name).toEqual([]);
    };
    await see('prepare', 'Rooms on this machine');
    await page.goto(`${here.room.server.url}/desk?room=${here.room.room}`);
    await see('gather-empty', 'Nobody is here yet.');
    await here.room.arrive(8);
    await see('gather', '8 teams');
    await page.keyboard.press('n');
    await see('choose', 'Choose a challenge');
    await chooseAndBuild();
    await see('build-start', 'drawing');
    for (let i = 0; i < 6; i++) here.room.draft(i, drawings[i % drawings.length]!);
    for (let i = 0; i < 5; i++) await here.room.handIn(i, drawings[i]!);
    // A team that hands in the same fault three times may need somebody.
    for (let again = 0; again < 2; again++) await here.room.handIn(3, drawings[3]!);
    await page.keyboard.press('5');
    await page.locator('.team-need').first().waitFor();
    await see('build', /^May need you/);
    await page.locator('.entry-tabs button').nth(1).click();
    await see('build-entry', 'Why these points');
    await here.room.ask({ kind: 'end-building' });
    await see('build-over', 'building is over');
    await here.room.ask({ kind: 'go-to', phase: 'show' });
    await see('show-empty', 'Nothing is on the stage.');
    await page.keyboard.press('1');
    await see('show', 'Why these points');
    await page.keyboard.press('Shift+3');
    await page.locator('.stage-sheet').nth(1).waitFor();
    await see('show-heat', 'The stage');
    await page.keyboard.press('?');
    await see('keys', 'Single keys do something on this page');
    await page.keyboard.press('Escape');
    await here.room.ask({ kind: 'go-to', phase: 'close' });
    await see('close', 'Count back in');
    expectClean(desk);
  });
});

it('Tab reaches the steps, then the content; arrows go from team to team', async () => {
  await here.room.arrive(6);
  await chooseAndBuild();
  const { page } = await deskOf();
  await page.locator('.team-card').first().focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('heading', { name: 'Bell' }).waitFor();
  await page.keyboard.press('ArrowDown');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-team'))).toBe(
    here.room.desk.state!.teams[5]!.id,
  );
  const inTabOrder = page.locator('.team-card[tabindex="0"]');
  expect(await inTabOrder.count()).toBe(1);
});

it('cards follow what is drawn on tablets; one out of view is told of all the same, and drawn once it is seen', async () => {
  await here.room.arrive(8);
  await chooseAndBuild();
  const desk = await deskOf({ width: 1024, height: 360 });
  const { page } = desk;
  const card = (team: number) =>
    page.locator(`.team-card[data-team="${here.room.desk.state!.teams[team]!.id}"]`);
  const pictureOf = (team: number) => card(team).locator('.miniature').innerHTML();
  await card(7).waitFor();
  // By berths, the last team stands where nobody sees it.
  await page.keyboard.press('g');
  const empty = await pictureOf(0);
  for (const team of [0, 7]) here.room.draft(team, drawings[4]!);
  await page.locator('.trips', { hasText: ': 2 teams' }).waitFor();
  await card(0).locator('.place').first().waitFor();
  const drawn = await pictureOf(0);
  expect(drawn).not.toBe(empty);
  expect(await pictureOf(7)).toBe(empty);
  await card(7).scrollIntoViewIfNeeded();
  await expect.poll(() => pictureOf(7)).toBe(drawn);
  expectClean(desk);
});

it('the best drawing of a team is one key away; a second one stands beside it; the board follows', async () => {
  await here.room.arrive(3);
  await chooseAndBuild();
  await here.room.handIn(0, drawings[1]!);
  await here.room.handIn(0, drawings[0]!);
  await here.room.handIn(2, drawings[2]!);
  await here.room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
  const desk = await deskOf();
  const { page } = desk;
  const [first, second, third] = here.room.desk.state!.entries.map((entry) => entry.id);
  expect(first).not.toBe(second);
  await page.getByRole('heading', { name: 'The stage' }).waitFor();
  await page.keyboard.press('1');
  await here.room.desk.until('the best entry', () => here.room.desk.state!.stage.join() === second);
  await page.locator('.stage-controls').waitFor();
  await page.keyboard.press('p');
  await here.room.desk.until('a running clock', () =>
    here.room.desk.latest.some((value) => value.kind === 'stage-clock' && value.clock.playing),
  );
  // The desk follows its own clock: the robot has set out, and the same key halts it.
  const scrub = page.getByLabel('Where the replay stands');
  await expect.poll(async () => Number(await scrub.inputValue())).toBeGreaterThan(0.5);
  await page.keyboard.press('p');
  await page.getByRole('button', { name: 'Play' }).waitFor();
  await here.room.desk.until('a clock that stands further on', () =>
    here.room.desk.latest.some(
      (value) => value.kind === 'stage-clock' && !value.clock.playing && value.clock.at > 0.5,
    ),
  );
  await scrub.fill('2');
  await page.getByText(/^2 of /).waitFor();
  await page.keyboard.press('Shift+3');
  await here.room.desk.until(
    'two of them',
    () => here.room.desk.state!.stage.join() === `${second},${third}`,
  );
  await page.keyboard.press('x');
  await here.room.desk.until('an empty stage', () => here.room.desk.state!.stage.length === 0);
  expectClean(desk);
});

it('single keys can be switched off, and stay off after a reload', async () => {
  const { page } = await deskOf();
  await page.keyboard.press('?');
  await page.getByLabel('Single keys do something on this page').uncheck();
  await page.keyboard.press('Escape');
  await page.reload();
  await page.getByText(here.room.word).first().waitFor();
  await page.keyboard.press('h');
  await page.keyboard.press('n');
  await page.getByRole('heading', { name: 'Teams come in' }).waitFor();
  expect(here.room.desk.state!.lookHere).toBe(false);
});

const STAYS = [/Somebody stays with the charger/, /The charger is watched/] as const;
it.each(STAYS)('a room opened without the tick says so until somebody ticks %s', async (tick) => {
  const desk = await deskBrowser();
  const { page } = desk;
  await page.getByRole('button', { name: 'Open a room', exact: true }).click();
  await page.waitForURL(/\/desk\?room=/);
  const notice = page.getByText('Nobody has said that they stay with the charger.').first();
  await notice.waitFor();
  await page.getByRole('button', { name: /Prepare/ }).click();
  await page.getByLabel(tick).click();
  await page.getByText('Noted: somebody stays with the charger.').waitFor();
  expect(await notice.count()).toBe(0);
  expectClean(desk);
});

it('printing the preparation prints the cautions alone', async () => {
  const { page } = await deskBrowser();
  await page.getByRole('button', { name: 'Cautions' }).click();
  await page.getByRole('heading', { name: 'Before the robots come out' }).waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.cautions').isVisible()).toBe(true);
  for (const hidden of ['.desk-head', '.desk-rail', '.prepare-side'])
    expect(await page.locator(hidden).isVisible()).toBe(false);
  await picture(page, 'desk-print-cautions');
});

it('a saved room opens again on another server, with its teams and points', async () => {
  await here.room.arrive(2);
  await chooseAndBuild();
  await here.room.handIn(0, drawings[0]!);
  await here.room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'close' });
  const { page } = await deskOf();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the room (JSON)' }).click(),
  ]);
  const file = await download.path();
  const other = await testServer({ pages: PAGES });
  const there = await deskBrowser(LAPTOP, other);
  try {
    await there.page.getByText('Open a room file').waitFor();
    await there.page.locator('input[aria-label="Open a room file"]').setInputFiles({
      name: 'notes.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from('no room at all'),
    });
    await there.page.getByText('This file could not be read as a room file.').waitFor();
    await there.page.locator('input[aria-label="Open a room file"]').setInputFiles(file);
    await there.page.waitForURL(/\/desk\?room=/);
    const row = there.page.getByRole('row', { name: /Sailboat/ });
    await row.waitFor();
    expect(await row.getByRole('cell').allInnerTexts()).toEqual(['100', '100']);
    expectClean(there);
  } finally {
    await there.context.close();
    watched.splice(watched.indexOf(there), 1);
    await other.end();
  }
});

it('the results are a file that a spreadsheet opens', async () => {
  await here.room.arrive(1);
  await here.room.ask({ kind: 'go-to', phase: 'close' });
  const { page } = await deskOf();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the results (CSV)' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.csv$/);
});

it('two desks of one room show the same', async () => {
  const first = await deskOf();
  const second = await deskOf();
  await first.page.keyboard.press('h');
  await second.page.getByRole('button', { name: 'Look here', pressed: true }).waitFor();
  expectClean(first);
  expectClean(second);
});

it('a browser without the desk’s link is told where to find it', async () => {
  const stranger = await watchedPage(here.browser, here.room.server.url, LAPTOP);
  watched.push(stranger);
  await stranger.page.goto(`${here.room.server.url}/desk?room=${here.room.room}`);
  await stranger.page.getByText('This browser has no desk.').waitFor();
  expect(await stranger.page.getByText(here.room.word).count()).toBe(0);
});
