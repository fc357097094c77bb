import type { Drawing } from '../documents/design.ts';
import { pathOf } from '../geometry/path.ts';
import type { Mm } from '../geometry/units.ts';

/** How much line a team has drawn. Summed from the shortest up, so that the order of drawing is the same to it. */
export function inkOf(drawing: Drawing): Mm {
  const lengths = drawing.lines.map((line) => pathOf(line).length).sort((a, b) => a - b);
  return lengths.reduce((sum, length) => sum + length, 0);
}
