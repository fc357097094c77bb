import { useEffect, useRef, useState } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';

/** How often it is looked at whether words have to change, ms. */
const LOOK_EVERY = 250;

/**
 * Run time for words. It goes on only when `said`, which tells what words depend on, comes out differently: a page
 * that renders while robots move leaves out frames.
 */
export function useSlowTime(timeAt: () => Seconds, said: (t: Seconds) => string | number | boolean): Seconds {
  const [t, setT] = useState(timeAt);
  const saidNow = useRef(said);
  saidNow.current = said;
  useEffect(() => {
    const look = () => {
      const now = timeAt();
      setT((before) => (saidNow.current(before) === saidNow.current(now) ? before : now));
    };
    look();
    const timer = setInterval(look, LOOK_EVERY);
    return () => clearInterval(timer);
  }, [timeAt]);
  return t;
}
