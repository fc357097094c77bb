import { beforeAll, describe, expect, it } from 'vitest';
import { type Challenge, Challenge as ChallengeForm } from '../../shared/documents/challenge.ts';
import { Kit } from '../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../shared/kit/second-kit.ts';
import type { Shelved } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  joinCookie,
  lineDesign,
  makeLink,
  NO_RATES,
  openRoom,
  type Page,
  post,
  quickJudging,
  seqOf,
  visitLink,
} from './harness.ts';
import { stage } from './stage.ts';

/** Kits of one's own over HTTP, and the kit that a room plays with. */

const here = stage('file', { judging: quickJudging, rates: NO_RATES });
const { page } = here;

const fileForm = (kit: Kit) => writeDocument(Kit, kit) as Record<string, unknown>;
const save = (id: string, body: unknown, cookie = here.owner) =>
  post(here.url + ROUTES.saveKit, { id, body }, cookie);
const list = async (cookie: string, room?: string) =>
  (await (
    await fetch(`${here.url}${ROUTES.kits}${room === undefined ? '' : `?room=${room}`}`, {
      headers: { cookie },
    })
  ).json()) as Shelved[];
const refusalOf = async (response: Response) =>
  ((await response.json()) as { refusal: { code: string } }).refusal;
const deskLink = async () =>
  (await visitLink(here.url, await makeLink(here.url, { kind: 'desk' }, here.owner))).cookie;

describe('kits of one’s own', () => {
  it('are kept over all rooms of a desk, with what they were before, and by nobody else', async () => {
    const [cookie, other] = [await deskLink(), await deskLink()];
    const body = {
      kit: fileForm({ ...DEMO_KIT, name: 'Ours' }),
      earlier: [{ savedAt: 5, kit: fileForm(DEMO_KIT) }],
    };
    expect((await save('ours', body, cookie)).status).toBe(204);
    expect((await list(cookie)).map(({ id, body: kept }) => [id, kept])).toEqual([['ours', body]]);
    expect(await list(other)).toEqual([]);
    const { room } = await openRoom(here.url, cookie);
    const link = await visitLink(here.url, await makeLink(here.url, { kind: 'room', room }, cookie));
    expect((await list(link.cookie, room)).map(({ id }) => id)).toEqual(['ours']);
    expect((await refusalOf(await save('ours', body, link.cookie))).code).toBe('not-for-this-seat');
  });

  it('may be drafts that do not pass their checks, but have to be of the form of a kit', async () => {
    const cookie = await deskLink();
    const draft = fileForm({ ...DEMO_KIT, robot: { ...DEMO_KIT.robot, wheelTrack: 0 } });
    expect((await save('draft', { kit: draft, earlier: [] }, cookie)).status).toBe(204);
    const nameless = { kit: { ...draft, name: '' }, earlier: [] };
    expect(await refusalOf(await save('draft', nameless, cookie))).toEqual({
      code: 'bad-form',
      path: 'kit.name',
      problem: 'too_small',
    });
    const earlier = Array.from({ length: 9 }, () => ({ savedAt: 1, kit: draft }));
    expect(await refusalOf(await save('draft', { kit: draft, earlier }, cookie))).toMatchObject({
      path: 'earlier',
    });
    const large = { kit: { ...draft, name: 'x'.repeat(300_000) }, earlier: [] };
    expect((await refusalOf(await save('draft', large, cookie))).code).toBe('too-large');
  });
});

describe('the kit of a room', () => {
  let desk: Page;
  let room: string;
  let word: string;

  beforeAll(async () => {
    ({ room, word } = await openRoom(here.url, here.owner));
    desk = await page(here.url, 'desk', here.owner, room);
  });

  const choose = (kit: Kit) => desk.command({ kind: 'choose-kit', kit: fileForm(kit) });
  const challengeOf = async (round: number): Promise<Challenge> => {
    const fetched = await desk.document(desk.state!.rounds[round]!.challenge);
    const read = parseDocument(ChallengeForm, fetched.ok ? fetched.body : null);
    if (!read.ok) throw new Error('no challenge');
    return read.value;
  };

  it('that does not pass its checks is refused, with what is wrong and where', async () => {
    const draft = { ...DEMO_KIT, rules: { ...DEMO_KIT.rules, clearance: 0, sheetMargin: 0 } };
    expect(await choose(draft)).toEqual({
      ok: false,
      refusal: { code: 'kit-not-sound', problem: 'size-zero', path: 'rules.clearance', more: 1 },
    });
    expect(desk.state!.kit).toBeNull();
    expect(codeOf(await desk.command({ kind: 'choose-kit', kit: { name: 'none' } }))).toBe('bad-form');
  });

  it('is what challenges are made for from then on; a chosen one and its entries keep theirs', async () => {
    const tablet = await page(here.url, 'tablet', await joinCookie(here.url, word));
    seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' }));
    seqOf(await desk.command({ kind: 'start-building', seconds: null }));
    await desk.reaches(seqOf(await choose(SECOND_KIT)));
    const answer = await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
    await desk.reaches(seqOf(answer));
    expect((await challengeOf(0)).kit).toEqual(DEMO_KIT);
    seqOf(await desk.command({ kind: 'end-building' }));
    await desk.reaches(seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' })));
    expect((await challengeOf(1)).kit).toEqual(SECOND_KIT);
    expect(desk.state!.rounds.map(({ kit }) => kit)).toEqual([undefined, desk.state!.kit]);
    expect(desk.state!.entries.map(({ round }) => round)).toEqual([0]);
    const second = desk.state!.kit;
    await desk.reaches(seqOf(await choose(DEMO_KIT)));
    expect(desk.state!.kit).toBeNull();
    await desk.reaches(seqOf(await choose(SECOND_KIT)));
    expect(desk.state!.kit).toBe(second);
    tablet.close();
  });

  it('has no challenge that asks for an action which its chart lacks', async () => {
    // Its chart has no mark for tiptoe.
    const lacking = await desk.command({ kind: 'choose-challenge', key: 'past-the-nest' });
    expect(codeOf(lacking)).toBe('unknown-challenge');
  });

  it('is on the chart for the wall and on the patch', async () => {
    const svg = async (kind: string) =>
      (
        await fetch(`${here.url}/api/print/${kind}.svg?room=${room}`, { headers: { cookie: here.owner } })
      ).text();
    const inks = SECOND_KIT.inks.map(({ color }) => color.toLowerCase());
    const chart = (await svg('chart')).toLowerCase();
    expect(inks.filter((color) => !chart.includes(color))).toEqual([]);
    // The paper's own ink is the demo kit's line, so that only the other one tells.
    expect((await svg('patch')).toLowerCase()).toContain(SECOND_KIT.line.color.toLowerCase());
  });

  it('comes along in the room’s file, which is refused without it', async () => {
    const file = (await (
      await fetch(`${here.url}${ROUTES.roomFile}?room=${room}`, { headers: { cookie: here.owner } })
    ).json()) as { documents: { id: string; kind: string }[] };
    expect(file.documents.filter(({ kind }) => kind === 'kit').map(({ id }) => id)).toEqual([
      desk.state!.kit,
    ]);
    const restored = await post(here.url + ROUTES.restoreRoom, file, here.owner);
    const { room: copy } = (await restored.json()) as { room: string };
    const there = await page(here.url, 'desk', here.owner, copy);
    expect([there.state!.kit, there.state!.rounds]).toEqual([desk.state!.kit, desk.state!.rounds]);
    const without = { ...file, documents: file.documents.filter(({ kind }) => kind !== 'kit') };
    expect(await refusalOf(await post(here.url + ROUTES.restoreRoom, without, here.owner))).toMatchObject({
      problem: 'missing-kit',
    });
  });
});
