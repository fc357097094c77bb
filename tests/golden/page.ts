import { goldenNow } from './runs.ts';

/** Runs in a browser: drives all golden runs and posts what came of them, or why nothing did. */
const answer = (): unknown => {
  try {
    return goldenNow();
  } catch (error) {
    return { error: String(error) };
  }
};

await fetch('/golden', { method: 'POST', body: JSON.stringify(answer()) });
