import { Maximize, Minus, Plus, Unlink } from 'lucide-react';
import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import type { Camera } from '../../canvas/use-camera.ts';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { DrawingSession } from './session.ts';
import { isOnPaper } from './use-keys.ts';
import { useSessionState } from './use-session-state.ts';

/** What a button or a key enlarges by. */
const STEP = 1.5;

export interface ZoomProps {
  readonly session: DrawingSession;
  readonly camera: Camera;
  /** Whether the whole sheet is in view. */
  readonly whole: boolean;
  readonly side: 'top' | 'right';
}

/** Larger, smaller and the whole sheet, for those who have one finger or none for it. */
export function Zoom({ session, camera, whole, side }: ZoomProps) {
  const { building } = useWords().tablet;
  const { free, ...hold } = useFreeHold(session);
  return (
    <div className="zoom" data-side={side}>
      <button type="button" onClick={() => camera.zoom(STEP)} aria-label={building.larger}>
        <Icon of={Plus} size={24} />
      </button>
      <button
        type="button"
        disabled={whole}
        onClick={() => camera.zoom(1 / STEP)}
        aria-label={building.smaller}
      >
        <Icon of={Minus} size={24} />
      </button>
      {!whole && (
        <button type="button" className="zoom-whole" onClick={camera.whole}>
          <Icon of={Maximize} size={22} />
          {building.wholeSheet}
        </button>
      )}
      <button type="button" className="zoom-free" aria-pressed={free} title={building.freeHow} {...hold}>
        <Icon of={Unlink} size={22} />
        {building.free}
      </button>
    </div>
  );
}

/** Held longer than this, the button works only while it is held, ms. */
const HELD = 350;

/** A button that holds snapping off: while it is held, or from one tap to the next. */
function useFreeHold(session: DrawingSession) {
  const free = useSessionState(session, (state) => state.free);
  const down = useRef({ at: 0, before: false });
  return {
    free,
    onPointerDown: (event: PointerEvent) => {
      down.current = { at: event.timeStamp, before: free };
      session.free(true);
    },
    onPointerUp: (event: PointerEvent) => {
      if (event.timeStamp - down.current.at > HELD || down.current.before) session.free(false);
    },
    onPointerCancel: () => session.free(false),
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key === 'Enter' || event.key === ' ') session.free(!free);
    },
  };
}

/** Plus, minus, and nought for the whole sheet. */
export function useZoomKeys(camera: Camera, resting: boolean): void {
  useEffect(() => {
    if (resting) return;
    const listen = (event: globalThis.KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || !isOnPaper(event))
        return;
      if (event.key === '+' || event.key === '=') camera.zoom(STEP);
      else if (event.key === '-') camera.zoom(1 / STEP);
      else if (event.key === '0') camera.whole();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [camera, resting]);
}
