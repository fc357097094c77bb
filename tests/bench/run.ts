import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { anyShort, type Figure, lineOf } from './figure.ts';

/** `npm run bench -- NAME`: runs `NAME.ts` beside this file, which exports `bench(): Promise<Figure[]>`. */

const NAMES = ['engine', 'room'];

const name = process.argv[2] ?? '';
const file = new URL(`./${name}.ts`, import.meta.url);
if (!NAMES.includes(name) || !existsSync(fileURLToPath(file))) {
  process.stderr.write(`Which bench? One of: ${NAMES.join(', ')}\n`);
  process.exit(2);
}
const { bench } = (await import(file.href)) as { bench: () => Promise<readonly Figure[]> };
const figures = await bench();
for (const figure of figures) process.stdout.write(`${lineOf(name, figure)}\n`);
process.exitCode = anyShort(figures) ? 1 : 0;
