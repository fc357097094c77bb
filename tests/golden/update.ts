import { writeFileSync } from 'node:fs';
import { goldenNow } from './runs.ts';

/**
 * `node --import tsx tests/golden/update.ts` freezes the runs as they are now. Only after a change of the
 * model that is meant; say in the commit why runs differ. If what is hashed changes, so does its version.
 */
writeFileSync(new URL('./traces.json', import.meta.url), `${JSON.stringify(goldenNow(), null, 2)}\n`);
