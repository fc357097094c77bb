import { fuzz } from '../rooms/fuzzing.ts';

const ROUNDS = 20;
const MESSAGES = 5000;

/** `npm run long -- fuzz`: 100,000 random messages to 20 rooms; `SEED=7` sends others. */
export async function long(): Promise<boolean> {
  const seed = Number.parseInt(process.env.SEED ?? '', 10) || 1;
  const wrong: string[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const fuzzed = await fuzz(MESSAGES, seed + round).catch((error: unknown) => String(error));
    if (typeof fuzzed === 'string') wrong.push(fuzzed);
    else {
      wrong.push(...(await fuzzed.differences()));
      await fuzzed.end();
    }
  }
  const megabytes = (process.memoryUsage().rss / 1e6).toFixed(0);
  for (const each of wrong) process.stdout.write(`${each}\n`);
  process.stdout.write(
    `fuzz: ${ROUNDS * MESSAGES} messages, ${wrong.length} failures, ${megabytes} MB resident\n`,
  );
  return wrong.length === 0;
}
