import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { openBrowser, type Watched } from './browser.ts';
import { type TestRoom, testRoom } from './room.ts';

/** What the tests of a file work with. Browser and room are there while a test runs, not before. */
export interface Stage {
  readonly browser: Browser;
  readonly room: TestRoom;
  /** Pages put here are closed when the test has ended. */
  readonly watched: Watched[];
}

/** One browser for a file, with a room for all its tests together or for each of them. */
export function stage(roomFor: 'file' | 'test'): Stage {
  let browser: Browser;
  let room: TestRoom;
  const watched: Watched[] = [];
  const [before, after] = roomFor === 'file' ? [beforeAll, afterAll] : [beforeEach, afterEach];
  // What comes last goes first: pages before their room, a browser before a room that it has looked at.
  before(async () => {
    room = await testRoom();
  });
  after(() => room.end());
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());
  afterEach(async () => {
    for (const { context } of watched.splice(0)) await context.close();
  });
  return {
    watched,
    get browser() {
      return browser;
    },
    get room() {
      return room;
    },
  };
}
