import { type Box, boxGapSquared, boxOf } from '../geometry/box.ts';
import { distance, sin } from '../geometry/exact-math.ts';
import { pieceDirection } from '../geometry/piece.ts';
import { boxIndex, pieceIndex } from '../geometry/spatial-index.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, Rad } from '../geometry/units.ts';
import { turnBetween } from '../track/arms.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { stretchPlace } from './drawn.ts';
import { findingAt, lengths } from './findings.ts';
import { endSpot, type Gap, gapsOf } from './gaps.ts';
import { type LinePiece, type Near, nearPlaces } from './near-places.ts';
import { type LineSpot, togetherOn } from './track-ways.ts';

/**
 * Separate lines keep apart, centre to centre. Not separate is what hangs together: places with little
 * way between them along the track (less than π clearances), and two arms of one junction or corner as
 * far as straight arms at that angle need to part. A gap between two loose ends is `R-loose-end`'s.
 */
export const clearance: Rule = { id: 'R-clearance', check };

interface Segment extends LinePiece {
  /** How far the line has turned from its beginning to the piece's beginning, and to its end; never less. */
  readonly turned: { readonly before: Rad; readonly after: Rad };
}

function check(view: RuleView): Draft[] {
  const segments = segmentsOf(view);
  const allowed = view.kit.rules.clearance;
  const hangTogether = togetherOn(view.track, {
    reach: together(allowed),
    partedAt: (angle, node) =>
      partedAt(allowed, Math.max(angle, node === 'corner' ? LEAST_AT_CORNER : LEAST_AT_JUNCTION)),
    furthest: partedAt(allowed, LEAST_AT_CORNER),
  });
  const index = pieceIndex(segments.map((segment) => segment.piece));
  const gaps = gapsOf(view);
  const near = segments.flatMap((a, i) =>
    index.within(grown(a.piece.box, allowed)).flatMap((j) => {
      const b = segments[j]!;
      if (j <= i || isApart(a, b, allowed) || isGiven(view, a.line, b.line) || isOneBend(a, b, allowed))
        return [];
      return nearPlaces(a, b, allowed, hangTogether).filter((place) => !isAtGap(view, gaps, place));
    }),
  );
  return placesTogether(near, 2 * allowed).map((places) => draftOf(view, places));
}

function segmentsOf({ track }: RuleView): Segment[] {
  return track.lines.flatMap(({ line: { path }, edges }, line) => {
    if (edges.length === 0) return [];
    let turned = 0;
    return path.pieces.map((piece, i) => {
      const last = path.pieces[i - 1];
      if (last) turned += Math.abs(turnBetween(pieceDirection(last, last.length), pieceDirection(piece, 0)));
      const before = turned;
      if (piece.kind === 'arc') turned += Math.abs(piece.sweep);
      return { line, start: path.starts[i]!, piece, turned: { before, after: turned } };
    });
  });
}

/** Beside a gap that has a finding of its own. */
function isAtGap(view: RuleView, gaps: readonly Gap[], { spots: [one, two] }: Near): boolean {
  const isBeside = (spot: LineSpot, end: LineSpot): boolean =>
    spot.line === end.line && Math.abs(spot.way - end.way) <= view.kit.rules.clearance;
  return gaps.some(({ ends: [a, b] }) => {
    const [from, to] = [endSpot(view.track, a), endSpot(view.track, b)];
    return (isBeside(one, from) && isBeside(two, to)) || (isBeside(one, to) && isBeside(two, from));
  });
}

/** Seen from their boxes alone. */
function isApart(a: Segment, b: Segment, allowed: Mm): boolean {
  const near = allowed - TOLERANCE.samePoint;
  return boxGapSquared(a.piece.box, b.piece.box) >= near * near;
}

const isGiven = ({ track }: RuleView, a: number, b: number): boolean =>
  track.lines[a]!.line.given && track.lines[b]!.line.given;

/**
 * Arms of a junction at less than 20 degrees run beside one another rather than part. A corner has a rule
 * of its own, which speaks for its legs down to 5 degrees.
 */
const LEAST_AT_JUNCTION: Rad = Math.PI / 9;
const LEAST_AT_CORNER: Rad = Math.PI / 36;

/**
 * Two pieces of one line between which it does not come back: they hang together wholly, or the line
 * turns so little that no two places with more way between them can be near. (The ends of a line that
 * turns by θ in all are at least cos(θ/2) of its length apart: 0.45 here, of π clearances.)
 */
function isOneBend(a: Segment, b: Segment, allowed: Mm): boolean {
  if (a.line !== b.line) return false;
  return (
    b.start + b.piece.length - a.start <= together(allowed) || b.turned.after - a.turned.before < LITTLE_TURN
  );
}

const LITTLE_TURN: Rad = 2.2;

const together = (allowed: Mm): Mm => allowed * Math.PI;

const grown = (box: Box, by: Mm): Box => ({
  minX: box.minX - by,
  minY: box.minY - by,
  maxX: box.maxX + by,
  maxY: box.maxY + by,
});

/**
 * How far it is from one to the other of two straight arms at an angle, along them, where they have
 * parted by the clearance; a little more, for arms that are not quite straight.
 */
const partedAt = (apart: Mm, angle: Rad): Mm => apart / sin(angle / 2) + TOLERANCE.fit;

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
