import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { fuzz } from '../rooms/fuzzing.ts';

const ROUNDS = 20;
const MESSAGES = 5000;
/** By how much the heap may differ between the second round, when everything is loaded, and the last. */
const SLACK_BYTES = 20_000_000;

/** Bytes in use after the garbage has been collected. */
function heapUsed(): number {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
  return process.memoryUsage().heapUsed;
}

/** `npm run long -- fuzz`: 100,000 random messages to 20 servers; `SEED=7` sends others. */
export async function long(): Promise<boolean> {
  const seed = Number.parseInt(process.env.SEED ?? '', 10) || 1;
  const wrong: string[] = [];
  const heaps: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const fuzzed = await fuzz(MESSAGES, seed + round).catch((error: unknown) => String(error));
    if (typeof fuzzed === 'string') wrong.push(fuzzed);
    else {
      wrong.push(...(await fuzzed.differences()));
      await fuzzed.end();
    }
    heaps.push(heapUsed());
  }
  if (heaps.at(-1)! > heaps[1]! + SLACK_BYTES) wrong.push('the heap has grown');
  for (const each of wrong) process.stdout.write(`${each}\n`);
  const megabytes = heaps.map((bytes) => (bytes / 1e6).toFixed(0));
  process.stdout.write(
    `fuzz: ${ROUNDS * MESSAGES} messages, ${wrong.length} failures, heap after each round ${megabytes.join(' ')} MB\n`,
  );
  return wrong.length === 0;
}
