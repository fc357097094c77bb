import type { Page } from 'playwright-core';
import type { Line } from '../../shared/documents/design.ts';
import { pathFoot, pathOf } from '../../shared/geometry/path.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { RecordedStroke } from '../strokes.ts';
import type { TestHand } from './hand.ts';
import { kept, ofLines, tool } from './tablet-page.ts';

/** Gets the tablet ready for strokes whose ends shall catch on nothing. */
export async function drawFreely(page: Page): Promise<void> {
  await tool(page, 'Freehand');
  await page.getByRole('button', { name: 'Free', exact: true }).click();
}

export interface Redrawn {
  readonly stroke: RecordedStroke;
  readonly lines: readonly Line[];
  /** The farthest that the line lies from a sample of the stroke. */
  readonly worst: Mm;
}

/** Draws a recorded stroke with its own timing, looks what became of it, and takes it back. */
export async function redrawn(page: Page, hand: TestHand, stroke: RecordedStroke): Promise<Redrawn> {
  await hand.stroke(stroke.points, stroke.times);
  const { lines } = (await kept(page, (design) => design.drawing.lines.length > 0)).drawing;
  const paths = lines.map(pathOf);
  const away = stroke.points.map((p) => Math.min(...paths.map((path) => pathFoot(path, p).distance)));
  await page.keyboard.press('Control+z');
  await kept(page, ofLines(0));
  return { stroke, lines, worst: Math.max(...away) };
}
