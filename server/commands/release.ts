import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { BUILDS, bringUpToDate } from '../building/builds.ts';
import { makeRelease } from '../building/release.ts';

/**
 * `npm run release [-- --with-node]`: builds an archive for this kind of machine that is unpacked and
 * started, with the Node runtime of this very process where that is wished.
 */

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const say = (text: string) => process.stdout.write(`${text}\n`);

const { values } = parseArgs({ options: { 'with-node': { type: 'boolean', default: false } } });
for (const build of BUILDS) {
  say(`Building the ${build.name} …`);
  await bringUpToDate(ROOT, build);
}
say('Collecting the parts …');
const release = await makeRelease({
  root: ROOT,
  pages: join(ROOT, '.build/pages'),
  server: join(ROOT, '.build/server'),
  into: join(ROOT, '.build/release'),
  node: values['with-node'] ? process.execPath : null,
});
say(
  `${relative(process.cwd(), release.archive)}: ${release.files} files, ${release.parts} parts with licences`,
);
