import { atan2 } from '../geometry/exact-math.ts';
import type { Intersection } from '../geometry/intersections.ts';
import { directionAt, type Path } from '../geometry/path.ts';
import { type PieceShape, pieceFoot } from '../geometry/piece.ts';
import { pieceIndex, type SpatialIndex } from '../geometry/spatial-index.ts';
import type { Mm, PaperPoint, Rad } from '../geometry/units.ts';
import type { LaidLine } from './layout.ts';
import { meetingsBetween, type Pairs } from './pairs.ts';
import type { Crossing } from './track.ts';

/** A place on a line, by the line's index. */
export interface Spot {
  readonly line: number;
  readonly way: Mm;
}

/** A stretch of one line that lies on a stretch of another (or of itself). */
export interface Cover {
  readonly line: number;
  readonly low: Mm;
  readonly high: Mm;
  readonly on: Spot;
  /** Whether both lines run the same way there; `on` is the place under `low`. */
  readonly same: boolean;
}

export interface Meetings {
  /** Pairs of places that are one place on the paper. */
  readonly links: readonly (readonly [Spot, Spot])[];
  readonly crossings: readonly Crossing[];
  readonly covers: readonly Cover[];
}

/** Every place where lines cross, touch, lie on one another, or end within `snap` of a line. */
export function meetingsOf(lines: readonly LaidLine[], pairs: Pairs, snap: Mm): Meetings {
  const links: [Spot, Spot][] = [];
  const crossings: Crossing[] = [];
  const covers: Cover[] = [];
  const take = (a: number, b: number, found: readonly Intersection[]): void => {
    for (const m of found) {
      links.push([
        { line: a, way: m.a },
        { line: b, way: m.b },
      ]);
      if (m.kind === 'cross') crossings.push(crossingOf(lines, a, b, m));
      if (m.kind !== 'shared') continue;
      links.push([
        { line: a, way: m.until.a },
        { line: b, way: m.until.b },
      ]);
      covers.push(coverOf(a, b, m));
    }
  };
  for (let i = 0; i < lines.length; i++) {
    for (let j = i; j < lines.length; j++) take(i, j, meetingsBetween(pairs, lines[i]!, lines[j]!));
  }
  links.push(...endLinks(lines, snap));
  return { links, crossings, covers };
}

function crossingOf(lines: readonly LaidLine[], a: number, b: number, m: Intersection): Crossing {
  return {
    at: m.point,
    angle: angleBetween(lines[a]!.path, m.a, lines[b]!.path, m.b),
    a: { line: a, way: m.a },
    b: { line: b, way: m.b },
  };
}

function angleBetween(p: Path, s: Mm, q: Path, t: Mm): Rad {
  const d = directionAt(p, s);
  const e = directionAt(q, t);
  return atan2(Math.abs(d.x * e.y - d.y * e.x), Math.abs(d.x * e.x + d.y * e.y));
}

function coverOf(a: number, b: number, m: Extract<Intersection, { kind: 'shared' }>): Cover {
  const same = m.until.b >= m.b;
  return {
    line: b,
    low: same ? m.b : m.until.b,
    high: same ? m.until.b : m.b,
    on: { line: a, way: same ? m.a : m.until.a },
    same,
  };
}

interface Segment {
  readonly line: number;
  readonly start: Mm;
  readonly piece: PieceShape;
}

function endLinks(lines: readonly LaidLine[], snap: Mm): [Spot, Spot][] {
  const segments: Segment[] = lines.flatMap(({ path }, line) =>
    path.pieces.map((piece, i) => ({ line, start: path.starts[i]!, piece })),
  );
  const index = pieceIndex(segments.map((segment) => segment.piece));
  return lines.flatMap(({ path }, line) =>
    [0, path.length].flatMap((way) => linksOfEnd({ line, way }, endPoint(path, way), snap, segments, index)),
  );
}

const endPoint = (path: Path, way: Mm): PaperPoint =>
  way === 0 ? path.pieces[0]!.from : path.pieces.at(-1)!.to;

/** A line's own beginning is always near its end's neighbourhood: only what is a turn away can be met. */
const ownReach = (snap: Mm): Mm => snap * Math.PI;

function linksOfEnd(
  end: Spot,
  point: PaperPoint,
  snap: Mm,
  segments: readonly Segment[],
  index: SpatialIndex,
): [Spot, Spot][] {
  const nearest = new Map<number, { way: Mm; distance: Mm }>();
  for (const i of index.near(point, snap)) {
    const { line, start, piece } = segments[i]!;
    const foot = pieceFoot(piece, point);
    const way = start + foot.s;
    if (foot.distance > snap) continue;
    if (line === end.line && Math.abs(way - end.way) < ownReach(snap)) continue;
    const best = nearest.get(line);
    if (!best || foot.distance < best.distance) nearest.set(line, { way, distance: foot.distance });
  }
  return [...nearest].map(([line, { way }]) => [end, { line, way }]);
}
