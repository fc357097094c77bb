/**
 * One limit for several steps: from now on, the ms that are left until `share` of `wholeMs` has passed.
 * What one step does not need the next one has.
 */
export function timeLeft(
  wholeMs: number,
  now: () => number = () => performance.now(),
): (share: number) => number {
  const since = now();
  return (share) => Math.max(0, since + share * wholeMs - now());
}

/** Resolves when `work` has come to an end, good or bad, but after `withinMs` at the latest. */
export async function settledWithin(work: Promise<unknown>, withinMs: number): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise((resolve) => {
    timer = setTimeout(resolve, withinMs);
  });
  await Promise.race([work.catch(() => undefined), late]);
  clearTimeout(timer);
}
