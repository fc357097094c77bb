import { useEffect, useState } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';
import { useStageTime } from '../parts/stage-clock.ts';

/** Run time four times a second: words don't need more. */
export function useSlowTime(duration: Seconds): Seconds {
  const timeAt = useStageTime(duration);
  const [t, setT] = useState(timeAt);
  useEffect(() => {
    setT(timeAt());
    const timer = setInterval(() => setT(timeAt()), 250);
    return () => clearInterval(timer);
  }, [timeAt]);
  return t;
}
