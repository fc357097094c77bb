import { type RefObject, useEffect, useState } from 'react';

/** Whether something of an element can be seen; not before the page has been laid out. */
export function useInView(ref: RefObject<Element | null>): boolean {
  const [inView, setInView] = useState(false);
  useEffect(() => {
    if (!ref.current) return;
    const observer = new IntersectionObserver((seen) => setInView(seen.at(-1)!.isIntersecting));
    observer.observe(ref.current);
    return () => observer.disconnect();
  }, [ref]);
  return inView;
}
