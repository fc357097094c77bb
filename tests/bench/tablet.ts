import { setup } from '../browser/set-up.ts';
import type { Figure } from './figure.ts';
import { inkFigures } from './tablet-ink.ts';
import { liveFigures } from './tablet-live.ts';
import { memoryFigures } from './tablet-memory.ts';
import { strokeFigures } from './tablet-strokes.ts';
import { tryFigures } from './tablet-try.ts';

const PARTS: Readonly<Record<string, () => readonly Figure[] | Promise<readonly Figure[]>>> = {
  live: liveFigures,
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
