import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  buildingRoom,
  codeOf,
  joinCookie,
  lineDesign,
  type Page,
  quickJudging,
  seated,
  seqOf,
  type TestServer,
  testServer,
} from './harness.ts';

/** Every byte that a team's and a board's socket got, while another team drew, handed in and was judged. */

let server: TestServer;
let desk: Page;
let board: Page;
let mine: Page;
let other: Page;
let design: string;
let verdict: string;
/** Numbers that stand in the other team's drawings and nowhere else. */
const [DRAFT_MARK, ENTRY_MARK] = [61_237, 73_459];
const marked = (mark: number) => {
  const drawing = lineDesign(150, 120);
  drawing.drawing.lines[0]!.pieces[0]!.to.x = mark;
  return drawing;
};

beforeAll(async () => {
  server = await testServer({ judging: quickJudging });
  const room = await buildingRoom(server);
  ({ desk, tablet: mine } = room);
  board = await seated(server.url, 'board');
  other = await seated(server.url, 'tablet', await joinCookie(server.url, room.word));
  await other.ask('latest', { kind: 'draft', round: 0, design: marked(DRAFT_MARK) });
  await other.command({ kind: 'hand-in', round: 0, design: marked(ENTRY_MARK) });
  await desk.until('the verdict', () => Boolean(desk.state?.entries[0]?.verdict));
  await mine.hello();
  await mine.hello(null, 0);
  await board.hello(null, 0);
  design = desk.state?.entries[0]?.design ?? '';
  verdict = desk.state?.entries[0]?.verdict?.document ?? '';
});
afterAll(async () => {
  for (const page of [desk, board, mine, other]) page.close();
  await server.end();
});

describe('before the desk shows a drawing', () => {
  it.each([['team'], ['board']])('a %s gets neither its content nor its id', async (who) => {
    const page = who === 'team' ? mine : board;
    expect(page.received.length).toBeGreaterThan(500);
    const hits = [String(DRAFT_MARK), String(ENTRY_MARK), design].filter((s) => page.received.includes(s));
    expect(hits).toEqual([]);
  });

  it('a team gets no verdict of another team', () => {
    expect(mine.received.includes(verdict)).toBe(false);
    expect(mine.state?.entries[0]).toMatchObject({ design: null, verdict: null });
  });

  it('a board gets no points and no verdict before the standings are shown', () => {
    expect(board.received).not.toContain(verdict);
    expect(board.received).not.toMatch(/"points":\d/);
    expect(board.state?.entries[0]).toMatchObject({ verdict: null, counted: false });
  });

  it('asking for it by its id is refused', async () => {
    expect(codeOf(await mine.document(design))).toBe('unknown-document');
    expect(codeOf(await mine.document(verdict))).toBe('unknown-document');
    expect(codeOf(await board.document(design))).toBe('unknown-document');
    expect(codeOf(await board.document(verdict))).toBe('unknown-document');
  });

  it('its own team and the desk have it', async () => {
    expect(codeOf(await other.document(design))).toBe('accepted');
    expect(codeOf(await desk.document(design))).toBe('accepted');
  });

  it('the challenge comes to teams without the maker’s design and the teacher’s note', async () => {
    const id = desk.state?.rounds[0]?.challenge ?? '';
    const [whole, part] = [await desk.document(id), await mine.document(id)];
    const keys = (fetched: typeof whole) => Object.keys(fetched.ok ? (fetched.body as object) : {});
    const hidden = keys(whole).filter((key) => !keys(part).includes(key));
    expect(hidden.sort()).toEqual(['model', 'note']);
  });
});

describe('when the desk shows the standings', () => {
  it('the board gets the points, teams get none of others', async () => {
    const seq = seqOf(await desk.command({ kind: 'show-standings', on: true }));
    await Promise.all([mine.reaches(seq), board.reaches(seq)]);
    expect(board.state?.entries[0]?.verdict).toMatchObject({ points: 60, met: true });
    expect(mine.state?.entries[0]).toMatchObject({ verdict: null });
    expect(mine.received).not.toContain(verdict);
    expect(codeOf(await board.document(verdict))).toBe('unknown-document');
  });
});

describe('after it', () => {
  it('everybody may read it', async () => {
    await desk.command({ kind: 'go-to', phase: 'show' });
    const seq = seqOf(await desk.command({ kind: 'stage', entries: [desk.state?.entries[0]?.id ?? ''] }));
    await Promise.all([mine.reaches(seq), board.reaches(seq)]);
    expect(mine.state?.entries[0]?.design).toBe(design);
    expect(codeOf(await mine.document(design))).toBe('accepted');
    expect(codeOf(await board.document(verdict))).toBe('accepted');
    expect(codeOf(await mine.document(verdict))).toBe('unknown-document');
  });
});
