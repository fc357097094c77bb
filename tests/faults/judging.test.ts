import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { startJudging } from '../../server/judging/judging.ts';
import { buildingRoom, lineDesign, type Page, type TestServer, testServer } from '../rooms/harness.ts';

/** The judge's worker dies or hangs over an entry, once; the second time it does its work. */

const DEADLINE_MS = 2000;
const WORKER = `
import { existsSync, writeFileSync } from 'node:fs';
export default async ({ design }) => {
  const far = JSON.parse(design).drawing.lines[0].pieces[0].to.x;
  const mark = new URL('tried-' + far, import.meta.url);
  if (far < 14000 && !existsSync(mark)) {
    writeFileSync(mark, '');
    if (far < 10000) process.exit(1);
    for (;;);
  }
  return { verdict: { far }, points: far / 1000, met: true };
};
`;

let folder: string;
let server: TestServer;
let pages: Page[] = [];
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'harbour-worker-'));
  writeFileSync(join(folder, 'worker.mjs'), WORKER);
});
afterEach(async () => {
  for (const page of pages) page.close();
  pages = [];
  await server.end();
});
afterAll(() => rmSync(folder, { recursive: true }));

it('a worker that is killed and one that is stuck are replaced, and each entry is judged once', async () => {
  const judging = startJudging({
    worker: join(folder, 'worker.mjs'),
    execArgv: [],
    deadlineMs: DEADLINE_MS,
  });
  server = await testServer({ judging });
  const { desk, tablet } = await buildingRoom(server);
  pages = [desk, tablet];
  const lengths = [50, 90, 150, 160];
  for (const length of lengths) {
    await tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(length) });
  }
  const settled = () => desk.state?.entries.every((entry) => entry.verdict) === true;
  await desk.until('verdicts', settled, 40_000);
  expect(desk.state?.entries.map((entry) => entry.verdict?.points)).toEqual([9, 13, 19, 20]);
  expect(desk.events.filter((event) => event.fact?.kind === 'judged').length).toBe(lengths.length);
  expect(['tried-9000', 'tried-13000'].map((mark) => existsSync(join(folder, mark)))).toEqual([true, true]);
});
