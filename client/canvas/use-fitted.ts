import { type RefObject, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Mm } from '../../shared/geometry/units.ts';
import { type Box, fitView, type View } from './view.ts';

export interface Fitted {
  /** To be put on the element that the sheet fills. */
  readonly frame: RefObject<HTMLDivElement | null>;
  /** null until the element has been measured. */
  readonly box: Box | null;
  readonly view: View | null;
}

/** The size of an element, again whenever it changes; null until it has been measured. */
export function useBox(frame: RefObject<HTMLElement | null>): Box | null {
  const [box, setBox] = useState<Box | null>(null);
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      setBox((before) => (before?.width === width && before.height === height ? before : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [frame]);
  return box;
}

/** Measures an element and fits the whole sheet into it. */
export function useFitted(sheet: { readonly w: Mm; readonly h: Mm }, pad: number): Fitted {
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const { w, h } = sheet;
  const view = useMemo(() => (box ? fitView({ w, h }, box, pad) : null), [box, w, h, pad]);
  return { frame, box, view };
}
