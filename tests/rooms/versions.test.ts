import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
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

/**
 * Lessons as each version kept them. The files in `samples` are never made anew; whatever changes later,
 * these must open. What is expected is what was done in the lesson when it was kept.
 */
interface Sample {
  readonly version: number;
  readonly word: string;
  /** The seat of the first team, as its tablet's browser carries it. */
  readonly firstTeam: string;
  /** A hand-in that the first team has its answer to. */
  readonly handedIn: { readonly id: string; readonly seq: number };
  readonly asPlayed: unknown;
  /** Of each entry: points and whether the drawing may be looked at, as the board has them. */
  readonly atBoard: readonly unknown[];
  /** Kinds of what each entry handed in and of its verdict. */
  readonly documents: readonly string[];
}

const DRAWN = ['design', 'verdict'];
const ANSWERED = ['answers', 'answers-verdict'];
const team = (emblem: string, berth: number) => ({
  emblem,
  berth,
  moves: 0,
  help: null,
  // Nobody had been asked yet: a drawing stands without its emblem until its team agrees.
  wall: null,
  mended: [],
});

const SAMPLES: readonly Sample[] = [
  {
    // Two teams, three entries, one of them late, a draft, a stage.
    version: 1,
    word: 'hill-96',
    firstTeam: 'harbour_team=-aDLbWp9at-UzXFs4pYFkdgeqRdytqD0',
    handedIn: { id: 'first-hand-in', seq: 7 },
    asPlayed: {
      phase: 'show',
      teams: [team('sailboat', 1), team('bell', 2)],
      rounds: [['first-line', false]],
      help: 'mend',
      tries: [],
      entries: [
        [1, null, false, true, false, 100, true, true],
        [1, null, false, true, false, 0, false, false],
        // In this version late ones counted at once, and they still do.
        [2, null, true, true, false, 0, false, false],
      ],
      onStage: 1,
      standingsShown: true,
    },
    atBoard: [
      [100, true],
      [0, false],
      [0, false],
    ],
    documents: [...DRAWN, ...DRAWN, ...DRAWN],
  },
  {
    /*
     * Three rounds with varied sheets, the second of them predicted; help, tries, a reason, mending, late
     * entries of which the desk takes one, an entry that the judge failed on at first, seats and teams that
     * moved, a desk by its link.
     */
    version: 2,
    word: 'onion-87',
    firstTeam: 'harbour_team=_nfcRkLtF-woIb2DxWHHD9K72A4RS3qU',
    handedIn: { id: 'v2-10-hand-in', seq: 17 },
    asPlayed: {
      phase: 'show',
      teams: [
        { ...team('sailboat', 1), help: 'place' },
        { ...team('bell', 2), wall: 'no-emblem', mended: [0] },
        { ...team('telescope', 3), moves: 1 },
      ],
      rounds: [
        ['ferry-junction', true],
        ['two-travellers', true],
        ['first-line', true],
      ],
      help: 'sentence',
      tries: [
        [0, 'fails', { x: 100, y: 20 }, true, 'got-tired', 'line-lost'],
        [0, 'not-sure', null, false, undefined, undefined],
      ],
      entries: [
        [1, null, false, true, false, 100, true, true],
        [1, 'mirrored', false, true, true, 100, true, true],
        [2, null, true, true, false, 0, false, false],
        [2, 'mirrored', true, false, true, 0, false, false],
        [1, 'turned', true, false, false, 0, false, false],
        [1, null, false, true, false, 0, false, false],
        [2, null, false, true, false, 50, false, false],
        [1, 'mirrored', false, true, false, 0, false, true],
      ],
      onStage: 1,
      standingsShown: true,
    },
    atBoard: [
      [100, true],
      [100, true],
      [0, false],
      [0, false],
      [0, false],
      [0, false],
      [50, false],
      [0, true],
    ],
    documents: [...Array(5).fill(DRAWN), ANSWERED, ANSWERED, DRAWN].flat() as string[],
  },
];
const DESK_BY_LINK = 'harbour_desk=X0u50Hh-NvbK7XucHGbiojIoi325t73u';

const folderOf = ({ version }: Sample) =>
  fileURLToPath(new URL(`../samples/version-${version}`, import.meta.url));

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

describe.each(SAMPLES)('a data folder of version $version', (sample) => {
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

describe.each(SAMPLES)('a room file of version $version', (sample) => {
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
