import { distance } from '../exact-math.ts';
import type { PathSource } from '../path.ts';
import type { PieceEnds } from '../piece.ts';
import { TOLERANCE } from '../tolerances.ts';
import type { Mm, PaperPoint } from '../units.ts';
import { type CleanStroke, cleanStroke } from './clean.ts';
import type { Section } from './directions.ts';
import { endDirection, startDirection } from './joins.ts';
import { fitSection } from './section.ts';
import { FITTING } from './settings.ts';
import { asDrawn, sharpened, type Targets } from './sharpen.ts';
import { simplified } from './simplify.ts';
import { strayOf } from './stray.ts';

export interface FitOptions {
  /** How far the line may lie from the cleaned samples; `TOLERANCE.fit` unless told. */
  readonly tolerance?: Mm;
}

/**
 * A line of few straights and arcs for a raw stroke: within the tolerance of its cleaned samples,
 * tangent-continuous except at its corners, no arc tighter than 15 mm unless the stroke is. Coordinates
 * in steps of 0.01 mm, bulges of 10⁻⁶, at most 200 pieces (an endless scribble is fitted more coarsely).
 * Null where the stroke is a tap.
 */
export function fitStroke(samples: readonly PaperPoint[], options: FitOptions = {}): PathSource | null {
  const stroke = cleanStroke(samples);
  return stroke && fitCleaned(stroke, options.tolerance ?? TOLERANCE.fit);
}

/** As `fitStroke`, for a stroke that was cleaned before. */
export function fitCleaned(stroke: CleanStroke, tolerance: Mm = TOLERANCE.fit): PathSource | null {
  // The file form's rounding may move a line by this much.
  const allowed = tolerance - 0.01;
  let pieces = fitWith(sharpened, stroke, allowed);
  if (!isNear(pieces, stroke.points, allowed)) pieces = fitWith(asDrawn, stroke, allowed);
  return quantised(pieces.length <= FITTING.mostPieces ? pieces : fewChords(stroke.points, tolerance));
}

function fitWith(aim: (stroke: CleanStroke) => Targets, stroke: CleanStroke, tolerance: Mm): PieceEnds[] {
  let corners = stroke.corners;
  let known: Part[] = [];
  // Where two parts meet almost without a turn, they are fitted again as one.
  for (let round = 0; ; round++) {
    const targets = aim({ ...stroke, corners });
    known = fitBetween(stroke, targets, tolerance, known);
    const parts = known.map(({ pieces }) => pieces);
    const real = targets.corners.filter((_, k) => turns(parts[k]!, parts[k + 1]!));
    if (real.length === targets.corners.length || round === FITTING.rounds) return parts.flat();
    corners = real.flatMap(({ of }) => of);
  }
}

const isNear = (pieces: readonly PieceEnds[], samples: readonly PaperPoint[], tolerance: Mm): boolean =>
  strayOf(pieces, samples, [0, samples.length - 1, 1], tolerance).most <= tolerance;

/** A part of a stroke between corners, fitted. */
interface Part {
  readonly low: number;
  readonly section: Section;
  readonly pieces: PieceEnds[];
}

/** Fits each part between corners; one that an earlier round knows is not searched again. */
function fitBetween(stroke: CleanStroke, targets: Targets, tolerance: Mm, known: readonly Part[]): Part[] {
  const { points: samples, step } = stroke;
  const stops = [0, ...targets.corners.map(({ at }) => at), samples.length - 1];
  return stops.slice(1).map((high, k) => {
    const low = stops[k]!;
    const part = (whole: readonly PaperPoint[]): PaperPoint[] => whole.slice(low, high + 1);
    const section = { points: part(targets.points), samples: part(samples), step };
    const before = known.find((p) => p.low === low && sameAim(p.section, section));
    return (
      before ?? { low, section, pieces: fitPart(section, tolerance) ?? chords(section.samples, tolerance) }
    );
  });
}

function sameAim(one: Section, two: Section): boolean {
  const same = ({ x, y }: PaperPoint, i: number): boolean => x === two.points[i]!.x && y === two.points[i]!.y;
  return one.points.length === two.points.length && one.points.every(same);
}

/**
 * The search looks at some samples only; where one between them strays, it is told to be stricter. Those
 * at a tip belong to both its sides and are looked at with the whole stroke.
 */
function fitPart(part: Section, tolerance: Mm): PieceEnds[] | undefined {
  const skip = Math.round(FITTING.tipSkip / part.step);
  for (const share of [1, 0.9, 0.75]) {
    const fitted = fitSection(part, tolerance * share);
    if (!fitted || isNear(fitted, part.samples.slice(skip, -skip || undefined), tolerance)) return fitted;
  }
  return undefined;
}

/** The last resort: straights with corners, as Ramer, Douglas and Peucker's method keeps them. */
function chords(points: readonly PaperPoint[], tolerance: Mm): PieceEnds[] {
  const kept = simplified(points, tolerance);
  return kept.slice(1).map((i, k) => ({ from: points[kept[k]!]!, to: points[i]!, bulge: 0 }));
}

/** An endless scribble has no fit of few pieces: straights that follow it as well as so few can. */
function fewChords(points: readonly PaperPoint[], tolerance: Mm): PieceEnds[] {
  for (let wider = tolerance; ; wider *= 1.5) {
    const pieces = chords(points, wider);
    if (pieces.length <= FITTING.mostPieces) return pieces;
  }
}

/** Whether there is a corner between the fitted parts. */
function turns(part: readonly PieceEnds[], next: readonly PieceEnds[]): boolean {
  const before = endDirection(part.at(-1)!);
  const after = startDirection(next[0]!);
  return before.x * after.x + before.y * after.y < FITTING.cornerCosine;
}

const hundredth = (value: number): number => Math.round(value * 100) / 100;
const millionth = (value: number): number => Math.round(value * 1e6) / 1e6;

function quantised(pieces: readonly PieceEnds[]): PathSource | null {
  const from = onGrid(pieces[0]!.from);
  const rounded: { to: PaperPoint; bulge: number }[] = [];
  let last = from;
  for (const piece of pieces) {
    const to = onGrid(piece.to);
    if (distance(last, to) === 0) continue;
    rounded.push({ to, bulge: millionth(piece.bulge) });
    last = to;
  }
  return rounded.length > 0 ? { from, pieces: rounded } : null;
}

const onGrid = ({ x, y }: PaperPoint): PaperPoint => ({ x: hundredth(x), y: hundredth(y) });
