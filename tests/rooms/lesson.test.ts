import { beforeEach, describe, expect, it } from 'vitest';
import { view } from '../../shared/room/seen.ts';
import { PROTOCOL_VERSION, ROUTES } from '../../shared/wire/protocol.ts';
import { codeOf, joinCookie, lineDesign, openRoom, Page, quickJudging, seqOf } from './harness.ts';
import { stage } from './stage.ts';

/** The protocol from outside: only what shared/wire writes down, over real sockets. */

const here = stage('test', { judging: quickJudging });
const { pages, page } = here;
let word: string;

beforeEach(async () => {
  word = (await openRoom(here.url, here.owner)).word;
});

const desk = () => page(here.url, 'desk', here.owner);
const board = () => page(here.url, 'board');
const tablet = async () => page(here.url, 'tablet', await joinCookie(here.url, word));

describe('a lesson from end to end', () => {
  it('plays join, brief, build, hand in, judged, stage, standings, close', async () => {
    const [d, b] = [await desk(), await board()];
    const [t1, t2] = [await tablet(), await tablet()];
    const everyone = [d, b, t1, t2];
    expect(d.state?.teams.map((team) => team.emblem)).toEqual(['sailboat', 'bell']);

    seqOf(await d.command({ kind: 'choose-challenge', key: 'first-line' }));
    seqOf(await d.command({ kind: 'go-to', phase: 'brief' }));
    seqOf(await d.command({ kind: 'start-building', seconds: 600 }));
    seqOf(await d.command({ kind: 'look-here', on: true }));
    const looked = seqOf(await d.command({ kind: 'look-here', on: false }));
    await Promise.all(everyone.map((one) => one.reaches(looked)));
    expect(t1.state?.building?.until).toBeGreaterThan(Date.now() + 500_000);

    t1.socket.emit('latest', { kind: 'doing', doing: 'trying' });
    t1.socket.emit('latest', { kind: 'draft', round: 0, design: lineDesign(20) });
    await d.until('the draft', () => d.latest.some((value) => value.kind === 'draft'));
    await b.until('the word', () => b.latest.some((v) => v.kind === 'doing' && v.doing === 'trying'));
    expect(b.latest.some((value) => value.kind === 'draft')).toBe(false);

    seqOf(await t1.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }));
    seqOf(await t2.command({ kind: 'hand-in', round: 0, design: lineDesign(50) }));
    const judged = () => d.state?.entries.filter((entry) => entry.verdict).length === 2;
    await d.until('two verdicts', judged);
    expect(d.state?.entries.map((e) => e.verdict?.points)).toEqual([60, 0]);
    await t1.reaches(d.state?.seq ?? 0);
    const own = t1.state?.entries[0]?.verdict?.document ?? '';
    expect(await t1.document(own)).toMatchObject({ ok: true, kind: 'verdict', body: { total: 60 } });

    seqOf(await d.command({ kind: 'end-building' }));
    seqOf(await d.command({ kind: 'go-to', phase: 'show' }));
    const [first, second] = d.state?.entries ?? [];
    const staged = await d.command({ kind: 'stage', entries: [first?.id ?? '', second?.id ?? ''] });
    await Promise.all(everyone.map((one) => one.reaches(seqOf(staged))));
    expect(await b.document(b.state?.entries[1]?.design ?? '')).toMatchObject({ kind: 'design' });
    d.socket.emit('latest', { kind: 'stage-clock', clock: { playing: true, speed: 2, at: 1.5 } });
    await b.until('the clock', () => b.latest.some((value) => value.kind === 'stage-clock'));

    seqOf(await d.command({ kind: 'show-standings', on: true }));
    const closed = seqOf(await d.command({ kind: 'go-to', phase: 'close' }));
    await Promise.all(everyone.map((one) => one.reaches(closed)));

    for (const one of everyone) {
      const seat = one.welcome?.ok ? one.welcome.you : { role: 'desk' as const };
      expect(one.state).toEqual(view(d.state!, seat));
    }
    expect(b.state?.standingsShown).toBe(true);
  });

  it('keeps a late team and a late entry', async () => {
    const d = await desk();
    await d.command({ kind: 'choose-challenge', key: 'first-line' });
    await d.command({ kind: 'start-building', seconds: null });
    await d.command({ kind: 'end-building' });
    const late = await tablet();
    seqOf(await late.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }));
    await d.until('the entry', () => d.state?.entries.length === 1);
    expect(d.state?.entries[0]).toMatchObject({ late: true, number: 1 });
  });

  it('counts a late entry once the desk takes it, and tells everybody', async () => {
    const [d, b, t] = [await desk(), await board(), await tablet()];
    await d.command({ kind: 'choose-challenge', key: 'first-line' });
    await d.command({ kind: 'start-building', seconds: null });
    await d.command({ kind: 'end-building' });
    await t.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
    await d.until('a verdict', () => (d.state?.entries[0]?.verdict ?? null) !== null);
    const results = () =>
      fetch(`${here.url}${ROUTES.resultsCsv}?room=${word}`, { headers: { cookie: here.owner } });
    const table = async () => (await (await results()).text()).split('\r\n')[1]?.split(',').slice(6, 13);
    // late, counts, met, points, best of its round, points of the lesson, rank
    expect(await table()).toEqual(['yes', 'no', 'yes', '60', 'no', '0', '1']);
    const taken = { kind: 'take-late', entries: [d.state!.entries[0]!.id], on: true } as const;
    const seq = seqOf(await d.command(taken));
    await Promise.all([b.reaches(seq), t.reaches(seq)]);
    expect([b, t].map((page) => page.state?.entries[0]?.taken)).toEqual([true, true]);
    expect(await table()).toEqual(['yes', 'yes', 'yes', '60', 'yes', '60', '1']);
    seqOf(await d.command({ ...taken, on: false }));
    expect(await table()).toEqual(['yes', 'no', 'yes', '60', 'no', '0', '1']);
  });
});

describe('coming back', () => {
  it('gives exactly what was missed, without a snapshot', async () => {
    const d = await desk();
    const cookie = await joinCookie(here.url, word);
    const before = await page(here.url, 'tablet', cookie);
    const kept = before.state!;
    before.close();
    await d.command({ kind: 'choose-challenge', key: 'first-line' });
    const last = seqOf(await d.command({ kind: 'start-building', seconds: null }));
    const after = new Page(here.url, 'tablet', cookie);
    pages.push(after);
    after.state = kept;
    expect(await after.hello()).toMatchObject({ ok: true, snapshot: null });
    expect(after.events.map((event) => event.seq)).toEqual([3, 4, 5]);
    expect(last).toBe(5);
    expect(after.state).toEqual(d.state);
  });

  it('gives a snapshot for a number of another room, or one that is too high', async () => {
    const d = await desk();
    expect(await d.hello('another room', 1)).toMatchObject({ ok: true, events: [] });
    const ahead = await d.hello(d.state?.id ?? '', 999);
    expect(ahead.ok && ahead.snapshot?.seq).toBe(1);
  });

  it('gives a snapshot where the page’s last event is another one than that with its number here', async () => {
    const d = await desk();
    for (const on of [true, false]) await d.reaches(seqOf(await d.command({ kind: 'look-here', on })));
    const last = d.events.at(-2)!;
    const known = { version: PROTOCOL_VERSION, room: d.state!.id, seq: last.seq };
    expect(await d.ask('hello', { ...known, at: last.at })).toMatchObject({
      snapshot: null,
      events: [{ seq: last.seq + 1 }],
      at: d.events.at(-1)!.at,
    });
    expect(await d.ask('hello', { ...known, at: last.at - 1 })).toMatchObject({
      snapshot: { seq: last.seq + 1 },
      events: [],
    });
  });

  it('answers a repeated command as the first time, and does it once', async () => {
    const [d, t] = [await desk(), await tablet()];
    await d.command({ kind: 'choose-challenge', key: 'first-line' });
    const early = await t.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }, 'early');
    await d.command({ kind: 'start-building', seconds: null });
    const answers = await Promise.all(
      Array.from({ length: 5 }, () => t.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }, 'x')),
    );
    expect(new Set(answers.map((a) => JSON.stringify(a))).size).toBe(1);
    await d.until('the verdict', () => d.state?.entries[0]?.verdict !== null);
    expect(d.state?.entries.length).toBe(1);
    expect(codeOf(early)).toBe('not-building');
    const again = await t.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }, 'early');
    expect(again).toEqual(early);
  });

  it('has the newest draft of a team for its next tablet, and no draft of another', async () => {
    const d = await desk();
    await d.command({ kind: 'choose-challenge', key: 'first-line' });
    const cookie = await joinCookie(here.url, word);
    const [t, other] = [await page(here.url, 'tablet', cookie), await tablet()];
    const design = lineDesign(33);
    expect(codeOf(await t.ask('latest', { kind: 'draft', round: 0, design }))).toBe('accepted');
    t.close();
    const next = await page(here.url, 'tablet', cookie);
    const drafts = next.welcome?.ok ? next.welcome.latest : [];
    expect(drafts).toEqual([{ kind: 'draft', team: expect.any(String), round: 0, design }]);
    const welcome = await other.hello();
    expect(welcome.ok && welcome.latest).toEqual([]);
  });
});

describe('seats', () => {
  it('a second tab makes the older one go quiet, and may be told so back', async () => {
    const cookie = await joinCookie(here.url, word);
    const older = await page(here.url, 'tablet', cookie);
    const newer = await page(here.url, 'tablet', cookie);
    await older.until('quiet', () => older.quiet === 1);
    expect(codeOf(await older.command({ kind: 'hand-in', round: 0, design: lineDesign(9) }))).toBe('no-seat');
    expect(newer.state?.teams.length).toBe(1);
    await older.hello();
    await newer.until('quiet', () => newer.quiet === 1);
  });

  it('joining again keeps the seat', async () => {
    const join = (cookie: string) =>
      fetch(`${here.url}${ROUTES.join}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', cookie },
        body: JSON.stringify({ word }),
      });
    const cookie = await joinCookie(here.url, word);
    await join(cookie);
    const twice = await fetch(here.url, { redirect: 'manual' });
    const fresh = twice.headers.getSetCookie()[0]?.split(';')[0] ?? '';
    await Promise.all([join(fresh), join(fresh), join(fresh)]);
    expect((await desk()).state?.teams.length).toBe(2);
  });

  it('takes a room word as people type it', async () => {
    await joinCookie(here.url, `  ${word.toUpperCase().replace('-', ' ')} `);
    expect((await desk()).state?.teams.length).toBe(1);
  });

  it('a team that leaves is away on the wall', async () => {
    const [b, t] = [await board(), await tablet()];
    const team = t.state?.teams[0]?.id;
    t.close();
    await b.until('away', () => b.latest.some((v) => v.kind === 'doing' && v.doing === 'away'));
    expect(b.latest.at(-1)).toEqual({ kind: 'doing', team, doing: 'away' });
  });

  it('a desk without the key and a tablet without a seat are refused', async () => {
    const stranger = await page(here.url, 'desk', 'harbour_owner=guess');
    const tabletless = await page(here.url, 'tablet');
    expect([codeOf(stranger.welcome), codeOf(tabletless.welcome)]).toEqual(['no-seat', 'no-seat']);
    expect(codeOf(await stranger.command({ kind: 'look-here', on: true }))).toBe('no-seat');
  });

  it('a board follows the newest room, or stays in the one it names', async () => {
    const first = await board();
    const fixed = await page(here.url, 'board', '', word);
    const second = await openRoom(here.url, here.owner);
    await first.until('moved', () => first.moved === 1);
    const welcome = await first.hello();
    expect(welcome.ok && [welcome.room, welcome.snapshot?.word]).toEqual([second.room, second.word]);
    expect(fixed.moved).toBe(0);
    expect(fixed.state?.word).toBe(word);
  });

  it('a room that does not exist is unknown', async () => {
    expect(codeOf((await page(here.url, 'board', '', 'nowhere-11')).welcome)).toBe('unknown-room');
  });
});

describe('time', () => {
  it('ends the building for everybody when it is up', async () => {
    const [d, t] = [await desk(), await tablet()];
    await d.command({ kind: 'choose-challenge', key: 'first-line' });
    await d.command({ kind: 'start-building', seconds: 1 });
    await t.until('the end', () => t.state?.building?.ended === true);
    expect(t.events.at(-1)?.fact).toEqual({ kind: 'building-ended', by: 'time' });
  });
});
