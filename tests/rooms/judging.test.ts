import { afterEach, describe, expect, it } from 'vitest';
import { readyChallenge } from '../../server/rooms/ready.ts';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import {
  buildingRoom,
  codeOf,
  lineDesign,
  type Page,
  pagesOfTest,
  quickJudging,
  seated,
  type TestServer,
  testServer,
} from './harness.ts';

let server: TestServer;
const { pages, closePages } = pagesOfTest();
afterEach(async () => {
  closePages();
  await server.end();
});

/** A desk and a tablet in the building phase of `first-line`. */
async function building() {
  const room = await buildingRoom(server);
  pages.push(room.desk, room.tablet);
  return room;
}

const handIn = (tablet: Page, design: unknown, id?: string) =>
  tablet.command({ kind: 'hand-in', round: 0, design }, id);

describe('judging on the server', () => {
  it('gives the library’s own design full points, and an empty sheet none', async () => {
    server = await testServer();
    const { desk, tablet } = await building();
    const model = readyChallenge('first-line')?.model;
    await handIn(tablet, writeDocument(Design, model!));
    await handIn(tablet, { version: 1, drawing: { lines: [], marks: [] } });
    await desk.until('two verdicts', () => desk.state?.entries.filter((e) => e.verdict).length === 2);
    expect(desk.state?.entries.map((e) => [e.verdict?.points, e.verdict?.met])).toEqual([
      [100, true],
      [0, false],
    ]);
  });

  it('tries an entry again when the judge failed', async () => {
    let calls = 0;
    const judging = {
      ...quickJudging,
      judge: async (task: { design: string }) => {
        if (++calls < 3) throw new Error('the worker died');
        return quickJudging.judge(task);
      },
    };
    server = await testServer({ judging });
    const { desk, tablet } = await building();
    await handIn(tablet, lineDesign(150));
    await desk.until('the verdict', () => Boolean(desk.state?.entries[0]?.verdict));
    expect(calls).toBe(3);
  });

  /** A judge that fails on a line of 90 mm while `broken`. */
  function brokenJudging() {
    const judge = { broken: true, calls: 0 };
    const judging = {
      ...quickJudging,
      judge: async (task: { design: string }) => {
        judge.calls++;
        if (judge.broken && task.design.includes('13000')) throw new Error('cannot');
        return quickJudging.judge(task);
      },
    };
    return { judge, judging };
  }

  it('says of an entry on which the judge always fails that it could not be judged', async () => {
    server = await testServer({ judging: brokenJudging().judging });
    const { desk, tablet } = await building();
    await handIn(tablet, lineDesign(90));
    await handIn(tablet, lineDesign(150));
    const settled = (page: Page) => page.state?.entries.map((e) => [e.unjudged, e.verdict !== null]);
    const expected = JSON.stringify([
      [true, false],
      [false, true],
    ]);
    await desk.until('both', () => JSON.stringify(settled(desk)) === expected);
    await tablet.until('both', () => JSON.stringify(settled(tablet)) === expected);
    await desk.command({ kind: 'go-to', phase: 'show' });
    const entry = desk.state?.entries[0]?.id ?? '';
    expect(codeOf(await desk.command({ kind: 'stage', entries: [entry] }))).toBe('not-judged');
  });

  it('judges it once more when the desk wants it, and only the desk may', async () => {
    const { judge, judging } = brokenJudging();
    server = await testServer({ judging });
    const { desk, tablet } = await building();
    await handIn(tablet, lineDesign(90));
    await desk.until('given up', () => desk.state?.entries[0]?.unjudged === true);
    const again = { kind: 'judge-again', entry: desk.state?.entries[0]?.id ?? '' } as const;
    expect(codeOf(await tablet.command(again))).toBe('not-for-this-seat');
    const before = judge.calls;
    await desk.command(again);
    await desk.until(
      'given up again',
      () => judge.calls === before + 3 && desk.state?.entries[0]?.unjudged === true,
    );
    judge.broken = false;
    await desk.command(again);
    await desk.until('the verdict', () => Boolean(desk.state?.entries[0]?.verdict));
    expect(desk.state?.entries[0]?.unjudged).toBe(false);
    expect(codeOf(await desk.command(again))).toBe('already-judged');
  });

  it('judges it at the next start', async () => {
    server = await testServer({ judging: brokenJudging().judging });
    const { desk, tablet, owner } = await building();
    await handIn(tablet, lineDesign(90));
    await desk.until('given up', () => desk.state?.entries[0]?.unjudged === true);
    const { dataDir } = server;
    await server.close();
    server = await testServer({ dataDir, judging: quickJudging });
    const again = await seated(server.url, 'desk', owner);
    pages.push(again);
    await again.until('the verdict', () => Boolean(again.state?.entries[0]?.verdict));
    expect(again.state?.entries[0]).toMatchObject({ unjudged: false, verdict: { points: 0 } });
  });

  it('judges after a restart what had no verdict before', async () => {
    const waiting: ((reason: Error) => void)[] = [];
    const never = {
      judge: () => new Promise<never>((_, reject) => waiting.push(reject)),
      close: async () => {
        for (const reject of waiting) reject(new Error('ended'));
      },
    };
    server = await testServer({ judging: never });
    const { desk, tablet, owner } = await building();
    await handIn(tablet, lineDesign(150));
    await desk.until('the entry', () => desk.state?.entries.length === 1);
    const { dataDir } = server;
    await server.close();
    server = await testServer({ dataDir, judging: quickJudging });
    const again = await seated(server.url, 'desk', owner);
    pages.push(again);
    await again.until('the verdict', () => Boolean(again.state?.entries[0]?.verdict));
    expect(again.state?.entries[0]?.verdict?.points).toBe(60);
  });
});
