import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { extract } from 'tar';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bundleServer } from '../../server/building/builds.ts';
import { makeRelease, type Release } from '../../server/building/release.ts';
import { expectClean, openBrowser, PAGES, watchedPage } from './browser.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
let folder: string;
let release: Release;
let home: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'harbour-release-'));
  await bundleServer(ROOT, join(folder, 'server'));
  const options = { root: ROOT, pages: PAGES, server: join(folder, 'server'), node: null };
  release = await makeRelease({ ...options, into: join(folder, 'out') });
  const unpacked = join(folder, 'elsewhere');
  mkdirSync(unpacked);
  await extract({ file: release.archive, cwd: unpacked });
  home = join(unpacked, release.name);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const read = (name: string) => readFileSync(join(home, name), 'utf8');

it('every file has its checksum', () => {
  const sums = read('SHA256SUMS').trim().split('\n');
  expect(sums.length).toBe(release.files);
  for (const line of sums) {
    const [sum, name] = line.split('  ') as [string, string];
    expect(
      createHash('sha256')
        .update(readFileSync(join(home, name)))
        .digest('hex'),
      name,
    ).toBe(sum);
  }
});

it('names its parts with licences and their texts, those in the pages too, and no tools', () => {
  const parts = read('PARTS.txt');
  for (const part of ['express', 'libsql', 'socket.io', 'react', 'konva', 'lucide-react'])
    expect(parts).toMatch(new RegExp(`^${part.replace('.', '\\.')} [\\d.]+: (MIT|ISC)$`, 'm'));
  expect(parts).toContain('Permission is hereby granted, free of charge');
  expect(parts).toContain('SIL OPEN FONT LICENSE');
  expect(parts).not.toMatch(/^(vite|typescript|vitest|esbuild|tsx) /m);
});

// A batch file can't be tried here; it runs the same line.
it.skipIf(process.platform === 'win32')('starts where there is no npm, and its pages open', async () => {
  const bin = join(folder, 'bin');
  mkdirSync(bin);
  symlinkSync(process.execPath, join(bin, 'node'));
  symlinkSync('/usr/bin/dirname', join(bin, 'dirname'));
  const child = spawn(join(home, 'start.sh'), { env: { PATH: bin, PORT: '0' }, cwd: tmpdir() });
  let printed = '';
  const desk = await new Promise<string>((resolve, reject) => {
    const said = (text: Buffer) => {
      printed += text.toString();
      const link = /http:\S+\/desk\?key=\S+/.exec(printed)?.[0];
      if (link) resolve(link);
    };
    child.stdout.on('data', said);
    child.stderr.on('data', said);
    child.once('exit', () => reject(new Error(printed)));
  });
  const browser = await openBrowser();
  const one = await watchedPage(browser, desk, { width: 1366, height: 768 });
  await one.page.goto(desk);
  await one.page.getByText('No room has been opened here yet.').waitFor();
  await one.page.keyboard.press('n');
  await one.page.getByText('Nobody is here yet.').waitFor();
  expectClean(one);
  await browser.close();
  const gone = once(child, 'exit');
  child.kill('SIGTERM');
  expect((await gone)[0]).toBe(0);
});
