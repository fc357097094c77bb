import { faultsOf, madeFor } from '../fresh.ts';

const COUNT = 1000;
const FIRST = Number.parseInt(process.env.SEED ?? '', 10) || 1;

/** Makes a thousand fresh challenges, `SEED` and up, and says of each that is not as wished what is wrong. */
export async function long(): Promise<boolean> {
  let faulty = 0;
  for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
    const { wish, result } = madeFor(seed);
    const faults = faultsOf(wish, result);
    if (faults.length === 0) continue;
    faulty++;
    process.stdout.write(`builder ${seed} ${wish.topic} ${wish.marks} ${faults.join()}\n`);
  }
  process.stdout.write(`builder ${COUNT - faulty} of ${COUNT} as wished, seeds from ${FIRST}\n`);
  return faulty === 0;
}
