import type { Drawing } from '../documents/design.ts';
import { pathOf } from '../geometry/path.ts';
import type { Mm } from '../geometry/units.ts';

/** How much line a team has drawn. */
export const inkOf = (drawing: Drawing): Mm =>
  lengthsTogether(drawing.lines.map((line) => pathOf(line).length));

/** Summed from the shortest up, so that the order of drawing is the same to it. */
export const lengthsTogether = (lengths: readonly Mm[]): Mm =>
  [...lengths].sort((a, b) => a - b).reduce((sum, length) => sum + length, 0);
