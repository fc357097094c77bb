import { beforeAll, describe, expect, it } from 'vitest';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { view } from '../../shared/room/seen.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { codeOf, joinCookie, openRoom, type Page, post, quickJudging, seated, seqOf } from './harness.ts';
import { stage } from './stage.ts';

/** A closing check over real sockets: made of what was handed in, answered, ended and shown. */

let word: string;
let desk: Page;
let board: Page;
let first: Page;
let second: Page;

const found = readyChallenges(DEMO_KIT).find(({ key }) => key === 'one-fast-stretch')!;
const model = found.playable ? found.challenge.model! : undefined;

/** The quick judge, with one of twenty robots that loses the line. */
const strayJudging: typeof quickJudging = {
  ...quickJudging,
  judge: async (task) => {
    const { verdict, ...judged } = await quickJudging.judge(task);
    const stray = { seed: 4, start: 'start', cause: 'lost', at: { x: 257, y: 100 } };
    const interval = { low: 0.76, high: 0.99 };
    const steadiness = { weather: 'calm', same: 19, of: 20, interval, strays: [stray] };
    return { ...judged, verdict: { ...verdict, steadiness } };
  },
};

const here = stage('file', { judging: strayJudging });
const { page } = here;

beforeAll(async () => {
  ({ word } = await openRoom(here.url, here.owner));
  const tablet = async () => page(here.url, 'tablet', await joinCookie(here.url, word));
  [desk, board] = [await page(here.url, 'desk', here.owner), await page(here.url, 'board')];
  [first, second] = [await tablet(), await tablet()];
  seqOf(await desk.command({ kind: 'choose-challenge', key: 'one-fast-stretch' }));
  seqOf(await desk.command({ kind: 'start-building', seconds: null }));
});

const check = (page: Page) => page.state?.checks.at(-1);

describe('a closing check', () => {
  it('is refused while nothing has been handed in, and to teams', async () => {
    seqOf(await desk.command({ kind: 'go-to', phase: 'close' }));
    expect(codeOf(await desk.command({ kind: 'start-check', questions: 3 }))).toBe('nothing-to-ask');
    expect(codeOf(await first.command({ kind: 'start-check', questions: 3 }))).toBe('not-for-this-seat');
    expect(codeOf(await desk.command({ kind: 'start-check', questions: 6 }))).toBe('bad-form');
  });

  it('is made of the drawings of the class, and does not say whose they are or what is right', async () => {
    const design = writeDocument(Design, model!);
    seqOf(await first.command({ kind: 'hand-in', round: 0, design }));
    await desk.until('a verdict', () => desk.state?.entries[0]?.verdict != null);
    const entry = desk.state!.entries[0]!.id;
    const outcome = { kind: 'lost', at: null } as const;
    seqOf(await desk.command({ kind: 'note-trial', entry, robot: 1, outcome, foretold: null }));
    await second.reaches(seqOf(await desk.command({ kind: 'start-check', questions: 3 })));
    const told = await second.document(check(second)!.document);
    expect(told).toMatchObject({
      ok: true,
      kind: 'closing-check',
      body: { questions: [{}, {}, { ask: { real: 'lost' } }] },
    });
    const { team } = desk.state!.entries[0]!;
    const secrets = ['"right":', '"mistakes":', team];
    expect(secrets.filter((secret) => JSON.stringify(told).includes(secret))).toEqual([]);
    expect(check(second)?.key).toBeNull();
    expect(codeOf(await board.document(check(desk)!.document))).toBe('unknown-document');
  });

  it('is answered by teams, each seeing its own answers alone, and ended by the desk', async () => {
    const { key } = check(desk)!;
    const right = key![0]!.right;
    const wrong = key![0]!.mistakes[0]!.choice;
    seqOf(await first.command({ kind: 'answer-check', check: 0, question: 0, picked: right }));
    const last = seqOf(await second.command({ kind: 'answer-check', check: 0, question: 0, picked: wrong }));
    await Promise.all([desk, board, first, second].map((page) => page.reaches(last)));
    expect(check(second)?.answers.map(({ picked }) => picked)).toEqual([wrong]);
    expect(JSON.stringify(second.events)).not.toContain('"mistakes"');
    const ended = seqOf(await desk.command({ kind: 'end-check' }));
    const shown = seqOf(await desk.command({ kind: 'show-check', on: true }));
    expect(shown).toBe(ended + 1);
    await Promise.all([board, first, second].map((page) => page.reaches(shown)));
    expect(check(second)?.key).toEqual(key);
    expect(check(board)?.shown).toEqual({ right: [1, 0, 0], teams: 2 });
    for (const page of [board, first, second]) {
      const seat = page.welcome?.ok ? page.welcome.you : { role: 'board' as const };
      expect(page.state).toEqual(view(desk.state!, seat));
    }
  });

  it('goes on when its end is taken back, and no page is told again what is right before it ends', async () => {
    const { key } = check(desk)!;
    const before = second.received.length;
    const again = seqOf(await desk.command({ kind: 'resume-check' }));
    const right = key![0]!.right;
    const last = seqOf(await second.command({ kind: 'answer-check', check: 0, question: 0, picked: right }));
    expect(last).toBe(again + 1);
    await Promise.all([desk, board, first, second].map((page) => page.reaches(last)));
    expect(second.received.slice(before)).not.toContain('"mistakes"');
    for (const page of [board, first, second]) {
      const seat = page.welcome?.ok ? page.welcome.you : { role: 'board' as const };
      expect(page.state).toEqual(view(desk.state!, seat));
    }
    seqOf(await desk.command({ kind: 'end-check' }));
  });

  it('is asked anew with other questions', async () => {
    await second.reaches(seqOf(await desk.command({ kind: 'start-check', questions: 3 })));
    const [before, now] = desk.state!.checks.map(({ document }) => document);
    expect(now).not.toBe(before);
    expect(codeOf(await desk.command({ kind: 'start-check', questions: 3 }))).toBe('already-so');
    seqOf(await desk.command({ kind: 'end-check' }));
  });

  it('is in a room file, and there again in the room that is opened from it', async () => {
    const file = await fetch(`${here.url}${ROUTES.roomFile}?room=${word}`, {
      headers: { cookie: here.owner },
    });
    const restored = await post(`${here.url}${ROUTES.restoreRoom}`, await file.json(), here.owner);
    const { room } = (await restored.json()) as { room: string };
    const there = await seated(here.url, 'desk', here.owner, room);
    expect(there.state?.checks).toEqual(desk.state?.checks);
    expect(await there.document(check(there)!.document)).toMatchObject({ ok: true });
    there.close();
  });
});
