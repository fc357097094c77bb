import { once } from 'node:events';
import { connect } from 'node:net';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Append } from '../../server/log/event-log.ts';
import { MemoryLog } from '../../server/log/memory.ts';
import {
  buildingRoom,
  codeOf,
  joinCookie,
  lineDesign,
  openRoom,
  ownerCookie,
  pagesOfTest,
  quickJudging,
  seqOf,
  type TestServer,
  testServer,
} from './harness.ts';

/** Something that waits until a test lets it go on. */
function gate() {
  let open = () => {};
  let reached = () => {};
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  const arrived = new Promise<void>((resolve) => {
    reached = resolve;
  });
  const pass = async () => {
    reached();
    await opened;
  };
  return { open, arrived, pass };
}

class GatedLog extends MemoryLog {
  pass: () => Promise<void> = async () => undefined;
  override async append(room: string, parts: Append) {
    await this.pass();
    return super.append(room, parts);
  }
}

let log: GatedLog;
let server: TestServer;
const { pages, page, closePages } = pagesOfTest();
beforeEach(() => {
  log = new GatedLog();
});
afterEach(async () => {
  closePages();
  await server.end();
});

async function building(config: Parameters<typeof testServer>[0] = {}) {
  server = await testServer({ judging: quickJudging, log, ...config });
  const room = await buildingRoom(server);
  pages.push(room.desk, room.tablet);
  return room;
}

const stored = async (room: string) => (await log.eventsAfter(room, 0)).map((event) => event.fact?.kind);

it('a command on its way is kept and answered, pages are told, and nobody new gets in', async () => {
  const { desk } = await building();
  const appending = gate();
  log.pass = appending.pass;
  const told = new Promise((resolve) => desk.socket.once('ending', resolve));
  const answer = desk.command({ kind: 'look-here', on: true });
  await appending.arrived;
  const closed = server.close();
  expect(await told).toEqual({ within: 3000 });
  await expect(fetch(`${server.url}/ready`)).rejects.toThrow();
  appending.open();
  expect(await answer).toMatchObject({ ok: true });
  await closed;
  expect(desk.socket.connected).toBe(false);
  expect((await stored(desk.state!.id)).at(-1)).toBe('look-here');
});

it('a message that comes while the server ends gets no answer and changes nothing', async () => {
  const { desk, tablet } = await building();
  const appending = gate();
  log.pass = appending.pass;
  const first = desk.command({ kind: 'look-here', on: true });
  await appending.arrived;
  const told = new Promise((resolve) => tablet.socket.once('ending', resolve));
  const closed = server.close();
  await told;
  const late = tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
  const refused = expect(late).rejects.toThrow();
  appending.open();
  await first;
  await closed;
  await refused;
  expect(await stored(desk.state!.id)).not.toContain('handed-in');
});

it('an entry in the judge gets its verdict before the store closes', async () => {
  const judging = gate();
  const judge: typeof quickJudging.judge = async (task) => {
    await judging.pass();
    return quickJudging.judge(task);
  };
  const { desk, tablet } = await building({ judging: { ...quickJudging, judge } });
  await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
  await judging.arrived;
  const closed = server.close();
  judging.open();
  await closed;
  expect((await stored(desk.state!.id)).at(-1)).toBe('judged');
});

it('a judge that never ends is left behind after the limit', async () => {
  let release = (_: Error) => {};
  const stuck = new Promise<never>((_, reject) => {
    release = reject;
  });
  const judging = { judge: () => stuck, close: async () => release(new Error('ended')) };
  const { desk, tablet } = await building({ judging, endWithinMs: 20 });
  await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
  await server.close();
  expect((await stored(desk.state!.id)).at(-1)).toBe('handed-in');
});

/** A store that never says whether it has kept a draft, and does not close either. */
class DeafLog extends MemoryLog {
  readonly asked = new Set<string>();
  override keepLatest(room: string): Promise<void> {
    this.asked.add(room);
    return new Promise(() => undefined);
  }
  override close(): Promise<void> {
    return new Promise(() => undefined);
  }
}

it('drafts of all rooms are written at once, and a store that takes too long is left behind', async () => {
  const deaf = new DeafLog();
  server = await testServer({ judging: quickJudging, log: deaf, endWithinMs: 20 });
  const owner = await ownerCookie(server);
  const rooms: string[] = [];
  for (let i = 0; i < 3; i++) {
    const { room, word } = await openRoom(server.url, owner);
    rooms.push(room);
    const desk = await page(server.url, 'desk', owner, room);
    const tablet = await page(server.url, 'tablet', await joinCookie(server.url, word));
    seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' }));
    seqOf(await desk.command({ kind: 'start-building', seconds: null }));
    const draft = { kind: 'draft', round: 0, design: lineDesign(60) };
    expect(codeOf(await tablet.ask('latest', draft))).toBe('accepted');
  }
  await server.close();
  expect([...deaf.asked].sort()).toEqual(rooms.sort());
});

it('a connection that never says the end of its request is not waited for', async () => {
  server = await testServer({ judging: quickJudging, log });
  const silent = connect(server.port, 'localhost');
  await once(silent, 'connect');
  silent.write('GET / HT');
  const gone = once(silent, 'close');
  await server.close();
  await gone;
});
