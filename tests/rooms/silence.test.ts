import { once } from 'node:events';
import { get, type IncomingMessage } from 'node:http';
import type { Socket } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import {
  buildingRoom,
  codeOf,
  openRoom,
  ownerCookie,
  Page,
  pagesOfTest,
  quickJudging,
  type TestServer,
  testServer,
} from './harness.ts';

/** Connections that say nothing: each costs memory, and nothing that it sends can be counted. */

let server: TestServer;
const { pages, closePages } = pagesOfTest();
afterEach(async () => {
  closePages();
  await server.end();
});

const connect = (): Page => {
  const page = new Page(server.url, 'board');
  pages.push(page);
  return page;
};
const happens = ({ socket }: Page, name: 'connect' | 'disconnect' | 'connect_error') =>
  new Promise<typeof name>((resolve) => socket.once(name, () => resolve(name)));
/** Whether the server takes the connection. */
const isTaken = async (page: Page): Promise<boolean> =>
  (await Promise.race([happens(page, 'connect'), happens(page, 'connect_error')])) === 'connect';

describe('a connection that has not said hello', () => {
  it('is closed after a while, one that has said it is not', async () => {
    server = await testServer({ judging: quickJudging, silence: { withinMs: 2000, most: 10 } });
    await openRoom(server.url, await ownerCookie(server));
    const polite = connect();
    expect(codeOf(await polite.hello())).toBe('accepted');
    const silent = connect();
    await happens(silent, 'disconnect');
    expect(codeOf(await polite.hello())).toBe('accepted');
  });

  it('is closed too where it speaks no word of the protocol', async () => {
    server = await testServer({ judging: quickJudging, silence: { withinMs: 150, most: 10 } });
    // A websocket as RFC 6455 opens it, and then not a word.
    const headers = {
      connection: 'Upgrade',
      upgrade: 'websocket',
      'sec-websocket-key': Buffer.alloc(16).toString('base64'),
      'sec-websocket-version': '13',
    };
    const request = get(`${server.url}/socket.io/?EIO=4&transport=websocket`, { headers });
    const [, bare] = (await once(request, 'upgrade')) as [IncomingMessage, Socket];
    bare.on('error', () => undefined);
    bare.resume();
    await once(bare, 'close');
  });

  it('has so many beside it at most; one that gets its seat makes room', async () => {
    server = await testServer({ judging: quickJudging, silence: { withinMs: 60_000, most: 2 } });
    await openRoom(server.url, await ownerCookie(server));
    const first = connect();
    expect([await isTaken(first), await isTaken(connect()), await isTaken(connect())]).toEqual([
      true,
      true,
      false,
    ]);
    await first.hello();
    expect([await isTaken(connect()), await isTaken(connect())]).toEqual([true, false]);
  });

  it('makes no room by a hello that gets no seat, and may say another one', async () => {
    server = await testServer({ judging: quickJudging, silence: { withinMs: 60_000, most: 2 } });
    const [bad, early] = [connect(), connect()];
    expect([await isTaken(bad), await isTaken(early)]).toEqual([true, true]);
    expect(codeOf(await bad.ask('hello', 'x'))).toBe('bad-form');
    expect(codeOf(await early.hello())).toBe('unknown-room');
    expect(await isTaken(connect())).toBe(false);
    await openRoom(server.url, await ownerCookie(server));
    expect(codeOf(await early.hello())).toBe('accepted');
    expect([await isTaken(connect()), await isTaken(connect())]).toEqual([true, false]);
  });

  it('is closed after a while too where its hello was none', async () => {
    server = await testServer({ judging: quickJudging, silence: { withinMs: 150, most: 10 } });
    const page = connect();
    const closed = happens(page, 'disconnect');
    page.socket.emit('hello', 'x');
    await closed;
  });
});

describe('hellos with made-up seats', () => {
  it('are refused when there are too many, and a seat that was here before is not', async () => {
    server = await testServer({ judging: quickJudging });
    const { desk, tablet, team } = await buildingRoom(server);
    const made = (i: number) => `harbour_team=${String(i).padStart(32, 'x')}`;
    const strangers = Array.from({ length: 80 }, (_, i) => new Page(server.url, 'tablet', made(i)));
    const again = new Page(server.url, 'tablet', team);
    pages.push(desk, tablet, again, ...strangers);
    const twenty = (page: Page) => Array.from({ length: 20 }, async () => codeOf(await page.hello()));
    const codes = await Promise.all(strangers.flatMap(twenty));
    expect(codes.filter((code) => code === 'no-seat').length).toBeLessThanOrEqual(1500);
    expect(new Set(codes)).toEqual(new Set(['no-seat', 'too-fast']));
    expect(codeOf(await again.hello())).toBe('accepted');
  });
});
