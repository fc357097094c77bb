import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Judging, startJudging } from '../../../server/judging/judging.ts';

/** A stand-in for the judge that misbehaves on demand. */
const WORKER = `
export default async ({ design }) => {
  if (design === 'loop') for (;;);
  if (design === 'exit') process.exit(1);
  if (design === 'throw') throw new Error('cannot');
  return { verdict: { of: design }, points: 1, met: true };
};
`;

let folder: string;
let judging: Judging | undefined;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'harbour-judge-'));
  writeFileSync(join(folder, 'worker.mjs'), WORKER);
});
afterEach(() => judging?.close());
afterAll(() => rmSync(folder, { recursive: true }));

const start = (deadlineMs = 10_000) =>
  startJudging({ worker: join(folder, 'worker.mjs'), execArgv: [], threads: 1, deadlineMs });
const task = (design: string) => ({ challenge: '{}', design });

describe('judging in workers', () => {
  it('gives each task its own result', async () => {
    judging = start();
    const results = await Promise.all(['a', 'b', 'c'].map((design) => judging!.judge(task(design))));
    expect(results.map((result) => result.verdict)).toEqual([{ of: 'a' }, { of: 'b' }, { of: 'c' }]);
  });

  it.each([['throw'], ['exit']])('goes on after a worker that does this: %s', async (deed) => {
    judging = start();
    await expect(judging.judge(task(deed))).rejects.toThrow();
    expect((await judging.judge(task('a'))).points).toBe(1);
  });

  it('ends a worker that never comes back, and goes on with another', async () => {
    judging = start(3000);
    await expect(judging.judge(task('loop'))).rejects.toThrow();
    expect((await judging.judge(task('a'))).points).toBe(1);
  });

  it('lets a task that waits behind a stuck one have all of its time', async () => {
    judging = start(3000);
    const stuck = expect(judging.judge(task('loop'))).rejects.toThrow();
    const behind = Promise.all(['a', 'b'].map((design) => judging!.judge(task(design))));
    await stuck;
    expect((await behind).map((result) => result.verdict)).toEqual([{ of: 'a' }, { of: 'b' }]);
  });

  it('closing ends what is at work', async () => {
    judging = start();
    const endless = judging.judge(task('loop'));
    const behind = judging.judge(task('a'));
    const refused = Promise.all([expect(endless).rejects.toThrow(), expect(behind).rejects.toThrow()]);
    await judging.close();
    await refused;
    judging = undefined;
  });
});
