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
  const folders = chosen.length > 0 ? chosen : FOLDERS;
  process.env.MUTATED = [...new Set(folders.map((one) => one.split('/')[0]))].join();
  process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
  const results = await changed(folders).runMutationTest();
  const scores = folders.map((folder) => {
    const of = (statuses: readonly string[]): number =>
      results.filter(
        (r) =>
          r.fileName.includes(`/shared/${folder}${folder.includes('/') ? '.ts' : '/'}`) &&
          statuses.includes(r.status),
      ).length;
    const noticed = of(NOTICED);
    const all = noticed + of(MISSED);
    const score = all === 0 ? 0 : (100 * noticed) / all;
    process.stdout.write(`${folder}: ${noticed} of ${all} changes noticed, ${score.toFixed(1)} %\n`);
    return score;
  });
  return scores.every((score) => score >= LEAST);
}

const changed = (folders: readonly string[]): Stryker =>
  new Stryker({
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    // Read in the copy, so that the copy is what is tested.
    vitest: { configFile: 'tests/long/mutation-tests.config.ts' },
    mutate: folders.map((one) => (one.includes('/') ? `shared/${one}.ts` : `shared/${one}/**/*.ts`)),
    ignorePatterns: ['client', 'server', '.artefacts', '.build', '.data'],
    // The compiler of TypeScript 7 has no interface for rewriting a tsconfig, and the copy needs none.
    tsconfigFile: 'none',
    coverageAnalysis: 'perTest',
    concurrency: 1,
    // A machine that is busy with other work is no reason to call a change noticed.
    timeoutMS: 60_000,
    tempDirName: '.artefacts/mutation/copy',
    reporters: ['clear-text', 'html', 'json'],
    clearTextReporter: { reportTests: false, allowColor: false },
    htmlReporter: { fileName: '.artefacts/mutation/report.html' },
    jsonReporter: { fileName: '.artefacts/mutation/report.json' },
    warnings: true,
    allowConsoleColors: false,
  });
