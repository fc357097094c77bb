/** Resolves when `work` has come to an end, good or bad, but after `withinMs` at the latest. */
export async function settledWithin(work: Promise<unknown>, withinMs: number): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise((resolve) => {
    timer = setTimeout(resolve, withinMs);
  });
  await Promise.race([work.catch(() => undefined), late]);
  clearTimeout(timer);
}
