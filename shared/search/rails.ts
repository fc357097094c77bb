import type { Kit, Way } from '../documents/kit.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import { distance } from '../geometry/exact-math.ts';
import { type Path, pointAt } from '../geometry/path.ts';
import type { Mm, PaperPoint, Seconds } from '../geometry/units.ts';
import { leaningOn, pastEnd, turnBy } from '../odds/motion.ts';
import { MODEL } from '../run/model.ts';
import { cornerAngle, exitFor, exitsOf } from '../track/arms.ts';
import type { NodeKind, Track, TrackEdge } from '../track/track.ts';

/** A way out of a rail: which one comes next, and how long the turn into it takes. */
export interface RailExit {
  readonly way: Way;
  readonly rail: number;
  readonly turn: Seconds;
}

export interface Interval {
  readonly from: Mm;
  readonly to: Mm;
}

/**
 * A directed edge as the search drives it: the axle runs on it without a width, and everything that can
 * happen to it is known by the way along it. Arrays have one value a millimetre, and one for the end.
 */
export interface Rail {
  readonly edge: TrackEdge;
  readonly end: NodeKind;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Way on a straight that takes as long as the way up to here. */
  readonly effort: Float64Array;
  /** Where a mark can't be read: the bend throws the bar too far off. */
  readonly blind: readonly Interval[];
  readonly gates: readonly { readonly way: Mm; readonly gate: string }[];
  /** Where the axle is in either berth. */
  readonly berths: Readonly<Record<'start' | 'finish', readonly Interval[]>>;
  /** Where the axle is when the robot gives up the line at a loose end; elsewhere the end. */
  readonly reach: Mm;
  /** Where the axle leaves the sheet. */
  readonly off: Mm | undefined;
  /** From left to right; the one arm of a corner or joint is `straight`. */
  readonly exits: readonly RailExit[];
  /** Their ways. */
  readonly arms: Way[];
}

/** Beside `track.edges`, in the same order. */
export function railsOf(track: Track, sheet: Sheet, kit: Kit): Rail[] {
  return track.edges.map((edge) => railOf(track, edge, sheet, kit));
}

function railOf(track: Track, edge: TrackEdge, sheet: Sheet, kit: Kit): Rail {
  const { path, width } = track.lines[edge.line]!.line;
  const exits = railExits(track, edge, kit);
  const ways = waysOf(edge.length);
  const points = ways.map((way) => placeOn(path, edge, way));
  const bends = edge.bends.map((bend) => ({ ...bend, ...leaningOn(bend.curvature, kit) }));
  const most = MODEL.readWithin * kit.robot.sensorPitch;
  return {
    edge,
    end: track.nodes[edge.to]!.kind,
    xs: Float64Array.from(points, (p) => p.x),
    ys: Float64Array.from(points, (p) => p.y),
    effort: effortOver(ways, bends),
    blind: bends.filter((bend) => bend.offset > most).map(({ from, to }) => ({ from, to })),
    gates: gatesOn(points, ways, sheet),
    berths: { start: inside(points, ways, sheet.start), finish: inside(points, ways, sheet.finish) },
    off: ways.find((_, i) => isOff(points[i]!, sheet)),
    reach: edge.length + (exits.length > 0 ? 0 : Math.min(0, pastEnd(width, kit))),
    exits,
    arms: exits.map(({ way }) => way),
  };
}

/** Whole millimetres and the end. */
function waysOf(length: Mm): Mm[] {
  const ways: Mm[] = [];
  for (let way = 0; way < length; way++) ways.push(way);
  return [...ways, length];
}

const placeOn = (path: Path, edge: TrackEdge, way: Mm): PaperPoint =>
  pointAt(path, edge.along ? edge.low + way : edge.high - way);

function effortOver(
  ways: readonly Mm[],
  bends: readonly (Interval & { readonly share: number })[],
): Float64Array {
  const effort = new Float64Array(ways.length);
  for (let i = 1; i < ways.length; i++) {
    const middle = (ways[i]! + ways[i - 1]!) / 2;
    const bend = bends.find(({ from, to }) => from <= middle && middle < to);
    effort[i] = effort[i - 1]! + (ways[i]! - ways[i - 1]!) / (bend?.share ?? 1);
  }
  return effort;
}

function inside(points: readonly PaperPoint[], ways: readonly Mm[], berth: Berth | undefined): Interval[] {
  if (!berth) return [];
  const found: { from: Mm; to: Mm }[] = [];
  points.forEach((p, i) => {
    if (distance(p, berth.at) > berth.r) return;
    const last = found.at(-1);
    if (last && last.to === ways[i - 1]) last.to = ways[i]!;
    else found.push({ from: ways[i]!, to: ways[i]! });
  });
  return found;
}

const isOff = (p: PaperPoint, sheet: Sheet): boolean => p.x < 0 || p.y < 0 || p.x > sheet.w || p.y > sheet.h;

const side = (p: PaperPoint, a: PaperPoint, b: PaperPoint): number =>
  (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

/** Every gate that lies between two neighbouring points. */
function gatesOn(points: readonly PaperPoint[], ways: readonly Mm[], sheet: Sheet): Rail['gates'] {
  const found: { way: Mm; gate: string }[] = [];
  for (let i = 1; i < points.length; i++) {
    const p = points[i - 1]!;
    const q = points[i]!;
    for (const { id, a, b } of sheet.gates) {
      const across = side(p, a, b) < 0 !== side(q, a, b) < 0;
      if (across && side(a, p, q) < 0 !== side(b, p, q) < 0) found.push({ way: ways[i]!, gate: id });
    }
  }
  return found;
}

function railExits(track: Track, edge: TrackEdge, kit: Kit): RailExit[] {
  const node = track.nodes[edge.to]!;
  const exits = exitsOf(track, edge.index);
  if (node.kind === 'joint') return exits.map((exit) => ({ way: 'straight', rail: exit.edge, turn: 0 }));
  if (node.kind === 'corner') {
    const turn = turnTime(Math.PI - cornerAngle(node), kit);
    return exits.map((exit) => ({ way: 'straight', rail: exit.edge, turn }));
  }
  return (['left', 'straight', 'right'] as const).flatMap((way) => {
    const exit = exitFor(exits, way);
    if (!exit) return [];
    return [{ way, rail: exit.edge, turn: way === 'straight' ? 0 : turnTime(Math.abs(exit.turn), kit) }];
  });
}

/** A gentle turn is followed without a stop. */
const turnTime = (angle: number, kit: Kit): Seconds =>
  angle < MODEL.leastTurn ? 0 : turnBy(angle, kit, kit.robot.paces[kit.robot.startPace]).time;

/** Way on a straight that takes as long as the way to `way`. */
export function effortAt({ effort, edge }: Rail, way: Mm): Mm {
  const i = Math.min(Math.max(Math.floor(way), 0), effort.length - 2);
  const next = i + 2 === effort.length ? edge.length : i + 1;
  return effort[i]! + ((effort[i + 1]! - effort[i]!) * (way - i)) / (next - i);
}

/** The way that is reached with an effort; past the end where it is more than the rail's. */
export function wayWith({ effort, edge }: Rail, wanted: Mm): Mm {
  const last = effort.length - 1;
  if (wanted >= effort[last]!) return edge.length + wanted - effort[last]!;
  if (wanted <= 0) return wanted;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (effort[middle]! <= wanted) low = middle;
    else high = middle;
  }
  const next = high === last ? edge.length : high;
  return low + ((wanted - effort[low]!) / (effort[high]! - effort[low]!)) * (next - low);
}

/** Where the axle is at a way. */
export function pointOn({ xs, ys, edge }: Rail, way: Mm): PaperPoint {
  const i = Math.min(Math.max(Math.floor(way), 0), xs.length - 2);
  const next = i + 2 === xs.length ? edge.length : i + 1;
  const share = Math.min(Math.max((way - i) / (next - i), 0), 1);
  return { x: xs[i]! + (xs[i + 1]! - xs[i]!) * share, y: ys[i]! + (ys[i + 1]! - ys[i]!) * share };
}
