import jsqr from 'jsqr';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { startServer } from '../../server/server.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { post } from '../rooms/harness.ts';
import { expectClean, PAGES, picture, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, still, unreadable } from './looks.ts';
import { challengeNamed, classDrawings } from './room.ts';
import { stage } from './stage.ts';

const CHALLENGE = 'one-fast-stretch';
const SIZES = [
  { width: 1024, height: 768 },
  { width: 1920, height: 1080 },
];

const here = stage('test');
const { watched } = here;

async function boardOf(size: { width: number; height: number }, word: string | null = here.room.word) {
  const board = await watchedPage(here.browser, here.room.server.url, size);
  watched.push(board);
  await board.page.goto(`${here.room.server.url}/board${word === null ? '' : `?room=${word}`}`);
  return board;
}

const clock = (at: number, playing = false) =>
  here.room.desk.socket.emit('latest', { kind: 'stage-clock', clock: { playing, speed: 4, at } });

/** The last entry of a team. */
const entryOf = (team: number): string => {
  const { teams, entries } = here.room.desk.state!;
  return entries.filter((entry) => entry.team === teams[team]!.id).at(-1)!.id;
};

async function playedUntilShow(teams: number): Promise<void> {
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await here.room.arrive(teams);
  await here.room.ask(
    { kind: 'choose-challenge', key: CHALLENGE },
    { kind: 'go-to', phase: 'brief' },
    { kind: 'start-building', seconds: 600 },
  );
  for (let i = 0; i < Math.min(teams, 5); i++) await here.room.handIn(i, drawings[i % drawings.length]!);
  await here.room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
}

/** Every scene that a lesson shows, each with a sentence or word that is there once it stands. */
async function everyScene(teams: number, see: (name: string, sign: string | RegExp) => Promise<void>) {
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await see('wall-empty', 'Free berths wait for you.');
  await here.room.arrive(teams);
  await see('wall', `${teams} teams are in`);
  await here.room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'go-to', phase: 'brief' });
  await see('brief', 'What must come true');
  await here.room.ask({ kind: 'start-building', seconds: 600 });
  for (let i = 0; i < 5; i++) await here.room.handIn(i, drawings[i]!);
  await see('building', '10 minutes left');
  await here.room.ask({ kind: 'show-standings', on: true });
  await see('building-standings', 'Standings');
  await here.room.ask({ kind: 'look-here', on: true });
  await see('look-here', 'Hands off the tablets');
  await here.room.ask(
    { kind: 'look-here', on: false },
    { kind: 'show-standings', on: false },
    { kind: 'end-building' },
  );
  await see('building-over', 'Pens down');
  await here.room.ask({ kind: 'go-to', phase: 'show' });
  await see('before-stage', 'Which drawing comes first?');
  await here.room.ask({ kind: 'stage', entries: [entryOf(0)] });
  clock(2.5);
  await see('stage', /^Driving /);
  clock(99);
  await see('stage-end', /^Arrived after /);
  await here.room.ask({ kind: 'show-standings', on: true });
  await see('stage-standings', 'Standings');
  await here.room.ask(
    { kind: 'show-standings', on: false },
    { kind: 'stage', entries: [entryOf(0), entryOf(2)] },
  );
  clock(99);
  await see('heat', 'Side by side');
  await here.room.ask({ kind: 'show-standings', on: true }, { kind: 'stage', entries: [] });
  await see('standings', 'Standings');
  await here.room.ask({ kind: 'show-standings', on: false }, { kind: 'go-to', phase: 'close' });
  await see('together', 'Robots back in their berths');
}

/** White between a berth's number and the sign of its team where that is least, CSS pixels. */
const betweenNumbersAndSigns = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const berths = [...document.querySelectorAll('.berth[data-taken="true"]')];
    const box = (berth: Element, part: string) => berth.querySelector(part)!.getBoundingClientRect();
    return Math.min(
      ...berths.map((berth) => box(berth, ':scope > svg').left - box(berth, '.berth-number').right),
    );
  });

describe.each([8, 40])('every scene with %i teams', (teams) => {
  it.each(SIZES)('at $width × $height can be read from 8 m, whole and without scrolling', async (size) => {
    const board = await boardOf(size);
    const { page } = board;
    await everyScene(teams, async (name, sign) => {
      await page.getByText(sign).first().waitFor();
      await still(page);
      await picture(page, `board-${size.width}-${teams}-${name}`);
      await expectTidy(page, name);
      expect(await unreadable(page), name).toEqual([]);
      if (name === 'wall') expect(await betweenNumbersAndSigns(page)).toBeGreaterThan(size.height / 200);
      if (teams === 8 && size === SIZES[0]) expect(await axeFindings(page), name).toEqual([]);
    });
    expectClean(board);
  });
});

it('the QR code on the wall leads a tablet into this room (decoded by jsqr)', async () => {
  const { page } = await boardOf(SIZES[0]!);
  const code = page.locator('.join-code');
  await code.waitFor();
  await still(page);
  const png = PNG.sync.read(await page.screenshot());
  const read = jsqr(new Uint8ClampedArray(png.data), png.width, png.height);
  const address = new URL(read!.data);
  expect([address.pathname, address.searchParams.get('word')]).toEqual(['/j', here.room.word]);
});

it('a board of a room that is not there asks for another one, and one without a room shows the newest', async () => {
  const board = await boardOf(SIZES[0]!, 'no-such-room-00');
  await board.page.getByText('is not here, or no longer').waitFor();
  await still(board.page);
  await expectTidy(board.page, 'no room');
  expect(await axeFindings(board.page)).toEqual([]);
  const newest = await boardOf(SIZES[0]!, null);
  await newest.page.getByText(here.room.word).first().waitFor();
  expectClean(newest);
});

it('while teams build the board has a word a team, no drawing and no points', async () => {
  const board = await boardOf(SIZES[0]!);
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await here.room.arrive(3);
  await here.room.ask(
    { kind: 'choose-challenge', key: CHALLENGE },
    { kind: 'start-building', seconds: null },
  );
  here.room.draft(0, drawings[0]!);
  here.room.teams[0]!.socket.emit('latest', { kind: 'doing', doing: 'trying' });
  await here.room.handIn(1, drawings[0]!);
  here.room.teams[1]!.socket.emit('latest', { kind: 'doing', doing: 'handed-in' });
  const { page } = board;
  await page.locator('.doing', { hasText: 'trying' }).waitFor();
  await page.locator('.doing', { hasText: 'handed in' }).waitFor();
  expect(await page.locator('.doing').allInnerTexts()).toEqual([
    expect.stringMatching(/^Sailboat\s+trying$/),
    expect.stringMatching(/^Bell\s+handed in$/),
    expect.stringMatching(/^Key\s+drawing$/),
  ]);
  expect(await page.getByText(/\b100\b/).count()).toBe(0);
  expectClean(board);
});

it('a replay runs on the desk’s clock: readings are called out and goals turn as the run meets them', async () => {
  await playedUntilShow(2);
  const board = await boardOf(SIZES[1]!);
  const { page } = board;
  await here.room.ask({ kind: 'stage', entries: [entryOf(0)] });
  clock(0);
  await page.locator('.sheet-view').waitFor();
  expect(await page.locator('.goal-row[data-stand="met"]').count()).toBe(0);
  clock(0, true);
  await page.locator('.reading', { hasText: 'faster' }).first().waitFor();
  await page.locator('.goal-row[data-stand="met"]', { hasText: 'Reach' }).waitFor();
  await page.getByText(/^Arrived after /).waitFor();
  expect(await page.locator('.goal-row[data-stand="met"]').count()).toBe(2);
  // The margin stands there once the run has ended.
  expect(await page.locator('.goal-margin').first().textContent()).toMatch(/cm to spare$/);
  expectClean(board);
});

it('ranks are off until the desk turns them on; equal points share a rank', async () => {
  await playedUntilShow(3);
  const { page } = await boardOf(SIZES[0]!);
  await page.getByText('Which drawing comes first?').waitFor();
  expect(await page.locator('.standing').count()).toBe(0);
  await here.room.handIn(1, classDrawings(challengeNamed(CHALLENGE))[0]!);
  await here.room.ask({ kind: 'show-standings', on: true });
  await page.locator('.standing').first().waitFor();
  // What comes after the time counts once the desk takes it.
  expect(await page.locator('.standing-rank').allInnerTexts()).toEqual(['1', '2', '2']);
  await here.room.ask({ kind: 'take-late', entries: [entryOf(1)], on: true });
  await page.locator('.standing-rank', { hasText: '3' }).waitFor();
  expect(await page.locator('.standing-rank').allInnerTexts()).toEqual(['1', '1', '3']);
  // Beside a drawing the table does not tell whose it is before the team has agreed to that.
  await here.room.ask({ kind: 'stage', entries: [entryOf(0)] });
  await page.locator('.stage-beside .standing').nth(2).waitFor();
  expect(await page.locator('.standing[data-on="true"]').count()).toBe(0);
  await here.room.teams[0]!.command({ kind: 'wish-wall', wish: 'shown' });
  await page.locator('.standing[data-on="true"]', { hasText: 'Sailboat' }).waitFor();
});

it('a board whose server has gone says so, keeps its scene and comes back by itself', async () => {
  const { page } = await boardOf(SIZES[0]!);
  await here.room.arrive(2);
  await page.getByText('2 teams are in').waitFor();
  await here.room.server.close();
  await page.getByText('No link. It comes back by itself.').waitFor();
  await expectTidy(page, 'no link');
  await picture(page, 'board-1024-no-link');
  expect(await page.getByText('2 teams are in').isVisible()).toBe(true);
  const { dataDir, port } = here.room.server;
  const again = await startServer({ dataDir, port, pages: PAGES, logLevel: 'silent' });
  try {
    await page.getByText('No link. It comes back by itself.').waitFor({ state: 'hidden' });
    expect(await page.getByText('2 teams are in').isVisible()).toBe(true);
  } finally {
    for (const { context } of watched.splice(0)) await context.close();
    await again.close();
  }
});

it('where several people open rooms a board asks which one it shows, and takes a typed word', async () => {
  const { server, owner, word } = here.room;
  await post(`${server.url}${ROUTES.links}`, { kind: 'desk' }, owner);
  const board = await boardOf(SIZES[0]!, null);
  const typed = board.page.getByLabel('Room word');
  await typed.waitFor();
  await still(board.page);
  await picture(board.page, 'board-which-room');
  await expectTidy(board.page, 'which room');
  expect(await axeFindings(board.page)).toEqual([]);
  await typed.fill('nowhere-11');
  await typed.press('Enter');
  await board.page.getByText('is not here, or no longer').waitFor();
  await typed.fill(word);
  await typed.press('Enter');
  await board.page.locator('.join-word').waitFor();
  expectClean(board);
});
