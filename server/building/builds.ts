import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { stampIn, stampOf, stampPath } from './stamp.ts';

/** One thing that is built from sources into a folder of its own. */
export interface Build {
  readonly name: string;
  readonly target: string;
  readonly folders: readonly string[];
  readonly make: (root: string, outDir: string) => Promise<void>;
}

/** Outside the folders, these decide what a build looks like. */
const COMMON = ['package.json', 'package-lock.json', 'tsconfig.json'];

/**
 * Each entry as one file of its own for Node; packages stay where they are installed. One file, and a
 * bundler that keeps `const`: engines then take the run's constants for what they are, which makes the
 * simulation a third faster than with `var`, or with imports between files.
 */
export async function bundleForNode(
  root: string,
  outDir: string,
  entries: Readonly<Record<string, string>>,
): Promise<void> {
  const { build } = await import('vite');
  for (const [name, file] of Object.entries(entries)) {
    await build({
      root,
      configFile: false,
      logLevel: 'error',
      build: {
        ssr: join(root, file),
        target: 'node20',
        outDir,
        emptyOutDir: false,
        rolldownOptions: {
          output: { entryFileNames: `${name}.js`, codeSplitting: false, topLevelVar: false },
        },
      },
    });
  }
}

/** Server and judge as two files. */
export const bundleServer = (root: string, outDir: string): Promise<void> =>
  bundleForNode(root, outDir, { main: 'server/main.ts', 'judge-worker': 'server/judging/worker.ts' });

/** Each page's scripts and styles also as the server sends them, packed. */
async function bundlePages(root: string, outDir: string): Promise<void> {
  const { build } = await import('vite');
  await build({
    configFile: join(root, 'client/vite.config.ts'),
    logLevel: 'error',
    build: { outDir, emptyOutDir: true },
  });
  const assets = join(outDir, 'assets');
  for (const name of readdirSync(assets).filter((file) => /\.(js|css)$/.test(file)))
    writeFileSync(join(assets, `${name}.gz`), gzipSync(readFileSync(join(assets, name)), { level: 9 }));
}

export const BUILDS: readonly Build[] = [
  { name: 'pages', target: '.build/pages', folders: ['client', 'shared'], make: bundlePages },
  { name: 'server', target: '.build/server', folders: ['server', 'shared'], make: bundleServer },
];

/**
 * Makes a build anew where its sources differ from those of the last one. It is made aside and put in
 * its place when it is whole, so that a failed or half build is never served. Says whether it was made.
 */
export async function bringUpToDate(root: string, build: Build): Promise<boolean> {
  const target = join(root, build.target);
  const stamp = stampOf(root, build.folders, COMMON);
  if (stampIn(target) === stamp) return false;
  const aside = `${target}-${process.pid}`;
  mkdirSync(aside, { recursive: true });
  try {
    await build.make(root, aside);
    writeFileSync(stampPath(aside), stamp);
    rmSync(target, { recursive: true, force: true });
    renameSync(aside, target);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
  return true;
}
