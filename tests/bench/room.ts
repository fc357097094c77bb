import type { Figure } from './figure.ts';
import { figuresOf, type Parts } from './parts.ts';
import { aloneFigures } from './room-alone.ts';
import { buildServer } from './room-child.ts';
import { costFigures } from './room-cost.ts';
import { hourFigures } from './room-hour.ts';
import { manyFigures } from './room-many.ts';
import { thousandFigures } from './room-thousand.ts';
import { storeFigures } from './store.ts';

/**
 * Rooms under load: the server as it ships in a process of its own, with SQLite on this machine's disk,
 * and lean clients here. Where a figure is held against a bare server, both run at the same time or in
 * turns, so that whatever else the machine does hits both.
 */
const PARTS: Parts = {
  store: storeFigures,
  alone: aloneFigures,
  many: manyFigures,
  thousand: thousandFigures,
  hour: hourFigures,
  cost: costFigures,
};

/** `npm run bench -- room alone` measures that part only. */
export const bench = (): Promise<Figure[]> => figuresOf(PARTS, buildServer);
