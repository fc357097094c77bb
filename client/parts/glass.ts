import { useSyncExternalStore } from 'react';
import type { Mm } from '../../shared/geometry/units.ts';

/** How large CSS pixels are on the glass of this device, found by holding a card against it. */
export interface Glass {
  /** CSS pixels a mm. */
  readonly pxPerMm: number;
  /** `pixelRatio()` when the card was held: another one means another zoom or another screen. */
  readonly ratio: number;
}

/** Cards of the size ID-1, in mm: ISO/IEC 7810. */
export const CARD: { readonly w: Mm; readonly h: Mm } = { w: 85.6, h: 53.98 };

/**
 * What can be true of a screen, CSS pixels a mm, and where to begin. CSS means 96 an inch, which is 3.8
 * (CSS Values and Units); a hand-held glass has 5 to 7, a large screen 2.5 (from memory).
 */
export const PX_PER_MM = { least: 2, usual: 5, most: 10 } as const;

/** Two ratios are one when they differ by less than this part: 0.1 mm in 100 mm. */
const SAME_RATIO = 0.001;

const pixelRatio = (): number => window.devicePixelRatio * (window.visualViewport?.scale ?? 1);

function followRatio(changed: () => void): () => void {
  const sources = [window, window.visualViewport];
  for (const source of sources) source?.addEventListener('resize', changed);
  return () => {
    for (const source of sources) source?.removeEventListener('resize', changed);
  };
}

/** Device pixels that one CSS pixel has now, by zoom of any kind. */
export const usePixelRatio = (): number => useSyncExternalStore(followRatio, pixelRatio);

/** Whether what was found still holds at this ratio. */
export const holdsAt = (glass: Glass, ratio: number): boolean =>
  Math.abs(glass.ratio / ratio - 1) < SAME_RATIO;
