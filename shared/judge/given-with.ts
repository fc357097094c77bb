import type { Challenge } from '../documents/challenge.ts';
import type { Drawing } from '../documents/design.ts';
import { canonicalDrawing } from '../track/canonical.ts';

/** A challenge as one that is predicted: what was drawn is among what is given. It asks nothing yet. */
export function givenWith(challenge: Challenge, drawn: Drawing): Challenge {
  const { sheet } = challenge;
  const { lines, marks } = canonicalDrawing(drawn, sheet.given);
  const given = { lines: [...sheet.given.lines, ...lines], marks: [...sheet.given.marks, ...marks] };
  return { ...challenge, play: 'predict', goals: [], sheet: { ...sheet, given } };
}
