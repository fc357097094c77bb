import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { type ParResult, parOf } from '../../shared/search/par.ts';
import { wording } from '../../shared/wording/wording.ts';

/**
 * `npm run par [-- --write]`: the lowest cost of every ready challenge and how it is known; with `--write`
 * the library's table is written anew. To be run when a challenge or the engine changes.
 */

const TABLE = fileURLToPath(new URL('../../shared/library/pars.ts', import.meta.url));
const words = wording('en').par;

const HEAD = `/**
 * The lowest cost of each ready challenge with the demo kit, mm of line and 20 a mark: what \`npm run par\`
 * finds. Kept here because a search takes up to two seconds and pages can't wait for it; a test repeats it.
 */
export const PARS: Readonly<Record<string, number>> = {
`;

/** Upwards to what a file holds, so that the design that was found has par itself. */
const kept = (cost: number): number => Math.ceil(cost * 100 - 1e-6) / 100;

function said(key: string, par: ParResult): string {
  if (par.kind === 'par') return `${key}: ${kept(par.cost)}. ${words.proof(par.proof)}`;
  if (par.kind !== 'impossible') return `${key}: ${par.kind}`;
  return `${key}: ${par.why.map(words.impossible).join(' ')} ${words.ofThisModel}`;
}

const rows: string[] = [];
for (const one of readyChallenges(DEMO_KIT)) {
  if (!one.playable) continue;
  const par = parOf(one.challenge);
  process.stdout.write(`${said(one.key, par)}\n`);
  if (par.kind === 'par') rows.push(`  '${one.key}': ${kept(par.cost)},\n`);
}
if (process.argv.includes('--write')) writeFileSync(TABLE, `${HEAD}${rows.join('')}};\n`);
