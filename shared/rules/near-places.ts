import { pieceDistance } from '../geometry/distances.ts';
import { type PieceShape, pieceAt, pieceFoot } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { LineSpot } from './track-ways.ts';

/** A piece with its line, by index, and the way along the line at which it begins. */
export interface LinePiece {
  readonly line: number;
  readonly start: Mm;
  readonly piece: PieceShape;
}

/** Two places of separate lines that are too near one another. */
export interface Near {
  readonly spots: readonly [LineSpot, LineSpot];
  readonly distance: Mm;
  readonly at: PaperPoint;
}

/** Whether two places belong to one stretch of line rather than to separate lines. */
type Together = (a: LineSpot, b: LineSpot) => boolean;

/** Places of two pieces at which they are separate lines too near one another. */
export function nearPlaces(a: LinePiece, b: LinePiece, allowed: Mm, hangTogether: Together): Near[] {
  const least = pieceDistance(a.piece, b.piece);
  if (least.distance >= allowed - TOLERANCE.samePoint) return [];
  return [
    ...nearAlong(a, b, least.a, allowed, hangTogether),
    ...nearAlong(b, a, least.b, allowed, hangTogether),
  ];
}

/** A place of `a` with its distance from `b`; `near` where they are separate lines too near one another. */
interface Sample {
  readonly s: Mm;
  readonly distance: Mm;
  readonly near: Near | undefined;
}

/** Looks along `a`, at the least distance, and at where being close and being too near begin and end. */
function nearAlong(a: LinePiece, b: LinePiece, least: Mm, allowed: Mm, hangTogether: Together): Near[] {
  const at = (s: Mm): Sample => sampleAt(a, b, s, allowed, hangTogether);
  const samples = [...samplesAlong(a.piece.length, allowed, at), at(least)].sort((m, n) => m.s - n.s);
  const close = withEdges(samples, at, (sample) => sample.distance < allowed - TOLERANCE.samePoint);
  return withEdges(close, at, (sample) => sample.near !== undefined).flatMap(({ near }) => near ?? []);
}

/** The samples, and beside each two that differ in `is` the last place between them where it still holds. */
function withEdges(
  samples: readonly Sample[],
  at: (s: Mm) => Sample,
  is: (sample: Sample) => boolean,
): Sample[] {
  return samples.flatMap((sample, k) => {
    const before = samples[k - 1];
    if (!before || is(before) === is(sample)) return [sample];
    return is(sample)
      ? [lastOf(at, is, sample, before.s), sample]
      : [lastOf(at, is, before, sample.s), sample];
  });
}

function sampleAt(a: LinePiece, b: LinePiece, s: Mm, allowed: Mm, hangTogether: Together): Sample {
  const p = pieceAt(a.piece, s);
  const foot = pieceFoot(b.piece, p);
  const spots = [
    { line: a.line, way: a.start + s },
    { line: b.line, way: b.start + foot.s },
  ] as const;
  const isNear = foot.distance < allowed - TOLERANCE.samePoint && !hangTogether(spots[0], spots[1]);
  const at = { x: (p.x + foot.point.x) / 2, y: (p.y + foot.point.y) / 2 };
  const near = isNear ? { spots, distance: foot.distance, at } : undefined;
  return { s, distance: foot.distance, near };
}

/** The distance changes by no more than the way: far places may be left out, near ones stand close. */
function samplesAlong(length: Mm, allowed: Mm, at: (s: Mm) => Sample): Sample[] {
  const samples: Sample[] = [];
  let s = 0;
  for (;;) {
    const sample = at(s);
    samples.push(sample);
    if (s >= length) return samples;
    s = Math.min(length, s + Math.max(allowed / 5, sample.distance - allowed));
  }
}

function lastOf(at: (s: Mm) => Sample, is: (sample: Sample) => boolean, from: Sample, off: Mm): Sample {
  let inside = from;
  let outside = off;
  while (Math.abs(outside - inside.s) > TOLERANCE.step) {
    const middle = at((inside.s + outside) / 2);
    if (is(middle)) inside = middle;
    else outside = middle.s;
  }
  return inside;
}
