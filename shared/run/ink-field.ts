import type { Kit } from '../documents/kit.ts';
import type { Sheet } from '../documents/sheet.ts';
import type { Mm } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';

/** The sheet's reflectance as the sensors see it, in tiles. */
export interface InkField {
  readonly width: Mm;
  readonly height: Mm;
}

/** Rasters the ink of a drawing. */
export function buildInkField(_layout: Layout, sheet: Sheet, _kit: Kit): InkField {
  return { width: sheet.w, height: sheet.h };
}
