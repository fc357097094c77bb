import type { Kit } from '../documents/kit.ts';
import type { Berth } from '../documents/sheet.ts';
import { cos, norm, sin } from '../geometry/exact-math.ts';
import { directionAt, pathFoot } from '../geometry/path.ts';
import type { Direction } from '../geometry/piece.ts';
import type { Mm, PaperPoint, Rad } from '../geometry/units.ts';
import { turnBetween } from './arms.ts';
import { type Track, twin } from './track.ts';

/** How a robot that stands in a berth finds the line. */
export type Start =
  | {
      readonly kind: 'on';
      /** The directed edge that leads out, and the way along it under the middle of the bar. */
      readonly edge: number;
      readonly bar: Mm;
      /** Where the middle of the axle is along the edge; below 0 where the line begins ahead of it. */
      readonly axle: Mm;
    }
  /** No line within reach of the bar; `off` from its middle, absent where there is no line at all. */
  | { readonly kind: 'no-line'; readonly bar: PaperPoint; readonly off?: Mm; readonly allowed: Mm }
  /** The line under the bar leads out at `turn` from the heading. */
  | { readonly kind: 'across'; readonly bar: PaperPoint; readonly turn: Rad; readonly allowed: Rad };

/** Half of a right angle: from there on the line lies across the bar rather than along the robot. */
const FURTHEST_TURN: Rad = Math.PI / 4;

/** The sensor bar reaches two pitches to each side of its middle. */
export const barReach = (kit: Kit): Mm => 2 * kit.robot.sensorPitch;

export function barOf(berth: Berth, kit: Kit): PaperPoint {
  const { barAhead } = kit.robot;
  return {
    x: berth.at.x + cos(berth.heading) * barAhead,
    y: berth.at.y + sin(berth.heading) * barAhead,
  };
}

/** Looks for the line under the bar of a robot in the berth. */
export function startOn(track: Track, berth: Berth, kit: Kit): Start {
  const bar = barOf(berth, kit);
  const reach = barReach(kit);
  const nearest = nearestSpot(track, bar);
  if (!nearest) return { kind: 'no-line', bar, allowed: reach };
  const { line, way, distance, point } = nearest;
  const heading = { x: cos(berth.heading), y: sin(berth.heading) };
  const gap = (point.x - bar.x) * heading.x + (point.y - bar.y) * heading.y;
  const half = track.lines[line]!.line.width / 2;
  if (distance > reach) return { kind: 'no-line', bar, off: distance, allowed: reach };
  const { path } = track.lines[line]!.line;
  if (isAtEnd(way, path.length) && Math.abs(gap) > half)
    return { kind: 'no-line', bar, off: Math.abs(gap), allowed: half };
  return leadingOut(track, { line, way }, heading, bar, kit);
}

const isAtEnd = (way: Mm, length: Mm): boolean => way <= 0 || way >= length;

function leadingOut(
  track: Track,
  spot: { readonly line: number; readonly way: Mm },
  heading: Direction,
  bar: PaperPoint,
  kit: Kit,
): Start {
  const direction = directionAt(track.lines[spot.line]!.line.path, spot.way);
  const turn = turnBetween(heading, direction);
  const along = Math.abs(turn) <= Math.PI / 2;
  const off = along ? Math.abs(turn) : Math.PI - Math.abs(turn);
  if (off > FURTHEST_TURN) return { kind: 'across', bar, turn: off, allowed: FURTHEST_TURN };
  const edge = edgeAt(track, spot.line, spot.way, along);
  if (edge === undefined) return { kind: 'no-line', bar, off: 0, allowed: barReach(kit) };
  const { low, high } = track.edges[edge]!;
  const s = along ? spot.way - low : high - spot.way;
  return { kind: 'on', edge, bar: s, axle: s - kit.robot.barAhead };
}

interface NearestSpot {
  readonly line: number;
  readonly way: Mm;
  readonly distance: Mm;
  readonly point: PaperPoint;
}

/** The nearest place of any line that has edges. */
function nearestSpot(track: Track, p: PaperPoint): NearestSpot | undefined {
  let best: NearestSpot | undefined;
  track.lines.forEach(({ line, edges }, index) => {
    if (edges.length === 0) return;
    const foot = pathFoot(line.path, p);
    if (best && foot.distance >= best.distance) return;
    best = {
      line: index,
      way: foot.s,
      distance: norm(p.x - foot.point.x, p.y - foot.point.y),
      point: foot.point,
    };
  });
  return best;
}

/** The directed edge of a line at a way, undefined inside a junction and at the end that it would leave. */
export function edgeAt(track: Track, line: number, way: Mm, along: boolean): number | undefined {
  const forward = track.lines[line]!.edges.find((index) => {
    const { low, high } = track.edges[index]!;
    return along ? low <= way && way < high : low < way && way <= high;
  });
  return forward === undefined ? undefined : along ? forward : twin(forward);
}
