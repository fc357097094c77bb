import { fileURLToPath } from 'node:url';
import { bundleForNode } from '../../server/building/builds.ts';
import { anyShort, type Figure, lineOf } from './figure.ts';

/** `npm run bench -- NAME`: runs `NAME.ts` beside this file, which exports `bench(): Promise<Figure[]>`. */

const NAMES = ['engine', 'room', 'print', 'tablet', 'board'];

const name = process.argv[2] ?? '';
if (!NAMES.includes(name)) {
  process.stderr.write(`Which bench? One of: ${NAMES.join(', ')}\n`);
  process.exit(2);
}

/** The engine is measured as the server runs it: built into one file, with its worker beside it. */
async function built(): Promise<URL> {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const folder = new URL('../../.build/bench/', import.meta.url);
  const entries = { engine: 'tests/bench/engine.ts', 'judge-worker': 'server/judging/worker.ts' };
  await bundleForNode(root, fileURLToPath(folder), entries);
  return new URL('engine.js', folder);
}

const file = name === 'engine' ? await built() : new URL(`./${name}.ts`, import.meta.url);
const { bench } = (await import(file.href)) as { bench: () => Promise<readonly Figure[]> };
const figures = await bench();
for (const figure of figures) process.stdout.write(`${lineOf(name, figure)}\n`);
process.exitCode = anyShort(figures) ? 1 : 0;
