import type { Drawing, Line } from '../documents/design.ts';
import { distance } from '../geometry/exact-math.ts';
import { pathOf } from '../geometry/path.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { TrackNode } from '../track/track.ts';
import type { RuleView } from './context.ts';
import { stepped, withLine } from './drawn.ts';

/** The least that must stay of a leg, so that it is still a leg. */
const LEAST_LEG: Mm = 1;

/**
 * The drawing with a corner cut across `leg` before and after it: two corners, each blunter than a
 * right angle. None where a leg is short, bent, given, or carries a mark or a junction.
 */
export function cornerCutAcross(view: RuleView, node: TrackNode, leg: Mm): Drawing[] {
  const { track, drawing } = view;
  const edges = node.arms.map((arm) => track.edges[arm.edge]!);
  const isPlain = edges.every(
    (edge) => edge.length >= leg + LEAST_LEG && edge.marks.every((mark) => mark.from > leg),
  );
  const [one, two, ...others] = drawing.lines.flatMap((line) => legsAt(line, node.at, leg));
  if (!isPlain || !one || !two || others.length > 0) return [];
  if (Math.min(one.length, two.length) < leg + LEAST_LEG) return [];
  return cutAcross(drawing, one, two);
}

/** A straight piece of a drawn line that begins (`away`) or ends at the corner. */
interface Leg {
  readonly line: string;
  readonly piece: number;
  readonly away: boolean;
  readonly length: Mm;
  readonly cut: PaperPoint;
}

function legsAt(line: Line, corner: PaperPoint, leg: Mm): Leg[] {
  return pathOf(line).pieces.flatMap((shape, piece) => {
    const away = isSame(shape.from, corner);
    if (shape.kind !== 'straight' || (!away && !isSame(shape.to, corner))) return [];
    const end = away ? shape.from : shape.to;
    const by = away ? leg : -leg;
    const cut = { x: stepped(end.x + shape.along.x * by), y: stepped(end.y + shape.along.y * by) };
    return [{ line: line.id, piece, away, length: shape.length, cut }];
  });
}

const isSame = (a: PaperPoint, b: PaperPoint): boolean => distance(a, b) <= TOLERANCE.step;

function cutAcross(drawing: Drawing, one: Leg, two: Leg): Drawing[] {
  const [inwards, outwards] = one.away ? [two, one] : [one, two];
  if (inwards.line === outwards.line && outwards.away && outwards.piece === inwards.piece + 1) {
    return [cutInside(drawing, inwards, outwards)];
  }
  if (![one, two].every((leg) => isLineEnd(drawing, leg))) return [];
  // The line that leads to the corner is drawn on to the other cut.
  return [trimmed(trimmed(drawing, inwards, [inwards.cut, outwards.cut]), outwards, [outwards.cut])];
}

const lineOf = (drawing: Drawing, { line }: Leg): Line => drawing.lines.find((l) => l.id === line)!;

const isLineEnd = (drawing: Drawing, leg: Leg): boolean =>
  leg.piece === (leg.away ? 0 : lineOf(drawing, leg).pieces.length - 1);

function cutInside(drawing: Drawing, inwards: Leg, outwards: Leg): Drawing {
  const line = lineOf(drawing, inwards);
  const cuts = [inwards.cut, outwards.cut].map((to) => ({ to, bulge: 0 }));
  const pieces = [...line.pieces.slice(0, inwards.piece), ...cuts, ...line.pieces.slice(outwards.piece)];
  return withLine(drawing, line, { ...line, pieces }, pathOf(line).starts[outwards.piece]!);
}

/** The line's end moved from the corner to the first of `cuts`, and drawn on over the others. */
function trimmed(drawing: Drawing, leg: Leg, cuts: readonly PaperPoint[]): Drawing {
  const line = lineOf(drawing, leg);
  const [last, ...before] = [...cuts].reverse();
  if (leg.away) {
    const pieces = [...before.map((to) => ({ to, bulge: 0 })), ...line.pieces];
    return withLine(drawing, line, { ...line, from: last!, pieces }, Number.NEGATIVE_INFINITY);
  }
  const pieces = [...line.pieces.slice(0, -1), ...cuts.map((to) => ({ to, bulge: 0 }))];
  return withLine(drawing, line, { ...line, pieces }, Number.POSITIVE_INFINITY);
}
