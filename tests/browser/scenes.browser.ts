import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { judge } from '../../shared/judge/judge.ts';
import { expectClean, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, unreadable } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';

const at = stage('test');
const CHALLENGE = 'one-fast-stretch';
/** All is given here, so that it needs no tablet. */
const GIVEN = 'from-the-other-end';
const SMALL = { width: 1024, height: 768 };

const still = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.getAnimations().every((a) => a.playState === 'finished'));

async function boardOf(size: { width: number; height: number }): Promise<Watched> {
  const board = await watchedPage(at.browser, at.room.server.url, size);
  at.watched.push(board);
  await board.page.goto(`${at.room.server.url}/board?room=${at.room.room}`);
  return board;
}

/** A class of `teams`, every one of which has handed in, the first twice; the second one has agreed to be named. */
async function showing(teams: number): Promise<void> {
  const { room } = at;
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  await room.arrive(teams);
  await room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: null });
  for (let i = 0; i < teams; i++) await room.handIn(i, drawings[(i + 1) % drawings.length]!);
  await room.handIn(0, drawings[0]!);
  await room.teams[1]?.command({ kind: 'wish-wall', wish: 'shown' });
  await room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
}

const idOf = (team: number, number: number): string => {
  const { teams, entries } = at.room.desk.state!;
  return entries.find((entry) => entry.team === teams[team]!.id && entry.number === number)!.id;
};

it.each([
  { ...SMALL, dark: false },
  { width: 1920, height: 1080, dark: true },
])(
  'gallery, fleet, foretold drive and closing at $width × $height, dark $dark: read from 8 m, whole',
  async ({ dark, ...size }) => {
    const { room } = at;
    await showing(5);
    if (dark) await room.ask({ kind: 'set-board', setting: 'dark', on: true });
    const board = await boardOf(size);
    const { page } = board;
    await page.locator(`html[data-ground="${dark ? 'dark' : 'light'}"]`).waitFor();
    const see = async (name: string, sign: string | RegExp) => {
      await page.getByText(sign).first().waitFor();
      await still(page);
      await picture(page, `scenes-${size.width}-${name}`);
      await expectTidy(page, name);
      expect(await unreadable(page), name).toEqual([]);
    };
    await room.ask({ kind: 'hang', entries: [0, 1, 2, 3, 4].map((team) => idOf(team, 1)) });
    await see('gallery', '5 drawings');
    // Only who has agreed is named beside a drawing.
    expect(await page.locator('.gallery .emblem').allInnerTexts()).toEqual([
      'a team',
      'Bell',
      'a team',
      'a team',
      'a team',
    ]);
    if (!dark) expect(await axeFindings(page)).toEqual([]);
    await room.ask({ kind: 'show-fleet', entry: idOf(0, 2), weather: 'stormy' });
    await see('fleet', /still do as planned/);
    expect(await page.locator('.robot-sprite').count()).toBe(20);
    await room.ask({ kind: 'foretell', entry: idOf(0, 2) });
    await see('foretell', 'Hands up: what does this mark say?');
    await room.ask({ kind: 'count-hands', stop: 0, hands: [4, 11, 2, 7] });
    await see('foretell-hands', '11');
    await room.ask({ kind: 'drive-on', passed: 1 });
    await see('foretell-told', 'This mark says');
    // By the demo kit's chart C A is "faster": that the engine read it so, and 4 hands said so.
    expect(await page.locator('[data-right="true"]').textContent()).toMatch(/faster4$/);
    if (!dark) expect(await axeFindings(page)).toEqual([]);
    await room.ask({ kind: 'go-to', phase: 'close' });
    await see('closing', 'Robots back in their berths');
    await room.ask(
      { kind: 'count-back', what: 'robots', counted: { there: 5, of: 5 } },
      { kind: 'count-back', what: 'caps', counted: { there: 14, of: 15 } },
    );
    await see('closing-counted', /14 of 15/);
    expectClean(board);
  },
);

it('the fleet ends with what the verdict counted in that weather, and with frayed ink', async () => {
  const { room } = at;
  await showing(1);
  const { page } = await boardOf({ width: 1920, height: 1080 });
  await room.ask({ kind: 'show-fleet', entry: idOf(0, 2), weather: 'stormy' });
  const challenge = { ...challengeNamed(CHALLENGE), weather: 'stormy' as const };
  const { same, strays } = judge(challenge, challenge.model!, 'entry').verdict.steadiness!;
  await page.getByText(`${same} of 20 make it`).waitFor({ timeout: 60_000 });
  expect(await page.locator('.fleet-robots [data-astray="true"]').count()).toBe(strays.length);
  // They have made room for the ink that frays; the others stand where they arrived.
  expect(await page.locator('.robot-sprite[data-gone="true"]').count()).toBe(strays.length);
  await still(page);
  await picture(page, 'scenes-1920-fleet-end');
  await page.setViewportSize(SMALL);
  await expectTidy(page, 'fleet at its end');
  await picture(page, 'scenes-1024-fleet-end');
});

it('by keys alone, without any tablet: the desk picks a scene, types hands and drives on; the board follows', async () => {
  const { room } = at;
  await room.ask({ kind: 'choose-challenge', key: GIVEN }, { kind: 'go-to', phase: 'brief' });
  const desk = await deskPage(at.browser, room, { width: 1366, height: 768 });
  const board = await boardOf(SMALL);
  at.watched.push(desk);
  const { page } = desk;
  await board.page.getByText('What will be asked').waitFor();
  await page.keyboard.press('a');
  await page.keyboard.press('8');
  await board.page.getByText('Hands up: what does this mark say?').waitFor();
  const hands = page.locator('.scene-hands input');
  await hands.first().focus();
  await page.keyboard.type('3');
  await page.keyboard.press('Enter');
  await page.keyboard.type('12');
  await board.page.locator('.foretell-hands', { hasText: '12' }).waitFor();
  expect((await board.page.locator('.foretell-hands').allInnerTexts()).slice(0, 2)).toEqual(['3', '12']);
  await picture(page, 'scenes-desk-foretell');
  await expectTidy(page, 'foretelling at the desk');
  expect(await axeFindings(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Drive on' }).focus();
  await page.keyboard.press('d');
  await board.page.getByText('This mark says').waitFor();
  await page.setViewportSize(SMALL);
  await expectTidy(page, 'scenes at a small desk');
  await picture(page, 'scenes-desk-1024');
  // Back to what belongs to the step.
  await page.keyboard.press('a');
  await page.keyboard.press('1');
  await board.page.getByText('What will be asked').waitFor();
  expectClean(desk);
  expectClean(board);
});

it('a still picture keeps scene, words and robot until the desk lets it go; the sign at the foot says so', async () => {
  const { room } = at;
  await showing(1);
  const { page } = await boardOf(SMALL);
  await room.ask({ kind: 'stage', entries: [idOf(0, 2)] });
  room.desk.socket.emit('latest', { kind: 'stage-clock', clock: { playing: true, speed: 1, at: 2 } });
  const robot = page.locator('.robot-sprite').first();
  await page.waitForFunction(() => document.querySelector<HTMLElement>('.robot-sprite')?.style.transform);
  await room.ask({ kind: 'set-board', setting: 'still', on: true });
  await page.getByText('A still picture').waitFor();
  const stood = await robot.evaluate((canvas) => canvas.style.transform);
  await room.ask({ kind: 'go-to', phase: 'close' });
  // The page has heard of it: what it counts as newest would show a scene without a stage.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  expect(await robot.evaluate((canvas) => canvas.style.transform)).toBe(stood);
  await room.ask({ kind: 'set-board', setting: 'still', on: false });
  await page.getByRole('heading', { name: 'Together' }).waitFor();
  expect(await page.getByText('A still picture').count()).toBe(0);
});

/** Runs in the page before all else: counts what changes the picture as a whole, and every tone. */
function watchBoard(): void {
  const seen = { changes: [] as number[], tones: 0, contexts: 0, running: false };
  Object.assign(window, { seen });
  new MutationObserver(() => seen.changes.push(performance.now())).observe(document, {
    attributes: true,
    subtree: true,
    attributeFilter: ['data-ground'],
  });
  const Context = window.AudioContext;
  window.AudioContext = class extends Context {
    constructor() {
      super();
      seen.contexts++;
      this.addEventListener('statechange', () => {
        seen.running = this.state === 'running';
      });
    }
  };
  const Oscillator = window.OscillatorNode;
  window.OscillatorNode = class extends Oscillator {
    override start(when?: number): void {
      seen.tones++;
      super.start(when);
    }
  };
}
const seenOn = (page: Page) =>
  page.evaluate(
    () => (window as unknown as { seen: { changes: number[]; tones: number; contexts: number } }).seen,
  );

it('the ground changes at most three times a second, however fast the desk asks; the last wish wins', async () => {
  const { room } = at;
  const board = await watchedPage(at.browser, room.server.url, SMALL);
  at.watched.push(board);
  const { page } = board;
  await page.addInitScript(watchBoard);
  await page.goto(`${room.server.url}/board?room=${room.room}`);
  await page.getByText('Free berths wait for you.').waitFor();
  const before = (await seenOn(page)).changes.length;
  for (let i = 0; i < 9; i++) await room.ask({ kind: 'set-board', setting: 'dark', on: i % 2 === 0 });
  await page.locator('html[data-ground="dark"]').waitFor();
  const changes = (await seenOn(page)).changes.slice(before);
  expect(changes.length).toBeGreaterThan(0);
  for (const from of changes)
    expect(changes.filter((when) => when >= from && when < from + 1000).length).toBeLessThanOrEqual(3);
});

it('is silent until the desk turns sound on; then a reading and an arrival sound, and nobody is asked for a file', async () => {
  const { room } = at;
  await showing(1);
  const board = await watchedPage(at.browser, room.server.url, SMALL);
  at.watched.push(board);
  const { page } = board;
  await page.addInitScript(watchBoard);
  await page.goto(`${room.server.url}/board?room=${room.room}`);
  await room.ask({ kind: 'stage', entries: [idOf(0, 2)] });
  const drive = () =>
    room.desk.socket.emit('latest', { kind: 'stage-clock', clock: { playing: true, speed: 4, at: 0 } });
  drive();
  await page.getByText(/^Arrived after /).waitFor();
  expect(await seenOn(page)).toMatchObject({ tones: 0, contexts: 0 });
  await room.ask({ kind: 'set-board', setting: 'sound', on: true });
  await page.waitForFunction(() => (window as unknown as { seen: { contexts: number } }).seen.contexts === 1);
  // A browser lets a page sound once somebody has pressed a key on it.
  await page.keyboard.press('x');
  await page.waitForFunction(() => (window as unknown as { seen: { running: boolean } }).seen.running);
  drive();
  // Three readings of one tone each, and an arrival of two.
  await page.waitForFunction(() => (window as unknown as { seen: { tones: number } }).seen.tones === 5);
  expectClean(board);
});
