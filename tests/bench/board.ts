import { fileURLToPath } from 'node:url';
import { bundleForNode } from '../../server/building/builds.ts';
import { setup } from '../browser/set-up.ts';
import { miniatureFigures, weightFigures } from './board-cost.ts';
import { frameFigures } from './board-frames.ts';
import { wallFigures } from './board-wall.ts';
import type { Figure } from './figure.ts';

/** The search is measured as pages have it: built into one file. */
async function builtMetFigures(): Promise<readonly Figure[]> {
  const folder = new URL('../../.build/bench/', import.meta.url);
  const root = fileURLToPath(new URL('../..', import.meta.url));
  await bundleForNode(root, fileURLToPath(folder), { 'board-met': 'tests/bench/board-met.ts' });
  const { metFigures } = (await import(new URL('board-met.js', folder).href)) as {
    metFigures: () => readonly Figure[];
  };
  return metFigures();
}

const PARTS: Readonly<Record<string, () => Promise<readonly Figure[]>>> = {
  frames: frameFigures,
  miniatures: miniatureFigures,
  weight: weightFigures,
  wall: wallFigures,
  met: builtMetFigures,
};

/** The board's page and what the desk shows of thirty teams; `npm run bench -- board frames` measures that part only. */
export async function bench(): Promise<Figure[]> {
  const asked = process.argv.slice(3);
  const unknown = asked.filter((part) => !(part in PARTS));
  if (unknown.length > 0) throw new Error(`Which part? Of: ${Object.keys(PARTS).join(', ')}`);
  await setup();
  const figures: Figure[] = [];
  for (const part of asked.length > 0 ? asked : Object.keys(PARTS)) figures.push(...(await PARTS[part]!()));
  return figures;
}
