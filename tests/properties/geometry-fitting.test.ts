import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitStroke } from '../../shared/geometry/fitting/fit-stroke.ts';
import { type Path, pathFoot, pathOf, pointAt } from '../../shared/geometry/path.ts';
import { pieceDirection } from '../../shared/geometry/piece.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { SEED } from '../seed.ts';

interface Leg {
  /** Turn before the leg, degrees; 0 joins on tangentially. */
  readonly corner: number;
  readonly length: number;
  /** 1/mm, 0 for a straight. */
  readonly curvature: number;
}

interface KnownDesign {
  readonly path: Path;
  readonly corners: readonly number[];
}

const sign = fc.constantFrom(-1, 1);
/** Corners between 45 and 135 degrees; straights of 30 to 90 mm; arcs of 20 to 80 mm radius, at least 30 mm. */
const leg: fc.Arbitrary<Leg> = fc
  .record({
    corner: fc.option(fc.tuple(fc.integer({ min: 45, max: 135 }), sign), { nil: [0, 1] as const }),
    straight: fc.boolean(),
    length: fc.integer({ min: 30, max: 90 }),
    radius: fc.integer({ min: 20, max: 80 }),
    side: sign,
  })
  .map(({ corner, straight, length, radius, side }) => ({
    corner: corner[0] * corner[1],
    length: Math.min(length, straight ? 90 : radius * Math.PI),
    curvature: straight ? 0 : side / radius,
  }));
const designs = fc.array(leg, { minLength: 2, maxLength: 6 }).map(designOf);

function designOf(legs: readonly Leg[]): KnownDesign {
  let [x, y, angle, way] = [100, 100, 0.3, 0];
  const corners: number[] = [];
  const from = { x, y };
  const pieces = legs.map(({ corner, length, curvature }, i) => {
    if (i > 0 && corner !== 0) {
      angle += (corner * Math.PI) / 180;
      corners.push(way);
    }
    const half = (length * curvature) / 2;
    const chord = half === 0 ? length : (2 * Math.sin(half)) / curvature;
    x += chord * Math.cos(angle + half);
    y += chord * Math.sin(angle + half);
    angle += 2 * half;
    way += length;
    return { to: { x, y }, bulge: Math.tan(half / 2) };
  });
  return { path: pathOf({ from, pieces }), corners };
}

/** A small generator of its own, so that a drawing follows from its seed alone. */
function chance(seed: number): () => number {
  let state = seed >>> 0;
  const next = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return () => Array.from({ length: 12 }, next).reduce((a, b) => a + b) - 6;
}

/**
 * A hand draws the design: samples some 5.5 mm apart, closer near corners, shaking sideways by `shake`,
 * two thirds of it smooth over 10 mm, on a grid of 0.25 mm. Steps and shake as measured on recorded
 * strokes at 180 mm: step 5.5 (median), 0.5 to 0.75 of it at corners, shake 0.09 (median) to 0.17 (worst tenth).
 */
function drawn({ path, corners }: KnownDesign, shake: number, seed: number): PaperPoint[] {
  const gauss = chance(seed);
  const samples: PaperPoint[] = [];
  let smooth = [gauss(), gauss()];
  const grid = (value: number): number => Math.round(value * 4) / 4;
  for (let s = 0; ; ) {
    const p = pointAt(path, Math.min(s, path.length));
    const off = smooth.map((value) => shake * (0.8 * value + 0.6 * gauss()));
    samples.push({ x: grid(p.x + off[0]!), y: grid(p.y + off[1]!) });
    if (s >= path.length) return samples;
    const near = corners.some((c) => Math.abs(c - s) < 8);
    const step = (near ? 3.5 : 5.5) * Math.min(Math.max(1 + 0.25 * gauss(), 0.5), 1.5);
    const kept = Math.exp(-step / 10);
    smooth = smooth.map((value) => kept * value + Math.sqrt(1 - kept * kept) * gauss());
    s += step;
  }
}

function cornersOf({ pieces }: Path): number {
  return pieces.slice(1).filter((piece, k) => {
    const before = pieceDirection(pieces[k]!, pieces[k]!.length);
    const after = pieceDirection(piece, 0);
    return before.x * after.x + before.y * after.y < Math.cos(0.05);
  }).length;
}

const DRAWINGS = 250;
const all = fc.sample(fc.tuple(designs, fc.integer()), { numRuns: DRAWINGS, seed: SEED });
const fitsAt = (shake: number): Path[] =>
  all.map(([design, seed]) => pathOf(fitStroke(drawn(design, shake, seed))!));

describe('known designs, drawn by a hand that shakes', () => {
  const fits = fitsAt(0.1);

  it.each([
    [0.1, fits],
    [0.2, fitsAt(0.2)],
  ] as const)('shake of %d mm: 95 of 100 keep their number of corners', (_, fitted) => {
    const kept = fitted.filter((fit, i) => cornersOf(fit) === all[i]![0].corners.length);
    expect(kept.length / DRAWINGS).toBeGreaterThanOrEqual(0.95);
  });

  it('no arc under 15 mm where the design has none under 20, but for one in a hundred', () => {
    const arcs = fits.flatMap(({ pieces }) => pieces.filter(({ kind }) => kind === 'arc'));
    expect(arcs.length).toBeGreaterThan(DRAWINGS);
    expect(arcs.filter(({ curvature }) => Math.abs(curvature) > 1 / 15).length / arcs.length).toBeLessThan(
      0.01,
    );
  });

  it('the fit lies within 2.5 mm of the design', () => {
    fits.forEach((fit, i) => {
      const { path } = all[i]![0];
      for (let s = 0; s <= path.length; s += 3) {
        expect(pathFoot(fit, pointAt(path, s)).distance).toBeLessThan(2.5);
      }
    });
  });

  it('the fits have at most a quarter more pieces than the designs', () => {
    const count = (paths: readonly Path[]): number => paths.reduce((n, { pieces }) => n + pieces.length, 0);
    expect(count(fits) / count(all.map(([design]) => design.path))).toBeLessThan(1.25);
  });
});

describe('fitStroke on anything', () => {
  const wild = fc.array(
    fc.record({ x: fc.double({ min: -400, max: 4400 }), y: fc.double({ min: -400, max: 2400 }) }),
    { maxLength: 40 },
  );

  it('gives null or a line with length, in steps of 0.01 mm, of at most 200 pieces', () => {
    fc.assert(
      fc.property(wild, (samples) => {
        const fit = fitStroke(samples);
        if (fit === null) return;
        expect(fit.pieces.length).toBeLessThanOrEqual(200);
        let last = fit.from;
        for (const { to, bulge } of fit.pieces) {
          expect(to.x !== last.x || to.y !== last.y).toBe(true);
          expect(Math.abs(to.x * 100 - Math.round(to.x * 100))).toBeLessThan(1e-6);
          expect(Math.abs(bulge)).toBeLessThan(12);
          last = to;
        }
      }),
      { numRuns: 60 },
    );
  });
});
