import { afterEach, describe, expect, it } from 'vitest';
import { covers } from '../../client/canvas/placement.ts';
import type { HelpStep } from '../../shared/room/coaching.ts';
import { expectClean, picture, type Watched, watchedPage } from './browser.ts';
import type { TestHand } from './hand.ts';
import { expectTidy, lookAtTablet } from './looks.ts';
import { stage } from './stage.ts';
import { kept, tabletIn, tryIt } from './tablet-page.ts';

/** How much a tablet helps is the desk's to say. */

let watched: Watched;
let hand: TestHand;
const here = stage('file');
afterEach(() => watched.context.close());

const looks = (name: string) => lookAtTablet(watched.page, name);

const open = async (help: HelpStep) => {
  ({ hand, watched } = await tabletIn(here.browser, here.room, 'one-fast-stretch'));
  await here.room.desk.command({ kind: 'set-help', team: null, step: help });
};

/** A straight with a corner of some 34° at its end: the robot may lose it. */
async function sharpCorner(): Promise<void> {
  await hand.drag([50, 160], [200, 160]);
  await hand.drag([200, 160], [150, 140], [120, 110]);
}

const callout = () => watched.page.locator('.callout');
const mendIt = () => watched.page.getByRole('button', { name: 'Mend it' });

async function tryOnce(): Promise<void> {
  await tryIt(watched.page);
  await watched.page.getByRole('button', { name: 'Back to the drawing' }).click();
}

describe('help', () => {
  it('only after a try: nothing is said of a drawing before it has been tried', async () => {
    await open('after-try');
    await sharpCorner();
    await watched.page.getByText('Try it first').waitFor();
    expect(await callout().count()).toBe(0);
    await looks('help-after-try');
    await tryOnce();
    await callout().getByText('Sharp corner').waitFor();
    expect(await mendIt().count()).toBe(0);
    await hand.drag([50, 60], [120, 60]);
    await watched.page.getByText('Try it first').waitFor();
    expect(await callout().count()).toBe(0);
    expectClean(watched);
  });

  it('the place: that one should look here, and not why', async () => {
    await open('place');
    await sharpCorner();
    await callout().getByText('Look closely here').waitFor();
    expect(await callout().getByText('corner').count()).toBe(0);
    await looks('help-place');
    expectClean(watched);
  });

  it('the place and the sentence, with how much is missing drawn, and covering no ink', async () => {
    await open('sentence');
    await sharpCorner();
    await callout().getByText('Sharp corner').waitFor();
    await tryOnce();
    await callout().getByText('Sharp corner').waitFor();
    expect(await mendIt().count()).toBe(0);
    await looks('help-sentence');
    const box = (await callout().boundingBox())!;
    const place = { left: box.x, top: box.y, width: box.width, height: box.height };
    for (const [x, y] of [
      [50, 160],
      [125, 160],
      [200, 160],
      [160, 135],
      [120, 110],
    ] as const) {
      const at = await hand.place(x, y);
      expect(covers(place, { px: at.x, py: at.y }, 0)).toBe(false);
    }
    expectClean(watched);
  });

  it('nothing is said while the finger is down', async () => {
    await open('mend');
    await hand.drag([50, 160], [200, 160]);
    await watched.page.clock.install();
    const lift = await hand.hold([200, 160], [150, 140], [120, 110]);
    // Longer than a finger that is up waits to be told something.
    await watched.page.clock.runFor(3000);
    expect(await callout().count()).toBe(0);
    await lift();
    await callout().getByText('Sharp corner').waitFor();
    expectClean(watched);
  });

  it('Mend it comes after two tries of one’s own, can be undone, and the entry remembers it', async () => {
    await open('mend');
    const { page } = watched;
    await sharpCorner();
    await callout().getByText('After two tries of your own').waitFor();
    await looks('help-mend-waits');
    await tryOnce();
    await callout().getByText('After one try of your own').waitFor();
    // The same drawing once more is no try of its own.
    await page.getByRole('button', { name: 'Try it' }).click();
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await callout().getByText('After one try of your own').waitFor();
    await hand.drag([120, 110], [100, 60]);
    await tryOnce();
    await callout().getByText('Sharp corner').waitFor();
    await looks('help-mend');
    const before = await kept(page, (d) => d.drawing.lines[0]?.pieces.length === 3);
    await mendIt().click();
    await kept(page, (d) => JSON.stringify(d) !== JSON.stringify(before));
    await page.getByRole('button', { name: 'Undo' }).click();
    await kept(page, (d) => JSON.stringify(d) === JSON.stringify(before));
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await here.room.desk.until('the entry', () => here.room.desk.state?.entries.at(-1)?.mended === true);
    expectClean(watched);
  });
});

describe('the desk', () => {
  it('sets help for the class and for one team, whose tablet alone changes', async () => {
    await open('mend');
    await sharpCorner();
    await callout().getByText('Sharp corner').waitFor();
    const desk = await watchedPage(here.browser, `${here.room.server.url}/`, { width: 1366, height: 768 });
    await desk.page.goto(here.room.server.deskLink);
    await desk.page.goto(`${here.room.server.url}/desk?room=${here.room.room}`);
    await desk.page.getByLabel('Help on the tablets').selectOption('sentence');
    await here.room.desk.until('the class', () => here.room.desk.state?.help === 'sentence');
    await desk.page.locator(`.team-card[data-team="${here.room.desk.state!.teams.at(-1)!.id}"]`).click();
    await desk.page.getByLabel('Help', { exact: true }).selectOption('place');
    await callout().getByText('Look closely here').waitFor();
    await picture(desk.page, 'desk-help-team');
    await expectTidy(desk.page, 'help for a team');
    expectClean(desk);
    await desk.context.close();
    expectClean(watched);
  });
});
