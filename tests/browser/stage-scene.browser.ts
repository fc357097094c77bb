import { expect, it } from 'vitest';
import type { StageClock, StageLook } from '../../shared/wire/stage.ts';
import { expectClean, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, unreadable } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';

const CHALLENGE = 'one-fast-stretch';
const SIZES = [
  { width: 1024, height: 768 },
  { width: 1920, height: 1080 },
];
const DESK = { width: 1366, height: 768 };
const USUAL: StageLook = { sensors: false, whole: false, onTop: false, ways: [], whatIf: null };

const here = stage('test');
const { watched } = here;

/** Four teams have handed in, the fourth of them nothing that arrives, and showing has begun. */
async function fourHandedIn(key = CHALLENGE): Promise<string[]> {
  const { room } = here;
  const drawings = classDrawings(challengeNamed(key));
  await room.arrive(4);
  await room.ask({ kind: 'choose-challenge', key }, { kind: 'start-building', seconds: 600 });
  for (let i = 0; i < 4; i++) {
    room.teams[i]!.command({ kind: 'wish-wall', wish: 'shown' });
    await room.handIn(i, drawings[[0, 1, 4, 3][i]!]!);
  }
  await room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
  return room.desk.state!.entries.map(({ id }) => id);
}

/** A long sentence and four goals, one of which asks for twenty robots, which are driven for entries only. */
async function fourGoals(): Promise<void> {
  const { room } = here;
  const key = 'round-the-harbour';
  await room.ask(
    { kind: 'go-to', phase: 'brief' },
    { kind: 'choose-challenge', key },
    { kind: 'start-building', seconds: 600 },
  );
  await room.handIn(0, challengeNamed(key).model!);
  await room.ask({ kind: 'end-building' }, { kind: 'go-to', phase: 'show' });
  await room.ask({ kind: 'stage', entries: [room.desk.state!.entries.at(-1)!.id] });
  say({ at: 99 });
}

const say = (clock: Partial<StageClock>, look: Partial<StageLook> = {}) =>
  here.room.desk.socket.emit('latest', {
    kind: 'stage-clock',
    clock: { playing: false, speed: 1, at: 0, ...clock, look: { ...USUAL, ...look } },
  });

async function boardOf(size: { width: number; height: number }): Promise<Watched> {
  const board = await watchedPage(here.browser, here.room.server.url, size);
  watched.push(board);
  await board.page.goto(`${here.room.server.url}/board?room=${here.room.word}`);
  return board;
}

it('every look of the stage can be read from 8 m at both sizes, whole and without scrolling', async () => {
  const [first, second, third, fourth] = await fourHandedIn();
  const { room } = here;
  const board = await boardOf(SIZES[0]!);
  const { page } = board;
  const see = async (name: string, sign: string | RegExp) => {
    for (const size of SIZES) {
      await page.setViewportSize(size);
      await page.getByText(sign).first().waitFor();
      await picture(page, `stage-${size.width}-${name}`);
      await expectTidy(page, name);
      expect(await unreadable(page), name).toEqual([]);
    }
  };
  await room.ask({ kind: 'stage', entries: [first!] });
  say({ at: 2.5 }, { sensors: true });
  await page.locator('.sensor-bar').waitFor();
  await see('sensors', /^Driving /);
  say({ at: 2.5 }, { whole: true });
  await see('whole', /^Arrived after /);
  say({ at: 2.5 }, { whatIf: { kind: 'weather', weather: 'stormy', robot: 3 } });
  await see('storm', 'What if robot 3 drives in a storm?');
  await room.ask({ kind: 'stage', entries: [first!, second!, third!, fourth!] });
  say({ at: 99 });
  await see('heat-of-four', /^first, after /);
  say({ at: 99 }, { onTop: true });
  await page.locator('.robot-flag').nth(3).waitFor();
  await see('on-top', /^first, after /);
  say({ at: 99 }, { whatIf: { kind: 'light', light: 'brighter' } });
  await see('heat-brighter', 'What if it gets much brighter?');
  await fourGoals();
  await see('four-goals', /^Parked after /);
  // Newest last, as many as have room beside four goals with their margins.
  await expect.poll(() => page.locator('.run-log li').last().textContent()).toMatch(/park$/);
  expectClean(board);
});

it('the desk steers the stage with keys alone: steps, slow motion, a stretch, and what if', async () => {
  const [first, second, third] = await fourHandedIn();
  const { room } = here;
  const desk = await deskPage(here.browser, room, DESK);
  const board = await boardOf(SIZES[0]!);
  watched.push(desk);
  const { page } = desk;
  const clock = (name: string, is: (clock: StageClock) => boolean) =>
    room.desk.until(name, () => {
      const last = room.desk.latest.findLast((value) => value.kind === 'stage-clock');
      return last?.kind === 'stage-clock' && is(last.clock);
    });
  await room.ask({ kind: 'stage', entries: [first!] });
  await page.locator('.stage-controls').waitFor();
  const times = await page.locator('.run-tick').count();
  expect(times).toBeGreaterThan(0);
  await page.keyboard.press('k');
  await clock('the first reading', ({ at, playing }) => at > 0.5 && !playing);
  // The board stands where the mark has just been read.
  await board.page.locator('.reading').waitFor();
  await page.keyboard.press('j');
  await clock('the beginning', ({ at }) => at === 0);
  await page.getByRole('button', { name: '¼×' }).click();
  await clock('slow motion', ({ speed }) => speed === 0.25);
  await board.page.getByText('slow motion, ¼×').waitFor();
  await page.keyboard.press('r');
  await clock('a stretch', ({ loop }) => loop !== undefined && loop.from < loop.to);
  await page.getByLabel('The stretch ends').waitFor();
  await page.keyboard.press('e');
  await board.page.locator('.sensor-bar').waitFor();
  await page.keyboard.press('w');
  await page.getByRole('button', { name: 'Much brighter' }).click();
  await board.page.getByText('What if it gets much brighter?').waitFor();
  await expectTidy(page, 'what if at the desk');
  await picture(page, 'stage-desk-what-if');
  expect(await axeFindings(page)).toEqual([]);
  // Nothing of it reaches the entry: its points are those of the judge.
  const { entries } = room.desk.state!;
  expect(entries.find(({ id }) => id === first)!.verdict!.points).toBe(100);
  await page.getByRole('button', { name: 'As it was handed in' }).click();
  await board.page.getByText('What if').waitFor({ state: 'detached' });
  await room.ask({ kind: 'stage', entries: [first!, second!, third!] });
  await page.locator('.stage-sheet').nth(2).waitFor();
  await page.keyboard.press('f');
  await board.page.locator('.robot-flag').nth(2).waitFor();
  await expectTidy(page, 'heat at the desk');
  await picture(page, 'stage-desk-on-top');
  for (const each of [desk, board]) expectClean(each);
});
