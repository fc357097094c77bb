/** Code that could not be had, since the server was away, is asked for again after so long. */
const AGAIN_MS = 2000;

/** Code that comes later, as soon as it can be had. */
export async function untilHere<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch {
    await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
    return untilHere(load);
  }
}
