import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** `npm run long -- NAME`: runs `NAME.ts` beside this file, which exports `long(): Promise<boolean>`, all well. */

const NAMES = ['builder', 'course', 'faults', 'fuzz', 'rows', 'mutation', 'pars'];

const name = process.argv[2] ?? '';
const file = new URL(`./${name}.ts`, import.meta.url);
if (!NAMES.includes(name) || !existsSync(fileURLToPath(file))) {
  process.stderr.write(`Which long check? One of: ${NAMES.join(', ')}\n`);
  process.exit(2);
}
const { long } = (await import(file.href)) as { long: () => Promise<boolean> };
process.exitCode = (await long()) ? 0 : 1;
