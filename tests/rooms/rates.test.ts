import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MemoryLog } from '../../server/log/memory.ts';
import { Challenge } from '../../shared/documents/challenge.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { LIMITS, ROUTES } from '../../shared/wire/protocol.ts';
import {
  buildingRoom,
  codeOf,
  makeLink,
  ownerCookie,
  Page,
  post,
  quickJudging,
  type TestServer,
  testServer,
  visitLink,
} from './harness.ts';

/**
 * How often is too often, and that it stops nobody else. Words, codes, seats and measurements have tests
 * of their own (`guessing`, `seats`, `silence`, `getting-in`), and so have commands and hand-ins (`bad-input`).
 */

const log = new MemoryLog();
let server: TestServer;
let room: string;
let owner: string;
let teacher: string;
let team: string;
const pages: Page[] = [];
let tablet: Page;
let desk: Page;

beforeAll(async () => {
  server = await testServer({ log, judging: quickJudging, balancers: 1 });
  ({ desk, tablet, team } = await buildingRoom(server));
  pages.push(desk, tablet);
  room = desk.state!.id;
  owner = await ownerCookie(server);
  teacher = (await visitLink(server.url, await makeLink(server.url, { kind: 'desk' }, owner))).cookie;
});
afterAll(async () => {
  for (const page of pages) page.close();
  await server.end();
});

/** A board whose device has this address, as the balancer says. */
function boardAt(address: string): Page {
  const board = new Page(server.url, 'board', '', room);
  pages.push(board);
  board.socket.disconnect();
  board.socket.io.opts.extraHeaders = { 'x-forwarded-for': address };
  board.socket.connect();
  return board;
}

const atOnce = (times: number, ask: () => Promise<unknown>): Promise<string[]> =>
  Promise.all(Array.from({ length: times }, async () => codeOf(await ask())));
const refusedOf = (codes: readonly string[]) => codes.filter((code) => code === 'too-fast').length;

/** Three times as many as may be asked in a second, at once: some are refused, never those that may. */
async function expectCutOff(mostInASecond: number, ask: () => Promise<unknown>): Promise<void> {
  const refused = refusedOf(await atOnce(3 * mostInASecond, ask));
  expect(refused).toBeGreaterThan(0);
  expect(refused).toBeLessThanOrEqual(2 * mostInASecond);
}

describe('more in a second than a page asks', () => {
  it('of newest values of a team is refused, and another page’s are not', async () => {
    await expectCutOff(LIMITS.latestPerSecond, () =>
      tablet.ask('latest', { kind: 'doing', doing: 'trying' }),
    );
    const clock = { playing: true, speed: 1, at: 0 };
    expect(codeOf(await desk.ask('latest', { kind: 'stage-clock', clock }))).toBe('accepted');
  });

  it('of documents is refused to a team, and the desk gets its own', async () => {
    await expectCutOff(LIMITS.fetchesPerSecond, () => tablet.document('none'));
    expect(codeOf(await desk.document('none'))).toBe('unknown-document');
  });

  it('of documents is refused to a board, and the class’s board at another address gets its own', async () => {
    const [greedy, projector] = [boardAt('192.0.2.7'), boardAt('192.0.2.8')];
    for (const board of [greedy, projector]) await board.hello();
    await expectCutOff(LIMITS.fetchesPerSecond, () => greedy.document('none'));
    expect(codeOf(await projector.document('none'))).toBe('unknown-document');
  });

  it('of hellos without a seat is refused to an address, after those of a hundred boards', async () => {
    const [greedy, projector] = [boardAt('192.0.2.17'), boardAt('192.0.2.18')];
    await expectCutOff(100, () => greedy.hello());
    expect(codeOf(await projector.hello())).toBe('accepted');
  });
});

it('a board that asks for something is refused, and leaves nothing in the store', async () => {
  const board = boardAt('192.0.2.27');
  await board.hello();
  expect(codeOf(await board.command({ kind: 'end-building' }, 'of-a-board'))).toBe('not-for-this-seat');
  expect(await log.answer(room, 'board', 'of-a-board')).toBeUndefined();
});

const status = async (answer: Promise<Response>) => (await answer).status;
const [ready] = readyChallenges(DEMO_KIT);
if (!ready?.playable) throw new Error('the library begins with a challenge that can be played');
const body = writeDocument(Challenge, ready.challenge);

const rooms = (cookie: string) => post(server.url + ROUTES.openRoom, { chargerWatched: true }, cookie);
const challenges = (cookie: string) => post(server.url + ROUTES.saveChallenge, { id: 'own', body }, cookie);
describe('more in a minute than a desk asks', () => {
  it.each([
    ['new rooms', 30, rooms, 201],
    ['saved challenges', 120, challenges, 204],
  ] as const)('of %s is refused, and another desk’s is not', async (_, most, ask, done) => {
    const codes: number[] = [];
    for (let i = 0; i <= most; i++) codes.push(await status(ask(teacher)));
    expect([new Set(codes.slice(0, most)), codes.at(-1)]).toEqual([new Set([done]), 429]);
    expect(await status(ask(owner))).toBe(done);
  });

  it('of pages of paper is refused, and the desk’s is not', async () => {
    // There is no such entry, which is not known before the rate.
    const path = `${server.url}/api/print/drawing.svg?room=${room}&entry=none`;
    const print = (cookie: string) => status(fetch(path, { headers: { cookie } }));
    const codes: number[] = [];
    for (let i = 0; i <= 90; i++) codes.push(await print(team));
    expect([new Set(codes.slice(0, 90)), codes.at(-1)]).toEqual([new Set([409]), 429]);
    expect(await print(owner)).toBe(409);
  });

  it('of links to a room is refused, and a link to a desk is not', async () => {
    const link = (asked: object) => status(post(server.url + ROUTES.links, asked, owner));
    const codes: number[] = [];
    for (let i = 0; i <= 30; i++) codes.push(await link({ kind: 'room', room }));
    expect([new Set(codes.slice(0, 30)), codes.at(-1)]).toEqual([new Set([201]), 429]);
    expect(await link({ kind: 'desk' })).toBe(201);
  });

  it('of wrong keys closes the way by links, and no desk that is open', async () => {
    const open = (key: string) => status(fetch(`${server.url}/desk?key=${key}`, { redirect: 'manual' }));
    const codes: number[] = [];
    for (let i = 0; i < 20; i++) codes.push(await open(`wrong-${i}`));
    expect(new Set(codes)).toEqual(new Set([401]));
    expect([await open('wrong-20'), await open(server.ownerKey)]).toEqual([429, 429]);
    expect(await status(fetch(server.url + ROUTES.rooms, { headers: { cookie: owner } }))).toBe(200);
  });
});
