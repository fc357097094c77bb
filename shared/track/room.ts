import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import { type Bend, type EdgeMark, type Track, type TrackEdge, twin } from './track.ts';

/** What ends the plain straight line beside a mark. */
export type Barrier = 'junction' | 'corner' | 'end' | 'mark' | 'curve';

export interface Room {
  /** Plain straight line between the mark and the barrier; 0 where they touch or overlap. */
  readonly length: Mm;
  readonly until: Barrier;
  /** The other mark, where that is the barrier. */
  readonly mark?: EdgeMark;
  /** The node, where that is the barrier. */
  readonly node?: number;
}

/** Whether a bend is tighter than what counts as straight. */
export const isCurve = (bend: Bend, straightFrom: Mm): boolean =>
  Math.abs(bend.curvature) * (straightFrom - TOLERANCE.step) > 1;

/** The same mark as it is met on the way back. */
export function mirrored(track: Track, edge: number, mark: EdgeMark): EdgeMark {
  const back = track.edges[twin(edge)]!.marks.find((m) => m.mark === mark.mark);
  if (!back) throw new RangeError('a mark stands on both directions of its stretch');
  return back;
}

/** Plain line that a robot on the edge finds after the mark: no mark, junction, corner, end or curve. */
export function plainAfter(track: Track, edge: number, mark: EdgeMark, straightFrom: Mm): Room {
  let way = 0;
  let from = mark.to;
  let current = track.edges[edge]!;
  for (let steps = 0; steps <= track.edges.length; steps++) {
    const found = firstBarrier(current, from, mark, straightFrom);
    if (found) return { ...found, length: Math.max(0, way + found.length) };
    way += current.length - from;
    const node = track.nodes[current.to]!;
    const on = node.arms.find((arm) => arm.edge !== twin(current.index));
    if (node.kind !== 'joint' || !on) {
      const until = node.kind === 'joint' ? 'end' : node.kind;
      return { length: Math.max(0, way), until, node: node.index };
    }
    current = track.edges[on.edge]!;
    from = 0;
  }
  // A ring without anything else on it.
  return { length: way, until: 'mark', mark };
}

/** Plain line that a robot on the edge has had before the mark. */
export const plainBefore = (track: Track, edge: number, mark: EdgeMark, straightFrom: Mm): Room =>
  plainAfter(track, twin(edge), mirrored(track, edge, mark), straightFrom);

function firstBarrier(edge: TrackEdge, from: Mm, self: EdgeMark, straightFrom: Mm): Room | undefined {
  const next = edge.marks.find((m) => m.mark !== self.mark && m.to > from);
  const curve = edge.bends.find((bend) => bend.to > from + TOLERANCE.step && isCurve(bend, straightFrom));
  const toCurve = curve ? Math.max(0, curve.from - from) : Number.POSITIVE_INFINITY;
  if (next && next.from - from <= toCurve) return { length: next.from - from, until: 'mark', mark: next };
  return curve ? { length: toCurve, until: 'curve' } : undefined;
}

/** The way from the mark's end to the junction that the robot meets next, through corners and joints. */
export function wayToJunction(track: Track, edge: number, mark: EdgeMark): Room {
  let current = track.edges[edge]!;
  let way = current.length - mark.to;
  for (let steps = 0; steps <= track.edges.length; steps++) {
    const node = track.nodes[current.to]!;
    if (node.kind === 'junction') return { length: Math.max(0, way), until: 'junction', node: node.index };
    const on = node.arms.find((arm) => arm.edge !== twin(current.index));
    if (!on) return { length: Math.max(0, way), until: 'end', node: node.index };
    current = track.edges[on.edge]!;
    way += current.length;
  }
  return { length: way, until: 'end' };
}
