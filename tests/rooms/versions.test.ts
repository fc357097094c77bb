import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  lineDesign,
  openRoom,
  ownerCookie,
  type Page,
  post,
  quickJudging,
  seated,
  type TestServer,
  testServer,
} from './harness.ts';

/**
 * A lesson as the first version kept it: two teams, three entries, one of them late, a draft, a stage.
 * The files in `samples` are never made anew; whatever changes later, these must open.
 */
const SAMPLE = fileURLToPath(new URL('../samples/version-1', import.meta.url));
const WORD = 'hill-96';
/** The seat of the first team, as its tablet's browser carries it. */
const FIRST_TEAM = 'harbour_team=-aDLbWp9at-UzXFs4pYFkdgeqRdytqD0';

let server: TestServer;
const pages: Page[] = [];
afterEach(async () => {
  for (const page of pages.splice(0)) page.close();
  await server.end();
});

async function openSample(): Promise<{ desk: Page; owner: string }> {
  const dataDir = mkdtempSync(join(tmpdir(), 'harbour-version-'));
  cpSync(SAMPLE, dataDir, { recursive: true });
  server = await testServer({ dataDir, judging: quickJudging });
  const owner = await ownerCookie(server);
  const desk = await seated(server.url, 'desk', owner);
  pages.push(desk);
  return { desk, owner };
}

const lesson = (page: Page) => ({
  phase: page.state?.phase,
  teams: page.state?.teams.map((team) => [team.emblem, team.berth]),
  rounds: page.state?.rounds.map((round) => round.key),
  entries: page.state?.entries.map((e) => [
    ...[e.number, e.late, e.taken],
    ...[e.verdict?.points, e.verdict?.met, e.shown],
  ]),
  onStage: page.state?.stage.length,
  standingsShown: page.state?.standingsShown,
});
const AS_PLAYED = {
  phase: 'show',
  teams: [
    ['sailboat', 1],
    ['bell', 2],
  ],
  rounds: ['first-line'],
  entries: [
    [1, false, true, 100, true, true],
    [1, false, true, 0, false, false],
    // In this version late ones counted at once, and they still do.
    [2, true, true, 0, false, false],
  ],
  onStage: 1,
  standingsShown: true,
};

describe('a data folder of version 1', () => {
  it('opens with its lesson, and the lesson goes on', async () => {
    const { desk } = await openSample();
    expect(desk.state?.word).toBe(WORD);
    expect(lesson(desk)).toEqual(AS_PLAYED);
    await desk.command({ kind: 'go-to', phase: 'build' });
    expect(codeOf(await desk.command({ kind: 'extend-building', seconds: 60 }))).toBe('accepted');
  });

  it('gives the board what it was shown then', async () => {
    await openSample();
    const board = await seated(server.url, 'board');
    pages.push(board);
    // The standings were shown in that lesson, and one drawing was staged.
    expect(board.state?.entries.map((e) => [e.verdict?.points, e.design !== null])).toEqual([
      [100, true],
      [0, false],
      [0, false],
    ]);
  });

  it('has its seats, answers, drafts and the stage’s clock', async () => {
    const { desk } = await openSample();
    const tablet = await seated(server.url, 'tablet', FIRST_TEAM);
    pages.push(tablet);
    const team = desk.state?.teams[0]?.id;
    expect(tablet.welcome).toMatchObject({ ok: true, you: { role: 'team', team } });
    const latest = tablet.welcome?.ok ? tablet.welcome.latest : [];
    expect(latest).toMatchObject([{ kind: 'draft', team, design: lineDesign(33) }]);
    const again = { kind: 'hand-in', round: 0, design: lineDesign(10) } as const;
    expect(await tablet.command(again, 'first-hand-in')).toEqual({ ok: true, seq: 7 });
    const clocks = desk.welcome?.ok && desk.welcome.latest.filter((value) => value.kind === 'stage-clock');
    expect(clocks).toMatchObject([{ clock: { playing: false, speed: 2, at: 1.5 } }]);
  });

  it('has its drawings, verdicts and challenge, each in a form that is read', async () => {
    const { desk, owner } = await openSample();
    const ids = desk.state?.entries.flatMap((e) => [e.design ?? '', e.verdict?.document ?? '']) ?? [];
    const fetched = await Promise.all(
      [...ids, desk.state?.rounds[0]?.challenge ?? ''].map((id) => desk.document(id)),
    );
    expect(fetched.map((one) => one.ok && one.kind)).toEqual([
      ...['design', 'verdict', 'design', 'verdict', 'design', 'verdict'],
      'challenge',
    ]);
    const file = await fetch(`${server.url}${ROUTES.roomFile}?room=${WORD}`, { headers: { cookie: owner } });
    const restored = await post(`${server.url}${ROUTES.restoreRoom}`, await file.text(), owner);
    expect(restored.status).toBe(201);
  });
});

describe('a room file of version 1', () => {
  it('opens on a server that has never seen it', async () => {
    server = await testServer({ judging: quickJudging });
    const owner = await ownerCookie(server);
    await openRoom(server.url, owner);
    const file = readFileSync(join(SAMPLE, 'room.json'), 'utf8');
    const answer = await post(`${server.url}${ROUTES.restoreRoom}`, file, owner);
    expect(await answer.json()).toMatchObject({ word: WORD });
    const desk = await seated(server.url, 'desk', owner, WORD);
    pages.push(desk);
    expect(lesson(desk)).toEqual(AS_PLAYED);
  });
});
