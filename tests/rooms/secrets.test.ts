import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { buildingRoom, lineDesign, type Page, quickJudging, type TestServer, testServer } from './harness.ts';

let server: TestServer;
let pages: Page[] = [];
afterEach(async () => {
  for (const page of pages) page.close();
  pages = [];
  await server.end();
});

describe('the token of a seat', () => {
  it('is nowhere in the data folder, only its hash', async () => {
    server = await testServer({ judging: quickJudging });
    const { desk, tablet, team } = await buildingRoom(server);
    pages = [desk, tablet];
    await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
    const token = team.split('=')[1]!.split(';')[0]!;
    expect(token.length).toBeGreaterThanOrEqual(32);
    const kept = readdirSync(server.dataDir).map((name) =>
      readFileSync(join(server.dataDir, name), 'latin1'),
    );
    expect(kept.some((text) => text.includes(desk.state!.word))).toBe(true);
    expect(kept.filter((text) => text.includes(token))).toEqual([]);
  });
});

describe('files beside the pages', () => {
  /** Sends the path as it is: a browser or `fetch` would tidy it up before. */
  const raw = (path: string) =>
    new Promise<string>((resolve, reject) => {
      const socket = connect(server.port, 'localhost', () =>
        socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`),
      );
      let text = '';
      socket.on('data', (chunk: Buffer) => (text += chunk.toString()));
      socket.on('close', () => resolve(text));
      socket.on('error', reject);
    });

  it('are not given, however the address is written', async () => {
    const home = mkdtempSync(join(tmpdir(), 'harbour-pages-'));
    const folder = join(home, 'pages');
    mkdirSync(join(folder, 'assets'), { recursive: true });
    writeFileSync(join(folder, 'assets', 'a.js'), 'PUBLIC');
    writeFileSync(join(folder, '.hidden'), 'SECRET');
    writeFileSync(join(home, 'secret'), 'SECRET');
    server = await testServer({ judging: quickJudging, pages: folder });
    expect(await raw('/assets/a.js')).toContain('PUBLIC');
    const ups = ['../', '%2e%2e/', '..%2f', '%2e%2e%2f', '..\\', '..%5c', '.%2e/', '%252e%252e/', '....//'];
    const paths = ups.flatMap((up) => [`/${up}secret`, `/assets/${up}${up}secret`, `/assets/${up}.hidden`]);
    for (const path of [...paths, '/.hidden', '/assets/%00', '//secret', '/assets//../../secret']) {
      expect([path, (await raw(path)).includes('SECRET')]).toEqual([path, false]);
    }
    rmSync(home, { recursive: true });
  });
});
