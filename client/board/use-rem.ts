import { useEffect, useState } from 'react';

const rem = (): number => Number.parseFloat(getComputedStyle(document.documentElement).fontSize);

/** The smallest text of the board in CSS pixels, for pictures that measure their letters themselves. */
export function useRem(): number {
  const [size, setSize] = useState(rem);
  useEffect(() => {
    const measure = () => setSize(rem());
    window.addEventListener('resize', measure);
    return () => window.removeEventListener('resize', measure);
  }, []);
  return size;
}
