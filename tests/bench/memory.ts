import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import type { Figure } from './figure.ts';
import { readyTasks, WORKER } from './workers.ts';

/**
 * What a judge's worker keeps beyond an empty one, after it has judged every ready challenge twice: its
 * heap after a full collection, and its buffers. Resident memory of a process can't be told by worker.
 */
const SCRIPT = `
const { parentPort, workerData } = require('node:worker_threads');
require('node:v8').setFlagsFromString('--expose-gc');
const collect = require('node:vm').runInNewContext('gc');
const kept = () => {
  collect();
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
};
const before = kept();
import(workerData.worker).then(({ default: judge }) => {
  for (let round = 0; round < 2; round++) for (const task of workerData.tasks) judge(task);
  parentPort.postMessage(kept() - before);
});
`;

export async function memoryFigures(): Promise<Figure[]> {
  const worker = new Worker(SCRIPT, { eval: true, workerData: { worker: WORKER, tasks: readyTasks() } });
  const [bytes] = (await once(worker, 'message')) as [number];
  await worker.terminate();
  return [{ name: 'worker-memory', value: bytes / 1e6, unit: 'MB', target: { at: 'most', value: 25 } }];
}
