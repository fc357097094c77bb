import type { Kit } from '../documents/kit.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Direction } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { Track, TrackNode } from '../track/track.ts';
import type { RuleView } from './context.ts';
import type { LineSpot } from './track-ways.ts';

/** Two loose ends that face one another so near that they look like one line, interrupted. */
export interface Gap {
  readonly ends: readonly [TrackNode, TrackNode];
  readonly length: Mm;
  readonly middle: PaperPoint;
}

/** Cosine of half a right angle: so far from straight at it an end may aim beside the other. */
const FACING = Math.SQRT1_2;

/** Gaps in what the team drew, or between that and given lines. */
export const gapsOf = ({ track, kit }: RuleView): Gap[] =>
  facingEnds(track, kit).filter(({ ends }) => !ends.every((end) => isGiven(track, end)));

/** Gaps under the clearance, each end in one at most, the narrowest first. */
export function facingEnds(track: Track, kit: Kit): Gap[] {
  const limit = kit.rules.clearance - TOLERANCE.samePoint;
  const ends = track.nodes.filter((node) => node.arms.length === 1);
  const found: Gap[] = [];
  // Every two ends of a full sheet, at each live check: nearly all are told apart by their boxes.
  for (let i = 0; i < ends.length; i++) {
    const a = ends[i]!;
    for (let k = i + 1; k < ends.length; k++) {
      const b = ends[k]!;
      if (Math.abs(b.at.x - a.at.x) >= limit || Math.abs(b.at.y - a.at.y) >= limit) continue;
      const gap = gapBetween(a, b, limit);
      if (gap) found.push(gap);
    }
  }
  found.sort((one, two) => one.length - two.length);
  const taken = new Set<TrackNode>();
  return found.filter(({ ends: pair }) => {
    if (pair.some((end) => taken.has(end))) return false;
    for (const end of pair) taken.add(end);
    return true;
  });
}

function gapBetween(a: TrackNode, b: TrackNode, limit: Mm): Gap | null {
  const length = distance(a.at, b.at);
  if (length >= limit) return null;
  const dx = b.at.x - a.at.x;
  const dy = b.at.y - a.at.y;
  const inwards = (node: TrackNode): Direction => node.arms[0]!.tangent;
  const least = FACING * length;
  const faces =
    -(inwards(a).x * dx + inwards(a).y * dy) >= least && inwards(b).x * dx + inwards(b).y * dy >= least;
  const middle = { x: (a.at.x + b.at.x) / 2, y: (a.at.y + b.at.y) / 2 };
  return faces ? { ends: [a, b], length, middle } : null;
}

const isGiven = (track: Track, { arms }: TrackNode): boolean =>
  track.lines[track.edges[arms[0]!.edge]!.line]!.line.given;

/** A loose end as a place on its line. */
export function endSpot(track: Track, { arms }: TrackNode): LineSpot {
  const { line, along, low, high } = track.edges[arms[0]!.edge]!;
  return { line, way: along ? low : high };
}
