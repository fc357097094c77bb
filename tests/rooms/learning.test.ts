import { beforeAll, describe, expect, it } from 'vitest';
import { view } from '../../shared/room/seen.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  joinCookie,
  lineDesign,
  openRoom,
  type Page,
  post,
  quickJudging,
  seated,
  seqOf,
} from './harness.ts';
import { stage } from './stage.ts';

/** Help, tries, mending and wishes over real sockets, in one lesson. */

const here = stage('file', { judging: quickJudging });
const { page } = here;
let word: string;
let desk: Page;
let board: Page;
let first: Page;
let second: Page;

beforeAll(async () => {
  ({ word } = await openRoom(here.url, here.owner));
  const tablet = async () => page(here.url, 'tablet', await joinCookie(here.url, word));
  [desk, board] = [await page(here.url, 'desk', here.owner), await page(here.url, 'board')];
  [first, second] = [await tablet(), await tablet()];
  seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' }));
  seqOf(await desk.command({ kind: 'start-building', seconds: null }));
});

const points = (page: Page) => page.state?.entries.map((entry) => entry.verdict?.points);
const judged = (count: number) =>
  desk.until('verdicts', () => desk.state?.entries.filter((entry) => entry.verdict).length === count);

describe('a lesson in which a team is helped', () => {
  it('a second try never costs points: the best entry counts, whichever comes last', async () => {
    seqOf(await first.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }));
    await judged(1);
    seqOf(await first.command({ kind: 'hand-in', round: 0, design: lineDesign(50) }));
    await judged(2);
    await desk.command({ kind: 'show-standings', on: true });
    await board.until('both verdicts', () => points(board)?.every((n) => n !== undefined) === true);
    expect(points(board)).toEqual([60, 0]);
    const csv = await (
      await fetch(`${here.url}${ROUTES.resultsCsv}?room=${word}`, { headers: { cookie: here.owner } })
    ).text();
    expect(
      csv
        .split('\r\n')
        .slice(1, 3)
        .map((row) => row.split(',').slice(9, 13)),
    ).toEqual([
      ['60', 'yes', '60', '1'],
      ['0', 'no', '60', '1'],
    ]);
  });

  it('tells help, tries and mending to that team and the desk, and keeps the count of all others', async () => {
    const team = desk.state!.teams[0]!.id;
    seqOf(await desk.command({ kind: 'set-help', team, step: 'place' }));
    seqOf(await first.command({ kind: 'try', round: 0, guess: 'fails', at: { x: 100, y: 20 }, made: true }));
    const offered = ['line-lost', 'acts-at-once', 'got-tired'] as const;
    const reason = { offered, picked: 'got-tired', right: 'line-lost' } as const;
    seqOf(await first.command({ kind: 'explain', round: 0, ...reason }));
    const mended = seqOf(await first.command({ kind: 'mend', round: 0 }));
    await Promise.all([desk, board, first, second].map((page) => page.reaches(mended)));
    for (const page of [board, first, second]) {
      const seat = page.welcome?.ok ? page.welcome.you : { role: 'board' as const };
      expect(page.state).toEqual(view(desk.state!, seat));
    }
    const told = JSON.stringify([board.events, second.events]);
    for (const secret of ['tried', 'explained', 'mended', 'help-set', 'got-tired']) {
      expect(told).not.toContain(`"${secret}"`);
    }
  });

  it('marks the entry that comes after mending, and a restored room still knows', async () => {
    seqOf(await first.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }));
    await judged(3);
    expect(desk.state?.entries.map(({ mended }) => mended)).toEqual([false, false, true]);
    const file = await fetch(`${here.url}${ROUTES.roomFile}?room=${word}`, {
      headers: { cookie: here.owner },
    });
    const restored = await post(`${here.url}${ROUTES.restoreRoom}`, await file.json(), here.owner);
    const { room } = (await restored.json()) as { room: string };
    const there = await seated(here.url, 'desk', here.owner, room);
    expect(there.state?.entries.map(({ mended }) => mended)).toEqual([false, false, true]);
    expect(there.state?.tries).toEqual(desk.state?.tries);
    there.close();
  });

  it('does not stage whom the wall is not wanted by, and says why', async () => {
    seqOf(await first.command({ kind: 'wish-wall', wish: 'not-at-all' }));
    seqOf(await desk.command({ kind: 'go-to', phase: 'show' }));
    const answer = await desk.command({ kind: 'stage', entries: [desk.state!.entries[0]!.id] });
    expect(codeOf(answer)).toBe('not-on-the-wall');
  });
});
