import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectClean, picture } from './browser.ts';
import { axeFindings, expectTidy, smallTargets } from './looks.ts';
import { deskPage } from './room.ts';
import { stage } from './stage.ts';

const at = stage('file');

async function openKits(size = { width: 1366, height: 768 }): Promise<Page> {
  const desk = await deskPage(at.browser, at.room, size);
  at.watched.push(desk);
  desk.page.setDefaultTimeout(9000);
  await desk.page.locator('.rail-step', { hasText: 'Prepare' }).click();
  await desk.page.getByRole('button', { name: 'Kit', exact: true }).click();
  await desk.page.getByRole('heading', { name: 'Kit', exact: true }).waitFor();
  return desk.page;
}

const section = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Parts of the kit' }).getByRole('button', { name }).click();

/** Twelve marks over three inks, as keys; six of them mean something else from the other side. */
const ONE_WAY = [
  ['ca', 'f', 's'],
  ['av', 'l', 'r'],
  ['vc', 'turn', 'pass'],
  ['cav', 'w', 'c'],
  ['cva', 'park', 'pass'],
  ['acv', 'br', 'ti'],
] as const;
const TWO_WAY = [
  ['aca', 'str'],
  ['ava', 'ste'],
  ['cac', 'ti'],
  ['vcv', 'w'],
  ['cvc', 'c'],
  ['vav', 'park'],
] as const;

it('a chart of twelve rows is typed by keyboard alone in at most 150 key presses', async () => {
  const page = await openKits();
  await page.getByRole('button', { name: 'New kit' }).click();
  await section(page, 'Chart');
  let presses = 0;
  const press = async (key: string) => {
    await page.keyboard.press(key);
    presses++;
  };
  const type = async (text: string) => {
    for (const letter of text) await press(letter);
  };
  // From the button that opened the chart on, past the one behind it, by the keyboard alone.
  for (let i = 0; i < 2; i++) await press('Tab');
  for (const [word, action, back] of ONE_WAY) {
    await type(word);
    await press('Tab');
    await type(action);
    // Where a meaning lasts, its time stands between.
    await press('Tab');
    if (!(await isOnBack(page))) await press('Tab');
    await type(back);
    await press('Enter');
  }
  for (const [word, action] of TWO_WAY) {
    await type(word);
    await press('Tab');
    await type(action);
    await press('Enter');
  }
  await page.getByText('12 marks, 18 words').waitFor();
  await page.getByText('This kit passes its checks.').waitFor();
  expect(presses).toBeLessThanOrEqual(150);
  const meanings = await page
    .locator('.kit-chart tbody select')
    .evaluateAll((all) => all.map((each) => (each as HTMLSelectElement).selectedOptions[0]!.textContent));
  expect(meanings.slice(0, 6)).toEqual(['faster', 'slower', 'take left', 'take right', 'turn back', 'pass']);
  await picture(page, 'desk-1366-kit-chart');
  await expectTidy(page, 'chart');
  expect(await axeFindings(page)).toEqual([]);
});

const isOnBack = (page: Page): Promise<boolean> =>
  page.evaluate(
    () =>
      document.activeElement instanceof HTMLSelectElement &&
      document.activeElement.getAttribute('aria-label')!.endsWith('from the other side'),
  );

it('a kit is copied, changed, taken back, kept as a draft, refused to the room, mended and used', async () => {
  const page = await openKits();
  await page.getByRole('button', { name: 'Copy “Demo kit”' }).click();
  const name = page.getByLabel('Name of the kit');
  await name.fill('Harbour set');
  await name.press('Control+z');
  expect(await name.inputValue()).toBe('Copy of Demo kit');
  await name.press('Control+y');
  expect(await name.inputValue()).toBe('Harbour set');
  await page.getByLabel('Between the middles of the wheels').fill('0');
  await page.getByText('1 thing keeps a room from playing').waitFor();
  await page.getByText('This length or speed is 0, and has to be more.').waitFor();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByRole('button', { name: 'Use in this room' }).click();
  await page.getByRole('alert').getByText('A room can’t play with this kit yet.').waitFor();
  expect(at.room.desk.state!.kit).toBeNull();
  await page.keyboard.press('Control+z');
  await page.getByText('This kit passes its checks.').waitFor();
  await section(page, 'Chart');
  await page.getByLabel('Mark 1', { exact: true }).fill('');
  await page.getByLabel('Mark 2', { exact: true }).focus();
  await page.getByText('8 marks, 10 words').waitFor();
  await page.getByLabel('Mark 1', { exact: true }).fill('AVV');
  await page.getByLabel('Mark 2', { exact: true }).focus();
  await page.getByText('Two bands of one ink stand side by side').waitFor();
  await picture(page, 'desk-1366-kit-problem');
  await page.keyboard.press('Control+z');
  await page.getByText('This kit passes its checks.').waitFor();
  await page.getByRole('button', { name: 'Use in this room' }).click();
  await at.room.desk.until('a kit', () => at.room.desk.state!.kit !== null);
  await page.getByRole('button', { name: 'Back to the kits' }).click();
  await page.getByText('This room plays with “Harbour set”.').waitFor();
  // Without “faster” and “slower” the demo chart cannot make a fast stretch.
  await page.getByText('ready challenges can be played').click();
  await page.getByText('its chart has no mark for “faster”').first().waitFor();
  await picture(page, 'desk-1366-kit-shelf');
  await expectTidy(page, 'shelf');
  await page.getByRole('button', { name: 'Remove “Harbour set”' }).click();
  await page.getByRole('button', { name: 'Change “Harbour set”' }).waitFor({ state: 'detached' });
  await page.locator('.undo-bar button').click();
  await page.getByRole('button', { name: 'Change “Harbour set”' }).waitFor();
  await page.locator('.rail-step', { hasText: 'Brief' }).click();
  await page.getByText('its chart has no mark for “faster”').first().waitFor();
  expectClean(at.watched[0]!);
});

it('unsaved changes outlive a reload; a kit and its chart go out as files and come back', async () => {
  const page = await openKits({ width: 1024, height: 768 });
  await page.getByRole('button', { name: 'Copy “Demo kit”' }).click();
  await page.getByLabel('Name of the kit').fill('Half done');
  await page.reload();
  await page.locator('.rail-step', { hasText: 'Prepare' }).click();
  await page.getByRole('button', { name: 'Kit', exact: true }).click();
  await page.getByRole('button', { name: 'Throw them away' }).click();
  await page.getByText('“Half done” has changes that are not saved.').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Take it back/ }).click();
  await page.getByText('“Half done” has changes that are not saved.').waitFor();
  await page.getByRole('button', { name: 'Go on with them' }).click();
  await section(page, 'Chart');
  const saved = async (name: string) => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name }).click(),
    ]);
    return { name: download.suggestedFilename(), path: await download.path() };
  };
  const csv = await saved('Save as CSV');
  expect([csv.name, readFileSync(csv.path, 'utf8').split('\r\n').slice(0, 3)]).toEqual([
    'Half-done.csv',
    ['\uFEFFmark,meaning,from the other side', 'CA,pace-by 1,pace-by -1', 'AV,choose left,choose right'],
  ]);
  const chooser = page.getByLabel('Open a chart file');
  await chooser.setInputFiles({ name: 'c.csv', mimeType: 'text/csv', buffer: Buffer.from('CA,hop,\r\n') });
  await page.getByText('Line 1: “hop” is no meaning that the robots know.').waitFor();
  await chooser.setInputFiles({
    name: 'c.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('mark;meaning;from the other side\r\nca;take left;take right\r\nACA;wait 0,5;\r\n'),
  });
  await page.getByText('2 marks, 3 words').waitFor();
  await section(page, 'Inks');
  await page.getByText('Nearest: ').waitFor();
  await page.locator('.kit-differences').scrollIntoViewIfNeeded();
  await picture(page, 'desk-1024-kit-inks');
  await expectTidy(page, 'inks');
  await section(page, 'Drawing rules');
  await picture(page, 'desk-1024-kit-rules');
  await expectTidy(page, 'rules');
  await section(page, 'Robot');
  await picture(page, 'desk-1024-kit-robot');
  await expectTidy(page, 'robot');
  expect(await smallTargets(page, 24)).toEqual([]);
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Back to the kits' }).click();
  const file = await saved('Save “Demo kit” as a file');
  await page.getByLabel('Open a kit file').setInputFiles(csv.path);
  await page.getByText('This file could not be read as a kit.').waitFor();
  await page.getByLabel('Open a kit file').setInputFiles(file.path);
  expect(await page.getByLabel('Name of the kit').inputValue()).toBe('Demo kit');
  expectClean(at.watched[0]!);
});
