import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PRINT_KINDS } from '../../shared/wire/print.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  cookiesOf,
  joinCookie,
  lineDesign,
  makeLink,
  openRoom,
  ownerCookie,
  pagesOfTest,
  post,
  seqOf,
  visitLink,
} from '../rooms/harness.ts';
import { type Bundle, bundleOnce, startProcess } from './process.ts';

/** The server calls nobody: every way out of its process and its workers is written down over a lesson. */

const WATCH = fileURLToPath(new URL('watch-calls.cjs', import.meta.url));

let bundle: Bundle;
let folder: string;
beforeAll(async () => {
  bundle = await bundleOnce();
  folder = mkdtempSync(join(tmpdir(), 'harbour-calls-'));
});
afterAll(() => {
  bundle.remove();
  rmSync(folder, { recursive: true, force: true });
});

/** A process is watched with these; and what has been written down. */
function watched(name: string) {
  const file = join(folder, name);
  const env = { NODE_OPTIONS: `--require ${WATCH}`, WATCH_CALLS: file };
  const lines = () => (existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : []);
  return { env, lines };
}

async function playLesson(url: string, owner: string, room: string, word: string): Promise<void> {
  const { page: sit, closePages } = pagesOfTest();
  const desk = await sit(url, 'desk', owner, room);
  await sit(url, 'board', '', room);
  const first = await sit(url, 'tablet', await joinCookie(url, word));
  seqOf(await desk.command({ kind: 'choose-challenge', key: 'first-line' }));
  seqOf(await desk.command({ kind: 'start-building', seconds: 600 }));
  await first.ask('latest', { kind: 'draft', round: 0, design: lineDesign(60) });
  seqOf(await first.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }));
  await desk.until('a verdict', () => Boolean(desk.state?.entries[0]?.verdict), 60_000);
  seqOf(await desk.command({ kind: 'go-to', phase: 'show' }));
  seqOf(await desk.command({ kind: 'stage', entries: [desk.state!.entries[0]!.id] }));
  seqOf(await desk.command({ kind: 'show-standings', on: true }));
  seqOf(await desk.command({ kind: 'go-to', phase: 'close' }));
  closePages();
}

/** Everything that is asked over HTTP, with what a desk may ask for; room by room. */
async function askEverything(url: string, owner: string, room: string): Promise<void> {
  const headers = { cookie: owner };
  const print = PRINT_KINDS.flatMap((kind) => [`/api/print/${kind}.pdf`, `/api/print/${kind}.svg`]);
  for (const path of [...Object.values(ROUTES), '/', '/desk', '/board', ...print]) {
    await (await fetch(`${url}${path}?room=${room}`, { headers, redirect: 'manual' })).arrayBuffer();
  }
  const made = await makeLink(url, { kind: 'room', room }, owner);
  expect((await visitLink(url, made)).status).toBe(303);
  const file = await (await fetch(`${url}${ROUTES.roomFile}?room=${room}`, { headers })).text();
  expect((await post(url + ROUTES.restoreRoom, file, owner)).status).toBe(201);
  expect((await post(url + ROUTES.eraseRoom, { room }, owner)).status).toBe(204);
}

describe('a server over a whole lesson', () => {
  it('opens no connection, asks for no name, sends no datagram and starts no other program', async () => {
    const { env, lines } = watched('server');
    const server = await startProcess(bundle, join(folder, 'data'), env);
    const owner = await ownerCookie(server);
    expect(cookiesOf(await fetch(`${server.url}/`))).toContain('harbour_team');
    const { room, word } = await openRoom(server.url, owner);
    await playLesson(server.url, owner, room, word);
    await askEverything(server.url, owner, room);
    expect(await server.end('SIGTERM')).toBe(0);
    // The process itself and at least one of its workers were watched.
    expect(lines().filter((line) => line === 'watching').length).toBeGreaterThan(1);
    expect(lines().filter((line) => line !== 'watching')).toEqual([]);
  }, 180_000);

  it('would be noticed by any of them', async () => {
    const { env, lines } = watched('control');
    const calls = [
      "fetch('http://127.0.0.1:64999/').catch(() => 0)",
      "import('node:net').then(({ connect }) => connect(64999, '127.0.0.1').on('error', () => 0))",
      "import('node:dns').then(({ lookup }) => lookup('localhost', () => 0))",
      "import('node:child_process').then(({ spawn }) => spawn(process.execPath, ['--version']))",
    ];
    const child = spawn(process.execPath, ['--input-type=module', '-e', calls.join(';')], {
      env: { ...env, PATH: process.env.PATH },
      stdio: 'ignore',
    });
    await once(child, 'exit');
    const kinds = lines().map((line) => line.split(' ')[0]);
    for (const kind of ['connect', 'lookup', 'spawn']) expect(kinds).toContain(kind);
    expect(kinds.filter((kind) => kind === 'connect').length).toBe(2);
  });
});
