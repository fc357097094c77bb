import { rmSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import {
  buildingRoom,
  lineDesign,
  pagesOfTest,
  quickJudging,
  type TestServer,
  testServer,
} from './harness.ts';

let server: TestServer;
const { pages, page: sit, closePages } = pagesOfTest();
afterEach(async () => {
  closePages();
  await server.end();
});

/** Ends the server and starts one at another time on the same folder. */
async function restart(now?: () => number): Promise<void> {
  const { dataDir } = server;
  closePages();
  await server.close();
  server = await testServer({ dataDir, judging: quickJudging, ...(now && { now }) });
}

async function building(seconds: number | null) {
  server = await testServer({ judging: quickJudging });
  const room = await buildingRoom(server, seconds);
  pages.push(room.desk, room.tablet);
  return room;
}

describe('a second start', () => {
  it('goes on where the first one stopped, with the same links and seats', async () => {
    const { desk, tablet, owner, team } = await building(null);
    await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
    await desk.until('the verdict', () => Boolean(desk.state?.entries[0]?.verdict));
    const [before, seat] = [desk.state, tablet.welcome?.ok && tablet.welcome.you];
    const key = server.ownerKey;
    await restart();
    expect(server.ownerKey).toBe(key);
    expect((await sit(server.url, 'desk', owner)).state).toEqual(before);
    expect((await sit(server.url, 'tablet', team)).welcome).toMatchObject({ ok: true, you: seat });
  });

  it('has the newest draft, though it is no event', async () => {
    const { tablet, team } = await building(null);
    await tablet.ask('latest', { kind: 'draft', round: 0, design: lineDesign(33) });
    await restart();
    const again = await sit(server.url, 'tablet', team);
    const drafts = again.welcome?.ok ? again.welcome.latest : [];
    expect(drafts).toMatchObject([{ kind: 'draft', design: lineDesign(33) }]);
  });

  it('ends a building time that ran out meanwhile', async () => {
    const { owner } = await building(600);
    await restart(() => Date.now() + 3_600_000);
    const desk = await sit(server.url, 'desk', owner);
    await desk.until('the end', () => desk.state?.building?.ended === true);
  });

  it('lets a building time run on', async () => {
    const { owner, desk } = await building(600);
    const until = desk.state?.building?.until;
    await restart();
    const again = await sit(server.url, 'desk', owner);
    expect(again.state?.building).toMatchObject({ until, ended: false });
  });

  it('on a folder in use is refused, and the room goes on', async () => {
    const { desk, owner } = await building(null);
    const { dataDir } = server;
    await expect(testServer({ dataDir, judging: quickJudging })).rejects.toMatchObject({
      code: 'FOLDER_IN_USE',
    });
    expect(await desk.command({ kind: 'look-here', on: true })).toMatchObject({ ok: true });
    await restart();
    expect((await sit(server.url, 'desk', owner)).state?.lookHere).toBe(true);
  });

  it('on another folder is another owner with no rooms', async () => {
    const { owner } = await building(null);
    const other = await testServer({ judging: quickJudging });
    const stranger = await sit(other.url, 'desk', owner);
    expect(stranger.welcome).toMatchObject({ ok: false, refusal: { code: 'no-seat' } });
    stranger.close();
    await other.close();
    rmSync(other.dataDir, { recursive: true });
  });
});
