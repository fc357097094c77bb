import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { Challenge } from '../../shared/documents/challenge.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { post } from '../rooms/harness.ts';
import { cutOff, expectClean, overlaps, picture, type Watched, watchedPage } from './browser.ts';
import { axeFindings, expectTidy, scrolls, smallTargets, textOf } from './looks.ts';
import { challengeNamed } from './room.ts';
import { stage } from './stage.ts';

const LAPTOP = { width: 1366, height: 768 };
const SMALL = { width: 1024, height: 768 };

/** Drawing is looked at on the tablet, and the way to play is a form like the others. */
const AXE: readonly string[] = ['sheet', 'goals', 'found'];

const on = stage('test');

async function deskAt(path: string, options: Parameters<typeof watchedPage>[2] = LAPTOP): Promise<Watched> {
  const { server } = on.room;
  const desk = await watchedPage(on.browser, server.url, options);
  on.watched.push(desk);
  await desk.page.goto(server.deskLink);
  await desk.page.goto(`${server.url}${path}`);
  return desk;
}

const part = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).press('Enter');
const foot = (page: Page) => page.locator('.builder-foot');
const press = async (page: Page, key: string, times: number) => {
  for (let i = 0; i < times; i++) await page.keyboard.press(key);
};

/** A line of 15 cm out of the start berth, a finish at its end and a goal to reach it, by keys alone. */
async function buildByKeys(page: Page): Promise<void> {
  await part(page, 'Lines and marks');
  const paper = page.locator('.surface');
  await paper.waitFor();
  // The focus comes by keys: only then is there a cursor, on the start berth.
  await page.getByRole('radio', { name: 'Given to all' }).focus();
  await page.keyboard.press('Tab');
  await paper.focus();
  await page.locator('.key-cursor').waitFor({ state: 'attached' });
  await page.keyboard.press('Enter');
  await page.locator('.key-cursor[data-holds="true"]').waitFor({ state: 'attached' });
  await press(page, 'ArrowRight', 30);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Undo', disabled: false }).waitFor();
  await part(page, 'The sheet');
  await page.getByRole('button', { name: 'finish berth', exact: true }).press('Enter');
  await page.getByLabel('From the left').fill('18.5');
  await page.getByLabel('From the top').fill('10.5');
  await part(page, 'Goals');
  await page.getByRole('button', { name: 'Add a goal' }).press('Enter');
}

it('a challenge is built by keys alone, saved by itself, chosen, erased, and brought back', async () => {
  const { room } = on.room;
  const desk = await deskAt(`/desk?build=own-built&room=${room}`);
  const { page } = desk;
  await foot(page).getByText('In “fill in” the lines are given, and the sheet has none.').waitFor();
  await buildByKeys(page);
  await page.getByText('Finish at the Lighthouse.').waitFor();
  await page.getByText('Terminar en el Faro.').waitFor();
  await foot(page).getByText('It is met without drawing anything.').waitFor();
  await page.keyboard.press('Control+z');
  await foot(page).getByText('There is no goal.').waitFor();
  await page.keyboard.press('Control+y');
  await foot(page).getByText('It is met without drawing anything.').waitFor();
  await page.getByText('saved', { exact: true }).waitFor();
  await page.reload();
  await foot(page).getByText('It is met without drawing anything.').waitFor();
  // What was typed last goes along, however soon one leaves.
  await page.getByLabel('Name of the challenge').fill('Round the pier');
  await part(page, 'Back to the desk');
  await page.getByText('Nobody is here yet.').waitFor();
  await page.keyboard.press(']');
  await page.getByRole('radio', { name: /Round the pier/ }).focus();
  await page.keyboard.press('Space');
  await page.getByRole('button', { name: 'Take this challenge', disabled: false }).waitFor();
  await page.keyboard.press('n');
  await page.getByText('chosen', { exact: true }).waitFor();
  expect(on.room.desk.state?.rounds.at(-1)?.key).toBe('own-built');
  await page.getByRole('button', { name: 'Erase it' }).press('Enter');
  await page.getByText('“Round the pier” is erased.').first().waitFor();
  await page.getByRole('radio', { name: /Round the pier/ }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Take it back|^Undo/ }).press('Enter');
  await page.getByRole('radio', { name: /Round the pier/ }).waitFor();
  expectClean(desk);
});

/** A box for marks where no line is, pushed over the way to the junction, taken away and brought back. */
async function boxByKeys(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'box for marks', exact: true }).press('Enter');
  // To the right edge of the sheet, which for this width is not a whole tenth of a millimetre.
  await page.getByLabel('Width of the box').fill('6.005');
  await page.getByLabel('From the left').fill('23.7');
  await page.getByLabel('From the top').fill('15');
  await foot(page).getByText('It can’t be met.').waitFor();
  await page.getByLabel('From the left').fill('1');
  await page.getByLabel('Width of the box').fill('4.8');
  await foot(page).getByText('It can’t be met.').waitFor();
  await part(page, 'Can it be met?');
  await page.getByText('no box lies over a line that a robot comes to.').waitFor();
  await part(page, 'The sheet');
  await page.getByRole('button', { name: 'Move Marks 2' }).focus();
  await press(page, 'ArrowRight', 14);
  await press(page, 'ArrowUp', 12);
  await foot(page).getByText('It can be met, with one mark.').waitFor();
  const boxes = page.locator('.builder-place', { hasText: 'Marks 2' });
  await page.getByRole('button', { name: 'Take it away' }).press('Enter');
  await boxes.waitFor({ state: 'detached' });
  await page.keyboard.press('Control+z');
  await boxes.waitFor();
}

/** Whatever the window and the text: nothing is cut off or over something else, and nothing scrolls sideways. */
async function narrowAndLarge(page: Page): Promise<void> {
  for (const [width, height, text] of [
    [390, 844, 100],
    [820, 1180, 100],
    [1366, 768, 200],
  ] as const) {
    await page.setViewportSize({ width, height });
    await textOf(page, text);
    for (const name of ['Lines and marks', 'Goals']) {
      await part(page, name);
      const look = async () => [
        await cutOff(page, true),
        await overlaps(page),
        [(await scrolls(page)).x, width, name],
      ];
      await expect.poll(look).toEqual([[], [], [0, width, name]]);
      await picture(page, `builder-${width}-${text}-${name}`);
    }
  }
  await textOf(page, 100);
  await page.setViewportSize(LAPTOP);
}

it('a proof says which goal can’t be met and why, and a drawing by hand is undone with the rest', async () => {
  const ferry = challengeNamed('ferry-junction');
  const { server, owner } = on.room;
  const { model: _, ...open } = ferry;
  const own: Challenge = { ...open, id: 'own-ferry', title: { en: 'Ferry' } };
  await post(server.url + ROUTES.saveChallenge, { id: own.id, body: writeDocument(Challenge, own) }, owner);
  const desk = await deskAt('/desk?build=own-ferry');
  const { page } = desk;
  await foot(page).getByText('It can be met, with one mark.').waitFor();
  await foot(page).getByText('Difficulty 3').waitFor();
  await narrowAndLarge(page);
  await part(page, 'How it is played');
  await page.getByLabel('Marks at most').fill('0');
  await foot(page).getByText('It can’t be met.').waitFor();
  await part(page, 'Can it be met?');
  // Without a mark the robot chooses by itself; goal 1 is to reach the lighthouse.
  await page
    .locator('.builder-problems')
    .getByText(/Goal “1”/)
    .waitFor();
  await page.getByText('This is about the simulated robot; a real one may differ.').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Who takes each mark for what it says from its other side').waitFor();
  await page.getByText('draws this, and it fails: the mistake shows.').first().waitFor();
  await part(page, 'The sheet');
  const handle = page.getByRole('button', { name: 'Move Fish market' });
  const box = (await handle.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x - 60, box.y, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => (await handle.boundingBox())!.x).toBeLessThan(box.x - 30);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await handle.boundingBox())!.x).toBe(box.x);
  await boxByKeys(page);
  // A question is about a robot that sets out.
  await part(page, 'How it is played');
  await page.getByLabel('Robots set out').selectOption('finish');
  await page.getByLabel('Way to play').selectOption('predict');
  await part(page, 'Questions');
  await page.getByRole('button', { name: 'Add a question' }).press('Enter');
  await foot(page).getByText('Nothing is drawn: teams answer questions.').waitFor();
  expectClean(desk);
});

it('a fresh one is made for a topic and a difficulty; files go out and come in', async () => {
  const desk = await deskAt('/desk');
  const { page } = desk;
  await page.getByRole('button', { name: 'Make a challenge' }).click();
  await page.waitForURL(/build=own-/);
  // As long as the server does not have it, this browser keeps it.
  const keptHere = () => Object.keys(localStorage).filter((key) => key.startsWith('harbour-lines.builder'));
  await expect.poll(() => page.evaluate(keptHere)).toEqual([]);
  await page.getByRole('button', { name: 'Fresh one' }).click();
  await page.getByLabel('About').selectOption('park');
  await page.getByLabel('Number of the sheet').fill('5');
  await page.getByRole('button', { name: 'Make it' }).click();
  await foot(page).getByText('It can be met, with one mark.').waitFor();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  const text = readFileSync(await saved.path(), 'utf8');
  expect(JSON.parse(text)).toMatchObject({ version: 1, play: 'fill-in' });
  await page.goto(`${on.room.server.url}/desk`);
  const input = page.locator('input[aria-label="Read a file"]');
  const put = (name: string, content: string) =>
    input.setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
  await put('notes.json', 'no json');
  await page.getByText('This file could not be read as a challenge.').waitFor();
  await put('wrong.json', text.replace('"fill-in"', '"sing"'));
  await page.getByText('This challenge file has a mistake: play').waitFor();
  await put('challenge.json', text);
  await page.waitForURL(/build=own-/);
  await foot(page).getByText('It can be met, with one mark.').waitFor();
  expectClean(desk);
});

it.each([LAPTOP, { ...SMALL, locale: 'es-ES' }])(
  'every part is tidy: $width × $height $locale',
  async (size) => {
    const bakery = challengeNamed('bakery-and-back');
    const boxes = [{ id: 'box', name: { en: 'Marks', es: 'Marcas' }, at: { x: 20, y: 20 }, w: 257, h: 170 }];
    const sheet = { ...bakery.sheet, boxes };
    const own: Challenge = { ...bakery, sheet, id: 'own-calls', title: { en: 'Bakery' } };
    const { server, owner } = on.room;
    await post(server.url + ROUTES.saveChallenge, { id: own.id, body: writeDocument(Challenge, own) }, owner);
    const desk = await deskAt('/desk?build=own-calls', size);
    const { page } = desk;
    const parts = page.locator('.builder-parts button');
    await parts.first().waitFor();
    for (const [i, name] of ['sheet', 'lines', 'goals', 'rules', 'found'].entries()) {
      await parts.nth(i).click();
      if (name === 'sheet')
        await page
          .locator('.builder-place')
          .nth(size === LAPTOP ? 2 : -1)
          .click();
      if (name === 'goals') await page.locator('.formula-kind select').first().selectOption('until');
      await picture(page, `builder-${size.width}-${name}`);
      await expectTidy(page, name);
      if (size === LAPTOP && AXE.includes(name)) expect(await axeFindings(page), name).toEqual([]);
      expect(await smallTargets(page, 24), name).toEqual([]);
    }
    expectClean(desk);
  },
);
