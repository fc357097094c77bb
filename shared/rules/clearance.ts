import { type Box, pieceBox } from '../geometry/box.ts';
import { pieceDistance } from '../geometry/distances.ts';
import { sin } from '../geometry/exact-math.ts';
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
  readonly a: LineSpot;
  readonly b: LineSpot;
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
  const found = new Map<string, Near[]>();
  segments.forEach((a, i) => {
    for (const j of index.within(grown(a.box, allowed))) {
      const b = segments[j]!;
      if (j <= i || isGiven(view, a.line, b.line) || isOneBend(a, b, allowed)) continue;
      const near = nearPlaces(a, b, allowed).filter((n) => !hangTogether(n.a, n.b));
      const key = `${a.line} ${b.line}`;
      if (near.length > 0) found.set(key, [...(found.get(key) ?? []), ...near]);
    }
  });
  return [...found.values()].flatMap((near) => stretches(near, allowed).map((s) => draftOf(view, s)));
}

const isGiven = ({ track }: RuleView, a: number, b: number): boolean =>
  track.lines[a]!.line.given && track.lines[b]!.line.given;

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

/** Places of `a` at which `b` is too near: at steps of a quarter of the clearance, and the nearest of all. */
function nearPlaces(a: Segment, b: Segment, allowed: Mm): Near[] {
  const least = pieceDistance(a.piece, b.piece);
  if (least.distance >= allowed - TOLERANCE.samePoint) return [];
  const { from, to } = partNear(a.piece, grown(b.box, allowed));
  const count = Math.max(1, Math.ceil((to - from) / (allowed / 4)));
  const ways = Array.from({ length: count + 1 }, (_, k) => from + ((to - from) * k) / count);
  return [...ways, least.a].flatMap((s) => {
    const p = pieceAt(a.piece, s);
    const foot = pieceFoot(b.piece, p);
    if (foot.distance >= allowed - TOLERANCE.samePoint) return [];
    return {
      a: { line: a.line, way: a.start + s },
      b: { line: b.line, way: b.start + foot.s },
      distance: foot.distance,
      at: { x: (p.x + foot.point.x) / 2, y: (p.y + foot.point.y) / 2 },
    };
  });
}

/** The ways between which a straight is inside a box; all of an arc. */
function partNear(piece: PieceShape, box: Box): { from: Mm; to: Mm } {
  if (piece.kind === 'arc') return { from: 0, to: piece.length };
  let from = 0;
  let to: Mm = piece.length;
  const clip = (start: Mm, rate: number, low: Mm, high: Mm): void => {
    if (rate === 0) return;
    const enter = ((rate > 0 ? low : high) - start) / rate;
    const leave = ((rate > 0 ? high : low) - start) / rate;
    from = Math.max(from, enter);
    to = Math.min(to, leave);
  };
  clip(piece.from.x, piece.along.x, box.minX, box.maxX);
  clip(piece.from.y, piece.along.y, box.minY, box.maxY);
  return { from, to: Math.max(from, to) };
}

/** Whether two places belong to one bend, corner or junction rather than to separate lines. */
function togetherness(view: RuleView): (a: LineSpot, b: LineSpot) => boolean {
  const { track, kit } = view;
  const { clearance: allowed, junction } = kit.rules;
  const reach = together(allowed);
  const furthest = 2 * (junction.armLength + allowed);
  const between = nodeWays(track, reach);
  return (a, b) => {
    if (a.line === b.line && Math.abs(a.way - b.way) <= reach) return true;
    const besideB = nodesBeside(track, b);
    return nodesBeside(track, a).some((m) =>
      besideB.some((n) => {
        const way = m.way + n.way + between(m.node, n.node);
        if (way <= reach) return true;
        if (m.node !== n.node || way > furthest) return false;
        // Straight arms at an angle are this far along them when they have parted by the clearance.
        return way <= allowed / sin(armsAngle(m, n) / 2) + TOLERANCE.fit;
      }),
    );
  };
}

interface Stretch {
  readonly places: readonly Near[];
  readonly least: Mm;
}

/** Places that follow one another within two clearances are one stretch. */
function stretches(near: readonly Near[], allowed: Mm): Stretch[] {
  const groups: Near[][] = [];
  for (const place of [...near].sort((m, n) => m.a.way - n.a.way)) {
    const last = groups.at(-1)?.at(-1);
    if (last && place.a.way - last.a.way <= 2 * allowed) groups.at(-1)!.push(place);
    else groups.push([place]);
  }
  return groups.map((places) => ({ places, least: Math.min(...places.map((p) => p.distance)) }));
}

function draftOf(view: RuleView, { places, least }: Stretch): Draft {
  const { kit, track } = view;
  const own = track.lines[places[0]!.a.line]!.line.given ? 'b' : 'a';
  const ways = places.map((place) => place[own].way);
  const { at } = places[Math.floor(places.length / 2)]!;
  const { line } = track.lines[places[0]![own].line]!;
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
