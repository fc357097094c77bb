import { type RefObject, useMemo, useRef } from 'react';
import type { Mm, PaperPoint, ScreenPoint } from '../../shared/geometry/units.ts';
import { useBox } from './use-fitted.ts';
import {
  type Box,
  type Framed,
  fitBeside,
  type Look,
  lookAt,
  lookCloser,
  lookPulled,
  type View,
  viewOf,
} from './view.ts';

/** Where the look of a sheet is kept, so that it outlives the element that shows it. */
export interface KeptLook {
  readonly look: Look | null;
  readonly onLook: (look: Look | null) => void;
}

/** Moves a sheet about in its box. All places in CSS pixels of the box. */
export interface Camera {
  view(): View | null;
  /** About a place, or about the middle of the box. */
  zoom(factor: number, about?: ScreenPoint): void;
  /** One or two fingers that went from there to here. */
  pull(before: readonly ScreenPoint[], now: readonly ScreenPoint[]): void;
  whole(): void;
  /** Brings a place of the paper into view where it is not. */
  reveal(at: PaperPoint): void;
}

export interface Seen {
  /** To be put on the element that the sheet fills. */
  readonly frame: RefObject<HTMLDivElement | null>;
  /** null until the element has been measured. */
  readonly box: Box | null;
  readonly view: View | null;
  /** Which side was kept for buttons. */
  readonly side: 'top' | 'right';
  readonly camera: Camera;
}

/** What is brought into view comes so near to the edge, CSS pixels. */
const RIM = 60;

/** A sheet that can be looked at closely; `beside` pixels at the top or the right are kept for buttons. */
export function useCamera(
  sheet: { readonly w: Mm; readonly h: Mm },
  room: { readonly pad: number; readonly beside: number },
  kept: KeptLook,
): Seen {
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const { w, h } = sheet;
  const { pad, beside } = room;
  const framed = useMemo(
    (): Framed | null => box && { sheet: { w, h }, box, fitted: fitBeside({ w, h }, box, pad, beside) },
    [box, w, h, pad, beside],
  );
  const view = useMemo(() => framed && viewOf(kept.look, framed), [framed, kept.look]);
  // Fingers ask between renders, so the newest is kept beside React.
  const now = useRef({ framed, view, onLook: kept.onLook });
  now.current = { framed, view, onLook: kept.onLook };
  const camera = useMemo((): Camera => {
    const move = (next: (view: View, framed: Framed) => Look | null) => {
      const { framed, view, onLook } = now.current;
      if (!framed || !view) return;
      const look = next(view, framed);
      now.current.view = viewOf(look, framed);
      onLook(look);
    };
    return {
      view: () => now.current.view,
      zoom: (factor, about) =>
        move((view, framed) => {
          const { width, height } = framed.box;
          return lookCloser(view, framed, factor, about ?? { px: width / 2, py: height / 2 });
        }),
      pull: (before, after) => move((view, framed) => lookPulled(view, framed, before, after)),
      whole: () => move(() => null),
      reveal: (at) => move((view, framed) => lookAt(view, framed, at, RIM)),
    };
  }, []);
  const side = framed && framed.fitted.top >= beside ? 'top' : 'right';
  return { frame, box, view, side, camera };
}
