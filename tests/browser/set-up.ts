import { fileURLToPath } from 'node:url';
import { BUILDS, bringUpToDate } from '../../server/building/builds.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Browser tests look at the built pages, so these are brought up to date once before all of them. */
export async function setup(): Promise<void> {
  if (process.env.HARBOUR_PAGES !== undefined) return;
  for (const build of BUILDS.filter((one) => one.name === 'pages')) await bringUpToDate(ROOT, build);
}
