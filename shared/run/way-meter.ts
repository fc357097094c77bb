import { norm } from '../geometry/exact-math.ts';
import { directionAt, type Path, pathFoot, pieceIndexAt } from '../geometry/path.ts';
import { pieceFoot } from '../geometry/piece.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { LaidLine } from '../track/layout.ts';
import type { JoinMap, LinePlace } from './joins.ts';

/**
 * Measures the way along the drawing under the middle sensor. The sensor is projected on the line that
 * the robot is on, near where it was, so that lines which cross or run alongside don't matter; it goes
 * over to another line only at a join, or where its own has come to an end.
 */
export interface WayMeter {
  /** mm along the drawing; never decreasing. */
  way: Mm;
  /** How much of the way was counted beyond a junction that the robot then left by another arm. */
  ahead: Mm;
  /** Undefined until the robot has found a line. */
  on: LineState | undefined;
}

interface LineState extends LinePlace {
  /** 1 where the robot goes with the line, −1 against it. */
  readonly sense: 1 | -1;
}

/** What a projection looks at, as the robot is at one moment. */
export interface Sighting {
  readonly sensor: PaperPoint;
  readonly cos: number;
  readonly sin: number;
  /** Whether the robot follows: only then does its heading tell the sense of travel. */
  readonly following: boolean;
}

/** How far along its line the sensor may have come since it was last looked at. */
const WINDOW: Mm = 25;
/** Another line must be nearer than the present one by this much to be gone over to. */
const NEARER: Mm = 2.5;
/** A line further off than this is not the one that the robot is on. */
const OFF: Mm = 8;
/** A line this near is one that the robot may have come upon without a join. */
const ON: Mm = 4;
/** cos of the angle between heading and line up to which the robot goes along it. */
const ALONG = 0.5;
/** Ends of pieces may be corners, where a line has two directions. */
const CORNER: Mm = 1;

export const newWayMeter = (): WayMeter => ({ way: 0, ahead: 0, on: undefined });

/** Takes the meter to the present place. */
export function measure(
  meter: WayMeter,
  lines: readonly LaidLine[],
  joins: JoinMap,
  sighting: Sighting,
): void {
  const { on } = meter;
  if (!on) {
    const found = nearestLine(lines, sighting);
    if (found && found.distance <= OFF)
      meter.on = { ...found.place, sense: senseAt(lines, found.place, sighting) };
    return;
  }
  const foot = footNear(lines[on.line]!.path, on.s, sighting.sensor);
  const join = foot.distance > NEARER ? betterJoin(lines, joins, on, foot.distance, sighting) : undefined;
  if (join) {
    const toJoin = (join.from.s - on.s) * on.sense;
    add(meter, toJoin + Math.abs(join.at.s - join.to.s));
    meter.on = { ...join.at, sense: senseAt(lines, join.at, sighting) };
  } else if (foot.distance > OFF && sighting.following) {
    jump(meter, lines, foot.point, sighting);
  } else {
    goAlong(meter, on, foot, lines, sighting);
  }
}

/** Less than nothing is kept and taken off what comes next, so that the way never decreases. */
function add(meter: WayMeter, way: Mm): void {
  const rest = way - meter.ahead;
  meter.way += Math.max(rest, 0);
  meter.ahead = Math.max(-rest, 0);
}

interface NearFoot {
  readonly s: Mm;
  readonly distance: Mm;
  readonly point: PaperPoint;
}

/** The nearest point of a path within the window around way `s`. */
function footNear(path: Path, s: Mm, p: PaperPoint): NearFoot {
  let best: NearFoot | undefined;
  for (let i = pieceIndexAt(path, s - WINDOW); i < path.pieces.length; i++) {
    const start = path.starts[i]!;
    if (start > s + WINDOW) break;
    const foot = pieceFoot(path.pieces[i]!, p);
    if (!best || foot.distance < best.distance) best = { ...foot, s: foot.s + start };
  }
  return best ?? pathFoot(path, p);
}

interface FoundJoin {
  readonly from: LinePlace;
  readonly to: LinePlace;
  readonly at: LinePlace;
}

function betterJoin(
  lines: readonly LaidLine[],
  joins: JoinMap,
  on: LinePlace,
  distance: Mm,
  sighting: Sighting,
): FoundJoin | undefined {
  let least = distance - NEARER;
  let found: FoundJoin | undefined;
  for (const { from, to } of joins.byLine[on.line]!) {
    if (Math.abs(from.s - on.s) > WINDOW) continue;
    const foot = footNear(lines[to.line]!.path, to.s, sighting.sensor);
    if (foot.distance >= least) continue;
    least = foot.distance;
    found = { from, to, at: { line: to.line, s: foot.s } };
  }
  return found;
}

function nearestLine(lines: readonly LaidLine[], sighting: Sighting) {
  let best: { readonly place: LinePlace; readonly distance: Mm; readonly point: PaperPoint } | undefined;
  lines.forEach((line, index) => {
    const foot = pathFoot(line.path, sighting.sensor);
    if (best && foot.distance >= best.distance) return;
    best = { place: { line: index, s: foot.s }, distance: foot.distance, point: foot.point };
  });
  return best;
}

/** The robot is on a line that does not join its last one: the hop between them counts as way. */
function jump(meter: WayMeter, lines: readonly LaidLine[], from: PaperPoint, sighting: Sighting): void {
  const found = nearestLine(lines, sighting);
  if (!found || found.distance > ON) return;
  add(meter, norm(found.point.x - from.x, found.point.y - from.y));
  meter.on = { ...found.place, sense: senseAt(lines, found.place, sighting) };
}

function goAlong(
  meter: WayMeter,
  on: LineState,
  foot: NearFoot,
  lines: readonly LaidLine[],
  sighting: Sighting,
): void {
  const sense = sighting.following && foot.distance < ON ? senseNear(lines, on, foot.s, sighting) : on.sense;
  const ahead = (foot.s - on.s) * sense;
  if (sense === on.sense && ahead < 0 && ahead > -WINDOW / 2) return;
  add(meter, Math.abs(ahead));
  meter.on = { line: on.line, s: foot.s, sense };
}

/** The sense of travel, as before where the heading does not tell or the line may have a corner. */
function senseNear(lines: readonly LaidLine[], on: LineState, s: Mm, sighting: Sighting): 1 | -1 {
  const { path } = lines[on.line]!;
  const i = pieceIndexAt(path, s);
  const within = s - path.starts[i]!;
  if (within < CORNER || within > path.pieces[i]!.length - CORNER) return on.sense;
  const along = alongLine(path, s, sighting);
  if (along > -ALONG && along < ALONG) return on.sense;
  return along > 0 ? 1 : -1;
}

const senseAt = (lines: readonly LaidLine[], place: LinePlace, sighting: Sighting): 1 | -1 =>
  alongLine(lines[place.line]!.path, place.s, sighting) >= 0 ? 1 : -1;

function alongLine(path: Path, s: Mm, sighting: Sighting): number {
  const direction = directionAt(path, s);
  return direction.x * sighting.cos + direction.y * sighting.sin;
}
