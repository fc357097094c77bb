import type { Piece } from '../documents/design.ts';
import { pieceAt, pieceDirection, pieceFoot, shapeOf } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { turnBetween } from './arms.ts';
import {
  hasOverhang,
  type InkLine,
  inkLine,
  isUnderMark,
  rotatedRing,
  steps,
  turnedRound,
} from './ink-lines.ts';

/** Numbers that tell one line from another: width, beginning, pieces; in steps of the file form. */
export function numbersOf({ width, from, pieces }: InkLine): number[] {
  const own = pieces.flatMap(({ to, bulge }) => [steps(to.x), steps(to.y), Math.round(bulge * 1e6)]);
  return [...stepsOf(from), ...own, steps(width)];
}

export function compareLists(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length && i < b.length; i++) {
    if (a[i] !== b[i]) return a[i]! - b[i]!;
  }
  return a.length - b.length;
}

/** The line in the direction that gives the smaller numbers, its pieces joined where they go on. */
export function smallestForm(line: InkLine, isRing: boolean): InkLine {
  const begun = isRing ? rotatedRing(line, ringBeginning(line)) : line;
  if (hasOverhang(line)) return withJoinedPieces(begun);
  const last = begun.pieces.at(-1)!.to;
  const order = compareLists(stepsOf(begun.from), stepsOf(last));
  if (order !== 0) return withJoinedPieces(order < 0 ? begun : turnedRound(begun));
  const one = withJoinedPieces(begun);
  const other = withJoinedPieces(turnedRound(begun));
  return compareLists(numbersOf(one), numbersOf(other)) <= 0 ? one : other;
}

const stepsOf = ({ x, y }: PaperPoint): number[] => [steps(x), steps(y)];

/** The vertex with the smallest numbers where the ring bends anew; never one under a mark. */
function ringBeginning(ring: InkLine): number {
  const free = ring.pieces
    .map((_, i) => i)
    .filter((i) => i === 0 || !isUnderMark(ring, ring.path.starts[i]!));
  const vertex = (i: number): PaperPoint => (i === 0 ? ring.from : ring.pieces[i - 1]!.to);
  const bends = free.filter((i) => {
    const before = ring.pieces.at(i - 1)!;
    const from = vertex((i + ring.pieces.length - 1) % ring.pieces.length);
    return !oneFor(from, [vertex(i)], before, ring.pieces[i]!);
  });
  const choice = bends.length > 0 ? bends : free;
  return choice.reduce((best, i) => (compareLists(stepsOf(vertex(i)), stepsOf(vertex(best))) < 0 ? i : best));
}

function withJoinedPieces(line: InkLine): InkLine {
  const pieces: Piece[] = [];
  let from = line.from;
  let between: PaperPoint[] = [];
  for (const piece of line.pieces) {
    const last = pieces.at(-1);
    const one = last && oneFor(from, [...between, last.to], last, piece);
    if (last && one) {
      const whole = shapeOf({ from, to: last.to, bulge: last.bulge });
      between.push(pieceAt(whole, whole.length / 2), last.to);
      pieces[pieces.length - 1] = one;
      continue;
    }
    if (last) from = last.to;
    between = [];
    pieces.push(piece);
  }
  return inkLine(line.width, line.from, pieces, line.marks);
}

/** The one piece that lies where two pieces lie, which begin at `from` and meet at the last of `between`. */
function oneFor(from: PaperPoint, between: readonly PaperPoint[], a: Piece, b: Piece): Piece | undefined {
  const bend = 1 - a.bulge * b.bulge;
  if ((a.bulge === 0) !== (b.bulge === 0) || bend <= 0) return undefined;
  const joint = between.at(-1)!;
  if (steps(from.x) === steps(b.to.x) && steps(from.y) === steps(b.to.y)) return undefined;
  const before = shapeOf({ from, to: joint, bulge: a.bulge });
  const after = shapeOf({ from: joint, to: b.to, bulge: b.bulge });
  const turn = turnBetween(pieceDirection(before, before.length), pieceDirection(after, 0));
  if (Math.abs(turn) > TOLERANCE.tangent) return undefined;
  const bulge = Math.round(((a.bulge + b.bulge) / bend) * 1e6) / 1e6;
  if (bulge > LARGEST_BULGE || bulge < -LARGEST_BULGE) return undefined;
  const one = shapeOf({ from, to: b.to, bulge });
  // A point drawn on a line lies beside it by its rounding, up to twice that when points were drawn between
  // drawn points. Two tangent arcs of any radii put their joint on this one arc: only their middles tell them from it.
  const middles = [before, after].map((shape) => pieceAt(shape, shape.length / 2));
  const fits = [...between, ...middles].every((p) => pieceFoot(one, p).distance <= 2 * TOLERANCE.step);
  return fits ? { to: b.to, bulge } : undefined;
}

/** The document's own limit. */
const LARGEST_BULGE = 12;
