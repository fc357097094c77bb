import { describe, expect, it, vi } from 'vitest';
import { MemoryLog } from '../../server/log/memory.ts';
import { Challenge } from '../../shared/documents/challenge.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { type Shelved, UNDO_MS } from '../../shared/wire/desks.ts';
import { LIMITS, ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  joinCookie,
  makeLink,
  NO_RATES,
  openRoom,
  ownerCookie,
  post,
  quickJudging,
  seqOf,
  testServer,
  visitLink,
} from './harness.ts';
import { stage } from './stage.ts';

/** Challenges that desks make and keep across rooms, from outside. */

const here = stage('test', { judging: quickJudging, rates: NO_RATES });
const { page } = here;

const [ready] = readyChallenges(DEMO_KIT).filter((one) => one.key === 'ferry-junction');
if (!ready?.playable) throw new Error('the library has a ferry junction');
const made: Challenge = { ...ready.challenge, title: { en: 'Our ferry' } };
const file = (challenge: Challenge) => writeDocument(Challenge, challenge);

const save = (id: string, body: unknown, cookie = here.owner) =>
  post(here.url + ROUTES.saveChallenge, { id, body }, cookie);
const send = (route: string, id: string, cookie = here.owner) => post(here.url + route, { id }, cookie);
const listed = async (cookie = here.owner, room?: string) => {
  const path = room === undefined ? ROUTES.challenges : `${ROUTES.challenges}?room=${room}`;
  const answer = await fetch(here.url + path, { headers: { cookie } });
  return (await answer.json()) as Shelved[];
};
const refusalOf = async (answer: Response) =>
  ((await answer.json()) as { refusal: { code: string } }).refusal;

describe('a challenge of one’s own', () => {
  it('is kept across rooms, chosen like a ready one, and printed by its title', async () => {
    expect((await save('own-1', file({ ...made, id: 'own-1' }))).status).toBe(204);
    const { room, word } = await openRoom(here.url, here.owner);
    expect((await listed(here.owner, room)).map(({ id }) => id)).toEqual(['own-1']);
    const desk = await page(here.url, 'desk', here.owner, room);
    await desk.reaches(seqOf(await desk.command({ kind: 'choose-challenge', key: 'own-1' })));
    const { challenge } = desk.state!.rounds[0]!;
    const fetched = await desk.document(challenge);
    expect(fetched.ok && fetched.body).toEqual(file({ ...made, id: 'own-1' }));
    const tablet = await page(here.url, 'tablet', await joinCookie(here.url, word));
    const seen = await tablet.document(challenge);
    expect(seen.ok && Object.keys(seen.body as object)).not.toContain('model');
    const sheet = await fetch(`${here.url}/api/print/sheet.svg?room=${room}&language=en&units=cm`, {
      headers: { cookie: here.owner },
    });
    expect([sheet.status, (await sheet.text()).includes('Our ferry')]).toEqual([200, true]);
  });

  it('that is not finished is kept, but not played', async () => {
    const { goals: _, ...rest } = made;
    expect((await save('own-1', file({ ...rest, goals: [] }))).status).toBe(204);
    const { room } = await openRoom(here.url, here.owner);
    const desk = await page(here.url, 'desk', here.owner, room);
    expect(codeOf(await desk.command({ kind: 'choose-challenge', key: 'own-1' }))).toBe('unknown-challenge');
  });

  it('is refused with the place of the first bad value, and when it is too large', async () => {
    const bad = { ...(file(made) as object), play: 'sing' };
    expect(await refusalOf(await save('own-1', bad))).toMatchObject({ code: 'bad-form', path: 'play' });
    const large = { ...(file(made) as object), sentence: { en: 'x'.repeat(LIMITS.challengeBytes) } };
    expect((await refusalOf(await save('own-1', large))).code).toBe('too-large');
    expect(await listed()).toEqual([]);
  });

  it('is erased at once, and given back while that can be undone', async () => {
    await save('own-1', file(made));
    expect((await send(ROUTES.eraseChallenge, 'own-1')).status).toBe(204);
    expect(await listed()).toEqual([]);
    expect((await send(ROUTES.giveBackChallenge, 'own-1')).status).toBe(204);
    expect((await listed()).length).toBe(1);
    expect((await refusalOf(await send(ROUTES.eraseChallenge, 'own-2'))).code).toBe('not-on-shelf');
  });

  it('that waits in a queue and is erased can be moved there and taken off, but not chosen or put back', async () => {
    await save('own-1', file(made));
    const { room } = await openRoom(here.url, here.owner);
    const desk = await page(here.url, 'desk', here.owner, room);
    const put = (key: string, place: number | null) => desk.command({ kind: 'queue-challenge', key, place });
    await put('long-pier', 0);
    await desk.reaches(seqOf(await put('own-1', 1)));
    await send(ROUTES.eraseChallenge, 'own-1');
    expect(codeOf(await desk.command({ kind: 'choose-challenge', key: 'own-1' }))).toBe('unknown-challenge');
    expect([codeOf(await put('own-1', 0)), codeOf(await put('own-1', null))]).toEqual([
      'accepted',
      'accepted',
    ]);
    expect(codeOf(await put('own-1', 0))).toBe('unknown-challenge');
  });

  it('leaves nothing in the store once its erasure cannot be undone, whether or not anybody looks', async () => {
    const log = new MemoryLog();
    let now = 1_800_000_000_000;
    const other = await testServer({ judging: quickJudging, rates: NO_RATES, log, now: () => now });
    const cookie = await ownerCookie(other);
    const body = file(made);
    await post(other.url + ROUTES.saveChallenge, { id: 'own-1', body }, cookie);
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    try {
      await post(other.url + ROUTES.eraseChallenge, { id: 'own-1' }, cookie);
      await vi.advanceTimersByTimeAsync(UNDO_MS);
      expect((await log.values('shelf-')).length).toBe(1);
      now += 2 * UNDO_MS;
      await vi.advanceTimersByTimeAsync(UNDO_MS);
    } finally {
      vi.useRealTimers();
    }
    expect(await log.values('shelf-')).toEqual([]);
    await other.end();
  });

  it('goes for good with its desk’s link once that cannot be given back, after a restart too', async () => {
    const log = new MemoryLog();
    let now = 1_800_000_000_000;
    const config = { judging: quickJudging, rates: NO_RATES, log, now: () => now };
    const other = await testServer(config);
    const owner = await ownerCookie(other);
    const ids: string[] = [];
    for (const name of ['own-1', 'own-2']) {
      const link = await makeLink(other.url, { kind: 'desk' }, owner);
      const { cookie } = await visitLink(other.url, link);
      await post(other.url + ROUTES.saveChallenge, { id: name, body: file(made) }, cookie);
      ids.push(link.link.id);
    }
    const [first, second] = ids;
    const left = async () => (await log.values('shelf-')).map(({ key }) => key);
    const act = (route: string, id: string | undefined) => post(other.url + route, { id }, owner);
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    try {
      await act(ROUTES.revokeLink, first);
      await act(ROUTES.giveBackLink, first);
      await vi.advanceTimersByTimeAsync(2 * UNDO_MS);
      expect((await left()).length).toBe(2);
      await act(ROUTES.revokeLink, first);
      now += 2 * UNDO_MS;
      await vi.advanceTimersByTimeAsync(2 * UNDO_MS);
      expect(await left()).toEqual([`shelf-challenge ${second} own-2`]);
      await act(ROUTES.revokeLink, second);
    } finally {
      vi.useRealTimers();
    }
    await other.end();
    expect((await left()).length).toBe(1);
    now += 2 * UNDO_MS;
    await (await testServer(config)).end();
    expect([await left(), await log.values('link ')]).toEqual([[], []]);
  });

  it('is one of so many', async () => {
    for (let i = 0; i < LIMITS.ownChallenges; i++) await save(`own-${i}`, file(made));
    expect(await refusalOf(await save('own-more', file(made)))).toEqual({
      code: 'shelf-full',
      most: LIMITS.ownChallenges,
    });
  });
});

describe('whose a challenge is', () => {
  it('the desk’s that made it: other desks neither see nor play it, a substitute in its room does', async () => {
    const [one, two] = await Promise.all(
      [1, 2].map(async () => visitLink(here.url, await makeLink(here.url, { kind: 'desk' }, here.owner))),
    );
    await save('own-1', file(made), one!.cookie);
    expect([(await listed(one!.cookie)).length, (await listed(two!.cookie)).length]).toEqual([1, 0]);
    expect(await listed(here.owner)).toEqual([]);
    const { room } = await openRoom(here.url, one!.cookie);
    const other = await openRoom(here.url, two!.cookie);
    const link = await makeLink(here.url, { kind: 'room', room }, one!.cookie);
    const substitute = await visitLink(here.url, link);
    expect((await listed(substitute.cookie)).length).toBe(1);
    expect((await save('own-2', file(made), substitute.cookie)).status).toBe(403);
    const desk = await page(here.url, 'desk', substitute.cookie, room);
    seqOf(await desk.command({ kind: 'choose-challenge', key: 'own-1' }));
    const foreign = await page(here.url, 'desk', two!.cookie, other.room);
    expect(codeOf(await foreign.command({ kind: 'choose-challenge', key: 'own-1' }))).toBe(
      'unknown-challenge',
    );
  });

  it('nobody’s without a desk', async () => {
    expect((await save('own-1', file(made), '')).status).toBe(401);
    expect((await fetch(here.url + ROUTES.challenges)).status).toBe(401);
  });
});
