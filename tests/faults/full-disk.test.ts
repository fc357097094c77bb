import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { EventLog } from '../../server/log/event-log.ts';
import { openSqliteLog } from '../../server/log/sqlite.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  joinCookie,
  NO_RATES,
  openRoom,
  ownerCookie,
  type Page,
  pagesOfTest,
  post,
  quickJudging,
  type TestServer,
  testServer,
} from '../rooms/harness.ts';

/** A store with hardly any space left, as on a full disk. */

const PAGES = 70;
let folder: string;
let log: EventLog;
let server: TestServer;
const { page: sit, closePages } = pagesOfTest();
/** Counts the writes, so that a server which hammers a full disk is seen. */
let writes = 0;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'harbour-full-'));
  log = await openSqliteLog(folder, { mostPages: PAGES });
  const append = log.append.bind(log);
  writes = 0;
  log.append = (...parts) => {
    writes++;
    return append(...parts);
  };
  // The last pages are filled by opening many rooms, which the usual rate would end before.
  server = await testServer({ log, judging: quickJudging, rates: NO_RATES });
});
afterEach(async () => {
  closePages();
  await server.end();
  rmSync(folder, { recursive: true, force: true });
});

/** A drawing of some 20 kB, each another one. */
const large = (i: number) => ({
  version: 1,
  drawing: {
    lines: Array.from({ length: 200 }, (_, n) => ({
      id: `l${n}`,
      width: 500,
      from: { x: 4000, y: 100 + n },
      pieces: [{ to: { x: 15_000 + i, y: 100 + n }, bulge: 0 }],
    })),
    marks: [],
  },
});

async function lesson() {
  const owner = await ownerCookie(server);
  const { word } = await openRoom(server.url, owner);
  const team = await joinCookie(server.url, word);
  const desk = await sit(server.url, 'desk', owner);
  const tablet = await sit(server.url, 'tablet', team);
  await desk.command({ kind: 'choose-challenge', key: 'first-line' });
  await desk.command({ kind: 'start-building', seconds: null });
  return { owner, word, team, desk, tablet };
}

/** Hands in until the store is full; how many were accepted. */
async function fillUp(tablet: Page): Promise<number> {
  for (let i = 0; ; i++) {
    const answer = await tablet.command({ kind: 'hand-in', round: 0, design: large(i) });
    if (codeOf(answer) === 'store-full') return i;
    expect(codeOf(answer)).toBe('accepted');
  }
}

describe('a full disk', () => {
  it('refuses with a code, keeps no half of anything, and the room can be read and exported', async () => {
    const { owner, team, desk, tablet } = await lesson();
    const accepted = await fillUp(tablet);
    expect(accepted).toBeGreaterThan(2);
    await desk.reaches(tablet.state?.seq ?? 0);
    expect(desk.state?.entries.length).toBe(accepted);
    expect((await log.eventsAfter(desk.state!.id, 0)).length).toBe(desk.state?.seq);

    const again = await sit(server.url, 'tablet', team);
    expect(again.state?.entries.length).toBe(accepted);
    const design = again.state?.entries[0]?.design ?? '';
    expect(codeOf(await again.document(design))).toBe('accepted');
    for (const route of [ROUTES.roomFile, ROUTES.resultsCsv]) {
      const file = await fetch(server.url + route, { headers: { cookie: owner } });
      expect(file.status).toBe(200);
    }
    const file = await fetch(server.url + ROUTES.roomFile, { headers: { cookie: owner } });
    expect(((await file.json()) as { events: unknown[] }).events.length).toBe(desk.state?.seq);
  });

  it('refuses new rooms and new teams too, and says so on every way', async () => {
    const { owner, word, tablet } = await lesson();
    await fillUp(tablet);
    const refusals = new Set<string>();
    // Rooms first: a room takes more than a team, and a room full of teams would refuse for that.
    for (let i = 0; i < 200 && refusals.size < 1; i++) {
      const opened = await post(server.url + ROUTES.openRoom, { chargerWatched: true }, owner);
      if (!opened.ok) refusals.add(`room ${codeOf(await opened.json())} ${opened.status}`);
    }
    for (let i = 0; i < 38 && refusals.size < 2; i++) {
      const joined = await post(server.url + ROUTES.join, { word });
      if (!joined.ok) refusals.add(`team ${codeOf(await joined.json())} ${joined.status}`);
    }
    expect([...refusals].sort()).toEqual(['room store-full 507', 'team store-full 507']);
  });

  it('is not hammered while an entry waits for its verdict', async () => {
    const { desk, tablet } = await lesson();
    await fillUp(tablet);
    await desk.until('quiet', () => true);
    const before = writes;
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(writes - before).toBeLessThan(5);
  });

  it('is over when there is space: the same folder opens, and what was refused is accepted', async () => {
    const { owner, team, desk, tablet } = await lesson();
    const accepted = await fillUp(tablet);
    closePages();
    await server.close();
    server = await testServer({ dataDir: folder, judging: quickJudging });
    const key = (await ownerCookie(server)) || owner;
    const [deskNow, tabletNow] = [await sit(server.url, 'desk', key), await sit(server.url, 'tablet', team)];
    expect(deskNow.state?.entries.length).toBe(accepted);
    expect(deskNow.state?.id).toBe(desk.state?.id);
    expect(codeOf(await tabletNow.command({ kind: 'hand-in', round: 0, design: large(999) }))).toBe(
      'accepted',
    );
    await deskNow.until('verdicts', () => deskNow.state?.entries.every((e) => e.verdict) === true);
  });
});
