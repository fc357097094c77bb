import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { wording } from '../../shared/wording/wording.ts';
import { picture, type WatchOptions, watchedPage } from './browser.ts';
import { expectTidy, still } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';
import { everyTabletState } from './tablet-states.ts';

const CHALLENGE = 'one-fast-stretch';
const es = wording('es');

const here = stage('test');
const { watched } = here;

/**
 * Texts with a word of English grammar in them that Spanish does not have. Parts that are marked as
 * another language, and the names of those who gave advice, are as they are.
 */
async function englishOn(page: Page): Promise<string[]> {
  const sources = es.safety.groups.flatMap(({ cautions }) => cautions.map(({ by }) => by));
  const texts = await page.evaluate(() => {
    const own = document.documentElement.lang;
    const foreign = (element: Element) => element.closest('[lang]')?.getAttribute('lang') !== own;
    return [...document.querySelectorAll('body *')].flatMap((element) => {
      if (foreign(element)) return [];
      const inside = [...element.childNodes].flatMap((n) => (n.nodeType === 3 ? [n.textContent ?? ''] : []));
      const said = ['aria-label', 'title', 'alt', 'placeholder'].map((name) => element.getAttribute(name));
      return [...inside, ...said].flatMap((text) => (text?.trim() ? [text] : []));
    });
  });
  const english =
    /\b(the|and|of|is|are|with|your|you|this|that|it|to|what|from|not|does|have|there|here|for|on|at|be|by|one|two|team|teams|drawing|points)\b/i;
  return texts.filter((text) => english.test(text) && !sources.some((by) => text.includes(by)));
}

async function see(page: Page, name: string): Promise<void> {
  await still(page);
  await picture(page, `es-${name}`);
  expect.soft({ name, english: await englishOn(page) }).toEqual({ name, english: [] });
  await expectTidy(page, name);
}

it('the search finds an English sentence, and none in what is Spanish or marked as English', async () => {
  const page = await here.browser.newPage();
  await page.setContent('<html lang="es"><p>Sube a bordo</p><p lang="en">Go on with it</p><p>Is it?</p>');
  expect(await englishOn(page)).toEqual(['Is it?']);
  await page.close();
});

it.each([
  { width: 820, height: 1180, touch: true },
  { width: 1180, height: 820, touch: true },
  { width: 1366, height: 768 },
])('a tablet of $width × $height that wants Spanish speaks it on every screen', async (size) => {
  const tablet = await watchedPage(here.browser, `${here.room.server.url}/`, { ...size, locale: 'es-MX' });
  watched.push(tablet);
  await everyTabletState(
    tablet.page,
    here.room,
    (name) => see(tablet.page, `tablet-${size.width}-${name}`),
    es,
  );
});

const drawings = classDrawings(challengeNamed(CHALLENGE));

/** A lesson as desk and board see it; `look` is called whenever both have something new to show. */
async function lesson(
  look: (name: string, ofDesk: string | RegExp, ofBoard: string | RegExp) => Promise<void>,
) {
  const { desk, board, scenes } = es;
  await look('gather-empty', desk.gathering.noTeams, board.gather.empty);
  await here.room.arrive(8);
  await look('gather', desk.gathering.teams(8), board.gather.teams(8));
  await here.room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'go-to', phase: 'brief' });
  await look('brief', desk.briefing.teaches, board.brief.goals);
  await here.room.ask({ kind: 'start-building', seconds: 600 });
  for (let i = 0; i < 5; i++) await here.room.handIn(i, drawings[i]!);
  await look('build', desk.building.mayNeed, board.building.timeLeft(600_000));
  await here.room.ask({ kind: 'end-building' });
  await look('build-over', desk.building.over, board.building.over);
  await here.room.ask({ kind: 'go-to', phase: 'show' });
  await look('show-empty', desk.showing.empty, board.show.soon);
  const { entries } = here.room.desk.state!;
  await here.room.ask({ kind: 'stage', entries: [entries[0]!.id] });
  await look('show', desk.team.why, /^Va /);
  await here.room.ask({ kind: 'show-standings', on: true });
  await here.room.ask({ kind: 'stage', entries: [entries[0]!.id, entries[2]!.id] });
  await look('heat', desk.showing.title, board.show.heat);
  await here.room.ask({ kind: 'stage', entries: [] });
  await look('standings', desk.showing.title, board.standings.title);
  await here.room.ask({ kind: 'show-fleet', entry: entries[0]!.id, weather: 'breezy' });
  await look('fleet', scenes.again, scenes.fleet.title('breezy'));
  await here.room.ask({ kind: 'foretell', entry: entries[0]!.id });
  await look('foretell', scenes.foretell.driveOn, scenes.foretell.ask);
  await here.room.ask({ kind: 'show-standings', on: false }, { kind: 'go-to', phase: 'drive' });
  await look('drive', es.driving.robots, board.drive.title);
  await here.room.ask({ kind: 'go-to', phase: 'close' });
  await look('close', desk.closing.together, board.close.count);
  await here.room.ask({ kind: 'look-here', on: true });
  await look('look', desk.lookHere, board.look.note);
}

it.each([
  { desk: { width: 1366, height: 768 }, board: { width: 1024, height: 768 } },
  { desk: { width: 1024, height: 768 }, board: { width: 1920, height: 1080 } },
])('desk and board speak Spanish through a lesson: $desk.width, $board.width', async (sizes) => {
  const spanish = (size: WatchOptions) => ({ ...size, locale: 'es-ES' });
  const desk = await deskPage(here.browser, here.room, spanish(sizes.desk));
  const board = await watchedPage(here.browser, here.room.server.url, spanish(sizes.board));
  watched.push(desk, board);
  await board.page.goto(`${here.room.server.url}/board?room=${here.room.room}`);
  await lesson(async (name, ofDesk, ofBoard) => {
    await desk.page.getByText(ofDesk).first().waitFor();
    await board.page.getByText(ofBoard).first().waitFor();
    await see(desk.page, `desk-${sizes.desk.width}-${name}`);
    await see(board.page, `board-${sizes.board.width}-${name}`);
  });
});

it('the pages before and beside a lesson speak Spanish: lobby, cautions, rota, paper, keys, links, check', async () => {
  const { desk, safety, rota, print, check } = es;
  await here.room.arrive(2);
  await here.room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'go-to', phase: 'brief' });
  const { page, ...rest } = await deskPage(here.browser, here.room, {
    width: 1366,
    height: 768,
    locale: 'es-ES',
  });
  watched.push({ page, ...rest });
  await page.keyboard.press('o');
  await page.getByText(print.page.previewOf(1, 1)).first().waitFor();
  await see(page, 'desk-paper');
  await page.keyboard.press('?');
  await page.getByText(desk.keys.on).waitFor();
  await see(page, 'desk-keys');
  await page.goto(`${here.room.server.url}/desk`);
  await page.getByText(desk.preparing.roomsTitle).waitFor();
  await see(page, 'desk-lobby');
  const { fitting, supplies, lessonPlan, kept } = es;
  for (const leaf of [safety.leaf, rota.title, fitting.leaf, supplies.leaf, lessonPlan.leaf, kept.leaf]) {
    await page.getByText(leaf, { exact: true }).first().click();
    await see(page, `desk-${leaf}`);
  }
  await page.goto(`${here.room.server.url}/check`);
  await page.getByText(check.again).waitFor();
  await see(page, 'check');
});

it('the language is switched at any time, before joining too, and stays after a reload', async () => {
  const tablet = await watchedPage(here.browser, here.room.server.url, {
    width: 820,
    height: 1180,
    locale: 'en-GB',
  });
  watched.push(tablet);
  const { page } = tablet;
  const en = wording('en');
  await page.goto(`${here.room.server.url}/`);
  await page.getByRole('button', { name: en.device.open }).click();
  await page.getByText('Español').click();
  await page.getByRole('button', { name: es.device.close }).click();
  await page.getByRole('heading', { name: es.tablet.joining.title }).waitFor();
  expect(await page.getAttribute('html', 'lang')).toBe('es');
  await page.reload();
  await page.getByRole('heading', { name: es.tablet.joining.title }).waitFor();
  // The check page of the same device speaks as its tablet does.
  await page.goto(`${here.room.server.url}/check`);
  await page.getByRole('heading', { name: es.check.title }).waitFor();
});

it('a board is set by a key, and another tab of its device follows', async () => {
  const board = await watchedPage(here.browser, here.room.server.url, {
    width: 1024,
    height: 768,
    locale: 'en-GB',
  });
  watched.push(board);
  const second = await board.context.newPage();
  for (const page of [board.page, second]) {
    await page.goto(`${here.room.server.url}/board?room=${here.room.room}`);
    await page.getByText(wording('en').board.gather.empty).waitFor();
  }
  await board.page.keyboard.press('l');
  await board.page.getByText('Español').click();
  await picture(board.page, 'es-board-settings');
  await board.page.keyboard.press('Escape');
  for (const page of [board.page, second]) await page.getByText(es.board.gather.empty).waitFor();
});
