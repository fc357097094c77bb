import type { Drawing } from '../documents/design.ts';
import { inkOf } from '../track/ink-length.ts';

/** What a mark costs beside the line's mm. Chosen: about the line that it takes up. */
export const MARK_COST = 20;

/** What a team's drawing costs: mm of line and 20 a mark. What the sheet gives is free. */
export const costOf = (drawing: Drawing): number => inkOf(drawing) + MARK_COST * drawing.marks.length;
