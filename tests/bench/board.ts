import { setup } from '../browser/set-up.ts';
import { miniatureFigures, weightFigures } from './board-cost.ts';
import { frameFigures } from './board-frames.ts';
import { wallFigures } from './board-wall.ts';
import type { Figure } from './figure.ts';
import { builtIntoOne, figuresOf, type Parts } from './parts.ts';

const PARTS: Parts = {
  frames: frameFigures,
  miniatures: miniatureFigures,
  weight: weightFigures,
  wall: wallFigures,
  met: async () => (await builtIntoOne<typeof import('./board-met.ts')>('board-met')).metFigures(),
};

/** The board's page and what the desk shows of thirty teams; `npm run bench -- board frames` measures that part only. */
export const bench = (): Promise<Figure[]> => figuresOf(PARTS, setup);
