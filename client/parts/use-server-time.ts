import { useEffect, useState } from 'react';
import type { Millis } from '../../shared/geometry/units.ts';
import { useLink } from './use-link.tsx';

/** Server time, renewed every `everyMs`; still while `everyMs` is null. */
export function useServerTime(everyMs: number | null): Millis {
  const link = useLink();
  const [now, setNow] = useState(() => link.serverNow());
  useEffect(() => {
    setNow(link.serverNow());
    if (everyMs === null) return;
    const timer = setInterval(() => setNow(link.serverNow()), everyMs);
    return () => clearInterval(timer);
  }, [link, everyMs]);
  return now;
}
