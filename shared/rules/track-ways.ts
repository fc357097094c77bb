import type { Mm, Rad } from '../geometry/units.ts';
import { angleBetween } from '../track/arms.ts';
import { type NodeKind, type Track, twin } from '../track/track.ts';

/** A place on a line, by the line's index. */
export interface LineSpot {
  readonly line: number;
  readonly way: Mm;
}

/** A node from which something is reached along the track: how far, and by which of its arms. */
interface Approach {
  readonly node: number;
  readonly way: Mm;
  /** The edge that leaves the node; undefined where it is the inside of the node itself. */
  readonly arm: number | undefined;
}

/** What lies between two neighbouring cuts of a line, reached from either end. */
interface Interval {
  readonly low: Mm;
  readonly high: Mm;
  readonly ends: readonly [readonly Approach[], readonly Approach[]];
}

/** So many nodes are passed on the way to a node at which two places may part. */
const MOST_NODES = 2;

export interface Together {
  /** Two places of one line with less way than this between them are together. */
  readonly reach: Mm;
  /** How much way over a node two places may have between them whose ways part there at an angle. */
  readonly partedAt: (angle: Rad, node: NodeKind) => Mm;
  /** No angle allows more than this. */
  readonly furthest: Mm;
}

/**
 * Tells whether two places hang together along the track: over little way, or over a node at which
 * their ways part. What two intervals have in common is worked out once.
 */
export function togetherOn(track: Track, rule: Together): (a: LineSpot, b: LineSpot) => boolean {
  const intervals = track.lines.map((_, line) => intervalsOf(track, line, rule.furthest));
  const firsts: number[] = [];
  let count = 0;
  for (const own of intervals) {
    firsts.push(count);
    count += own.length;
  }
  const known = new Map<number, Slack>();
  return (a, b) => {
    if (a.line === b.line && Math.abs(a.way - b.way) <= rule.reach) return true;
    const i = indexAt(intervals[a.line]!, a.way);
    const j = indexAt(intervals[b.line]!, b.way);
    const one = intervals[a.line]![i]!;
    const two = intervals[b.line]![j]!;
    const key = (firsts[a.line]! + i) * count + firsts[b.line]! + j;
    const slack = known.get(key) ?? slackOf(track, one, two, rule);
    known.set(key, slack);
    const x = [a.way - one.low, one.high - a.way] as const;
    const y = [b.way - two.low, two.high - b.way] as const;
    return (
      x[0] + y[0] <= slack[0] || x[0] + y[1] <= slack[1] || x[1] + y[0] <= slack[2] || x[1] + y[1] <= slack[3]
    );
  };
}

/** The way left to two places beside the ends low-low, low-high, high-low, high-high of their intervals. */
type Slack = readonly [Mm, Mm, Mm, Mm];

function slackOf(track: Track, a: Interval, b: Interval, rule: Together): Slack {
  const between = (i: 0 | 1, j: 0 | 1): Mm => {
    let most = Number.NEGATIVE_INFINITY;
    for (const m of a.ends[i]) {
      for (const n of b.ends[j]) {
        const way = m.way + n.way;
        if (m.node !== n.node || way > rule.furthest) continue;
        const angle = angleOf(track, m, n);
        if (angle === undefined) continue;
        const allowed = rule.partedAt(angle, track.nodes[m.node]!.kind);
        most = Math.max(most, Math.max(rule.reach, allowed) - way);
      }
    }
    return most;
  };
  return [between(0, 0), between(0, 1), between(1, 0), between(1, 1)];
}

/** The angle at which two ways leave a node; undefined where they leave by one arm. */
function angleOf(track: Track, a: Approach, b: Approach): Rad | undefined {
  if (a.arm === undefined || b.arm === undefined) return Math.PI;
  if (a.arm === b.arm) return undefined;
  const { arms } = track.nodes[a.node]!;
  const one = arms.find((arm) => arm.edge === a.arm);
  const two = arms.find((arm) => arm.edge === b.arm);
  return one && two ? angleBetween(one, two) : Math.PI;
}

function indexAt(intervals: readonly Interval[], way: Mm): number {
  let low = 0;
  let high = intervals.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (intervals[middle]!.high < way) low = middle + 1;
    else high = middle;
  }
  return low;
}

function intervalsOf(track: Track, line: number, furthest: Mm): Interval[] {
  const { cuts, edges } = track.lines[line]!;
  return cuts.slice(1).map((after, i) => {
    const before = cuts[i]!;
    const edge = edges.find((e) => track.edges[e]!.low === before.way && track.edges[e]!.high === after.way);
    const back = edge === undefined ? undefined : twin(edge);
    return {
      low: before.way,
      high: after.way,
      ends: [
        approachesTo(track, { node: before.node, way: 0, arm: edge }, furthest),
        approachesTo(track, { node: after.node, way: 0, arm: back }, furthest),
      ],
    };
  });
}

/** The node itself, and the nodes around it with the arms by which the shortest ways leave them. */
function approachesTo(track: Track, from: Approach, furthest: Mm): Approach[] {
  const best = new Map<number, Approach>([[from.node, from]]);
  let rim = [from];
  for (let passed = 0; passed < MOST_NODES; passed++) {
    const next: Approach[] = [];
    for (const { node, way } of rim) {
      for (const { edge } of track.nodes[node]!.arms) {
        const { to, length } = track.edges[edge]!;
        const found = { node: to, way: way + length, arm: twin(edge) };
        if (found.way > furthest || found.way >= (best.get(to)?.way ?? Number.POSITIVE_INFINITY)) continue;
        best.set(to, found);
        next.push(found);
      }
    }
    rim = next;
  }
  return [...best.values()];
}
