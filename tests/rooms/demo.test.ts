import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openDesk, playDemo } from '../../server/commands/demo/lesson.ts';
import { type RunningServer, startServer } from '../../server/server.ts';

let server: RunningServer;
let dataDir: string;

beforeAll(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'harbour-lines-test-'));
  server = await startServer({ dataDir, port: 0, host: '127.0.0.1', pages: null });
});

afterAll(async () => {
  await server.close();
  rmSync(dataDir, { recursive: true, force: true });
});

describe('the demo', () => {
  it('plays a whole lesson in which all teams but the stuck one hand in something sound', async () => {
    const url = server.url.replace('localhost', '127.0.0.1');
    const state = await playDemo({
      url,
      desk: await openDesk(url, server.deskLink.replace('localhost', '127.0.0.1')),
      teams: 6,
      seed: 7,
      wait: (seconds) => new Promise((done) => setTimeout(done, seconds * 20)),
      say: () => undefined,
    });
    expect(state.phase).toBe('show');
    expect(state.teams).toHaveLength(6);
    expect(state.standingsShown).toBe(true);
    const metBy = new Set(state.entries.filter((e) => e.verdict?.met).map((e) => e.team));
    // One team of six is stuck, so that the desk has somebody to help.
    expect(metBy.size).toBe(5);
    // Some teams begin with a fault, or there would be nothing to argue about.
    expect(state.entries.some((e) => e.verdict && !e.verdict.met)).toBe(true);
    expect(state.entries.filter((e) => e.shown).length).toBeGreaterThanOrEqual(2);
  });
});
