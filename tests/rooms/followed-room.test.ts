import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MemoryLog } from '../../server/log/memory.ts';
import type { ServerConfig } from '../../server/server.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  makeLink,
  openRoom,
  ownerCookie,
  pagesOfTest,
  quickJudging,
  type TestServer,
  testServer,
  visitLink,
} from './harness.ts';
import { FakeLine } from './line.ts';

/** Which room boards and pictures of codes show that name none, and to whom. */

let server: TestServer;
let owner: string;
const { page, closePages } = pagesOfTest();

async function begin(config: Partial<ServerConfig> = {}): Promise<void> {
  server = await testServer({ judging: quickJudging, ...config });
  owner = await ownerCookie(server);
}
afterEach(async () => {
  closePages();
  await server.end();
});

const board = (cookie = '', room: string | null = null) => page(server.url, 'board', cookie, room);
/** The room that a board is shown, or why none. */
const shown = async (cookie = '', room: string | null = null) => {
  const { state, welcome } = await board(cookie, room);
  return welcome?.ok ? (state?.id ?? 'nothing') : codeOf(welcome);
};
const picture = (cookie = '') => fetch(server.url + ROUTES.qr, { headers: { cookie } });
const deskCookie = async () =>
  (await visitLink(server.url, await makeLink(server.url, { kind: 'desk' }, owner))).cookie;

describe('where the owner alone opens rooms', () => {
  beforeEach(() => begin());

  it('anybody’s board shows the newest one, and so does the picture of its code', async () => {
    await openRoom(server.url, owner);
    const { room } = await openRoom(server.url, owner);
    expect(await shown()).toBe(room);
    expect((await picture()).status).toBe(200);
  });
});

describe('where a desk link exists', () => {
  beforeEach(() => begin());

  it('a board that is nobody’s has to name its room, and gets no code', async () => {
    const { room, word } = await openRoom(server.url, owner);
    await deskCookie();
    expect(await shown()).toBe('no-room-named');
    const refused = await picture();
    expect([refused.status, await refused.json()]).toEqual([403, { refusal: { code: 'no-room-named' } }]);
    expect([await shown('', room), await shown('', word)]).toEqual([room, room]);
  });

  it('a board of the owner shows the newest of all, one of a desk the newest of its own', async () => {
    const [one, two] = [await deskCookie(), await deskCookie()];
    await openRoom(server.url, one);
    const own = await openRoom(server.url, one);
    const newest = await openRoom(server.url, two);
    expect([await shown(owner), await shown(one)]).toEqual([newest.room, own.room]);
    const text = await (await picture(one)).text();
    expect(text).toBe(await (await fetch(`${server.url}${ROUTES.qr}?room=${own.room}`)).text());
  });

  it('a desk that has opened no room yet is shown none', async () => {
    await openRoom(server.url, owner);
    expect(await shown(await deskCookie())).toBe('unknown-room');
  });

  it('a board that followed the newest room is not led into one that a desk opens', async () => {
    const { room } = await openRoom(server.url, owner);
    const follower = await board();
    expect(follower.state?.id).toBe(room);
    await openRoom(server.url, await deskCookie());
    await follower.until('moved', () => follower.moved === 1);
    expect(codeOf(await follower.hello())).toBe('no-room-named');
  });
});

describe('where several processes share a store', () => {
  it('a board that is nobody’s has to name its room', async () => {
    await begin({ log: new MemoryLog(), neighbours: new FakeLine().end('p0'), patienceMs: 50 });
    const { room } = await openRoom(server.url, owner);
    expect([await shown(), await shown(owner), await shown('', room)]).toEqual(['no-room-named', room, room]);
    expect((await picture()).status).toBe(403);
  });
});
