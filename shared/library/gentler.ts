import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';

/**
 * The lines that a team gets in the gentler form of a challenge: those of the maker's design, so that
 * only marks are left to put in. Undefined where nothing would be left, or lines are given anyway. What such
 * a team hands in is a drawing like any other's, and is judged as one.
 */
export function gentlerLines({ play, model }: Challenge): Design | undefined {
  if (play !== 'draw' || !model || model.drawing.marks.length === 0) return undefined;
  return { version: 1, drawing: { lines: model.drawing.lines, marks: [] } };
}
