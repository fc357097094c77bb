import { fileURLToPath } from 'node:url';
import { bundleForNode } from '../../server/building/builds.ts';
import type { Figure } from './figure.ts';

/** What a bench measures, by the name under which it can be asked for alone. */
export type Parts = Readonly<Record<string, () => readonly Figure[] | Promise<readonly Figure[]>>>;

/** Figures of the parts that the command line names behind the bench, of all where it names none. */
export async function figuresOf(parts: Parts, prepare: () => Promise<void>): Promise<Figure[]> {
  const asked = process.argv.slice(3);
  const unknown = asked.filter((part) => !(part in parts));
  if (unknown.length > 0) throw new Error(`Which part? Of: ${Object.keys(parts).join(', ')}`);
  await prepare();
  const figures: Figure[] = [];
  for (const part of asked.length > 0 ? asked : Object.keys(parts)) figures.push(...(await parts[part]!()));
  return figures;
}

/** A file of this folder as pages have the engine: built into one file. */
export async function builtIntoOne<Exports>(name: string): Promise<Exports> {
  const folder = new URL('../../.build/bench/', import.meta.url);
  const root = fileURLToPath(new URL('../..', import.meta.url));
  await bundleForNode(root, fileURLToPath(folder), { [name]: `tests/bench/${name}.ts` });
  return (await import(new URL(`${name}.js`, folder).href)) as Exports;
}
