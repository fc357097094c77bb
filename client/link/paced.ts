import type { Millis } from '../../shared/geometry/units.ts';
import type { Timers } from './latest-up.ts';

export interface Paced {
  /** Something has changed. */
  readonly changed: () => void;
  /** What has changed since the last work is left undone. */
  readonly stop: () => void;
}

/**
 * Does `work` for changes that come one by one: at once for the first, and once for all that come within
 * `everyMs` of that, when it is over.
 */
export function paced(work: () => void, everyMs: Millis, after: Timers['after']): Paced {
  let more = false;
  let endPause: (() => void) | null = null;
  const go = () => {
    more = false;
    endPause = after(everyMs, () => {
      endPause = null;
      if (more) go();
    });
    work();
  };
  const changed = () => {
    if (endPause) more = true;
    else go();
  };
  return { changed, stop: () => endPause?.() };
}
