import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { type JudgeTask, type Judging, startJudging } from '../../server/judging/judging.ts';
import { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { coreSeconds, type Figure, median } from './figure.ts';
import { readyCases } from './verdict.ts';

/** As many as a large class hands in at once. */
const ENTRIES = 32;
const ROUNDS = 7;
const WARM_UP = 3;

/** Built beside the bench, as the server's is beside the server. */
export const WORKER = fileURLToPath(new URL('./judge-worker.js', import.meta.url));

export function readyTasks(): JudgeTask[] {
  return readyCases().map(({ challenge, design }) => ({
    challenge: JSON.stringify(writeDocument(Challenge, challenge)),
    design: JSON.stringify(writeDocument(Design, design)),
  }));
}

/** Time by the clock and of all cores together, ms. */
interface Cost {
  readonly clock: number;
  readonly cores: number;
}

async function costOf(judging: Judging, tasks: readonly JudgeTask[]): Promise<Cost> {
  const began = performance.now();
  const used = coreSeconds();
  await Promise.all(tasks.map((task) => judging.judge(task)));
  return { clock: performance.now() - began, cores: (coreSeconds() - used) * 1000 };
}

/** Judges what it is sent, without a pool around it. */
const BARE = `
const { parentPort, workerData } = require('node:worker_threads');
import(workerData.worker).then(({ default: judge }) => {
  parentPort.on('message', (tasks) => {
    for (const task of tasks) judge(task);
    parentPort.postMessage('done');
  });
});
`;

/**
 * How much faster two bare threads judge the same entries than one: what the machine's two cores with
 * their common cache, memory and collector of garbage allow, and so the most that a pool can reach.
 */
async function bareRatio(tasks: readonly JudgeTask[]): Promise<number> {
  const threads = [0, 1].map(() => new Worker(BARE, { eval: true, workerData: { worker: WORKER } }));
  const shareOf = (thread: number, of: number) => tasks.filter((_, i) => i % of === thread);
  const clockOf = async (count: number): Promise<number> => {
    const began = performance.now();
    const done = threads.slice(0, count).map((thread, i) => {
      thread.postMessage(shareOf(i, count));
      return once(thread, 'message');
    });
    await Promise.all(done);
    return performance.now() - began;
  };
  const ratios: number[] = [];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const both = await clockOf(2);
    const one = await clockOf(1);
    if (round >= 0) ratios.push(one / both);
  }
  await Promise.all(threads.map((thread) => thread.terminate()));
  return median(ratios);
}

/**
 * 32 entries at once by the server's own pool, with one worker and with two, taking turns. Two can be
 * twice as fast only where two cores are free; that they take no more time of cores than one tells that
 * they do not get in each other's way.
 */
export async function workerFigures(): Promise<Figure[]> {
  const ready = readyTasks();
  const tasks = Array.from({ length: ENTRIES }, (_, i) => ready[i % ready.length]!);
  const pools = [1, 2].map((threads) => startJudging({ worker: WORKER, execArgv: [], threads }));
  const costs: Cost[][] = [[], []];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    for (const [i, pool] of pools.entries()) {
      const cost = await costOf(pool, tasks);
      if (round >= 0) costs[i]!.push(cost);
    }
  }
  await Promise.all(pools.map((pool) => pool.close()));
  const [one, two] = costs as [Cost[], Cost[]];
  const ratio = (of: keyof Cost): number => median(one.map((cost, i) => cost[of] / two[i]![of]));
  const clockOf = (all: readonly Cost[]): number => median(all.map((cost) => cost.clock));
  return [
    { name: 'entries-32-one-worker', value: clockOf(one), unit: 'ms' },
    { name: 'entries-32-two-workers', value: clockOf(two), unit: 'ms', target: { at: 'most', value: 1000 } },
    { name: 'two-workers-to-one', value: ratio('clock'), unit: 'x', target: { at: 'least', value: 1.8 } },
    { name: 'two-bare-threads-to-one', value: await bareRatio(tasks), unit: 'x' },
    { name: 'core-time-one-to-two', value: ratio('cores'), unit: 'x', target: { at: 'least', value: 0.9 } },
  ];
}
