import { readdirSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  type DryRunResult,
  DryRunStatus,
  determineHitLimitReached,
  type MutantRunOptions,
  type MutantRunResult,
  type TestResult,
  type TestRunner,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { collectTests, getFn, type Task, type Test, type VitestRunner } from '@vitest/runner';

/** What the changed code looks at: which change is on, and what counts how often it is come by. */
interface Switch {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number | undefined;
  mutantCoverage?: NonNullable<Extract<DryRunResult, { status: DryRunStatus.Complete }>['mutantCoverage']>;
}

const changes: Switch = {};
Object.assign(globalThis, { __stryker__: changes });

/** Only what collecting needs: the tests are called one by one. */
const collector: VitestRunner = {
  config: {
    root: process.cwd(),
    name: undefined,
    setupFiles: [],
    passWithNoTests: false,
    testNamePattern: undefined,
    allowOnly: false,
    sequence: { hooks: 'stack', setupFiles: 'list', seed: 1 },
    chaiConfig: undefined,
    maxConcurrency: 1,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    retry: 0,
    includeTaskLocation: false,
    tags: [],
    tagsFilter: undefined,
    strictTags: false,
  },
  importFile: (path) => import(path),
};

const testsIn = (task: Task): Test[] => (task.type === 'test' ? [task] : task.tasks.flatMap(testsIn));

const nameOf = (task: Task): string => (task.suite ? `${nameOf(task.suite)} ${task.name}` : task.name);

const idOf = (test: Test): string => `${relative(process.cwd(), test.file.filepath)}#${nameOf(test)}`;

/**
 * Runs the unit tests of a folder in one process, for as many changes as it lives: a test runner that starts
 * anew for each spends most of its time on that. A test that fails has to pass again with the change off, or the
 * process is given up. The tests have no hooks.
 */
class OneProcess implements TestRunner {
  private tests: readonly Test[] = [];

  capabilities() {
    return { reloadEnvironment: false };
  }

  async dryRun(): Promise<DryRunResult> {
    const results = await this.unreadable();
    for (const test of this.tests) {
      changes.currentTestId = idOf(test);
      results.push(await resultOf(test));
      changes.currentTestId = undefined;
    }
    const { mutantCoverage } = changes;
    return { status: DryRunStatus.Complete, tests: results, ...(mutantCoverage && { mutantCoverage }) };
  }

  async mutantRun({
    activeMutant,
    testFilter,
    hitLimit,
    ...run
  }: MutantRunOptions): Promise<MutantRunResult> {
    const isStatic = run.mutantActivation === 'static';
    if (isStatic) changes.activeMutant = activeMutant.id;
    const results = [...(await this.unreadable())];
    const wanted = testFilter && new Set(testFilter);
    Object.assign(changes, { activeMutant: activeMutant.id, hitCount: 0, hitLimit });
    for (const test of mirrorFirst(this.tests, run.sandboxFileName)) {
      if (results.some(({ status }) => status === TestStatus.Failed)) break;
      if (wanted && !wanted.has(idOf(test))) continue;
      const result = await resultOf(test);
      results.push(result);
      if (!isStatic && result.status === TestStatus.Failed) await this.mustPass(test);
    }
    const limit = determineHitLimitReached(changes.hitCount, hitLimit);
    return toMutantRunResult(limit ?? { status: DryRunStatus.Complete, tests: results });
  }

  /** Reads the test files; those that can't be read, as a static change may have it. */
  private async unreadable(): Promise<TestResult[]> {
    if (this.tests.length > 0) return [];
    const folder = join(process.cwd(), 'tests/unit', process.env.MUTATED ?? '');
    const paths = readdirSync(folder)
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => join(folder, name));
    const files = await collectTests(paths, collector);
    this.tests = files.flatMap(testsIn);
    return files
      .filter(({ result }) => result?.state === 'fail')
      .map(({ name, result }) => ({
        id: name,
        name,
        timeSpentMs: 0,
        status: TestStatus.Failed,
        failureMessage: String(result?.errors?.[0]?.message),
      }));
  }

  private async mustPass(test: Test): Promise<void> {
    const { hitCount } = changes;
    changes.activeMutant = undefined;
    const again = await resultOf(test);
    changes.hitCount = hitCount;
    if (again.status === TestStatus.Failed) throw new Error(`${idOf(test)} fails without a change`);
  }
}

/** Tests of a source's own file are the most likely to notice a change in it. */
function mirrorFirst(tests: readonly Test[], source: string): readonly Test[] {
  const mirror = `${basename(source, '.ts')}.test.ts`;
  const isMirror = (test: Test): boolean => basename(test.file.filepath) === mirror;
  return [...tests.filter(isMirror), ...tests.filter((test) => !isMirror(test))];
}

async function resultOf(test: Test): Promise<TestResult> {
  const begun = performance.now();
  const base = { id: idOf(test), name: nameOf(test), fileName: test.file.filepath };
  try {
    await getFn(test)();
  } catch (error) {
    const timeSpentMs = performance.now() - begun;
    return { ...base, timeSpentMs, status: TestStatus.Failed, failureMessage: String(error) };
  }
  return { ...base, timeSpentMs: performance.now() - begun, status: TestStatus.Success };
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'one-process', OneProcess)];
