import { playSchedules } from '../faults/schedule.ts';

const SCHEDULES = 200;
const AT_ONCE = 5;

/** `npm run long -- faults`: 200 lessons over bad connections; `SEED=7` plays others. */
export async function long(): Promise<boolean> {
  const seed = Number.parseInt(process.env.SEED ?? '', 10) || 1;
  const began = performance.now();
  const failures = await playSchedules(seed, SCHEDULES, AT_ONCE);
  const seconds = ((performance.now() - began) / 1000).toFixed(0);
  for (const failure of failures) process.stdout.write(`${failure}\n`);
  const last = seed + SCHEDULES - 1;
  process.stdout.write(`faults: schedules ${seed} to ${last}, ${failures.length} failed, ${seconds} s\n`);
  return failures.length === 0;
}
