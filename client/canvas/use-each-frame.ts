import { useEffect } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';

/** Calls `show` with the time before each frame in which it has changed, and once at the beginning. */
export function useEachFrame(timeAt: () => Seconds, show: (t: Seconds) => void): void {
  useEffect(() => {
    let last: Seconds | undefined;
    let frame = 0;
    const step = () => {
      const t = timeAt();
      if (t !== last) show(t);
      last = t;
      frame = requestAnimationFrame(step);
    };
    step();
    return () => cancelAnimationFrame(frame);
  }, [timeAt, show]);
}
