import { expect, it } from 'vitest';
import { expectClean, picture, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, unreadable } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';

/** Robots on paper: who drives which robot when, trials with two taps, and prediction beside trial. */

const CHALLENGE = 'one-fast-stretch';
const here = stage('test');

async function entered(): Promise<void> {
  await here.room.arrive(5);
  await here.room.ask({ kind: 'choose-challenge', key: CHALLENGE }, { kind: 'start-building', seconds: 600 });
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  for (let team = 0; team < 4; team++) await here.room.handIn(team, drawings[team]!);
  await here.room.ask({ kind: 'go-to', phase: 'show' });
}

const noted = () => here.room.desk.state!.driving.trials;
const kept = (count: number) =>
  here.room.desk.until(`${count} trials`, () => noted().filter((one) => !one.withdrawn).length === count);

it('a lesson goes from the stage to paper: turns, trials with two taps each, undo, and the picture of both', async () => {
  await entered();
  const desk = await deskPage(here.browser, here.room, { width: 1366, height: 768 });
  const board = await watchedPage(here.browser, here.room.server.url, { width: 1024, height: 768 });
  here.watched.push(desk, board);
  await board.page.goto(`${here.room.server.url}/board?room=${here.room.room}`);
  const { page } = desk;
  await page.locator('.rail-step', { hasText: 'Drive' }).click();
  await page.keyboard.press('n');
  await page.getByText('Robots that drive').waitFor();
  await here.room.desk.until('the phase', () => here.room.desk.state!.phase === 'drive');

  // Three robots rest: two robots, five teams, three turns.
  for (const robot of [1, 3, 4])
    await page.getByRole('button', { name: `robot ${robot}`, exact: true }).click();
  await here.room.desk.until('two robots', () => here.room.desk.state!.driving.robots?.join() === '2,5');
  await page.getByText('Turn 3').waitFor();
  const rows = page.locator('.trials-turn[data-now="true"] .trials-pick');
  expect(await rows.count()).toBe(2);
  await board.page.getByText('robot 5').first().waitFor();
  await picture(board.page, 'board-1024-drive');
  await expectTidy(board.page, 'board');
  expect(await unreadable(board.page)).toEqual([]);
  here.room.teams[1]!.command({ kind: 'wish-wall', wish: 'not-at-all' });
  await board.page.locator('.driving', { hasText: 'Bell' }).waitFor({ state: 'detached' });
  expect(await board.page.locator('.driving', { hasText: 'Sailboat' }).count()).toBe(1);

  // As predicted, with the watch; then lost at a place.
  await rows.nth(0).click();
  await page.getByText('Foretold:').waitFor();
  await page.keyboard.press('g');
  await page.getByText('Stop the watch').waitFor();
  await page.keyboard.press('y');
  await kept(1);
  await rows.nth(1).click();
  await page.getByText('Foretold:').waitFor();
  const sheet = page.locator('.trial-sheet button');
  const box = (await sheet.boundingBox())!;
  await picture(page, 'desk-1366-drive');
  await expectTidy(page, 'drive');
  expect(await axeFindings(page)).toEqual([]);
  await sheet.click({ position: { x: box.width / 2, y: box.height / 4 } });
  await kept(2);
  const { sheet: size } = challengeNamed(CHALLENGE);
  const [first, second] = noted();
  expect(first).toMatchObject({ robot: 2, outcome: { kind: 'as-predicted' }, foretold: { of: 20 } });
  expect(first!.outcome.kind === 'as-predicted' && first!.outcome.seconds).toBeGreaterThan(0);
  expect(second!.outcome.kind).toBe('lost');
  if (second!.outcome.kind === 'lost') {
    expect(Math.abs(second!.outcome.at!.x - size.w / 2)).toBeLessThan(4);
    expect(Math.abs(second!.outcome.at!.y - size.h / 4)).toBeLessThan(4);
  }

  // Undone by key, and a note taken back at its row.
  await page.getByText('Bell, robot 5: lost.').first().waitFor();
  await page.keyboard.press('u');
  await kept(1);
  await rows.nth(1).click();
  await page.keyboard.press('j');
  await kept(2);
  await page.getByRole('button', { name: 'Take this note back' }).first().click();
  await kept(1);
  await page.keyboard.press('n');
  await page.locator('.trials-turn[data-now="true"]', { hasText: 'Turn 2' }).waitFor();

  await page.getByRole('button', { name: 'Prediction and trials' }).click();
  await page.getByText('Brier score').waitFor();
  await picture(page, 'desk-1366-drive-beside');
  await expectTidy(page, 'beside');
  expect(await axeFindings(page)).toEqual([]);
  await page.setViewportSize({ width: 1024, height: 768 });
  await picture(page, 'desk-1024-drive-beside');
  await expectTidy(page, 'beside at 1024');
  await page.getByRole('button', { name: 'Turns' }).click();
  await page.locator('.trials-turn[data-now="true"] .trials-pick').first().click();
  await page.getByText('Foretold:').waitFor();
  await picture(page, 'desk-1024-drive');
  await expectTidy(page, 'drive at 1024');
  expectClean(desk);
  expectClean(board);
});

it('numbers typed from the robots change the kit when the teacher says so, and that can be undone', async () => {
  const desk = await deskPage(here.browser, here.room, { width: 1366, height: 768 });
  here.watched.push(desk);
  const { page } = desk;
  await page.locator('.rail-step', { hasText: 'Prepare' }).click();
  await page.getByRole('button', { name: 'Fit to the robots' }).click();
  for (const seconds of ['12.9', '13.1', '13', '13']) {
    await page.getByLabel('Seconds').fill(seconds);
    await page.keyboard.press('Enter');
  }
  await page.getByText('4 runs').waitFor();
  // By hand: four runs of 13 s in the mean over 500 mm are 38.46 mm/s.
  await page.getByText('pace steady: 40 mm/s → 38.5 mm/s').waitFor();
  await page.getByLabel('Robots that tried').fill('3');
  for (const [corner, made] of [
    ['90°', '3'],
    ['80°', '3'],
    ['70°', '3'],
    ['60°', '2'],
  ] as const)
    await page.getByLabel(corner, { exact: true }).fill(made);
  await page.getByText('Corners of 70° and wider: all robots get round.').waitFor();
  await picture(page, 'desk-1366-fit');
  await expectTidy(page, 'fit');
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Keep it as a kit of its own' }).click();
  await page.getByText('It is on the shelf of kits').waitFor();
  await page.getByRole('button', { name: 'Play with it from the next challenge on' }).click();
  await here.room.desk.until('the fitted kit', () => here.room.desk.state!.kit !== null);
  const fitted = here.room.desk.state!.kit;
  await page.getByText('The next challenge is for the fitted kit.').first().waitFor();
  await page.keyboard.press('u');
  await here.room.desk.until('the kit before', () => here.room.desk.state!.kit !== fitted);
  await page.setViewportSize({ width: 1024, height: 768 });
  await page.getByText('What the runs say').scrollIntoViewIfNeeded();
  await picture(page, 'desk-1024-fit');
  await expectTidy(page, 'fit at 1024');
  await page.reload();
  await page.locator('.rail-step', { hasText: 'Prepare' }).click();
  await page.getByRole('button', { name: 'Fit to the robots' }).click();
  await page.getByText('4 runs').waitFor();
  expectClean(desk);
});
