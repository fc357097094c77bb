import type { Finding, RuleId } from '../documents/verdict.ts';
import { distance, norm, radians } from '../geometry/exact-math.ts';
import { directionAt, type Path, pathFoot, pathPart, pointAt } from '../geometry/path.ts';
import type { Direction, PieceEnds } from '../geometry/piece.ts';
import type { Mm, PaperPoint, Rad } from '../geometry/units.ts';
import { leavingDirection, turnBetween } from '../track/arms.ts';
import type { LaidMark, Layout } from '../track/layout.ts';

/** How much there should be at the place of a finding, to be drawn beside what there is. */
export type Missing =
  | { readonly kind: 'circle'; readonly at: PaperPoint; readonly radius: Mm }
  /** From an arm that stays, opened as far as allowed; positive to the right. */
  | { readonly kind: 'wedge'; readonly at: PaperPoint; readonly arm: Direction; readonly sweep: Rad }
  /** So much plain line, beginning where it is asked for. */
  | { readonly kind: 'stretch'; readonly pieces: readonly PieceEnds[] };

type Make = (finding: Finding, allowed: number, layout: Layout) => Missing | undefined;

const around =
  (share: number): Make =>
  ({ place: { at } }, allowed) => ({ kind: 'circle', at, radius: allowed * share });

const MAKES: Readonly<Partial<Record<RuleId, Make>>> = {
  'R-corner': wedge,
  'R-junction-angle': wedge,
  'R-curve-radius': osculating,
  'R-junction-arms': ({ place }, allowed, layout) => along(layout, place.at, allowed),
  'R-before-mark': besideMark,
  'R-after-mark': besideMark,
  // The place lies between the two lines, whose middles should touch the circle.
  'R-clearance': around(1 / 2),
  'R-line-width': around(1 / 2),
  'R-margin': around(1),
  'R-keep-out': around(1),
};

/** What is missing, as a shape; undefined where no length or angle tells. */
export function missingOf(finding: Finding, layout: Layout): Missing | undefined {
  const { allowed, unit, rule } = finding;
  if (allowed === undefined || (unit !== 'mm' && unit !== 'degrees')) return undefined;
  return MAKES[rule]?.(finding, allowed, layout);
}

/** A line's end this near to a place ends there. */
const HERE: Mm = 3;

/** Directions in which lines leave a place. */
function armsAt({ lines }: Layout, at: PaperPoint): Direction[] {
  return lines.flatMap(({ path }) => {
    const foot = pathFoot(path, at);
    if (foot.distance > HERE) return [];
    const onward = foot.s < path.length - HERE ? [leavingDirection(path, foot.s, true)] : [];
    const back = foot.s > HERE ? [leavingDirection(path, foot.s, false)] : [];
    return [...back, ...onward];
  });
}

/** The two arms whose angle is the measured one: where a line comes from is kept, the other one opened. */
function wedge(
  { place: { at }, measured = 0 }: Finding,
  allowed: number,
  layout: Layout,
): Missing | undefined {
  const arms = armsAt(layout, at);
  let best: { arm: Direction; turn: Rad; off: Rad } | undefined;
  for (const [i, arm] of arms.entries()) {
    for (const other of arms.slice(i + 1)) {
      const turn = turnBetween(arm, other);
      const off = Math.abs(Math.abs(turn) - radians(measured));
      if (!best || off < best.off) best = { arm, turn, off };
    }
  }
  if (!best) return undefined;
  return { kind: 'wedge', at, arm: best.arm, sweep: radians(allowed) * (best.turn < 0 ? -1 : 1) };
}

/** The tightest circle that is allowed, touching the curve from inside. */
function osculating({ place: { at } }: Finding, allowed: number, { lines }: Layout): Missing | undefined {
  const arcs = lines.flatMap(({ path }) =>
    path.pieces.flatMap((piece) => (piece.kind === 'arc' ? [piece] : [])),
  );
  const nearest = arcs
    .map((arc) => ({ arc, off: Math.abs(distance(arc.center, at) - arc.radius) }))
    .filter(({ arc }) => distance(arc.center, at) > 0)
    .sort((a, b) => a.off - b.off)[0];
  if (!nearest) return undefined;
  const { center } = nearest.arc;
  const far = norm(center.x - at.x, center.y - at.y);
  const share = allowed / far;
  const middle = { x: at.x + (center.x - at.x) * share, y: at.y + (center.y - at.y) * share };
  return { kind: 'circle', at: middle, radius: allowed };
}

function along({ lines }: Layout, at: PaperPoint, length: Mm): Missing | undefined {
  const feet = lines.map(({ path }) => ({ path, foot: pathFoot(path, at) }));
  const nearest = feet.sort((a, b) => a.foot.distance - b.foot.distance)[0];
  if (!nearest) return undefined;
  return stretch(nearest.path, nearest.foot.s - length / 2, nearest.foot.s + length / 2);
}

/** Along the line, and straight on where it ends too early: that part is what is missing most. */
function stretch(path: Path, from: Mm, to: Mm): Missing {
  const before = from < 0 ? [straightOn(path, 0, from)] : [];
  const after = to > path.length ? [straightOn(path, path.length, to - path.length)] : [];
  return { kind: 'stretch', pieces: [...before, ...pathPart(path, Math.max(0, from), to), ...after] };
}

function straightOn(path: Path, end: Mm, by: Mm): PieceEnds {
  const from = pointAt(path, end);
  const { x, y } = directionAt(path, end);
  const to = { x: from.x + x * by, y: from.y + y * by };
  return by < 0 ? { from: to, to: from, bulge: 0 } : { from, to, bulge: 0 };
}

/** On the side on which there is as much plain line as was measured. */
function besideMark({ place, measured = 0 }: Finding, allowed: number, layout: Layout): Missing | undefined {
  const mark = place.kind === 'mark' && layout.marks.find(({ id }) => id === place.mark);
  const path = mark && layout.lines.find(({ id }) => id === mark.line)?.path;
  if (!mark || !path) return undefined;
  const stops = [...bendsOf(path), ...othersOn(mark, layout), 0, path.length];
  const back = Math.min(...stops.filter((s) => s <= mark.from).map((s) => mark.from - s));
  const onward = Math.min(...stops.filter((s) => s >= mark.to).map((s) => s - mark.to));
  return Math.abs(back - measured) <= Math.abs(onward - measured)
    ? stretch(path, mark.from - allowed, mark.from)
    : stretch(path, mark.to, mark.to + allowed);
}

const BEND: Rad = radians(15);

/** Ways at which a path has a corner. */
const bendsOf = (path: Path): Mm[] =>
  path.starts.filter(
    (s) =>
      s > 0 &&
      Math.PI - Math.abs(turnBetween(leavingDirection(path, s, true), leavingDirection(path, s, false))) >
        BEND,
  );

const othersOn = (mark: LaidMark, { marks }: Layout): Mm[] =>
  marks.flatMap((other) => (other.line === mark.line && other !== mark ? [other.from, other.to] : []));
