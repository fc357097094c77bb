import type { Kit } from '../documents/kit.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import { cos, distance, sin } from '../geometry/exact-math.ts';
import { pointAt } from '../geometry/path.ts';
import { pieceFoot } from '../geometry/piece.ts';
import type { Mm, MmPerSecond, PaperPoint, Rad } from '../geometry/units.ts';
import { cornerAngle } from '../track/arms.ts';
import { type EdgeMark, type Track, type TrackEdge, type TrackNode, twin } from '../track/track.ts';
import { type Leaning, leaningOn, pastEnd } from './motion.ts';
import { wordMet } from './words-met.ts';

/**
 * What a robot drives from one decision to the next: the edges from a directed edge on, through joints and
 * through corners that it just follows. Ways are along the whole road, from the beginning of its first edge.
 */
export interface Road {
  readonly parts: readonly Part[];
  readonly length: Mm;
  /** Way of the axle at which what the road comes to happens: at a loose end not quite its end. */
  readonly reach: Mm;
  /** What the road comes to; `round`: itself again. */
  readonly end: 'junction' | 'corner' | 'end' | 'round';
  /** The node there. */
  readonly node: number;
  readonly marks: readonly RoadMark[];
  readonly bends: readonly RoadBend[];
}

interface Part {
  readonly edge: number;
  readonly from: Mm;
}

export interface RoadMark {
  readonly mark: EdgeMark;
  readonly from: Mm;
  readonly to: Mm;
  /** Undefined where the reader takes it for no mark. */
  readonly word: string | undefined;
}

export interface RoadBend extends Leaning {
  readonly from: Mm;
  readonly to: Mm;
}

/** The lines as a robot of a kit drives them. Roads are put together when they are first asked for. */
export interface RoadMap {
  readonly track: Track;
  readonly kit: Kit;
  readonly sheet: Sheet;
  readonly from: (edge: number) => Road;
}

/** A road map with the berth that the ride is to reach. */
export interface Journey extends RoadMap {
  readonly to: Berth | undefined;
}

export function roadMap(track: Track, sheet: Sheet, kit: Kit): RoadMap {
  const known = new Map<number, Road>();
  const from = (edge: number): Road => {
    const road = known.get(edge) ?? roadFrom(track, kit, edge);
    known.set(edge, road);
    return road;
  };
  return { track, sheet, kit, from };
}

/**
 * A bend of more than this is seen as a corner by the bar; a lesser one is followed. The faster the robot,
 * in lengths from bar to axle a second, the less it has turned when the bar is over the corner. Fitted to
 * the run: 70 degrees for the demo robot at steady, 62 at fast.
 */
export const followedAt = (speed: MmPerSecond, { robot }: Kit): Rad =>
  ((78 - (2.2 * speed) / robot.barAhead) * Math.PI) / 180;

/** Whether a robot goes on over a node at any pace, without deciding or turning. */
function goesOver(node: TrackNode, kit: Kit): boolean {
  if (node.kind === 'joint') return true;
  return node.kind === 'corner' && turnAt(node) <= followedAt(kit.robot.paces.fast, kit);
}

function roadFrom(track: Track, kit: Kit, first: number): Road {
  const parts: Part[] = [];
  let length = 0;
  let edge = track.edges[first]!;
  for (;;) {
    parts.push({ edge: edge.index, from: length });
    length += edge.length;
    const node = track.nodes[edge.to]!;
    const on = node.arms.find((arm) => arm.edge !== twin(edge.index));
    const goesOn = on && goesOver(node, kit);
    if (goesOn && !parts.some((part) => part.edge === on.edge)) {
      edge = track.edges[on.edge]!;
      continue;
    }
    const end = goesOn ? 'round' : endOf(node);
    const { width } = track.lines[edge.line]!.line;
    const reach = end === 'end' ? length + pastEnd(width, kit) : length;
    return { parts, length, reach, end, node: node.index, ...along(track, kit, parts) };
  }
}

function endOf(node: TrackNode): Road['end'] {
  if (node.kind === 'junction') return 'junction';
  return node.arms.length > 1 ? 'corner' : 'end';
}

function along(track: Track, kit: Kit, parts: readonly Part[]): Pick<Road, 'marks' | 'bends'> {
  const on = <T>(of: (edge: TrackEdge, from: Mm) => readonly T[]): T[] =>
    parts.flatMap(({ edge, from }) => of(track.edges[edge]!, from));
  return {
    marks: on((edge, from) =>
      edge.marks.map((mark) => ({
        mark,
        from: from + mark.from,
        to: from + mark.to,
        word: wordMet(mark, kit),
      })),
    ),
    bends: on((edge, from) =>
      edge.bends.map((bend) => ({
        from: from + bend.from,
        to: from + bend.to,
        ...leaningOn(bend.curvature, kit),
      })),
    ),
  };
}

/** The edge under a way of a road, and the way along it. */
export function edgeUnder(track: Track, road: Road, way: Mm): { readonly edge: number; readonly way: Mm } {
  const part = road.parts.findLast(({ from }) => from <= way) ?? road.parts[0]!;
  const { length } = track.edges[part.edge]!;
  return { edge: part.edge, way: Math.min(Math.max(way - part.from, 0), length) };
}

/** The place on the sheet at a way of a road; ends are clamped. */
export function placeOn(track: Track, road: Road, way: Mm): PaperPoint {
  const under = edgeUnder(track, road, way);
  const { line, along: forward, low, high } = track.edges[under.edge]!;
  return pointAt(track.lines[line]!.line.path, forward ? low + under.way : high - under.way);
}

/** mm between looks along a road for where it enters or leaves a place. */
const LOOK: Mm = 2;
const HALVINGS = 12;

/** The first way from `from` on at which `inside` holds, or undefined. */
export function firstWay(
  track: Track,
  road: Road,
  from: Mm,
  inside: (p: PaperPoint) => boolean,
): Mm | undefined {
  const holds = (way: Mm): boolean => inside(placeOn(track, road, way));
  if (holds(from)) return from;
  for (let way = from + LOOK; way < road.length + LOOK; way += LOOK) {
    const to = Math.min(way, road.length);
    if (!holds(to)) continue;
    let low = way - LOOK;
    let high = to;
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (low + high) / 2;
      if (holds(middle)) high = middle;
      else low = middle;
    }
    return high;
  }
  return undefined;
}

export const isIn =
  (berth: Berth, more: Mm = 0) =>
  (p: PaperPoint): boolean =>
    distance(p, berth.at) <= berth.r + more;

/** Whether any part of a road comes within `reach` of a place. */
export const comesNear = (track: Track, road: Road, place: PaperPoint, reach: Mm): boolean =>
  road.parts.some(({ edge }) => {
    const { path } = track.lines[track.edges[edge]!.line]!.line;
    return path.pieces.some((piece) => pieceFoot(piece, place).distance <= reach);
  });

/**
 * Whether the bar takes a corner for a junction, by the closed form that came out of the run: its far leg is
 * still under the outer sensors when the robot has crept on to the corner.
 */
export function looksLikeJunction(node: TrackNode, kit: Kit): boolean {
  const angle = cornerAngle(node);
  if (angle >= Math.PI / 2) return false;
  const { sensorPitch, barAhead } = kit.robot;
  const width = kit.rules.lineWidth.nominal;
  const c = cos(angle);
  const reach = (2 * sensorPitch * c + width / 2) / sin(angle) + width / 2;
  return reach >= barAhead + width / 2;
}

/** The angle by which a line turns at a corner. */
export const turnAt = (node: TrackNode): Rad => Math.PI - cornerAngle(node);
