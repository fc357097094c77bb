import { fileURLToPath } from 'node:url';
import { type JudgeTask, type Judging, startJudging } from '../../server/judging/judging.ts';
import { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { type Figure, median } from './figure.ts';
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

async function msOf(judging: Judging, tasks: readonly JudgeTask[]): Promise<number> {
  const began = performance.now();
  await Promise.all(tasks.map((task) => judging.judge(task)));
  return performance.now() - began;
}

/** 32 entries at once by the server's own pool, with one worker and with two that take turns. */
export async function workerFigures(): Promise<Figure[]> {
  const ready = readyTasks();
  const tasks = Array.from({ length: ENTRIES }, (_, i) => ready[i % ready.length]!);
  const pools = [1, 2].map((threads) => startJudging({ worker: WORKER, execArgv: [], threads }));
  const times: number[][] = [[], []];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    for (const [i, pool] of pools.entries()) {
      const ms = await msOf(pool, tasks);
      if (round >= 0) times[i]!.push(ms);
    }
  }
  await Promise.all(pools.map((pool) => pool.close()));
  const ratios = times[0]!.map((one, i) => one / times[1]![i]!);
  return [
    { name: 'entries-32-one-worker', value: median(times[0]!), unit: 'ms' },
    {
      name: 'entries-32-two-workers',
      value: median(times[1]!),
      unit: 'ms',
      target: { at: 'most', value: 1000 },
    },
    { name: 'two-workers-to-one', value: median(ratios), unit: 'x', target: { at: 'least', value: 1.8 } },
  ];
}
