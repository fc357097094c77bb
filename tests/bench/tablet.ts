import { fileURLToPath } from 'node:url';
import { bundleForNode } from '../../server/building/builds.ts';
import { setup } from '../browser/set-up.ts';
import type { Figure } from './figure.ts';
import { inkFigures } from './tablet-ink.ts';
import { memoryFigures } from './tablet-memory.ts';
import { strokeFigures } from './tablet-strokes.ts';
import { tryFigures } from './tablet-try.ts';

/** The engine is measured as pages have it: built into one file. */
async function builtLiveFigures(): Promise<readonly Figure[]> {
  const folder = new URL('../../.build/bench/', import.meta.url);
  const root = fileURLToPath(new URL('../..', import.meta.url));
  await bundleForNode(root, fileURLToPath(folder), { 'tablet-live': 'tests/bench/tablet-live.ts' });
  const { liveFigures } = (await import(new URL('tablet-live.js', folder).href)) as {
    liveFigures: () => readonly Figure[];
  };
  return liveFigures();
}

const PARTS: Readonly<Record<string, () => readonly Figure[] | Promise<readonly Figure[]>>> = {
  live: builtLiveFigures,
  ink: inkFigures,
  try: tryFigures,
  memory: memoryFigures,
  strokes: strokeFigures,
};

/** The tablet's page in a browser; `npm run bench -- tablet ink try` measures those parts only. */
export async function bench(): Promise<Figure[]> {
  const asked = process.argv.slice(3);
  const unknown = asked.filter((part) => !(part in PARTS));
  if (unknown.length > 0) throw new Error(`Which part? Of: ${Object.keys(PARTS).join(', ')}`);
  await setup();
  const figures: Figure[] = [];
  for (const part of asked.length > 0 ? asked : Object.keys(PARTS)) figures.push(...(await PARTS[part]!()));
  return figures;
}
