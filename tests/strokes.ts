import type { PaperPoint } from '../shared/geometry/units.ts';
import { reference } from './reference.ts';

export interface RecordedStroke {
  readonly id: string;
  readonly word: string;
  readonly points: readonly PaperPoint[];
  /** Of each point, ms since the first one. */
  readonly times: readonly number[];
}

interface Recording {
  readonly strokes: readonly { id: string; word: string; x: number[]; y: number[]; t: number[] }[];
}

/** Recorded pen strokes, scaled so that the longer side is 180 mm, 10 mm from the sheet's corner. */
export function recordedStrokes(): RecordedStroke[] {
  return reference<Recording>('strokes.json').strokes.map(({ id, word, x, y, t }) => {
    const [left, top] = [Math.min(...x), Math.min(...y)];
    const scale = 180 / Math.max(Math.max(...x) - left, Math.max(...y) - top);
    const points = x.map((value, i) => ({ x: (value - left) * scale + 10, y: (y[i]! - top) * scale + 10 }));
    return { id, word, points, times: t };
  });
}
