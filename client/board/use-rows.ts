import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

export interface FittedRows {
  /** To be put on the element that holds the rows and may shrink. */
  readonly box: RefObject<HTMLDivElement | null>;
  /** How many rows of this height fit. */
  readonly fit: number;
}

/** Counts how many rows of `rowRem` rem fit into what is left of a column. */
export function useFittedRows(rowRem: number): FittedRows {
  const box = useRef<HTMLDivElement>(null);
  const [fit, setFit] = useState(0);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element) return;
    const measure = () => {
      const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      setFit(Math.floor((element.clientHeight + 1) / (rowRem * rem)));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [rowRem]);
  return { box, fit };
}
