import { type Box, boxOf, pieceBox } from '../geometry/box.ts';
import { pieceDistance } from '../geometry/distances.ts';
import { distance, sin } from '../geometry/exact-math.ts';
import { type PieceShape, pieceAt, pieceFoot } from '../geometry/piece.ts';
import { boxIndex } from '../geometry/spatial-index.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { stretchPlace } from './drawn.ts';
import { findingAt, lengths } from './findings.ts';
import { armsAngle, type LineSpot, nodesBeside, nodeWays } from './track-ways.ts';

/**
 * Separate lines keep apart, centre to centre. Not separate is what hangs together: places with little
 * way between them along the track (less than π clearances), and two arms of one junction or corner as
 * far as straight arms at that angle need to part.
 */
export const clearance: Rule = { id: 'R-clearance', check };

interface Segment {
  readonly line: number;
  readonly start: Mm;
  readonly piece: PieceShape;
  readonly box: Box;
}

interface Near {
  readonly spots: readonly [LineSpot, LineSpot];
  readonly distance: Mm;
  readonly at: PaperPoint;
}

function check(view: RuleView): Draft[] {
  const segments = view.track.lines.flatMap(({ line: { path }, edges }, line) =>
    edges.length === 0
      ? []
      : path.pieces.map((piece, i) => ({ line, start: path.starts[i]!, piece, box: pieceBox(piece) })),
  );
  const hangTogether = togetherness(view);
  const allowed = view.kit.rules.clearance;
  const index = boxIndex(segments.map((segment) => segment.box));
  const near = segments.flatMap((a, i) =>
    index.within(grown(a.box, allowed)).flatMap((j) => {
      const b = segments[j]!;
      if (j <= i || isGiven(view, a.line, b.line) || isOneBend(a, b, allowed)) return [];
      return nearPlaces(a, b, allowed, hangTogether);
    }),
  );
  return placesTogether(near, 2 * allowed).map((places) => draftOf(view, places));
}

const isGiven = ({ track }: RuleView, a: number, b: number): boolean =>
  track.lines[a]!.line.given && track.lines[b]!.line.given;

type Together = (a: LineSpot, b: LineSpot) => boolean;

/** Arms of a junction at less than 10 degrees run beside one another rather than part. */
const LEAST_ANGLE = Math.PI / 18;

/** Two pieces of one line that are short enough to hang together wholly. */
function isOneBend(a: Segment, b: Segment, allowed: Mm): boolean {
  return a.line === b.line && b.start + b.piece.length - a.start <= together(allowed);
}

const together = (allowed: Mm): Mm => allowed * Math.PI;

const grown = (box: Box, by: Mm): Box => ({
  minX: box.minX - by,
  minY: box.minY - by,
  maxX: box.maxX + by,
  maxY: box.maxY + by,
});

/** Places of two pieces at which they are separate lines too near one another. */
function nearPlaces(a: Segment, b: Segment, allowed: Mm, hangTogether: Together): Near[] {
  const least = pieceDistance(a.piece, b.piece);
  if (least.distance >= allowed - TOLERANCE.samePoint) return [];
  return [
    ...nearAlong(a, b, least.a, allowed, hangTogether),
    ...nearAlong(b, a, least.b, allowed, hangTogether),
  ];
}

/** Looks along `a` at steps of a fifth of the clearance, at the nearest place, and where being near ends. */
function nearAlong(a: Segment, b: Segment, least: Mm, allowed: Mm, hangTogether: Together): Near[] {
  const at = (s: Mm): Near | undefined => {
    const p = pieceAt(a.piece, s);
    const foot = pieceFoot(b.piece, p);
    if (foot.distance >= allowed - TOLERANCE.samePoint) return undefined;
    const spots = [
      { line: a.line, way: a.start + s },
      { line: b.line, way: b.start + foot.s },
    ] as const;
    if (hangTogether(spots[0], spots[1])) return undefined;
    const middle = { x: (p.x + foot.point.x) / 2, y: (p.y + foot.point.y) / 2 };
    return { spots, distance: foot.distance, at: middle };
  };
  const { from, to } = partNear(a.piece, b.piece, least, allowed);
  const count = Math.max(2, Math.ceil((to - from) / (allowed / 5)));
  const steps = Array.from({ length: count + 1 }, (_, k) => from + ((to - from) * k) / count);
  const ways = [...steps, least].sort((s, t) => s - t);
  const found = ways.map(at);
  const ends = ways.slice(1).flatMap((s, k) => {
    const [before, after] = [found[k], found[k + 1]];
    if ((before === undefined) === (after === undefined)) return [];
    return before ? lastOf(at, ways[k]!, s) : lastOf(at, s, ways[k]!);
  });
  return [...found.filter((place) => place !== undefined), ...ends];
}

/** The last place on the way from `near`, where there is one, to `off`, where there is none. */
function lastOf(at: (s: Mm) => Near | undefined, near: Mm, off: Mm): Near[] {
  let [inside, outside] = [near, off];
  while (Math.abs(outside - inside) > TOLERANCE.step) {
    const middle = (inside + outside) / 2;
    if (at(middle)) inside = middle;
    else outside = middle;
  }
  const last = at(inside);
  return last ? [last] : [];
}

/**
 * The ways of `a` between which it is near `b`. The distance along a straight from a straight has one
 * least place, so halving finds where it passes the limit on both sides; of arcs all is looked at.
 */
function partNear(a: PieceShape, b: PieceShape, least: Mm, allowed: Mm): { from: Mm; to: Mm } {
  if (a.kind === 'arc' || b.kind === 'arc') return { from: 0, to: a.length };
  const isNear = (s: Mm): boolean => pieceFoot(b, pieceAt(a, s)).distance < allowed - TOLERANCE.samePoint;
  const edge = (far: Mm): Mm => {
    if (isNear(far)) return far;
    let near = least;
    let off = far;
    while (Math.abs(off - near) > TOLERANCE.step) {
      const middle = (near + off) / 2;
      if (isNear(middle)) near = middle;
      else off = middle;
    }
    return near;
  };
  return { from: edge(0), to: edge(a.length) };
}

/** Whether two places belong to one bend, corner or junction rather than to separate lines. */
function togetherness(view: RuleView): Together {
  const { track, kit } = view;
  const { clearance: allowed } = kit.rules;
  const reach = together(allowed);
  const between = nodeWays(track, reach);
  return (a, b) => {
    if (a.line === b.line && Math.abs(a.way - b.way) <= reach) return true;
    const besideB = nodesBeside(track, b);
    return nodesBeside(track, a).some((m) =>
      besideB.some((n) => {
        const way = m.way + n.way + between(m.node, n.node);
        if (way <= reach) return true;
        if (m.node !== n.node) return false;
        // Straight arms at an angle are this far along them when they have parted by the clearance.
        const least = track.nodes[m.node]!.kind === 'corner' ? 0 : LEAST_ANGLE;
        return way <= allowed / sin(Math.max(armsAngle(m, n), least) / 2) + TOLERANCE.fit;
      }),
    );
  };
}

/** Places gathered so that from each to the next of its group it is at most `apart` on the paper. */
function placesTogether(near: readonly Near[], apart: Mm): Near[][] {
  const index = boxIndex(near.map(({ at }) => boxOf([at])));
  const groups: Near[][] = [];
  const taken = new Set<number>();
  near.forEach((_, i) => {
    if (taken.has(i)) return;
    const group: Near[] = [];
    const open = [i];
    taken.add(i);
    for (let k = open.pop(); k !== undefined; k = open.pop()) {
      group.push(near[k]!);
      for (const next of index.near(near[k]!.at, apart)) {
        if (taken.has(next)) continue;
        taken.add(next);
        open.push(next);
      }
    }
    groups.push(group);
  });
  return groups;
}

/** The place nearest to the middle of all. */
function middleOf(places: readonly Near[]): Near {
  const sum = places.reduce((s, { at }) => ({ x: s.x + at.x, y: s.y + at.y }), { x: 0, y: 0 });
  const middle = { x: sum.x / places.length, y: sum.y / places.length };
  return places.reduce((best, p) => (distance(p.at, middle) < distance(best.at, middle) ? p : best));
}

function draftOf(view: RuleView, places: readonly Near[]): Draft {
  const { kit, track } = view;
  const { at, spots } = middleOf(places);
  const spot = track.lines[spots[0].line]!.line.given ? spots[1] : spots[0];
  const { line } = track.lines[spot.line]!;
  const ways = places.flatMap((p) => p.spots.filter((s) => s.line === spot.line).map((s) => s.way));
  const least = Math.min(...places.map((p) => p.distance));
  const finding = findingAt(
    'R-clearance',
    stretchPlace(view, line.path, Math.min(...ways), Math.max(...ways), at),
    {
      // From here on the outer sensor of one line sees the other.
      severity: least < 2 * kit.robot.sensorPitch + line.width / 2 ? 'may-stop' : 'untidy',
      ...lengths(least, kit.rules.clearance),
      remedy: 'move-apart',
    },
  );
  return { finding };
}
