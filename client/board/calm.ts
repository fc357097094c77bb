import { useEffect, useRef, useState } from 'react';
import type { Millis } from '../../shared/geometry/units.ts';

/**
 * The picture as a whole changes at most every so many ms, however fast keys are pressed at the desk. A
 * flash is a pair of opposing changes (WCAG 2.2, 2.3.1: at most three a second), so these are never more
 * than one and a half.
 */
const CALM_MS: Millis = 400;

/** When a value that came at `now` may be shown, after the one before was shown at `last`. */
export const calmWait = (last: Millis, now: Millis): Millis => Math.max(0, last + CALM_MS - now);

/** The newest value, told apart by its key, but never two within that time. */
export function useCalm<T>(value: T, keyOf: (value: T) => string): T {
  const [shown, setShown] = useState(value);
  const last = useRef(Number.NEGATIVE_INFINITY);
  const [key, before] = [keyOf(value), keyOf(shown)];
  useEffect(() => {
    if (key === before) return;
    const show = () => {
      last.current = performance.now();
      setShown(value);
    };
    const timer = setTimeout(show, calmWait(last.current, performance.now()));
    return () => clearTimeout(timer);
  }, [key, before, value]);
  return key === before ? value : shown;
}
