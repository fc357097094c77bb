import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';

/**
 * A printed page as a plain list of things in mm, from the paper's top left corner, y down. PDF and SVG
 * are written from the same list.
 */
export interface Page {
  readonly w: Mm;
  readonly h: Mm;
  readonly items: readonly Item[];
}

export type Segment =
  | readonly ['M', Mm, Mm]
  | readonly ['L', Mm, Mm]
  | readonly ['C', Mm, Mm, Mm, Mm, Mm, Mm]
  | readonly ['Z'];

export interface Stroke {
  readonly color: string;
  readonly width: Mm;
  /** Lengths of strokes and gaps; a stroke of 0 is a dot. */
  readonly dash?: readonly Mm[];
  /** Square ends, for what must have an exact length. Otherwise ends are round. */
  readonly square?: true;
}

export type Item =
  | {
      readonly kind: 'path';
      readonly segments: readonly Segment[];
      readonly stroke?: Stroke;
      readonly fill?: string;
    }
  | {
      readonly kind: 'text';
      readonly text: string;
      /** On the base line; which end of the text it is says `align`. */
      readonly at: PaperPoint;
      readonly size: Mm;
      readonly bold: boolean;
      readonly align: Align;
      readonly color: string;
    }
  /** Moved by (x, y) after being scaled; only what lies inside `clip`, in its own frame, is seen. */
  | {
      readonly kind: 'group';
      readonly x: Mm;
      readonly y: Mm;
      readonly scale: number;
      readonly clip?: readonly Segment[];
      readonly items: readonly Item[];
    };

export type Align = 'left' | 'middle' | 'right';

/**
 * Upright sizes in mm. A4 and A3: ISO 216. Letter: 8.5 × 11 in, Tabloid: 11 × 17 in, ANSI/ASME Y14.1
 * sizes A and B.
 */
const UPRIGHT: Readonly<Record<PaperName, readonly [Mm, Mm]>> = {
  A4: [210, 297],
  A3: [297, 420],
  Letter: [215.9, 279.4],
  Tabloid: [279.4, 431.8],
};

export interface Size {
  readonly w: Mm;
  readonly h: Mm;
}

export const paperSize = (paper: PaperName, lies: boolean): Size => {
  const [short, long] = UPRIGHT[paper];
  return lies ? { w: long, h: short } : { w: short, h: long };
};

export const COLORS = {
  ink: '#16181D',
  quiet: '#5B6070',
  rule: '#C9C9C9',
  white: '#FFFFFF',
} as const;
