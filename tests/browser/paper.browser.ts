import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { seqOf } from '../rooms/harness.ts';
import { expectClean, picture, type Watched } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { challengeNamed, classDrawings, deskPage } from './room.ts';
import { stage } from './stage.ts';
import { tabletIn } from './tablet-page.ts';

const CHALLENGE = 'one-fast-stretch';
const LAPTOP = { width: 1366, height: 768 };
const SIZES = [LAPTOP, { width: 1024, height: 768 }];

const here = stage('test');
const { watched } = here;

async function deskOf(size = LAPTOP): Promise<Watched> {
  const desk = await deskPage(here.browser, here.room, size);
  watched.push(desk);
  return desk;
}

async function building() {
  await here.room.arrive(3);
  await here.room.ask(
    { kind: 'choose-challenge', key: CHALLENGE },
    { kind: 'go-to', phase: 'brief' },
    { kind: 'start-building', seconds: 600 },
  );
  const drawings = classDrawings(challengeNamed(CHALLENGE));
  const design = writeDocument(Design, drawings[0]!);
  await here.room.desk.reaches(
    seqOf(await here.room.teams[0]!.command({ kind: 'hand-in', round: 0, design })),
  );
}

describe('paper', () => {
  it.each(SIZES)('at $width × $height is whole, tidy and without findings of axe', async (size) => {
    const desk = await deskOf(size);
    const { page } = desk;
    const see = async (name: string, alt: RegExp) => {
      await page.getByRole('img', { name: alt }).waitFor();
      await page.getByText('Drawing the page').waitFor({ state: 'detached' });
      await picture(page, `paper-${size.width}-${name}`);
      await expectTidy(page, name);
      if (size === LAPTOP) expect(await axeFindings(page), name).toEqual([]);
    };
    await page.keyboard.press('o');
    await see('empty-room', /^Sheet of a challenge/);
    await page.getByRole('radio', { name: 'A team’s drawing' }).check();
    await page.getByText('No team is in the room yet.').waitFor();
    await picture(page, `paper-${size.width}-nothing`);
    await page.getByRole('radio', { name: 'Chart for the wall' }).check();
    await see('chart', /^Chart for the wall/);
    await building();
    await page.getByRole('button', { name: 'Paper' }).click();
    await page.getByRole('radio', { name: 'A team’s drawing' }).check();
    await see('drawing', /^A team’s drawing/);
    await page.getByRole('radio', { name: 'as dots to draw over' }).check();
    await see('dots', /^A team’s drawing/);
    await page.getByRole('radio', { name: 'Questions: two travellers' }).check();
    await page.getByRole('checkbox', { name: 'With the key' }).check();
    await see('travellers', /^Questions: two travellers/);
    await page.getByRole('button', { name: 'Next page' }).click();
    await see('key', /Page 2 of/);
    await page.getByRole('radio', { name: 'Pack of the class' }).check();
    await see('class', /^Pack of the class/);
    expectClean(desk);
  });

  it('says in a sentence why there is nothing to print', async () => {
    await building();
    const { page } = await deskOf();
    await page.keyboard.press('o');
    await page.getByRole('radio', { name: 'A team’s drawing' }).check();
    await page.getByLabel('Team', { exact: true }).selectOption({ label: 'Bell' });
    await page.getByText('This team has drawn nothing yet.').waitFor();
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    await page.getByText('This team has drawn nothing yet.').nth(1).waitFor();
    await page.getByRole('radio', { name: 'Closing check' }).check();
    await page.getByText('The closing check has not been asked yet.').waitFor();
  });

  it('saves a pack of the class with as many pages as it says, and an SVG', async () => {
    await building();
    const desk = await deskOf();
    const { page } = desk;
    await page.keyboard.press('o');
    await page.getByRole('radio', { name: 'Pack of the class' }).check();
    await page.getByText(/^Page 1 of \d+$/).waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PDF' }).click(),
    ]);
    expect(file.suggestedFilename()).toBe('harbour-lines-class.pdf');
    expect(
      readFileSync(await file.path())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
    await page.getByText('Making the file').waitFor({ state: 'detached' });
    const [svg] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Save as SVG' }).click(),
    ]);
    expect(readFileSync(await svg.path(), 'utf8')).toContain('<title>Class pack of the room');
    expectClean(desk);
  });

  it('goes by keys alone, offers the test strip where colours are printed, and leaves with a step', async () => {
    await building();
    const { page } = await deskOf();
    await page.keyboard.press('o');
    await page.getByRole('radio', { name: 'Sheet of a challenge' }).focus();
    await page.keyboard.press('ArrowDown');
    await page.getByRole('img', { name: /^A team’s drawing/ }).waitFor();
    await page.getByRole('button', { name: 'Test strip first' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('img', { name: /^Test strip/ }).waitFor();
    await page.keyboard.press(']');
    await page.getByRole('heading', { name: 'To paper, true to size' }).waitFor({ state: 'detached' });
  });

  it('a team saves what it handed in from its tablet', async () => {
    const { hand, watched: tablet } = await tabletIn(here.browser, here.room, 'first-line');
    watched.push(tablet);
    const { page } = tablet;
    await hand.drag([60, 100], [140, 100], [220, 100]);
    // After a finger's stroke the browser under test loses some taps that follow at once.
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await here.room.desk.until('an entry', () => here.room.desk.state?.entries.length === 1);
    const toPaper = page.getByRole('dialog').getByRole('button', { name: 'To paper' });
    await page.locator('.entries-button').or(toPaper).first().waitFor();
    if (!(await toPaper.isVisible())) await page.locator('.entries-button').click();
    await toPaper.waitFor();
    await picture(page, 'paper-tablet');
    const [file] = await Promise.all([page.waitForEvent('download'), toPaper.click()]);
    expect(file.suggestedFilename()).toBe('harbour-lines-drawing-sailboat.pdf');
    expectClean(tablet);
  });
});
