import type { Hatch, Kit } from '../documents/kit.ts';
import { directionAt, type Path, pointAt } from '../geometry/path.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { BAND_SPREAD, type LaidBand, type LaidLine, type LaidMark, type Layout } from '../track/layout.ts';
import type { PictureBand } from './shapes.ts';

/** The longest step along a bend between two corners of a band's outline. */
const OUTLINE_STEP = 1.5;

/** Every band of every mark as an outlined block with its hatch. */
export function pictureBands(layout: Layout, kit: Kit): PictureBand[] {
  const lines = new Map(layout.lines.map((line) => [line.id, line]));
  return layout.marks.flatMap((mark) => {
    const line = lines.get(mark.line);
    return line ? mark.bands.map((band) => pictureBand(band, mark, line, kit)) : [];
  });
}

function pictureBand(band: LaidBand, mark: LaidMark, line: LaidLine, kit: Kit): PictureBand {
  const half = line.width / 2 + BAND_SPREAD;
  const ink = kit.inks.find((candidate) => candidate.id === band.ink);
  const hatch = ink?.hatch ?? 'cross';
  const middle = (band.from + band.to) / 2;
  return {
    mark: mark.id,
    given: mark.given,
    ink: band.ink,
    color: ink?.color ?? kit.line.color,
    hatch,
    outline: outlineOf(line.path, band.from, band.to, half),
    middle: pointAt(line.path, middle),
    along: directionAt(line.path, middle),
    ...hatchOf(hatch, line.path, band, half),
  };
}

/** The paper under a whole mark: the gaps between its bands are white, not line. */
export const markGround = (mark: LaidMark, line: LaidLine): PaperPoint[] =>
  outlineOf(line.path, mark.from, mark.to, line.width / 2 + BAND_SPREAD);

/** The point `right` mm to the right of travel at way `s`. */
function beside(path: Path, s: Mm, right: Mm): PaperPoint {
  const p = pointAt(path, s);
  const d = directionAt(path, s);
  return { x: p.x - d.y * right, y: p.y + d.x * right };
}

function outlineOf(path: Path, from: Mm, to: Mm, half: Mm): PaperPoint[] {
  const bends = path.pieces.some((piece) => piece.kind === 'arc') || path.pieces.length > 1;
  const steps = bends ? Math.max(1, Math.ceil((to - from) / OUTLINE_STEP)) : 1;
  const ways = Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);
  const left = ways.map((s) => beside(path, s, -half));
  const right = ways.map((s) => beside(path, s, half)).reverse();
  return [...left, ...right];
}

/** Places inside a unit block: first along the line, then to its right, both from 0 to 1. */
const HATCH_STROKES: Record<Hatch, readonly (readonly [number, number, number, number])[]> = {
  diagonal: [
    [0, 0.5, 0.5, 0],
    [0, 1, 1, 0],
    [0.5, 1, 1, 0.5],
  ],
  cross: [
    [0.33, 0, 0.33, 1],
    [0.67, 0, 0.67, 1],
  ],
  along: [
    [0, 0.33, 1, 0.33],
    [0, 0.67, 1, 0.67],
  ],
  dots: [],
};
const HATCH_DOTS: readonly (readonly [number, number])[] = [
  [0.27, 0.27],
  [0.73, 0.27],
  [0.27, 0.73],
  [0.73, 0.73],
];

function hatchOf(
  hatch: Hatch,
  path: Path,
  band: LaidBand,
  half: Mm,
): Pick<PictureBand, 'hatchStrokes' | 'hatchDots'> {
  const length = band.to - band.from;
  const place = (along: number, right: number) =>
    beside(path, band.from + along * length, (right * 2 - 1) * half);
  return {
    hatchStrokes: HATCH_STROKES[hatch].map(([a, b, c, d]) => [place(a, b), place(c, d)]),
    hatchDots: hatch === 'dots' ? HATCH_DOTS.map(([a, b]) => place(a, b)) : [],
  };
}
