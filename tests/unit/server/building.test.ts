import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Build, bringUpToDate } from '../../../server/building/builds.ts';

let root: string;
let made: number;
let failing: boolean;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'harbour-build-'));
  [made, failing] = [0, false];
  mkdirSync(join(root, 'src/deep'), { recursive: true });
  write('src/a.ts', 'a');
  write('src/deep/b.ts', 'b');
});
afterEach(() => rmSync(root, { recursive: true }));

const write = (path: string, text: string) => writeFileSync(join(root, path), text);
const built = () => readFileSync(join(root, 'out/all.txt'), 'utf8');
const build: Build = {
  name: 'test',
  target: 'out',
  folders: ['src'],
  make: async (from, outDir) => {
    made++;
    writeFileSync(join(outDir, 'all.txt'), readFileSync(join(from, 'src/a.ts'), 'utf8'));
    if (failing) throw new Error('a syntax error');
  },
};

describe('bringUpToDate', () => {
  it('builds once while the sources stay', async () => {
    expect(await bringUpToDate(root, build)).toBe(true);
    expect(await bringUpToDate(root, build)).toBe(false);
    expect([made, built()]).toEqual([1, 'a']);
  });

  it('builds again after a change of a text, a name, or of what is installed', async () => {
    await bringUpToDate(root, build);
    write('src/a.ts', 'changed');
    expect(await bringUpToDate(root, build)).toBe(true);
    expect(built()).toBe('changed');
    write('src/c.ts', '');
    expect(await bringUpToDate(root, build)).toBe(true);
    rmSync(join(root, 'src/deep/b.ts'));
    expect(await bringUpToDate(root, build)).toBe(true);
    write('package.json', '{}');
    expect(await bringUpToDate(root, build)).toBe(true);
  });

  it('does not build for a new time on an old text', async () => {
    await bringUpToDate(root, build);
    utimesSync(join(root, 'src/a.ts'), new Date(), new Date());
    expect(await bringUpToDate(root, build)).toBe(false);
  });

  it('builds again, even an old text, after it was changed and a build of that failed', async () => {
    await bringUpToDate(root, build);
    write('src/a.ts', 'broken');
    failing = true;
    await expect(bringUpToDate(root, build)).rejects.toThrow('a syntax error');
    expect(built()).toBe('a');
    failing = false;
    expect(await bringUpToDate(root, build)).toBe(true);
    expect(built()).toBe('broken');
  });

  it('leaves nothing beside what it built', async () => {
    failing = true;
    await expect(bringUpToDate(root, build)).rejects.toThrow();
    expect(existsSync(join(root, 'out'))).toBe(false);
    expect(readdirSync(root)).toEqual(['src']);
  });
});
