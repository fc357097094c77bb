import type { Page } from 'playwright-core';
import { TestHand } from './hand.ts';
import { challengeNamed, type TestRoom } from './room.ts';

/** Looks at a state of the page, by its name. */
export type See = (name: string) => Promise<void>;

/** Leads a tablet through every screen of a lesson in which lines are drawn, and shows each. */
export async function everyTabletState(page: Page, room: TestRoom, see: See): Promise<void> {
  await page.goto(`${room.server.url}/`);
  await page.getByLabel('Room word').fill('fern-7');
  await page.getByRole('button', { name: 'Go in' }).click();
  await page.getByRole('alert').waitFor();
  await see('join');
  await page.getByLabel('Room word').fill(room.word);
  await page.getByRole('button', { name: 'Go in' }).click();
  await page.getByRole('heading', { name: 'Sailboat' }).waitFor();
  await see('waiting');
  await room.ask({ kind: 'choose-challenge', key: 'one-fast-stretch' }, { kind: 'go-to', phase: 'brief' });
  await page.getByText('one, and only one').first().waitFor();
  await see('brief');
  await room.ask({ kind: 'start-building', seconds: 600 });
  await drawing(page, see);
  await trying(page, see);
  await handingIn(page, see);
  await room.ask({ kind: 'look-here', on: true });
  await page.getByText('Look at the board').waitFor();
  await see('look-here');
  await room.ask({ kind: 'look-here', on: false }, { kind: 'go-to', phase: 'show' });
  await page.getByText('Your best drawing').waitFor();
  await see('show');
  await predicting(page, room, see);
  await room.ask({ kind: 'go-to', phase: 'close' });
  await page.getByText('Well done').waitFor();
  await see('close');
}

async function drawing(page: Page, see: See): Promise<void> {
  const hand = await TestHand.on(page, challengeNamed('one-fast-stretch').sheet);
  hand.pointer = 'mouse';
  await see('build-empty');
  await hand.drag([50, 160], [130, 160], [225, 160]);
  await hand.drag([225, 160], [190, 135], [150, 110]);
  await page.locator('.callout').first().waitFor();
  await see('build-finding');
  await page.getByRole('button', { name: 'Close' }).click();
  await page.locator('.tray').getByText('faster ▸').click();
  await hand.tap(90, 160);
  await page.locator('.chosen-buttons').waitFor();
  await see('build-mark');
  await page.locator('.goals-head').click();
  await page.getByRole('dialog').waitFor();
  await see('build-goals');
  await page.keyboard.press('Escape');
}

async function trying(page: Page, see: See): Promise<void> {
  await page.getByRole('button', { name: 'Try it' }).click();
  await page.getByRole('button', { name: 'Pause' }).waitFor();
  await see('try');
  await page.getByText('4×').click();
  await page.locator('.trying-goals').getByText('missing').first().waitFor();
  await see('tried');
  await page.getByRole('button', { name: 'Back to the drawing' }).click();
}

async function handingIn(page: Page, see: See): Promise<void> {
  await page.getByRole('button', { name: 'Hand in' }).click();
  await page.getByRole('dialog').waitFor();
  await see('hand-in');
  await page.getByRole('dialog').getByRole('button', { name: 'Hand in' }).click();
  await page.getByText('Go on from this one').waitFor();
  await page.locator('.handing .goal-row').first().waitFor();
  await see('entries');
  await page.getByRole('button', { name: 'Back to the drawing' }).click();
}

async function predicting(page: Page, room: TestRoom, see: See): Promise<void> {
  await room.ask(
    { kind: 'go-to', phase: 'brief' },
    { kind: 'choose-challenge', key: 'two-travellers' },
    { kind: 'start-building', seconds: null },
  );
  await page.getByText(/Question 1 of/).waitFor();
  await page.locator('.question').getByText('faster', { exact: true }).click();
  await see('predict');
  await page.getByRole('button', { name: 'What marks mean' }).click();
  await see('predict-chart');
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Hand in' }).click();
  await page.getByRole('dialog').getByText('no answer yet').first().waitFor();
  await see('predict-hand-in');
  await page.keyboard.press('Escape');
}
