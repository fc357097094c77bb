import type { Drawing } from '../documents/design.ts';
import type { Sheet } from '../documents/sheet.ts';
import { pathOf, pointAt } from '../geometry/path.ts';
import { pieceAt } from '../geometry/piece.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { layOut } from '../track/layout.ts';

/** One thing to be drawn by hand on paper with a grid, places as mm from the left and from the top. */
export type ReadOutStep =
  | { readonly kind: 'begin'; readonly at: PaperPoint }
  | { readonly kind: 'straight'; readonly to: PaperPoint }
  /** A bow over the place in its middle. */
  | { readonly kind: 'bow'; readonly over: PaperPoint; readonly to: PaperPoint }
  /** Bands from this place on towards the other one, as the word says. */
  | { readonly kind: 'mark'; readonly word: string; readonly from: PaperPoint; readonly to: PaperPoint };

/** To half a millimetre, as a pencil on a grid of 5 mm can follow. */
const onPaper = ({ x, y }: PaperPoint): PaperPoint => ({
  x: Math.round(x * 2) / 2,
  y: Math.round(y * 2) / 2,
});

/** A drawing read out, line by line and then mark by mark, in the order in which it was drawn. */
export function readOut(sheet: Sheet, drawing: Drawing): ReadOutStep[] {
  const lines = drawing.lines.flatMap((line): ReadOutStep[] => [
    { kind: 'begin', at: onPaper(line.from) },
    ...pathOf(line).pieces.map((piece): ReadOutStep => {
      const to = onPaper(piece.to);
      if (piece.kind === 'straight') return { kind: 'straight', to };
      return { kind: 'bow', over: onPaper(pieceAt(piece, piece.length / 2)), to };
    }),
  ]);
  const layout = layOut(sheet, drawing);
  const marks = layout.marks
    .filter(({ given }) => !given)
    .map(({ word, line, from, to }): ReadOutStep => {
      const { path } = layout.lines.find(({ id }) => id === line)!;
      return { kind: 'mark', word, from: onPaper(pointAt(path, from)), to: onPaper(pointAt(path, to)) };
    });
  return [...lines, ...marks];
}
