import { expect, it } from 'vitest';
import { Challenge } from '../../shared/documents/challenge.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { post } from '../rooms/harness.ts';
import { expectClean, picture } from './browser.ts';
import { axeFindings, expectTidy } from './looks.ts';
import { challengeNamed, deskPage } from './room.ts';
import { stage } from './stage.ts';

const here = stage('test');

it('a challenge that waits and was erased meanwhile says so, and Next passes over it', async () => {
  const { browser, room } = here;
  const own: Challenge = { ...challengeNamed('ferry-junction'), id: 'own-1', title: { en: 'Our ferry' } };
  const send = (route: string, body: unknown) => post(room.server.url + route, body, room.owner);
  await send(ROUTES.saveChallenge, { id: own.id, body: writeDocument(Challenge, own) });
  await room.ask(
    { kind: 'queue-challenge', key: own.id, place: 0 },
    { kind: 'queue-challenge', key: 'long-pier', place: 1 },
  );
  const desk = await deskPage(browser, room, { width: 1366, height: 768 });
  here.watched.push(desk);
  const { page } = desk;
  await page.getByRole('button', { name: 'Next: Our ferry' }).waitFor();
  // Erased in another window: this page does not know it yet.
  await send(ROUTES.eraseChallenge, { id: own.id });
  await page.keyboard.press('n');
  await page.getByText('There is no challenge called').waitFor();
  await page.getByRole('button', { name: 'Next: The long pier' }).waitFor();
  await page.keyboard.press('n');
  await room.desk.until('the next one', () => room.desk.state!.rounds.at(-1)?.key === 'long-pier');
  await page.getByText('A challenge that is gone').waitFor();
  await expectTidy(page, 'a challenge that is gone');
  await picture(page, 'queued-gone');
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Take “A challenge that is gone” off the queue' }).click();
  await room.desk.until('an empty queue', () => room.desk.state!.plan.queue.length === 0);
  expectClean(desk);
});
