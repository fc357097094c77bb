import { type ReactNode, useLayoutEffect, useRef } from 'react';
import { FACE } from './colours.ts';
import { type Painter, paintIn } from './painter.ts';
import { type Box, sharpness, type View } from './view.ts';
import './sheet-view.css';

export interface StillSheetProps {
  /** Paper, ink, and whatever else stays as it is; keep it as one object while it does. */
  readonly paint: Painter;
  /** Size of the paper, mm. */
  readonly sheet: { readonly w: number; readonly h: number };
  readonly box: Box;
  readonly view: View;
  /** Said aloud in the place of the picture. */
  readonly label: string;
  /** Stands over the sheet, in CSS pixels of the box. */
  readonly children?: ReactNode;
}

/**
 * A sheet that nobody draws on, on one canvas: a browser without a graphics processor hands over every canvas
 * of a page at each frame, changed or not.
 */
export function StillSheet({ paint, sheet, box, view, label, children }: StillSheetProps) {
  const ref = useRef<HTMLCanvasElement>(null);
  useLayoutEffect(() => {
    const canvas = ref.current;
    if (!canvas) return;
    let here = true;
    const draw = () => {
      const ctx = canvas.getContext('2d')!;
      const ratio = sharpness();
      ctx.setTransform(ratio, 0, 0, ratio, 0, 0);
      ctx.clearRect(0, 0, box.width, box.height);
      paintIn(ctx, view, paint);
    };
    canvas.width = box.width * sharpness();
    canvas.height = box.height * sharpness();
    draw();
    const font = `650 16px ${FACE}`;
    // Letters drawn before the face has come are drawn again.
    if (!document.fonts.check(font))
      document.fonts.load(font).then(
        () => here && draw(),
        () => {},
      );
    return () => {
      here = false;
    };
  }, [paint, box, view]);
  const paper = { left: view.left, top: view.top, width: sheet.w * view.scale, height: sheet.h * view.scale };
  return (
    <div className="sheet-view" style={{ width: box.width, height: box.height }}>
      <div className="sheet-view-paper" style={paper} />
      <canvas
        ref={ref}
        role="img"
        aria-label={label}
        className="sheet-view-still"
        style={{ width: box.width, height: box.height }}
      />
      {children}
    </div>
  );
}
