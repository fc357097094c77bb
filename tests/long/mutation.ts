import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Stryker } from '@stryker-mutator/core';

/**
 * Changes the engine's code in small ways, one at a time, and counts how many of the changes the unit
 * tests notice: `npm run long -- mutation` in all folders, `npm run long -- mutation points rules/corner` in
 * a folder and a file. Works in a copy under `.artefacts/`, where the changes that got past stay to be read.
 */

const FOLDERS = ['rules', 'odds', 'goals', 'points'];
/** Per cent of the changes that must be noticed, in each folder. */
const LEAST = 85;

const NOTICED = ['Killed', 'Timeout'];
const MISSED = ['Survived', 'NoCoverage'];

export async function long(): Promise<boolean> {
  const chosen = process.argv.slice(3);
  process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
  // What Stryker starts reads TypeScript, too.
  process.env.NODE_OPTIONS = '--import tsx';
  let enough = true;
  for (const one of chosen.length > 0 ? chosen : FOLDERS) {
    const score = await scoreOf(one);
    enough &&= score >= LEAST;
  }
  return enough;
}

/** Per cent of the changes in a folder or a file of one that its unit tests notice. */
async function scoreOf(one: string): Promise<number> {
  const folder = one.split('/')[0]!;
  process.env.MUTATED = folder;
  forgetUncovered(knownOf(folder));
  const source = `/shared/${one}${one === folder ? '/' : '.ts'}`;
  const results = await changed(folder, one).runMutationTest();
  const of = (statuses: readonly string[]): number =>
    results.filter((r) => r.fileName.includes(source) && statuses.includes(r.status)).length;
  const noticed = of(NOTICED);
  const all = noticed + of(MISSED);
  const score = all === 0 ? 0 : (100 * noticed) / all;
  process.stdout.write(`${one}: ${noticed} of ${all} changes noticed, ${score.toFixed(1)} %\n`);
  return score;
}

const knownOf = (folder: string): string => `.artefacts/mutation/${folder}.json`;

interface Known {
  files: Record<string, { mutants: { status: string; static?: boolean }[] }>;
}

/**
 * Of changes that got past and are read once, as a file is loaded, no test is known to come by, so that no new
 * test would have them tried again.
 */
function forgetUncovered(path: string): void {
  if (!existsSync(path)) return;
  const known = JSON.parse(readFileSync(path, 'utf8')) as Known;
  for (const file of Object.values(known.files)) {
    file.mutants = file.mutants.filter((mutant) => !(mutant.static && MISSED.includes(mutant.status)));
  }
  writeFileSync(path, JSON.stringify(known));
}

const changed = (folder: string, one: string): Stryker =>
  new Stryker({
    testRunner: 'one-process',
    plugins: ['./tests/long/mutation-runner.ts'],
    mutate: [one === folder ? `shared/${folder}/**/*.ts` : `shared/${one}.ts`],
    ignorePatterns: ['client', 'server', '.artefacts', '.build', '.data'],
    // The compiler of TypeScript 7 has no interface for rewriting a tsconfig, and the copy needs none.
    tsconfigFile: 'none',
    coverageAnalysis: 'perTest',
    // What was found of a change whose lines and tests are the same is not measured again.
    incremental: true,
    incrementalFile: knownOf(folder),
    concurrency: 1,
    // A machine that is busy with other work is no reason to call a change noticed.
    timeoutMS: 10_000,
    tempDirName: '.artefacts/mutation/copy',
    reporters: ['progress-append-only', 'clear-text', 'html'],
    clearTextReporter: { reportTests: false, allowColor: false },
    htmlReporter: { fileName: `.artefacts/mutation/${folder}.html` },
    warnings: true,
    allowConsoleColors: false,
  });
