import { useEffect } from 'react';

/** What hands, paper and keys do to a page: moving, zooming, menus, and every key. */
const ACTS = ['wheel', 'touchmove', 'gesturestart', 'contextmenu', 'selectstart', 'dragstart', 'keydown'];

/** While it is on, the page does nothing by itself; `touch-action` in the style sheet says the same. */
export function useNothingReacts(on: boolean): void {
  useEffect(() => {
    if (!on) return;
    const refuse = (event: Event) => event.preventDefault();
    // Not passive, or browsers would not ask.
    const how = { capture: true, passive: false };
    for (const act of ACTS) window.addEventListener(act, refuse, how);
    return () => {
      for (const act of ACTS) window.removeEventListener(act, refuse, how);
    };
  }, [on]);
}
