import type { Drawing } from '../documents/design.ts';
import type { MistakenReason, Reason, TrueReason } from '../documents/reason.ts';

/** Three reasons for what a run did, of which one is right. */
export interface Reasons {
  readonly offered: readonly [Reason, Reason, Reason];
  readonly right: TrueReason;
}

/** What each known mistake needs, so that it could be thought of at all. */
const THOUGHT_OF: Readonly<Record<MistakenReason, (drawing: Drawing) => boolean>> = {
  'sees-the-sheet': () => true,
  'knows-the-wish': () => true,
  'acts-at-once': ({ marks }) => marks.length > 0,
  'same-from-both-sides': ({ marks }) => marks.length > 0,
  'first-colour-counts': ({ marks }) => marks.length > 0,
  'shortest-way': ({ lines }) => lines.length > 1,
  'got-tired': () => true,
};

/**
 * The right reason among two known mistakes that fit the drawing. Which ones, and in which order, is taken
 * from `hash`, the run's own in hexadecimal digits: no chance, and not the same from run to run.
 */
export function reasonsFor(right: TrueReason, drawing: Drawing, hash: string): Reasons {
  const mistakes = (Object.keys(THOUGHT_OF) as MistakenReason[]).filter((one) => THOUGHT_OF[one](drawing));
  const turn = Number.parseInt(hash.slice(-6), 16) || 0;
  const [first, second] = [mistakes[turn % mistakes.length]!, mistakes[(turn + 1) % mistakes.length]!];
  const place = Math.floor(turn / mistakes.length) % 3;
  const orders = [
    [right, first, second],
    [first, right, second],
    [first, second, right],
  ] as const;
  return { offered: orders[place]!, right };
}
