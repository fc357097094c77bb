import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { pointAt } from '../../shared/geometry/path.ts';
import { layOut } from '../../shared/track/layout.ts';
import { expectClean, picture, type Watched, watchedPage } from './browser.ts';
import { TestHand } from './hand.ts';
import { challengeNamed } from './room.ts';
import { stage } from './stage.ts';
import { kept, ofLines, ofMarks, tool } from './tablet-page.ts';

/** A team's way through each way to play, by touch, from the brief to an entry that is taken up again. */

const here = stage('test');
let watched: Watched;
let page: Page;
let hand: TestHand;
beforeEach(async () => {
  watched = await watchedPage(here.browser, `${here.room.server.url}/`, {
    width: 1180,
    height: 820,
    touch: true,
  });
  here.watched.push(watched);
  page = watched.page;
  await page.goto(`${here.room.server.url}/j?word=${here.room.word}`);
  await page.getByRole('heading', { name: 'Sailboat' }).waitFor();
});

const press = (name: string) => page.getByRole('button', { name, exact: true }).tap();

/** The team is told, then the sheet opens. */
async function begin(key: string, sentence: string): Promise<void> {
  await here.room.ask({ kind: 'choose-challenge', key }, { kind: 'go-to', phase: 'brief' });
  await page.getByRole('heading', { name: sentence }).waitFor();
  await page.locator('.how-pictures > li').nth(2).waitFor();
  await picture(page, `journey-${key}-1-brief`);
  await here.room.ask({ kind: 'start-building', seconds: null });
}

async function work(key: string): Promise<void> {
  hand = await TestHand.on(page, challengeNamed(key).sheet);
}

/** Foretells that it goes well, and sees the whole run. */
async function tryIt(key: string, comesTrue: boolean): Promise<void> {
  await picture(page, `journey-${key}-2-drawn`);
  await press('Try it');
  await picture(page, `journey-${key}-2-asked`);
  await press('It makes it');
  await page.getByText('4×').tap();
  await page.locator('.trying-goals[data-known="true"]').waitFor();
  await picture(page, `journey-${key}-3-tried`);
  await here.room.desk.until('the try', () => here.room.desk.state!.tries.length > 0);
  expect(here.room.desk.state!.tries.at(-1)).toMatchObject({ guess: 'makes-it', made: comesTrue });
  await press('Back to the drawing');
}

/** Hands in, and says the points as soon as the team sees them. */
async function handIn(): Promise<number> {
  const number = here.room.desk.state!.entries.length + 1;
  await press('Hand in');
  await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).tap();
  const verdict = () => here.room.desk.state!.entries[number - 1]?.verdict;
  await here.room.desk.until('the verdict', () => Boolean(verdict()));
  const points = verdict()!.points;
  await page.locator('.entry-points').getByText(`${points} point`).waitFor();
  return points;
}

/** Each goal of the shown entry, and whether it is met. */
const stands = () =>
  page
    .locator('.handing .goal-row')
    .evaluateAll((rows) => rows.map((row) => row.getAttribute('data-stand') === 'met'));

const closeEntries = () =>
  page.getByRole('dialog').getByRole('button', { name: 'Back to the drawing' }).tap();

/** Opens what was handed in and goes on from the drawing of that number. */
async function takeUp(key: string, number: number): Promise<void> {
  await page.locator('.entries-button').tap();
  await page.locator('.entries-list').getByText(`Drawing ${number}`).tap();
  await page.locator('.handing .goal-row').first().waitFor();
  await picture(page, `journey-${key}-5-entries`);
  await press('Go on from this one');
}

describe('a quick stroke', () => {
  it('leaves the next tap on a button what it is', async () => {
    await here.room.ask(
      { kind: 'choose-challenge', key: 'first-line' },
      { kind: 'start-building', seconds: null },
    );
    await work('first-line');
    for (let i = 0; i < 4; i++) {
      await hand.drag([50, 158], [100, 158], [150, 158]);
      await kept(page, ofLines(1));
      await press('Undo');
      await kept(page, ofLines(0));
    }
    expectClean(watched);
  });
});

describe('a team’s way', () => {
  it('draw: a line that stops short, then one that arrives, then the short one again', async () => {
    const key = 'first-line';
    await begin(key, 'Bring the robot from the boathouse to the lighthouse.');
    await work(key);
    // From berth to berth by two quarter turns that a robot gets round: corners of 90°.
    await hand.drag([50, 158], [100, 158], [150, 158]);
    await kept(page, ofLines(1));
    await tryIt(key, false);
    expect(await handIn()).toBe(0);
    await picture(page, `journey-${key}-4-verdict`);
    await expect.poll(stands).toEqual([false]);
    await closeEntries();
    await hand.drag([150, 158], [150, 100], [150, 52]);
    await hand.drag([150, 52], [200, 52], [247, 52]);
    await kept(page, (design) => design.drawing.lines[0]?.pieces.length === 3);
    // The goal is worth 75, little ink up to 25 more.
    expect(await handIn()).toBeGreaterThan(75);
    await expect.poll(stands).toEqual([true]);
    await closeEntries();
    await takeUp(key, 1);
    await kept(page, (design) => design.drawing.lines[0]?.pieces.length === 1);
    expectClean(watched);
  });

  it('fill in: a mark where the model has it, rubbed out, handed in and taken up again', async () => {
    const key = 'park-on-the-landing';
    const { sheet, model } = challengeNamed(key);
    const mark = model!.drawing.marks[0]!;
    const line = layOut(sheet, model!.drawing).lines.find(({ id }) => id === mark.line)!;
    const place = pointAt(line.path, mark.at + 1.5 * mark.bands[0]!.length);
    await begin(key, 'Park on the ferry landing.');
    await work(key);
    await page.locator('.tray').getByText('park', { exact: true }).tap();
    await hand.tap(place.x, place.y);
    await kept(page, ofMarks(1));
    await tryIt(key, true);
    expect(await handIn()).toBe(100);
    await picture(page, `journey-${key}-4-verdict`);
    await expect.poll(stands).toEqual([true, true]);
    await closeEntries();
    // The same mark a hand's breadth behind the start parks far from the landing.
    await tool(page, 'Rub out');
    await hand.tap(place.x, place.y);
    await kept(page, ofMarks(0));
    await page.locator('.tray').getByText('park', { exact: true }).tap();
    const early = pointAt(line.path, 100);
    await hand.tap(early.x, early.y);
    await kept(page, ofMarks(1));
    expect(await handIn()).toBe(0);
    await expect.poll(stands).toEqual([false, false]);
    await closeEntries();
    await takeUp(key, 1);
    await kept(page, ofMarks(1));
    expectClean(watched);
  });

  it('mend: the fault as it was given, then a round bend, then the fault again', async () => {
    const key = 'sharp-corner';
    const { begin: given, model } = challengeNamed(key);
    const faulty = given!.drawing.lines[0]!;
    const arc = model!.drawing.lines[0]!;
    await begin(key, 'This corner can lose the robot. Mend it with the least new ink.');
    await work(key);
    await picture(page, `journey-${key}-2-given`);
    expect(await handIn()).toBe(0);
    await expect.poll(stands).toEqual([false, false]);
    await picture(page, `journey-${key}-4-verdict`);
    await closeEntries();
    // Both legs go; one straight from end to end is pulled round to the arc of the model.
    await tool(page, 'Rub out');
    await page.getByText('Whole line').tap();
    const [first] = faulty.pieces;
    await hand.tap((faulty.from.x + first!.to.x) / 2, (faulty.from.y + first!.to.y) / 2);
    await kept(page, ofLines(0));
    await tool(page, 'Straight');
    const end = arc.pieces.at(-1)!.to;
    await hand.tap(arc.from.x, arc.from.y);
    await hand.tap(end.x, end.y);
    await kept(page, ofLines(1));
    await tool(page, 'Curve');
    const middle = { x: (arc.from.x + end.x) / 2, y: (arc.from.y + end.y) / 2 };
    const drawn = layOut(challengeNamed(key).sheet, model!.drawing).lines.find(({ id }) => id === arc.id)!;
    const top = pointAt(drawn.path, drawn.path.length / 2);
    await hand.drag([middle.x, middle.y], [(middle.x + top.x) / 2, (middle.y + top.y) / 2], [top.x, top.y]);
    await kept(page, ({ drawing }) => drawing.lines[0]?.pieces[0]?.bulge !== 0);
    await tryIt(key, true);
    expect(await handIn()).toBe(100);
    await expect.poll(stands).toEqual([true, true]);
    await closeEntries();
    await takeUp(key, 1);
    await kept(page, ({ drawing }) => drawing.lines[0]?.pieces.length === faulty.pieces.length);
    expectClean(watched);
  });

  it('predict: two answers of four, the verdict on each, and all four on from there', async () => {
    const key = 'two-travellers';
    await begin(key, 'Two travellers meet this mark. What does each do?');
    // The mark reads faster from the boathouse and slower from the lighthouse; a run starts steady.
    const say = (answer: string) => page.locator('.question').getByText(answer, { exact: true }).tap();
    await page.getByText('Question 1 of 4').waitFor();
    await say('faster');
    await press('Next');
    await say('brisk');
    await picture(page, `journey-${key}-2-answered`);
    expect(await handIn()).toBe(50);
    await page.locator('.answer-rows [data-stand="right"]').nth(1).waitFor();
    await picture(page, `journey-${key}-4-verdict`);
    await page.getByRole('dialog').getByRole('button', { name: 'Back to the questions' }).tap();
    await press('Next');
    await say('slower');
    await press('Next');
    await say('on tiptoe');
    expect(await handIn()).toBe(100);
    await page.locator('.answer-rows [data-stand="right"]').nth(3).waitFor();
    await page.locator('.entries-list').getByText('Drawing 1').tap();
    await expect.poll(() => page.locator('.answer-rows [data-stand="right"]').count()).toBe(2);
    await picture(page, `journey-${key}-5-entries`);
    expectClean(watched);
  });
});
