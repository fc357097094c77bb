import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';

/** What may be asked next of a drawing that meets its challenge, with the answer. */
export type NextQuestion =
  /** Whether it is still met without one of the marks: `spare` is such a mark. */
  | { readonly kind: 'fewer-marks'; readonly spare: string | null }
  /** Whether a robot that starts in the other berth makes it to the first one. */
  | { readonly kind: 'other-end'; readonly met: boolean }
  /** Whether most of twenty robots still do the same in a storm. */
  | { readonly kind: 'storm'; readonly same: number; readonly of: number };

/** "Most robots" are at least so many of twenty. */
const MOST_OF_TWENTY = 15;

export const isYes = (question: NextQuestion): boolean => {
  switch (question.kind) {
    case 'fewer-marks':
      return question.spare !== null;
    case 'other-end':
      return question.met;
    case 'storm':
      return question.same >= MOST_OF_TWENTY;
  }
};

/** The drawing without one of its marks. */
export const without = (design: Design, mark: string): Design => ({
  ...design,
  drawing: { ...design.drawing, marks: design.drawing.marks.filter(({ id }) => id !== mark) },
});

export const inStorm = (challenge: Challenge): Challenge => ({ ...challenge, weather: 'stormy' });

/** The same challenge for a robot from the other berth; undefined where there is none, or it is asked for anyway. */
export function fromOtherEnd(challenge: Challenge): Challenge | undefined {
  const { starts, sheet, goals } = challenge;
  if (!sheet.finish || starts.length > 1 || goals.some(({ start }) => start !== undefined)) return undefined;
  return { ...challenge, starts: [starts[0] === 'start' ? 'finish' : 'start'] };
}
