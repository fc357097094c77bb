import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MemoryLog } from '../../server/log/memory.ts';
import type { DeskAccess, LinkAsked, LinkInList, MadeLink } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  joinCookie,
  makeLink,
  openRoom,
  ownerCookie,
  pagesOfTest,
  post,
  quickJudging,
  seqOf,
  type TestServer,
  testServer,
  visitLink,
} from './harness.ts';

/** Links of the owner, of desks and of rooms, from outside: what each opens, and that each can be ended. */

let server: TestServer;
let owner: string;
let clock = 0;
const { page, closePages } = pagesOfTest();

beforeEach(async () => {
  clock = 0;
  server = await testServer({ judging: quickJudging, now: () => Date.now() + clock });
  owner = await ownerCookie(server);
});
afterEach(async () => {
  closePages();
  await server.end();
});

const send = (route: string, body: unknown, cookie: string) => post(server.url + route, body, cookie);
const read = async <T>(route: string, cookie: string) =>
  (await (await fetch(server.url + route, { headers: { cookie } })).json()) as T;
const make = (asked: LinkAsked, cookie = owner) => makeLink(server.url, asked, cookie);
const visit = (made: MadeLink) => visitLink(server.url, made);
const listed = async (cookie: string) =>
  (await read<{ word: string }[]>(ROUTES.rooms, cookie)).map(({ word }) => word);

describe('a desk’s link', () => {
  it('is exchanged for a cookie, and leaves the address', async () => {
    const made = await make({ kind: 'desk' });
    const { cookie, to } = await visit(made);
    expect(to).toBe('/desk');
    expect(await read<DeskAccess>(ROUTES.access, cookie)).toEqual({ kind: 'desk', room: null });
    expect(await read<DeskAccess>(ROUTES.access, owner)).toEqual({ kind: 'owner', room: null });
    expect(await read<DeskAccess>(ROUTES.access, '')).toEqual({ kind: 'none', room: null });
  });

  it('opens rooms of its own, and sees no other', async () => {
    const [one, two] = [await visit(await make({ kind: 'desk' })), await visit(await make({ kind: 'desk' }))];
    const [first, second] = [await openRoom(server.url, one.cookie), await openRoom(server.url, two.cookie)];
    expect(await listed(one.cookie)).toEqual([first.word]);
    expect(await listed(two.cookie)).toEqual([second.word]);
    expect((await listed(owner)).sort()).toEqual([first.word, second.word].sort());
    const own = await page(server.url, 'desk', one.cookie, first.room);
    const foreign = await page(server.url, 'desk', one.cookie, second.room);
    expect([codeOf(own.welcome), codeOf(foreign.welcome)]).toEqual(['accepted', 'unknown-room']);
    for (const route of [ROUTES.roomFile, ROUTES.resultsCsv]) {
      const answers = [first, second].map(({ room }) =>
        fetch(`${server.url}${route}?room=${room}`, { headers: { cookie: one.cookie } }),
      );
      expect((await Promise.all(answers)).map(({ status }) => status)).toEqual([200, 404]);
    }
    const newest = await page(server.url, 'desk', one.cookie);
    expect(newest.state?.id).toBe(first.room);
  });

  it('that cannot be written down as a room’s opens none', async () => {
    class FullLog extends MemoryLog {
      full = false;
      override async setValue(key: string, value: string) {
        return this.full ? ('full' as const) : super.setValue(key, value);
      }
    }
    const log = new FullLog();
    await server.end();
    server = await testServer({ judging: quickJudging, log });
    owner = await ownerCookie(server);
    const { cookie } = await visit(await make({ kind: 'desk' }));
    log.full = true;
    expect((await send(ROUTES.openRoom, { chargerWatched: true }, cookie)).status).toBe(507);
    expect(await listed(owner)).toEqual([]);
    log.full = false;
    const { word } = await openRoom(server.url, cookie);
    expect([await listed(owner), await listed(cookie)]).toEqual([[word], [word]]);
  });

  it('makes no desk links, and ends none', async () => {
    const made = await make({ kind: 'desk' });
    const { cookie } = await visit(made);
    expect((await send(ROUTES.links, { kind: 'desk' }, cookie)).status).toBe(403);
    expect((await send(ROUTES.revokeLink, { id: made.link.id }, cookie)).status).toBe(404);
    expect(await read<LinkInList[]>(ROUTES.links, cookie)).toEqual([]);
    expect((await read<LinkInList[]>(ROUTES.links, owner)).map(({ id }) => id)).toEqual([made.link.id]);
  });

  it('ends at once when it is revoked: sockets are closed, cookie and address open nothing', async () => {
    const made = await make({ kind: 'desk' });
    const { cookie } = await visit(made);
    const { room } = await openRoom(server.url, cookie);
    const desk = await page(server.url, 'desk', cookie, room);
    const ended = new Promise<string>((resolve) => desk.socket.once('disconnect', resolve));
    expect((await send(ROUTES.revokeLink, { id: made.link.id }, owner)).status).toBe(204);
    expect(await ended).toBe('io server disconnect');
    expect(codeOf((await page(server.url, 'desk', cookie, room)).welcome)).toBe('no-seat');
    expect((await send(ROUTES.openRoom, { chargerWatched: true }, cookie)).status).toBe(401);
    expect((await visit(made)).status).toBe(401);
  });

  it('is given back within ten seconds, and later is gone for good', async () => {
    const made = await make({ kind: 'desk' });
    const { cookie } = await visit(made);
    const back = () => send(ROUTES.giveBackLink, { id: made.link.id }, owner);
    await send(ROUTES.revokeLink, { id: made.link.id }, owner);
    clock += 9_000;
    expect((await back()).status).toBe(204);
    expect((await read<DeskAccess>(ROUTES.access, cookie)).kind).toBe('desk');
    await send(ROUTES.revokeLink, { id: made.link.id }, owner);
    clock += 20_000;
    expect((await back()).status).toBe(404);
    expect(await read<LinkInList[]>(ROUTES.links, owner)).toEqual([]);
  });

  it('is kept as a hash alone, and works after a restart', async () => {
    const made = await make({ kind: 'desk' });
    const token = new URL(made.address).searchParams.get('key') ?? '';
    expect(token.length).toBeGreaterThanOrEqual(32);
    await server.close();
    const { readFileSync } = await import('node:fs');
    expect(readFileSync(`${server.dataDir}/rooms.db`).includes(token)).toBe(false);
    server = await testServer({ judging: quickJudging, dataDir: server.dataDir });
    expect((await visit(made)).to).toBe('/desk');
  });
});

describe('a link to a room', () => {
  it('is the desk of that room alone, and of nothing beside', async () => {
    const { room, word } = await openRoom(server.url, owner);
    const other = await openRoom(server.url, owner);
    const made = await make({ kind: 'room', room });
    const { cookie, to } = await visit(made);
    expect(to).toBe(`/desk?room=${room}`);
    expect(await listed(cookie)).toEqual([word]);
    const desk = await page(server.url, 'desk', cookie, room);
    seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' }));
    expect(codeOf((await page(server.url, 'desk', cookie, other.room)).welcome)).toBe('unknown-room');
    const refused = [
      send(ROUTES.openRoom, { chargerWatched: true }, cookie),
      send(ROUTES.links, { kind: 'room', room }, cookie),
      send(ROUTES.eraseRoom, { room }, cookie),
      send(ROUTES.restoreRoom, {}, cookie),
    ];
    expect((await Promise.all(refused)).map(({ status }) => status)).toEqual([403, 403, 403, 403]);
  });

  it('is made and revoked by the room’s own desk, not by another', async () => {
    const [one, two] = [await visit(await make({ kind: 'desk' })), await visit(await make({ kind: 'desk' }))];
    const { room } = await openRoom(server.url, one.cookie);
    expect((await send(ROUTES.links, { kind: 'room', room }, two.cookie)).status).toBe(404);
    const made = await make({ kind: 'room', room }, one.cookie);
    const substitute = await page(server.url, 'desk', (await visit(made)).cookie, room);
    expect((await send(ROUTES.revokeLink, { id: made.link.id }, two.cookie)).status).toBe(404);
    const ended = new Promise<string>((resolve) => substitute.socket.once('disconnect', resolve));
    expect((await send(ROUTES.revokeLink, { id: made.link.id }, one.cookie)).status).toBe(204);
    expect(await ended).toBe('io server disconnect');
  });
});

describe('a team', () => {
  it('or a stranger may do nothing with links', async () => {
    const { room, word } = await openRoom(server.url, owner);
    const team = await joinCookie(server.url, word);
    for (const cookie of [team, '', 'harbour_desk=aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa']) {
      const asked = [
        send(ROUTES.links, { kind: 'desk' }, cookie),
        send(ROUTES.links, { kind: 'room', room }, cookie),
        send(ROUTES.seatCode, { room, team: 't' }, cookie),
        send(ROUTES.eraseRoom, { room }, cookie),
        send(ROUTES.keepRoom, { room }, cookie),
      ];
      expect((await Promise.all(asked)).map(({ status }) => status)).toEqual([401, 401, 401, 401, 401]);
    }
  });
});
