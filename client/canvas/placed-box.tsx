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
  /** Class of a line from the place to the box, where the box stands off it. */
  readonly leader?: string;
  /** Told where the box came to stand, so that another one can keep clear of it. */
  readonly onPlace?: (place: Place) => void;
  readonly children: ReactNode;
}

/** A box of HTML over the canvas that looks for a place beside `about` where it covers no ink. */
export function PlacedBox({
  about,
  within,
  clear,
  gap,
  className,
  role,
  leader,
  onPlace,
  children,
}: PlacedBoxProps) {
  const ref = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState<Place | null>(null);
  // After every render, since words may have changed the size.
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const size = { width: element.offsetWidth, height: element.offsetHeight };
    const place = placeBeside({ about, size, within, clear, gap });
    setAt((before) => (before && same(before, place) ? before : place));
  });
  useLayoutEffect(() => {
    if (at) onPlace?.(at);
  }, [at, onPlace]);
  const style = at ? { left: at.left, top: at.top } : { left: 0, top: 0, visibility: 'hidden' as const };
  return (
    <>
      {leader && at && <Leader from={about} to={at} className={leader} />}
      <div ref={ref} className={className} role={role} style={{ position: 'absolute', ...style }}>
        {children}
      </div>
    </>
  );
}

const same = (a: Place, b: Place): boolean =>
  a.left === b.left && a.top === b.top && a.width === b.width && a.height === b.height;

const within = (value: number, low: number, size: number) => Math.max(low, Math.min(value, low + size));

interface LeaderProps {
  readonly from: ScreenPoint;
  readonly to: Place;
  readonly className: string;
}

/** A thin line to the nearest point of the box. */
function Leader({ from, to, className }: LeaderProps) {
  const x = within(from.px, to.left, to.width);
  const y = within(from.py, to.top, to.height);
  return (
    <svg className={className} aria-hidden="true">
      <line x1={from.px} y1={from.py} x2={x} y2={y} />
    </svg>
  );
}
