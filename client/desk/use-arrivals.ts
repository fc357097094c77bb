import { useEffect, useState } from 'react';
import type { Arrivals } from '../../shared/wire/protocol.ts';
import { readArrivals } from './session.ts';

const LOOK_EVERY = 4000;

/** Devices that got through to the server, as long as somebody asks; null until it has said so. */
export function useArrivals(asking: boolean): Arrivals | null {
  const [arrivals, setArrivals] = useState<Arrivals | null>(null);
  useEffect(() => {
    if (!asking) return;
    let current = true;
    const look = () =>
      void readArrivals().then((answer) => current && answer.ok && setArrivals(answer.value));
    look();
    const timer = setInterval(look, LOOK_EVERY);
    return () => {
      current = false;
      clearInterval(timer);
    };
  }, [asking]);
  return arrivals;
}
