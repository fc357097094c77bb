import { resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { BUILDS, bringUpToDate } from './building/builds.ts';

/** What `npm start` and `npm run build` run: builds what is out of date, then runs the built server. */

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const SECOND_MS = 1000;

async function build(): Promise<void> {
  for (const [i, one] of BUILDS.entries()) {
    process.stdout.write(`Step ${i + 1} of ${BUILDS.length}: ${one.name} … `);
    const began = performance.now();
    const made = await bringUpToDate(ROOT, one);
    const seconds = ((performance.now() - began) / SECOND_MS).toFixed(1);
    process.stdout.write(made ? `built in ${seconds} s\n` : 'up to date\n');
  }
}

try {
  await build();
} catch (error) {
  const reason = error instanceof Error ? error.message : String(error);
  process.stderr.write(`\nThe build failed, so nothing was started:\n${reason}\n`);
  process.exit(1);
}
if (!process.argv.includes('--build-only')) {
  await import(pathToFileURL(resolve(ROOT, '.build/server/main.js')).href);
}
