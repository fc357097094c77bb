import { distance } from '../exact-math.ts';
import type { Direction, PieceEnds } from '../piece.ts';
import { TOLERANCE } from '../tolerances.ts';
import type { Mm } from '../units.ts';
import { circleFit } from './circle.ts';
import { directionsAt, type Section } from './directions.ts';
import { arcTo, endDirection, type Pose, startDirection, straightAndArc, twoArcs } from './joins.ts';
import { FITTING } from './settings.ts';
import { strayOf } from './stray.ts';

/** A way to have come to a knot: its cost so far, the direction there, and the pieces that were added. */
interface State {
  readonly knot: number;
  /** Undefined at the very start, where the direction is free. */
  readonly along: Direction | undefined;
  readonly cost: number;
  readonly pieces: readonly PieceEnds[];
  readonly before: State | undefined;
}

interface Search extends Section {
  readonly knots: readonly number[];
  /** Directions that may be taken at a knot. */
  readonly directions: (knot: number) => readonly Direction[];
  /** Whether the stroke itself turns tightly around a point. */
  readonly tight: (point: number) => boolean;
  readonly tolerance: Mm;
  readonly stride: number;
}

/**
 * The cheapest chain of straights and arcs along a section: tangent-continuous, within `tolerance` of
 * its samples, by dynamic programming over places (every few mm) and directions there. Undefined where
 * there is none.
 */
export function fitSection(section: Section, tolerance: Mm): PieceEnds[] | undefined {
  const search = searchOf(section, tolerance);
  const single = cheapestSingle(search);
  if (single) return single;
  const states: State[][] = search.knots.map(() => []);
  states[0]!.push({ knot: 0, along: undefined, cost: 0, pieces: [], before: undefined });
  for (const along of search.directions(0)) {
    states[0]!.push({ knot: 0, along, cost: 0, pieces: [], before: undefined });
  }
  for (let i = 0; i < search.knots.length - 1; i++) {
    for (const state of states[i]!) extend(search, state, states);
  }
  let best = states.at(-1)![0];
  if (!best || search.knots.length < 2) return undefined;
  for (const state of states.at(-1)!) if (state.cost < best.cost) best = state;
  return piecesTo(best);
}

/** One piece, where it costs less than any two. */
function cheapestSingle(search: Search): PieceEnds[] | undefined {
  const last = search.points.length - 1;
  let best: PieceEnds[] | undefined;
  let least: number = FITTING.cost.straight + FITTING.cost.arc;
  for (const pieces of freeChains(search, 0, last)) {
    const cost = costOf(search, pieces, 0, last);
    if (cost === undefined || cost >= least) continue;
    best = pieces;
    least = cost;
  }
  return best;
}

function piecesTo(last: State): PieceEnds[] {
  const chain: State[] = [];
  for (let state: State | undefined = last; state; state = state.before) chain.push(state);
  return chain.reverse().flatMap((state) => state.pieces);
}

function searchOf(section: Section, tolerance: Mm): Search {
  const { points, step } = section;
  const last = points.length - 1;
  const spacing = Math.max(FITTING.knotStep / step, last / FITTING.mostKnots, 1);
  const count = Math.max(Math.round(last / spacing), 1);
  const knots = Array.from({ length: count + 1 }, (_, k) => Math.round((k * last) / count));
  return {
    ...section,
    knots,
    directions: remembered((knot) => directionsAt(section, knots[knot]!)),
    tight: remembered((point) => isTightAt(section, point)),
    tolerance,
    stride: Math.max(Math.round(FITTING.checkStep / step), 1),
  };
}

/** Many strokes never ask; those that do ask again and again. */
function remembered<T>(answer: (i: number) => T): (i: number) => T {
  const known = new Map<number, T>();
  return (i) => {
    const found = known.get(i) ?? answer(i);
    known.set(i, found);
    return found;
  };
}

function isTightAt({ points, step }: Section, i: number): boolean {
  const reach = Math.max(Math.round(FITTING.tightReach / step), 1);
  const circle = circleFit(points.slice(Math.max(i - reach, 0), i + reach + 1), 0);
  return circle !== undefined && circle.radius < FITTING.radius * FITTING.tightSlack;
}

function extend(search: Search, state: State, states: State[][]): void {
  let failures = 0;
  for (const j of knotsAhead(state.knot, search.knots.length - 1)) {
    let reached = false;
    for (const pieces of chainsTo(search, state, j)) {
      const cost = costOf(search, pieces, search.knots[state.knot]!, search.knots[j]!);
      if (cost === undefined) continue;
      reached = true;
      const along = endDirection(pieces.at(-1)!);
      keep(states[j]!, { knot: j, along, cost: state.cost + cost, pieces, before: state });
    }
    failures = reached ? 0 : failures + 1;
    if (failures > FITTING.patience) return;
  }
}

/** Every knot nearby, farther on ever fewer, and the last: long pieces need no fine choice of their end. */
function knotsAhead(from: number, last: number): number[] {
  const ahead: number[] = [];
  let stride = 1;
  for (let j = from + 1; j < last; j += stride) {
    ahead.push(j);
    if (j - from >= FITTING.densely * stride) stride *= 2;
  }
  if (from < last) ahead.push(last);
  return ahead;
}

/** Keeps the cheapest few states of a knot, with directions that differ. */
function keep(states: State[], offered: State): void {
  const near = states.findIndex((s) => sameDirection(s.along!, offered.along!));
  if (near >= 0) {
    if (states[near]!.cost <= offered.cost) return;
    states.splice(near, 1);
  }
  const place = states.findIndex((s) => s.cost > offered.cost);
  states.splice(place < 0 ? states.length : place, 0, offered);
  if (states.length > FITTING.directions) states.pop();
}

const sameDirection = (a: Direction, b: Direction): boolean =>
  a.x * b.x + a.y * b.y > 0 && Math.abs(a.x * b.y - a.y * b.x) < FITTING.sameDirection;

function* chainsTo(search: Search, state: State, j: number): Generator<PieceEnds[]> {
  const from = search.points[search.knots[state.knot]!]!;
  const to = search.points[search.knots[j]!]!;
  if (distance(from, to) < FITTING.shortestPiece) return;
  const straight = { from, to, bulge: 0 };
  if (!state.along) {
    yield* freeChains(search, search.knots[0]!, search.knots[j]!);
    return;
  }
  const pose: Pose = { at: from, along: state.along };
  const start = startDirection(straight);
  const turn = state.along.x * start.y - state.along.y * start.x;
  const ahead = state.along.x * start.x + state.along.y * start.y > 0;
  if (ahead && Math.abs(turn) < TOLERANCE.tangent / 2) yield [straight];
  const arc = arcTo(pose, to);
  if (arc) yield [arc];
  const [stroke, ...straights] = search.directions(j);
  const arcs = stroke && twoArcs(pose, { at: to, along: stroke });
  if (arcs) yield arcs;
  for (const along of straights) {
    const mixed = straightAndArc(pose, { at: to, along }) ?? twoArcs(pose, { at: to, along });
    if (mixed) yield mixed;
  }
}

function* freeChains(search: Search, low: number, high: number): Generator<PieceEnds[]> {
  yield [{ from: search.points[low]!, to: search.points[high]!, bulge: 0 }];
  const arc = freeArc(search, low, high);
  if (arc) yield [arc];
}

/** An arc between two samples that follows those between; its direction at the ends is free. */
function freeArc({ points }: Search, low: number, high: number): PieceEnds | undefined {
  const from = points[low]!;
  const to = points[high]!;
  const circle = circleFit(points.slice(low, high + 1), 5);
  const middle = points[(low + high) >> 1]!;
  const chord = distance(from, to);
  if (!circle || circle.radius < chord / 2) return undefined;
  const { x, y } = circle.center;
  const side = (to.x - from.x) * (middle.y - from.y) - (to.y - from.y) * (middle.x - from.x) < 0 ? 1 : -1;
  const centre = (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) > 0 ? 1 : -1;
  const depth = Math.sqrt(circle.radius * circle.radius - (chord * chord) / 4) * centre * side;
  const bulge = (side * (circle.radius - depth)) / (chord / 2);
  return Math.abs(bulge) > FITTING.widestBulge ? undefined : { from, to, bulge };
}

/** Undefined where the pieces leave the samples or are not allowed. */
function costOf(search: Search, pieces: readonly PieceEnds[], low: number, high: number): number | undefined {
  let cost = 0;
  let length = 0;
  for (const piece of pieces) {
    const chord = distance(piece.from, piece.to);
    if (chord < FITTING.shortestPiece) return undefined;
    const b = Math.abs(piece.bulge);
    const radius = (chord * (1 + b * b)) / (4 * b);
    length += b === 0 ? chord : arcLength(chord, b);
    cost += b === 0 ? FITTING.cost.straight : FITTING.cost.arc;
    if (radius < FITTING.radius && !isTight(search, low, high)) cost += FITTING.cost.tight;
  }
  const way = (high - low) * search.step;
  if (length > way * 1.25 + 2 || length < way * 0.75 - 2) return undefined;
  const stride = Math.max(search.stride, Math.floor((high - low) / FITTING.mostChecks));
  const stray = strayOf(pieces, search.samples, [low + stride, high - 1, stride], search.tolerance);
  if (stray.most > search.tolerance) return undefined;
  return cost + FITTING.cost.stray * stray.squares * stride * search.step;
}

/** Chord × (1 + b²)·atan(b)/b, the arctangent to half a percent: enough to refuse what goes round. */
function arcLength(chord: Mm, b: number): Mm {
  const inverse = 1 / b;
  const quarter = b > 1 ? Math.PI / 2 - inverse / (1 + 0.28 * inverse * inverse) : b / (1 + 0.28 * b * b);
  return chord * (1 + b * b) * quarter * inverse;
}

function isTight({ tight }: Search, low: number, high: number): boolean {
  for (let i = low; i <= high; i++) if (tight(i)) return true;
  return false;
}
