import { pathOf } from '../../../shared/geometry/path.ts';
import { type PieceShape, shapeOf } from '../../../shared/geometry/piece.ts';

/** Short ways to write pieces and paths in tests; lengths in mm. */
export const piece = (x0: number, y0: number, x1: number, y1: number, bulge = 0): PieceShape =>
  shapeOf({ from: { x: x0, y: y0 }, to: { x: x1, y: y1 }, bulge });

/** The arc of a semicircle, or of `degrees`: bulge = tan(sweep/4). */
export const bulgeOf = (degrees: number): number => Math.tan((degrees * Math.PI) / 720);

export const path = (from: readonly [number, number], ...pieces: readonly (readonly number[])[]) =>
  pathOf({
    from: { x: from[0], y: from[1] },
    pieces: pieces.map(([x, y, bulge]) => ({ to: { x: x!, y: y! }, bulge: bulge ?? 0 })),
  });
