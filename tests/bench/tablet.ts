import { setup } from '../browser/set-up.ts';
import type { Figure } from './figure.ts';
import { builtIntoOne, figuresOf, type Parts } from './parts.ts';
import { inkFigures } from './tablet-ink.ts';
import { memoryFigures } from './tablet-memory.ts';
import { strokeFigures } from './tablet-strokes.ts';
import { tryFigures } from './tablet-try.ts';

const PARTS: Parts = {
  live: async () => (await builtIntoOne<typeof import('./tablet-live.ts')>('tablet-live')).liveFigures(),
  ink: inkFigures,
  try: tryFigures,
  memory: memoryFigures,
  strokes: strokeFigures,
};

/** The tablet's page in a browser; `npm run bench -- tablet ink try` measures those parts only. */
export const bench = (): Promise<Figure[]> => figuresOf(PARTS, setup);
