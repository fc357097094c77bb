import { expect, it } from 'vitest';
import { Challenge } from '../../shared/documents/challenge.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { post } from '../rooms/harness.ts';
import { expectClean, picture, watchedPage } from './browser.ts';
import { TestHand } from './hand.ts';
import { lookAtTablet } from './looks.ts';
import { challengeNamed } from './room.ts';
import { stage } from './stage.ts';

const on = stage('file');

/** The way of the ferry junction, where the choice has to stand, and an empty corner. */
const BOXES = [
  { id: 'way', name: { en: 'Bracket A', es: 'Paréntesis A' }, at: { x: 78, y: 92 }, w: 50, h: 26 },
  { id: 'corner', name: { en: 'Bracket B', es: 'Paréntesis B' }, at: { x: 28, y: 150 }, w: 60, h: 30 },
];

it('boxes for marks are on every sheet; a mark outside them is told of, and slid into one it is not', async () => {
  const ferry = challengeNamed('ferry-junction');
  const own: Challenge = { ...ferry, id: 'own-boxed', sheet: { ...ferry.sheet, boxes: BOXES } };
  const { server, owner, word } = on.room;
  await post(server.url + ROUTES.saveChallenge, { id: own.id, body: writeDocument(Challenge, own) }, owner);
  await on.room.ask({ kind: 'choose-challenge', key: own.id }, { kind: 'go-to', phase: 'brief' });
  const tablet = await watchedPage(on.browser, server.url, { width: 1180, height: 820, touch: true });
  on.watched.push(tablet);
  const { page } = tablet;
  await page.goto(`${server.url}/j?word=${word}`);
  await page.locator('.brief-sheet').getByText('Bracket A').waitFor();
  await picture(page, 'boxes-brief');
  await on.room.ask({ kind: 'start-building', seconds: null });
  const hand = await TestHand.on(page, own.sheet);
  await page.locator('.tray').getByText('take left ▸').click();
  await page.getByText('Teams put marks into the boxes.').waitFor();
  await hand.tap(136, 105);
  const callout = page.locator('.callout').getByText('Mark outside the boxes');
  await callout.waitFor();
  await lookAtTablet(page, 'boxes-outside');
  await hand.drag([136, 105], [120, 105], [104, 105]);
  await callout.waitFor({ state: 'detached' });
  await expect.poll(() => page.locator('.callout').count()).toBe(0);
  await picture(page, 'boxes-inside');
  await page.locator('.goals-head').click();
  await page.getByRole('button', { name: 'The sheet in words' }).click();
  await page.getByText('Bracket B, a box to put marks into').waitFor();
  expectClean(tablet);
});
