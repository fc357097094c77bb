import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import type { ScreenPoint } from '../../shared/geometry/units.ts';
import { type Place, placeBeside } from './placement.ts';
import type { Box } from './view.ts';

export interface PlacedBoxProps {
  readonly about: ScreenPoint;
  readonly within: Box;
  /** Points that should stay visible. */
  readonly clear: readonly ScreenPoint[];
  readonly gap: number;
  readonly className: string;
  readonly role?: string;
  /** Told where the box came to stand, so that another one can keep clear of it. */
  readonly onPlace?: (place: Place) => void;
  readonly children: ReactNode;
}

/** A box of HTML over the canvas that looks for a place beside `about` where it covers no ink. */
export function PlacedBox({ about, within, clear, gap, className, role, onPlace, children }: PlacedBoxProps) {
  const ref = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState<{ left: number; top: number } | null>(null);
  // After every render, since words may have changed the size.
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const size = { width: element.offsetWidth, height: element.offsetHeight };
    const { left, top } = placeBeside({ about, size, within, clear, gap });
    setAt((before) => (before?.left === left && before.top === top ? before : { left, top }));
  });
  useLayoutEffect(() => {
    const element = ref.current;
    if (at && element) onPlace?.({ ...at, width: element.offsetWidth, height: element.offsetHeight });
  }, [at, onPlace]);
  const style = at ? { left: at.left, top: at.top } : { left: 0, top: 0, visibility: 'hidden' as const };
  return (
    <div ref={ref} className={className} role={role} style={{ position: 'absolute', ...style }}>
      {children}
    </div>
  );
}
