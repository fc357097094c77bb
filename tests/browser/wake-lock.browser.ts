import { expect, it } from 'vitest';
import { expectClean, watchedPage } from './browser.ts';
import { stage } from './stage.ts';

/** A browser with a screen lock of ours, which counts how many are held (W3C Screen Wake Lock). */

const here = stage('file');

const fakeLock = () => {
  const held = { held: 0 };
  const request = async (kind: string) => {
    if (kind !== 'screen') throw new Error('another kind');
    held.held++;
    return { release: async () => void held.held-- };
  };
  Object.assign(window, { locks: held });
  Object.defineProperty(navigator, 'wakeLock', { value: { request } });
};

it.each([
  ['board', () => `/board?room=${here.room.room}`],
  ['tablet', () => `/j?word=${here.room.word}`],
])('the screen of a %s stays on while the lesson runs, and not in a pause or at its end', async (_, path) => {
  const one = await watchedPage(here.browser, here.room.server.url, { width: 1024, height: 768 });
  await one.context.addInitScript(fakeLock);
  await one.page.goto(here.room.server.url + path());
  const holds = (count: number) =>
    one.page.waitForFunction(
      (n) => (window as unknown as { locks: { held: number } }).locks.held === n,
      count,
    );
  await holds(1);
  await here.room.ask({ kind: 'pause', on: true });
  await holds(0);
  await here.room.ask({ kind: 'pause', on: false });
  await holds(1);
  await here.room.ask({ kind: 'go-to', phase: 'close' });
  await holds(0);
  await here.room.ask({ kind: 'go-to', phase: 'gather' });
  await holds(1);
  expectClean(one);
  await one.context.close();
  expect(here.room.desk.state?.phase).toBe('gather');
});
