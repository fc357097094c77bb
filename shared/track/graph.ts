import type { Kit } from '../documents/kit.ts';
import { atan2, meanOf } from '../geometry/exact-math.ts';
import { type Path, pointAt } from '../geometry/path.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { angleBetween, leavingDirection, sightDirection } from './arms.ts';
import { marksOn, type Standing, standings } from './edge-marks.ts';
import type { Layout } from './layout.ts';
import { type Cover, meetingsOf } from './meetings.ts';
import { clustersOf } from './nodes.ts';
import { type Pairs, pairsOf } from './pairs.ts';
import type { Arm, Bend, Cut, Track, TrackEdge, TrackLine, TrackNode } from './track.ts';

/**
 * The planar graph of everything drawn and given: nodes at loose ends, corners and meetings, places
 * within the kit's snap taken as one. Where a line lies on another, only the lower one has edges.
 * What `known` tells of two of its paths is not worked out again.
 */
export function buildTrack(layout: Layout, kit: Kit, known?: Pairs): Track {
  const { snap } = kit.rules.junction;
  const pairs = pairsOf(layout.lines, known);
  const meetings = meetingsOf(layout.lines, pairs, snap);
  const { cuts, count } = clustersOf(layout.lines, meetings.links, snap);
  const marks = standings(layout, meetings.covers);
  const edges: TrackEdge[] = [];
  const lines = layout.lines.map((line, i): TrackLine => {
    const own = stretchesOf(i, cuts[i]!, snap, meetings.covers).map((stretch) => {
      edges.push(...bothWays(edges.length, stretch, line.path, marks));
      return edges.length - 2;
    });
    return { line, cuts: cuts[i]!, edges: own };
  });
  const nodes = nodesOf(layout, cuts, count, edges, kit.robot.barAhead);
  return { layout, pairs, lines, nodes, edges, crossings: meetings.crossings };
}

interface Stretch {
  readonly line: number;
  readonly low: Mm;
  readonly high: Mm;
  readonly first: number;
  readonly last: number;
}

/** Between two cuts lies a stretch, unless it is the inside of a junction or lies on another line. */
function stretchesOf(line: number, cuts: readonly Cut[], snap: Mm, covers: readonly Cover[]): Stretch[] {
  const stretches: Stretch[] = [];
  for (let i = 1; i < cuts.length; i++) {
    const a = cuts[i - 1]!;
    const b = cuts[i]!;
    if (a.node === b.node && b.way - a.way <= snap) continue;
    const stretch = { line, low: a.way, high: b.way, first: a.node, last: b.node };
    if (!covers.some((cover) => isCovered(stretch, cover))) stretches.push(stretch);
  }
  return stretches;
}

function isCovered(stretch: Stretch, cover: Cover): boolean {
  if (cover.line !== stretch.line) return false;
  const slack = 2 * TOLERANCE.samePoint;
  return stretch.low >= cover.low - slack && stretch.high <= cover.high + slack;
}

function bothWays(
  index: number,
  stretch: Stretch,
  path: Path,
  marks: readonly Standing[],
): [TrackEdge, TrackEdge] {
  const { line, low, high, first, last } = stretch;
  const common = { line, low, high, length: high - low };
  const bends = bendsBetween(path, low, high);
  const back = bends
    .map((bend) => ({
      from: high - low - bend.to,
      to: high - low - bend.from,
      curvature: 0 - bend.curvature,
    }))
    .reverse();
  const on = (along: boolean) => marksOn(stretch, marks, along);
  return [
    { ...common, index, from: first, to: last, along: true, bends, marks: on(true) },
    { ...common, index: index + 1, from: last, to: first, along: false, bends: back, marks: on(false) },
  ];
}

function bendsBetween(path: Path, low: Mm, high: Mm): Bend[] {
  const bends: Bend[] = [];
  path.pieces.forEach((piece, i) => {
    const from = Math.max(path.starts[i]!, low) - low;
    const to = Math.min(path.starts[i]! + piece.length, high) - low;
    if (to > from) bends.push({ from, to, curvature: piece.curvature });
  });
  return bends;
}

function nodesOf(
  layout: Layout,
  cuts: readonly (readonly Cut[])[],
  count: number,
  edges: readonly TrackEdge[],
  reach: Mm,
): TrackNode[] {
  const places: PaperPoint[][] = Array.from({ length: count }, () => []);
  cuts.forEach((own, line) => {
    for (const { way, node } of own) places[node]!.push(pointAt(layout.lines[line]!.path, way));
  });
  const arms: Arm[][] = Array.from({ length: count }, () => []);
  for (const edge of edges) arms[edge.from]!.push(armOf(edge, layout.lines[edge.line]!.path, reach));
  return places.map((points, index) => {
    const own = arms[index]!.sort((a, b) => angleOf(a) - angleOf(b) || a.edge - b.edge);
    return { index, kind: kindOf(own), at: meanOf(points), arms: own };
  });
}

function armOf(edge: TrackEdge, path: Path, reach: Mm): Arm {
  const way = edge.along ? edge.low : edge.high;
  return {
    edge: edge.index,
    tangent: leavingDirection(path, way, edge.along),
    heading: sightDirection(path, way, edge.along, Math.min(reach, edge.length / 2)),
  };
}

function angleOf(arm: Arm): number {
  const angle = atan2(arm.heading.y, arm.heading.x);
  return angle < 0 ? angle + 2 * Math.PI : angle;
}

function kindOf(arms: readonly Arm[]): TrackNode['kind'] {
  const [a, b] = arms;
  if (!a || !b) return 'end';
  if (arms.length > 2) return 'junction';
  return Math.PI - angleBetween(a, b) > TOLERANCE.ahead ? 'corner' : 'joint';
}
