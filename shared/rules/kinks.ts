import { sin } from '../geometry/exact-math.ts';
import type { Path } from '../geometry/path.ts';
import { pieceDirection } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, Rad } from '../geometry/units.ts';
import { turnBetween } from '../track/arms.ts';

/** A bend of a line: the way it takes, its radius, and how far it turns in all. */
export interface Curve {
  readonly from: Mm;
  readonly to: Mm;
  readonly radius: Mm;
  readonly turn: Rad;
}

/** A place where a path bends: a kink between two pieces, too blunt for a corner, or the beginning of an arc. */
interface Bend {
  readonly way: Mm;
  /** Signed. No bend goes on over a corner. */
  readonly turn: Rad;
  readonly kind: 'kink' | 'arc' | 'corner';
}

/**
 * Bends of many small kinks that turn by more than `least` and are tighter than `limit`: the shortest
 * stretches that do. The radius is that of the circle which such kinks, evenly spread, are drawn into.
 */
export function kinkedCurves(path: Path, least: Rad, limit: Mm): Curve[] {
  const bends = bendsOf(path);
  const curves: Curve[] = [];
  let before = -1;
  bends.forEach((_, last) => {
    const first = beginOf(bends, last, least);
    // From the same kink a shorter stretch has turned enough already.
    if (first === undefined || first === before) return;
    before = first;
    const curve = curveOver(bends.slice(first, last + 1));
    if (curve.radius < limit) curves.push(curve);
  });
  return curves;
}

/** The last kink from which on the path has turned by more than `least` at the kink `last`. */
function beginOf(bends: readonly Bend[], last: number, least: Rad): number | undefined {
  const { kind, turn: direction } = bends[last]!;
  if (kind !== 'kink') return undefined;
  let turn = 0;
  for (let i = last; i >= 0; i--) {
    const bend = bends[i]!;
    if (bend.kind === 'corner' || bend.turn * direction < 0) return undefined;
    turn += Math.abs(bend.turn);
    if (bend.kind === 'kink' && turn > least) return i;
  }
  return undefined;
}

function bendsOf(path: Path): Bend[] {
  return path.pieces.flatMap((piece, i) => {
    const way = path.starts[i]!;
    const last = path.pieces[i - 1];
    const turn = last ? turnBetween(pieceDirection(last, last.length), pieceDirection(piece, 0)) : 0;
    const kind = Math.abs(turn) > TOLERANCE.ahead ? 'corner' : 'kink';
    const bends: Bend[] = Math.abs(turn) > TOLERANCE.tangent ? [{ way, turn, kind }] : [];
    if (piece.kind === 'arc') bends.push({ way, turn: piece.sweep, kind: 'arc' });
    return bends;
  });
}

/** From the first kink to the last; of each of these, half belongs to what lies outside. */
function curveOver(bends: readonly Bend[]): Curve {
  const [first, last] = [bends[0]!, bends.at(-1)!];
  const length = last.way - first.way;
  let turn = 0;
  let chords = 0;
  for (const bend of bends) {
    const size = Math.abs(bend.turn);
    const weight = bend === first || bend === last ? 0.5 : 1;
    turn += size;
    chords += bend.kind === 'arc' ? size : weight * 2 * sin(size / 2);
  }
  // Each kink may have been moved by rounding to the file form.
  const rounded = length + 2 * TOLERANCE.step * bends.length;
  return { from: first.way, to: last.way, radius: rounded / chords, turn };
}
