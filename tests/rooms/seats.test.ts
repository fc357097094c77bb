import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { SeatCode } from '../../shared/wire/desks.ts';
import { ROUTES, type WireRefusal } from '../../shared/wire/protocol.ts';
import {
  buildingRoom,
  codeOf,
  joinCookie,
  lineDesign,
  type Page,
  pagesOfTest,
  post,
  quickJudging,
  seqOf,
  type TestServer,
  testServer,
} from './harness.ts';

/** A team's seat from outside: another tablet, a tablet that rests, a team that is taken out, a pause. */

let server: TestServer;
let clock = 0;
let owner: string;
let word: string;
let cookie: string;
let desk: Page;
let tablet: Page;
let team: string;
const { pages, page, closePages } = pagesOfTest();

beforeEach(async () => {
  clock = 0;
  server = await testServer({ judging: quickJudging, now: () => Date.now() + clock });
  ({ owner, word, team: cookie, desk, tablet } = await buildingRoom(server, 600));
  pages.push(desk, tablet);
  team = desk.state?.teams[0]?.id ?? '';
});
afterEach(async () => {
  closePages();
  await server.end();
});

const makeCode = async () => {
  const response = await post(`${server.url}${ROUTES.seatCode}`, { room: desk.state?.id, team }, owner);
  return (await response.json()) as SeatCode;
};
const type = (text: string) => post(`${server.url}${ROUTES.join}`, { word: text });
const refusalOf = async (response: Response) =>
  ((await response.json()) as { refusal: WireRefusal }).refusal.code;
const handIn = { kind: 'hand-in', round: 0, design: lineDesign(150) } as const;

describe('moving a seat to another tablet', () => {
  it('gives it the team, the kept draft and the work; the old tablet has no seat any longer', async () => {
    const design = lineDesign(33);
    expect(codeOf(await tablet.ask('latest', { kind: 'draft', round: 0, design }))).toBe('accepted');
    seqOf(await tablet.command(handIn));
    const { code } = await makeCode();
    expect(code).toMatch(/^sailboat-\d{4}$/);
    const moved = await joinCookie(server.url, ` ${code.toUpperCase().replace('-', ' ')} `);
    await tablet.until('moved', () => tablet.moved === 1);
    expect(codeOf(await tablet.hello())).toBe('no-seat');
    expect(codeOf(await tablet.command(handIn))).toBe('no-seat');
    const next = await page(server.url, 'tablet', moved);
    expect(next.welcome).toMatchObject({ ok: true, you: { role: 'team', team } });
    expect(next.welcome?.ok && next.welcome.latest).toContainEqual({ kind: 'draft', team, round: 0, design });
    expect(next.state?.entries[0]?.design).not.toBeNull();
    seqOf(await next.command(handIn));
    expect(next.state?.teams).toMatchObject([{ id: team, emblem: 'sailboat', moves: 1, seatFree: false }]);
  });

  it('by a scanned code leads to the tablet page with the seat', async () => {
    const { code, qr } = await makeCode();
    expect(qr).toMatch(/^data:image\/png;base64,/);
    const scanned = await fetch(`${server.url}${ROUTES.joinByLink}?word=${code}`, { redirect: 'manual' });
    expect([scanned.status, scanned.headers.get('location')]).toEqual([303, '/']);
  });

  it('works once, for five minutes, and only with the newest code', async () => {
    const first = await makeCode();
    const second = await makeCode();
    expect(await refusalOf(await type(first.code))).toBe('wrong-code');
    expect((await type(second.code)).status).toBe(204);
    expect(await refusalOf(await type(second.code))).toBe('wrong-code');
    const third = await makeCode();
    clock += 5 * 60_000;
    expect(await refusalOf(await type(third.code))).toBe('wrong-code');
    expect(desk.state?.teams[0]?.moves).toBe(1);
  });

  it('of two tablets with one code takes one', async () => {
    const { code } = await makeCode();
    const answers = await Promise.all([type(code), type(code), type(code)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([204, 404, 404]);
  });

  it('that cannot be used yet is not used up', async () => {
    const { code } = await makeCode();
    seqOf(await desk.command({ kind: 'remove-team', team }));
    expect(await refusalOf(await type(code))).toBe('team-removed');
    seqOf(await desk.command({ kind: 'put-back-team', team }));
    expect((await type(code)).status).toBe(204);
    expect(await refusalOf(await type(code))).toBe('wrong-code');
  });

  it('is not to be guessed: after ten wrong codes a minute even the right one is refused', async () => {
    const { code } = await makeCode();
    const wrong = code.endsWith('0000') ? 'sailboat-0001' : 'sailboat-0000';
    for (let i = 0; i < 10; i++) expect(await refusalOf(await type(wrong))).toBe('wrong-code');
    expect(await refusalOf(await type(code))).toBe('too-fast');
    // The class behind the same address still comes in by the room word.
    expect((await type(word)).status).toBe(204);
  });
});

describe('a seat that is freed', () => {
  it('has its tablet rest at once, and again after a reload, until the desk keeps it', async () => {
    seqOf(await desk.command({ kind: 'free-seat', team }));
    await tablet.until('moved', () => tablet.moved === 1);
    expect(codeOf(await tablet.hello())).toBe('seat-freed');
    expect(codeOf(await tablet.command(handIn))).toBe('no-seat');
    expect(codeOf((await page(server.url, 'tablet', cookie)).welcome)).toBe('seat-freed');
    seqOf(await desk.command({ kind: 'keep-seat', team }));
    expect(codeOf(await tablet.hello())).toBe('accepted');
    seqOf(await tablet.command(handIn));
  });

  it('is another tablet’s with a code, and then never the old one’s', async () => {
    seqOf(await desk.command({ kind: 'free-seat', team }));
    const moved = await joinCookie(server.url, (await makeCode()).code);
    expect(codeOf((await page(server.url, 'tablet', moved)).welcome)).toBe('accepted');
    expect(codeOf(await desk.command({ kind: 'keep-seat', team }))).toBe('already-so');
    expect(codeOf((await page(server.url, 'tablet', cookie)).welcome)).toBe('no-seat');
  });
});

describe('a team that is taken out', () => {
  it('may do nothing, stands in no table, and comes back with its work', async () => {
    seqOf(await tablet.command(handIn));
    await desk.until('a verdict', () => desk.state?.entries[0]?.verdict !== null);
    const out = seqOf(await desk.command({ kind: 'remove-team', team }));
    await tablet.reaches(out);
    expect(tablet.state?.removed.map(({ id }) => id)).toEqual([team]);
    expect(codeOf(await tablet.command(handIn))).toBe('team-removed');
    expect(codeOf(await tablet.ask('latest', { kind: 'doing', doing: 'trying' }))).toBe('team-removed');
    const csv = async () =>
      (await fetch(`${server.url}${ROUTES.resultsCsv}?room=${word}`, { headers: { cookie: owner } })).text();
    expect(await csv()).not.toContain('sailboat');
    seqOf(await desk.command({ kind: 'put-back-team', team }));
    seqOf(await tablet.command(handIn));
    expect(await csv()).toContain('sailboat');
  });

  it('has no code for its seat', async () => {
    seqOf(await desk.command({ kind: 'remove-team', team }));
    const response = await post(`${server.url}${ROUTES.seatCode}`, { room: desk.state?.id, team }, owner);
    expect(await refusalOf(response)).toBe('unknown-team');
  });
});

describe('a pause', () => {
  it('keeps the building time from ending, and moves its end', async () => {
    const until = desk.state?.building?.until ?? 0;
    await tablet.reaches(seqOf(await desk.command({ kind: 'pause', on: true })));
    clock += 3_600_000;
    expect((await tablet.hello()).ok).toBe(true);
    expect(tablet.state?.building?.ended).toBe(false);
    const on = seqOf(await desk.command({ kind: 'pause', on: false }));
    await Promise.all([desk.reaches(on), tablet.reaches(on)]);
    expect(desk.state?.building?.until).toBeGreaterThanOrEqual(until + 3_600_000);
    expect(desk.state?.building?.ended).toBe(false);
    seqOf(await tablet.command(handIn));
    await desk.until('the entry', () => desk.state?.entries.length === 1);
    expect(desk.state?.entries[0]?.late).toBe(false);
  });
});
