import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import type { RoomState } from '../../shared/room/state.ts';
import type { DeskAccess } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  lineDesign,
  openRoom,
  ownerCookie,
  type Page,
  pagesOfTest,
  post,
  quickJudging,
  type TestServer,
  testServer,
} from './harness.ts';
import { DESK_BY_LINK, SAMPLES, type Sample } from './samples.ts';

const folderOf = ({ name }: Sample) => fileURLToPath(new URL(`../samples/version-${name}`, import.meta.url));

let server: TestServer;
const { page, closePages } = pagesOfTest();
afterEach(async () => {
  closePages();
  await server.end();
});

async function openSample(sample: Sample): Promise<{ desk: Page; owner: string }> {
  const dataDir = mkdtempSync(join(tmpdir(), 'harbour-version-'));
  cpSync(folderOf(sample), dataDir, { recursive: true });
  // Some day these rooms will be older than any that is kept by itself.
  server = await testServer({ dataDir, judging: quickJudging, roomDays: null });
  const owner = await ownerCookie(server);
  const desk = await page(server.url, 'desk', owner);
  return { desk, owner };
}

const lesson = ({ state }: Page) => ({
  phase: state?.phase,
  teams: state?.teams.map(({ id: _, seatFree: _free, ...rest }) => rest),
  rounds: state?.rounds.map((round) => [round.key, round.varied]),
  help: state?.help,
  tries: state?.tries.map((one) => [
    ...[one.round, one.guess, one.at, one.made],
    ...[one.because?.picked, one.because?.right],
  ]),
  entries: state?.entries.map((e) => [
    ...[e.number, e.variant, e.late, e.taken, e.mended],
    ...[e.verdict?.points, e.verdict?.met, e.shown],
  ]),
  onStage: state?.stage.length,
  standingsShown: state?.standingsShown,
});

describe.each(SAMPLES)('a data folder of version $name', (sample) => {
  const { word, handedIn } = sample;

  it('opens with its lesson, and the lesson goes on', async () => {
    const { desk } = await openSample(sample);
    expect(desk.state?.word).toBe(word);
    expect(lesson(desk)).toEqual(sample.asPlayed);
    await desk.command({ kind: 'go-to', phase: 'build' });
    expect(codeOf(await desk.command({ kind: 'extend-building', seconds: 60 }))).toBe('accepted');
  });

  it('gives the board what it was shown then', async () => {
    await openSample(sample);
    const board = await page(server.url, 'board', '', word);
    // The standings were shown in that lesson, and drawings were staged.
    expect(board.state?.entries.map((e) => [e.verdict?.points, e.design !== null])).toEqual(sample.atBoard);
  });

  it('has its seats, answers, drafts and the stage’s clock', async () => {
    const { desk } = await openSample(sample);
    const tablet = await page(server.url, 'tablet', sample.firstTeam);
    const first = desk.state?.teams[0]?.id;
    expect(tablet.welcome).toMatchObject({ ok: true, you: { role: 'team', team: first } });
    const latest = tablet.welcome?.ok ? tablet.welcome.latest : [];
    expect(latest).toMatchObject([{ kind: 'draft', team: first, design: lineDesign(33) }]);
    const again = { kind: 'hand-in', round: 0, design: lineDesign(10) } as const;
    expect(await tablet.command(again, handedIn.id)).toEqual({ ok: true, seq: handedIn.seq });
    const clocks = desk.welcome?.ok && desk.welcome.latest.filter((value) => value.kind === 'stage-clock');
    expect(clocks).toMatchObject([{ clock: { playing: false, speed: 2, at: 1.5 } }]);
  });

  it('has what was handed in, verdicts and challenges, each in a form that is read', async () => {
    const { desk, owner } = await openSample(sample);
    const ids = desk.state?.entries.flatMap((e) => [e.design ?? '', e.verdict?.document ?? '']) ?? [];
    const challenges = desk.state?.rounds.map(({ challenge }) => challenge) ?? [];
    const fetched = await Promise.all([...ids, ...challenges].map((id) => desk.document(id)));
    expect(fetched.map((one) => one.ok && one.kind)).toEqual([
      ...sample.documents,
      ...challenges.map(() => 'challenge'),
    ]);
    const file = await fetch(`${server.url}${ROUTES.roomFile}?room=${word}`, { headers: { cookie: owner } });
    const restored = await post(`${server.url}${ROUTES.restoreRoom}`, await file.text(), owner);
    expect(restored.status).toBe(201);
  });
});

describe('a data folder of version 2', () => {
  it('has its links: who got one is the desk of the room that it opened', async () => {
    await openSample(SAMPLES[1]!);
    const answer = await fetch(server.url + ROUTES.access, { headers: { cookie: DESK_BY_LINK } });
    expect((await answer.json()) as DeskAccess).toEqual({ kind: 'desk', room: null });
    const desk = await page(server.url, 'desk', DESK_BY_LINK);
    expect(desk.state?.word).toBe(SAMPLES[1]!.word);
  });
});

describe.each(SAMPLES)('a room file of version $name', (sample) => {
  it('opens on a server that has never seen it', async () => {
    server = await testServer({ judging: quickJudging, roomDays: null });
    const owner = await ownerCookie(server);
    await openRoom(server.url, owner);
    const file = readFileSync(join(folderOf(sample), 'room.json'), 'utf8');
    const answer = await post(`${server.url}${ROUTES.restoreRoom}`, file, owner);
    expect(await answer.json()).toMatchObject({ word: sample.word });
    const desk = await page(server.url, 'desk', owner, sample.word);
    expect(lesson(desk)).toEqual(sample.asPlayed);
  });
});

describe('a data folder of version 2 with later facts', () => {
  const sample = SAMPLES[2]!;
  const numberOf = (state: RoomState, id: string | undefined) =>
    state.entries.findIndex((entry) => entry.id === id);

  it('has what was planned, calibrated, said to teams and set for them', async () => {
    const state = (await openSample(sample)).desk.state!;
    const [first, second] = state.teams.map(({ id }) => id);
    expect([state.chargerWatched, state.kit]).toEqual([true, expect.any(String)]);
    expect(state.plan.queue).toEqual(['sharp-corner']);
    expect(state.plan.from?.places).toMatchObject([{ emblem: 'sailboat', berth: 1, gentler: true }]);
    expect(state.calibrations).toMatchObject([
      { kind: 'calibrated', robot: 3, light: 'daylight' },
      { kind: 'light-changed' },
    ]);
    expect(state.conditions).toMatchObject({
      weather: 'breezy',
      own: [{ team: second, weather: 'stormy' }],
    });
    expect(state.coaching.gentler).toEqual([first]);
    expect(state.coaching.notes).toMatchObject([
      { team: first, words: { kind: 'hint', hint: 'try-it' }, away: true },
      { team: second, words: { kind: 'text', text: 'Look at the gate once more.' }, away: false },
      { team: second, words: { kind: 'returned', reason: 'by-mistake' }, away: false },
    ]);
    expect(state.entries.map((e) => [e.weather, e.returned])).toEqual([
      ['breezy', false],
      ['stormy', true],
    ]);
  });

  it('has what the board showed, what was asked at the end and what robots did', async () => {
    const state = (await openSample(sample)).desk.state!;
    const { board, driving, checks } = state;
    expect([board.scene, board.dark, board.robots]).toEqual(['gallery', true, { there: 1, of: 2 }]);
    expect(board.gallery.map(({ entry }) => numberOf(state, entry))).toEqual([0, 1]);
    expect([board.fleet?.weather, numberOf(state, board.fleet?.entry)]).toEqual(['stormy', 1]);
    expect([board.forecast?.passed, board.forecast?.hands]).toEqual([1, [[3, 4]]]);
    expect([driving.robots, driving.turn, driving.over]).toEqual([[3, 8], 1, [[3, 8]]]);
    expect(driving.trials.map((t) => [numberOf(state, t.entry), t.robot, t.outcome, t.withdrawn])).toEqual([
      [0, 3, { kind: 'as-predicted', seconds: 5.2 }, false],
      [1, 8, { kind: 'lost', at: { x: 100, y: 40 } }, true],
    ]);
    // Both teams ticked what is right in the first question, one of them on paper.
    expect(checks.map(({ ended, answers, shown }) => [ended, answers.length, shown])).toEqual([
      [true, 2, { right: [2, 0], teams: 2 }],
    ]);
  });
});
