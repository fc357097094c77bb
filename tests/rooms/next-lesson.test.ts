import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  buildingRoom,
  codeOf,
  cookiesOf,
  lineDesign,
  makeLink,
  pagesOfTest,
  post,
  quickJudging,
  type TestServer,
  testServer,
  visitLink,
} from './harness.ts';

let server: TestServer;
const { page, closePages } = pagesOfTest();
beforeAll(async () => {
  server = await testServer({ judging: quickJudging });
});
afterEach(closePages);
afterAll(() => server.end());

const openNext = (room: string, cookie: string) =>
  post(server.url + ROUTES.openRoom, { chargerWatched: false, continues: room }, cookie);

describe('the next lesson of a class', () => {
  it('has its queue, and gives each tablet that was in the old one its emblem and its own help again', async () => {
    const { owner, word, desk, tablet, team } = await buildingRoom(server);
    // A second team under another emblem, which comes back first.
    const second = cookiesOf(await post(server.url + ROUTES.join, { word }));
    const bell = await page(server.url, 'tablet', second);
    await desk.command({ kind: 'queue-challenge', key: 'long-pier', place: 0 });
    await desk.command({ kind: 'queue-challenge', key: 'sharp-corner', place: 0 });
    const [first] = desk.state!.teams;
    await desk.command({ kind: 'set-help', team: first!.id, step: 'place' });
    await desk.command({ kind: 'set-gentler', team: first!.id, on: true });
    const answer = await openNext(desk.state!.id, owner);
    const next = (await answer.json()) as { room: string; word: string };
    for (const one of [tablet, bell, desk]) one.close();

    const again = await page(server.url, 'desk', owner, next.room);
    expect(again.state?.plan.queue).toEqual(['sharp-corner', 'long-pier']);
    expect(again.state?.plan.from?.last).toBe('first-line');
    const back = async (cookie: string) => {
      const joined = await post(server.url + ROUTES.join, { word: next.word }, cookie);
      return page(server.url, 'tablet', cookiesOf(joined));
    };
    const [other, own] = [await back(second), await back(team)];
    await again.until('a gentler form', () => again.state?.coaching.gentler.length === 1);
    expect(again.state?.teams.map(({ emblem, berth, help }) => [emblem, berth, help])).toEqual([
      ['sailboat', 1, 'place'],
      ['bell', 2, null],
    ]);
    const { seq } = again.state!;
    await Promise.all([other, own].map((one) => one.reaches(seq)));
    expect(own.state?.teams[0]?.help).toBe('place');
    expect(own.state?.coaching.gentler).toEqual([again.state?.teams[0]?.id]);
    for (const said of ['"gentler-set"', '"step":"place"', '"help":"place"'])
      expect(other.received).not.toContain(said);
  });

  it('goes on from no room that the desk does not manage', async () => {
    const { owner, desk } = await buildingRoom(server);
    const { cookie } = await visitLink(server.url, await makeLink(server.url, { kind: 'desk' }, owner));
    const room = desk.state!.id;
    desk.close();
    const codes = [
      await openNext(room, cookie),
      await openNext('no-such-room', owner),
      await openNext(room, ''),
    ];
    expect(codes.map(({ status }) => status >= 400)).toEqual([true, true, true]);
    const { refusal } = (await codes[0]!.json()) as { refusal: { code: string } };
    expect(refusal.code).toBe('unknown-room');
  });
});

describe('what a desk says to a team', () => {
  it('goes to that team’s tablet alone, and so do the lines of its gentler form', async () => {
    const { word, desk, tablet } = await buildingRoom(server);
    const other = await page(server.url, 'tablet', cookiesOf(await post(server.url + ROUTES.join, { word })));
    const board = await page(server.url, 'board', '', word);
    desk.command({ kind: 'end-building' });
    await desk.command({ kind: 'choose-challenge', key: 'one-fast-stretch' });
    await desk.command({ kind: 'start-building', seconds: null });
    const [first] = desk.state!.teams;
    const text = 'Look at the second goal';
    await desk.command({ kind: 'send-note', team: first!.id, words: { kind: 'text', text } });
    await desk.command({ kind: 'set-gentler', team: first!.id, on: true });
    await tablet.command({ kind: 'hand-in', round: 1, design: lineDesign(150) });
    await desk.until('an entry', () => desk.state!.entries.length === 1);
    const answer = await desk.command({
      kind: 'return-entry',
      entry: desk.state!.entries[0]!.id,
      reason: 'talk-first',
    });
    const seq = answer.ok ? answer.seq : 0;
    await Promise.all([tablet, other, board].map((one) => one.reaches(seq)));
    const lines = desk.state!.rounds.at(-1)!.gentler!;
    const told = [tablet, other, board].map(({ received }) =>
      [text, 'talk-first', '"gentler-set"'].map((said) => received.includes(said)),
    );
    expect(told).toEqual([
      [true, true, true],
      [false, false, false],
      [false, false, false],
    ]);
    const may = await Promise.all([desk, tablet, other, board].map((one) => one.document(lines)));
    expect(may.map(codeOf)).toEqual(['accepted', 'accepted', 'unknown-document', 'unknown-document']);
    expect(board.state?.entries[0]?.returned).toBe(true);
    for (const one of [desk, tablet]) one.close();
  });

  it('is text of at most 160 characters, with no signs that cannot be seen', async () => {
    const { desk, tablet } = await buildingRoom(server);
    const [team] = desk.state!.teams;
    const say = async (text: string) =>
      codeOf(await desk.command({ kind: 'send-note', team: team!.id, words: { kind: 'text', text } }));
    expect([await say('x'.repeat(160)), await say('two\nlines')]).toEqual(['accepted', 'accepted']);
    expect([
      await say('x'.repeat(161)),
      await say(' \n '),
      await say('a\u0000b'),
      await say('a\u0007b'),
    ]).toEqual(Array(4).fill('bad-form'));
    for (const one of [desk, tablet]) one.close();
  });
});
