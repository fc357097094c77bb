import { Maximize, Minus, Plus } from 'lucide-react';
import { useEffect } from 'react';
import type { Camera } from '../../canvas/use-camera.ts';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { typesText } from './use-keys.ts';

/** What a button or a key enlarges by. */
const STEP = 1.5;

export interface ZoomProps {
  readonly camera: Camera;
  /** Whether the whole sheet is in view. */
  readonly whole: boolean;
  readonly side: 'top' | 'right';
}

/** Larger, smaller and the whole sheet, for those who have one finger or none for it. */
export function Zoom({ camera, whole, side }: ZoomProps) {
  const { building } = useWords().tablet;
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
    </div>
  );
}

/** Plus, minus, and nought for the whole sheet. */
export function useZoomKeys(camera: Camera, resting: boolean): void {
  useEffect(() => {
    if (resting) return;
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || typesText(event))
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
