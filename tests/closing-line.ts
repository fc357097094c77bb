import type { Reporter, TestModule } from 'vitest/node';

/** Prints the closing line. A file that fails to load counts as one failure, so that it can't go unseen. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const count = { passed: 0, failed: errors.length, skipped: 0 };
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      for (const test of tests) {
        const state = test.result().state;
        if (state === 'passed' || state === 'failed') count[state]++;
        else count.skipped++;
      }
      const failedOutside = module.state() === 'failed' && !tests.some((t) => t.result().state === 'failed');
      if (failedOutside) count.failed++;
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed${skipped}\n`);
  }
}
