import type { Path } from '../geometry/path.ts';
import { type PieceShape, pieceDirection } from '../geometry/piece.ts';
import type { Mm, Rad } from '../geometry/units.ts';
import { turnBetween } from '../track/arms.ts';

/** How a line turns; positive to the right of travel. */
export type Bending =
  | { readonly kind: 'corner'; readonly turn: Rad }
  | { readonly kind: 'curve'; readonly turn: Rad; readonly radius: Mm; readonly length: Mm };

/** A sharper turn between two pieces is a corner (20 degrees); a gentler one belongs to the curve. */
const CORNER: Rad = 0.35;
/** Less than this in all is called straight (10 degrees). */
const STRAIGHT: Rad = 0.175;

const sweepOf = (piece: PieceShape): Rad => (piece.kind === 'arc' ? piece.sweep : 0);

interface Run {
  readonly way: Mm;
  readonly length: Mm;
  readonly turn: Rad;
}

/**
 * Corners, and curves as a hand drew them: arcs that follow one another to the same side are one, with
 * the radius of a circle of that length and turn.
 */
export function bendingsOf(path: Path): (Bending & { readonly way: Mm })[] {
  const found: (Bending & { readonly way: Mm })[] = [];
  let run: Run | null = null;
  const close = () => {
    if (run && Math.abs(run.turn) >= STRAIGHT) {
      const { way, length, turn } = run;
      found.push({ kind: 'curve', way, length, turn, radius: length / Math.abs(turn) });
    }
    run = null;
  };
  path.pieces.forEach((piece, i) => {
    const before = path.pieces[i - 1];
    const way = path.starts[i]!;
    const turn = before ? turnBetween(pieceDirection(before, before.length), pieceDirection(piece, 0)) : 0;
    const sweep = sweepOf(piece);
    if (Math.abs(turn) > CORNER) {
      close();
      found.push({ kind: 'corner', way, turn });
    }
    if (sweep === 0 || (run && run.turn * sweep < 0)) close();
    if (sweep !== 0)
      run = run
        ? { ...run, length: run.length + piece.length, turn: run.turn + sweep }
        : { way, length: piece.length, turn: sweep };
  });
  close();
  return found;
}
