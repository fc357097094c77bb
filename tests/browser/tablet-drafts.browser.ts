import { afterEach, describe, expect, it } from 'vitest';
import { testServer } from '../rooms/harness.ts';
import { expectClean, PAGES, type Watched } from './browser.ts';
import { TestHand } from './hand.ts';
import { challengeNamed } from './room.ts';
import { stage } from './stage.ts';
import { kept, ofLines, tabletIn, tryIt } from './tablet-page.ts';

let watched: Watched;
let hand: TestHand;
const here = stage('file');
afterEach(() => watched.context.close());

const open = async () => {
  ({ hand, watched } = await tabletIn(here.browser, here.room, 'one-fast-stretch'));
};

describe('drafts of a tablet', () => {
  it('keeps the draft over a reload', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [100, 160], [150, 160]);
    const design = await kept(page, ofLines(1));
    await page.reload();
    await page.getByText('10 cm of line').waitFor();
    expect(await kept(page, ofLines(1))).toEqual(design);
    expectClean(watched);
  });

  it('keeps the way back and forth over a reload', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [100, 160], [150, 160]);
    await hand.drag([50, 60], [100, 60], [150, 60]);
    await hand.drag([50, 100], [100, 100], [150, 100]);
    const three = await kept(page, ofLines(3));
    await page.getByRole('button', { name: 'Undo' }).click();
    await kept(page, ofLines(2));
    await page.reload();
    await page.getByText('20 cm of line').waitFor();
    await page.getByRole('button', { name: 'Redo' }).click();
    expect(await kept(page, ofLines(3))).toEqual(three);
    for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Undo' }).click();
    await kept(page, ofLines(0));
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    // Once more, after steps that are written anew.
    await hand.drag([50, 60], [100, 60], [150, 60]);
    await kept(page, ofLines(1));
    await page.reload();
    await page.getByText('10 cm of line').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await kept(page, ofLines(0));
    expectClean(watched);
  });

  it('finds the draft that the server kept where this browser has none', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [100, 160], [170, 160]);
    const drawn = () =>
      here.room.desk.latest.some(
        (value) =>
          value.kind === 'draft' && JSON.stringify(value.design).includes('"to":{"x":17000,"y":16000}'),
      );
    await here.room.desk.until('the draft at the desk', drawn);
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          const opening = indexedDB.open('harbour-lines');
          opening.onsuccess = () => {
            const clearing = opening.result.transaction('drafts', 'readwrite').objectStore('drafts').clear();
            clearing.onsuccess = resolve;
          };
        }),
    );
    await page.reload();
    await page.getByText('12 cm of line').waitFor();
    expectClean(watched);
  });

  it('keeps the way back while the room looks at the board', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [100, 160], [150, 160]);
    await kept(page, ofLines(1));
    await here.room.ask({ kind: 'go-to', phase: 'show' });
    await page.getByText('Look at the board').waitFor();
    await here.room.ask({ kind: 'go-to', phase: 'build' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await kept(page, ofLines(0));
    expectClean(watched);
  });

  it('goes on with what a newer tab has drawn, and can take that back', async () => {
    await open();
    const { page, context } = watched;
    await hand.drag([50, 160], [100, 160], [150, 160]);
    await kept(page, ofLines(1));
    const newer = await context.newPage();
    await newer.goto(`${here.room.server.url}/`);
    const { sheet } = challengeNamed('one-fast-stretch');
    const newerHand = await TestHand.on(newer, sheet);
    await page.getByText('Open in a newer tab').waitFor();
    await newerHand.drag([60, 60], [100, 60], [140, 60]);
    const both = await kept(newer, ofLines(2));
    await page.getByRole('button', { name: 'Go on here instead' }).click();
    await page.getByText('18 cm of line').waitFor();
    expect(await kept(page, ofLines(2))).toEqual(both);
    await newer.getByText('Open in a newer tab').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await kept(page, ofLines(1));
    expectClean(watched);
  });
});

describe('the tablet while the server is dead', () => {
  it('draws, checks and tries on, finds its draft and hands in when the server is back', async () => {
    await open();
    const { page } = watched;
    await hand.drag([50, 160], [200, 160]);
    await kept(page, ofLines(1));
    const { port, dataDir } = here.room.server;
    await here.room.server.close();
    await page.getByText('No connection').waitFor();
    await hand.drag([200, 160], [120, 110]);
    await kept(page, (d) => d.drawing.lines[0]?.pieces.length === 2);
    await page.locator('.callout', { hasText: 'Sharp corner' }).waitFor();
    await tryIt(page);
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
    await page.getByText('It goes as soon as the connection is back').waitFor();
    const server = await testServer({ port, dataDir, pages: PAGES });
    try {
      await page.getByText('0 of 45').waitFor();
      await page.reload();
      await page.getByText(/1 thing|things to look at/).waitFor();
      await kept(page, (d) => d.drawing.lines[0]?.pieces.length === 2);
    } finally {
      await server.close();
    }
  });
});
