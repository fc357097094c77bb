import type { Mm, PaperPoint, ScreenPoint } from '../../shared/geometry/units.ts';

/**
 * Where a sheet lies in its box on the screen. The only file that converts between paper and screen.
 */
export interface View {
  /** CSS pixels a millimetre. */
  readonly scale: number;
  /** Of the sheet's top left corner in the box, CSS pixels. */
  readonly left: number;
  readonly top: number;
}

/** A box in CSS pixels. */
export interface Box {
  readonly width: number;
  readonly height: number;
}

/** The whole sheet in the middle of the box, with `pad` pixels of table around it. */
export function fitView(sheet: { readonly w: Mm; readonly h: Mm }, box: Box, pad: number): View {
  const room = (side: number) => Math.max(side - 2 * pad, 1);
  const scale = Math.min(room(box.width) / sheet.w, room(box.height) / sheet.h);
  return {
    scale,
    left: Math.round((box.width - sheet.w * scale) / 2),
    top: Math.round((box.height - sheet.h * scale) / 2),
  };
}

/** From a place in the box to the paper. */
export const toPaper = (view: View, at: ScreenPoint): PaperPoint => ({
  x: (at.px - view.left) / view.scale,
  y: (at.py - view.top) / view.scale,
});

/** From the paper to a place in the box. */
export const toScreen = (view: View, at: PaperPoint): ScreenPoint => ({
  px: view.left + at.x * view.scale,
  py: view.top + at.y * view.scale,
});

/** How many mm a finger's width or a drawn hairline of so many CSS pixels covers on the paper. */
export const pixelsInMm = (view: View, pixels: number): Mm => pixels / view.scale;
