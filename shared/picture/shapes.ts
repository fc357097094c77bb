import type { Hatch } from '../documents/kit.ts';
import type { Direction, PieceShape } from '../geometry/piece.ts';
import type { Mm, PaperPoint, Rad } from '../geometry/units.ts';

/**
 * Everything that can be seen on a sheet, in mm, as plain shapes with a role each. Canvas, miniatures
 * and print draw this one list, so that all of them show the same sheet. Colours of roles and sizes of
 * letters are the drawer's; only a band's colour comes from the kit.
 */
export interface Picture {
  readonly w: Mm;
  readonly h: Mm;
  readonly grid: PictureGrid;
  readonly areas: readonly PicturePolygon[];
  readonly keepOut: readonly PicturePolygon[];
  readonly boxes: readonly PictureBox[];
  readonly gates: readonly PictureGate[];
  readonly berths: readonly PictureBerth[];
  /** Given lines first, so that drawn ones lie on top. */
  readonly strokes: readonly PictureStroke[];
  readonly bands: readonly PictureBand[];
}

/** Everything with a name. */
export const labelledIn = ({
  areas,
  keepOut,
  boxes,
  gates,
  berths,
}: Picture): readonly {
  readonly label: PictureLabel;
}[] => [...areas, ...keepOut, ...boxes, ...gates, ...berths];

/** Where the lines of the millimetre paper run: every 5 mm, and every 50 mm. */
export interface PictureGrid {
  readonly fine: { readonly xs: readonly Mm[]; readonly ys: readonly Mm[] };
  readonly coarse: { readonly xs: readonly Mm[]; readonly ys: readonly Mm[] };
}

/** A text beside something. `align` and `baseline` say which side of the text `at` is. */
export interface PictureLabel {
  readonly text: string;
  readonly at: PaperPoint;
  readonly align: 'left' | 'middle' | 'right';
  readonly baseline: 'top' | 'middle' | 'bottom';
}

export interface PicturePolygon {
  readonly id: string;
  readonly polygon: readonly PaperPoint[];
  readonly label: PictureLabel;
}

/** A dashed frame with whole corners, which nothing else on a sheet has. */
export interface PictureBox extends PicturePolygon {
  /** One angle for each corner, over it from side to side. */
  readonly angles: readonly (readonly PaperPoint[])[];
}

export interface PictureGate {
  readonly id: string;
  readonly a: PaperPoint;
  readonly b: PaperPoint;
  readonly label: PictureLabel;
}

export interface PictureBerth {
  readonly role: 'start' | 'finish';
  readonly at: PaperPoint;
  readonly heading: Rad;
  readonly r: Mm;
  /** The dashed U: sides and stern. */
  readonly hull: readonly PaperPoint[];
  /** The two slanted strokes of the bow; the robot faces out between them. */
  readonly bow: readonly (readonly [PaperPoint, PaperPoint])[];
  readonly label: PictureLabel;
}

/** A line as one run of straights and arcs; ends and joins are round. */
export interface PictureStroke {
  readonly id: string;
  readonly role: 'line' | 'given';
  readonly width: Mm;
  readonly pieces: readonly PieceShape[];
}

export interface PictureBand {
  readonly mark: string;
  readonly given: boolean;
  /** The ink's letter. */
  readonly ink: string;
  readonly color: string;
  readonly hatch: Hatch;
  /** Corners of the block: four on a straight, more where the line bends. */
  readonly outline: readonly PaperPoint[];
  readonly middle: PaperPoint;
  readonly along: Direction;
  /** The hatch as strokes and dots inside the outline; a sheet that a robot drives on leaves them out. */
  readonly hatchStrokes: readonly (readonly [PaperPoint, PaperPoint])[];
  readonly hatchDots: readonly PaperPoint[];
}
