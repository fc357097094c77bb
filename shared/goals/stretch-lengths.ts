import type { Pace } from '../documents/kit.ts';
import type { RunEvent, Trace } from '../documents/trace.ts';
import type { Mm } from '../geometry/units.ts';

/** A part of a run driven at one commanded pace, by its ways along the drawing. */
export interface Stretch {
  readonly pace: Pace;
  readonly from: Mm;
  readonly to: Mm;
}

/** What ends a stretch even where the commanded pace stays: standing still, turning, parking. */
const breaks = (event: RunEvent): boolean =>
  event.kind === 'wait' ||
  event.kind === 'turn-back' ||
  event.kind === 'end' ||
  (event.kind === 'act' && event.action.kind === 'park');

/**
 * The unbroken parts of a run by commanded pace, in order, from the event list alone: slowing down
 * for a corner leaves the commanded pace, and so the stretch, as it is.
 */
export function stretchesOf(run: Trace): Stretch[] {
  const first = run.events[0];
  if (!first) return [];
  const found: Stretch[] = [];
  let pace = first.kind === 'pace' ? first.from : first.pace;
  let from = 0;
  const close = (to: Mm) => {
    if (to > from) found.push({ pace, from, to });
    from = to;
  };
  for (const event of run.events) {
    const changed = event.kind === 'pace' && event.pace !== pace;
    if (!changed && !breaks(event)) continue;
    close(event.way);
    if (event.kind === 'pace') pace = event.pace;
    // What is left after parking is the way to a stand.
    if (event.kind === 'act') break;
  }
  return found;
}

/** Lengths of the stretches at a pace, longest first. */
export const stretchLengths = (run: Trace, pace: Pace): Mm[] =>
  stretchesOf(run)
    .filter((stretch) => stretch.pace === pace)
    .map((stretch) => stretch.to - stretch.from)
    .sort((a, b) => b - a);
