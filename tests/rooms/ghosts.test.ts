import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildingRoom,
  codeOf,
  lineDesign,
  Page,
  pagesOfTest,
  quickJudging,
  type TestServer,
  testServer,
} from './harness.ts';

/** Two connections of one tab, of which the server does not know which one is still listened to. */

let server: TestServer;
const { pages, closePages } = pagesOfTest();
beforeEach(async () => {
  server = await testServer({ judging: quickJudging });
});
afterEach(async () => {
  closePages();
  await server.end();
});

async function building() {
  const { desk, tablet, team } = await buildingRoom(server);
  pages.push(desk, tablet);
  const connect = (connection: number) => {
    const page = new Page(server.url, 'tablet', team, null, { id: 't', connection });
    pages.push(page);
    return page;
  };
  return { desk, connect };
}

const handIn = { kind: 'hand-in', round: 0, design: lineDesign(150) } as const;

describe('an older connection of a tab', () => {
  it('whose hello comes late does not take the seat from the newer one', async () => {
    const { connect } = await building();
    const newer = connect(2);
    await newer.hello();
    expect(codeOf(await connect(1).hello())).toBe('no-seat');
    expect(codeOf(await newer.command(handIn))).toBe('accepted');
    expect(newer.quiet).toBe(0);
  });

  it('is ended when the newer one says hello, and its team is not away', async () => {
    const { desk, connect } = await building();
    const older = connect(1);
    await older.hello();
    const newer = connect(2);
    await newer.hello();
    await older.until('ended', () => older.socket.disconnected);
    expect(codeOf(await newer.command(handIn))).toBe('accepted');
    await desk.reaches(newer.state?.seq ?? 0);
    expect(desk.latest.filter((value) => value.kind === 'doing' && value.doing === 'away')).toEqual([]);
  });
});
