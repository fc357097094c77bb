import { radians } from '../exact-math.ts';

/** How strokes are cleaned and fitted. Lengths mm; chosen on recorded pen strokes. */
export const FITTING = Object.freeze({
  /** A stroke shorter than this is a tap. */
  shortest: 3,
  /** Samples closer than this are repeats: the file form's step. */
  repeat: 0.01,
  /** A sharp turn nearer to an end than this is a hook. */
  hook: 3,
  /** Cosine of the turn that makes a hook (75 degrees). */
  hookCosine: 0.2588,
  /** Even spacing of the cleaned samples, and the most there may be: a bound on time. */
  step: 1,
  mostSteps: 2000,
  /** Width of the moving average. */
  window: 5,
  /** A corner turns by this much more, over so much to both sides, than the curves beside it. */
  cornerReach: 5,
  cornerTurn: radians(25),
  /** Light smoothing before corners are looked for. */
  cornerWindow: 2,
  /** Two corners are at least this far apart. */
  cornersApart: 6,
  /** A corner at which the fitted pieces turn by less than 30 degrees (their cosine) was none. */
  cornerCosine: 0.866,
  /** The sides of a corner: so far from its tip, over so much, and how far the tip may move the samples. */
  tipSkip: 3,
  tipSpan: 7,
  tipStray: 1.3,
  tipBeyond: 2,
  /** Sine of the least angle between sides that are drawn on (20 degrees). */
  tipSine: 0.342,
  /** Two corners closer than this may be one whose tip was cut off. */
  pairApart: 10,
  /** No arc tighter than this, unless the stroke is. */
  radius: 15,
  /** How often corners may be taken back. */
  rounds: 5,
  /** The most pieces of one stroke. */
  mostPieces: 200,
  /** Spacing of the places where a piece may end, and the most of them. */
  knotStep: 3,
  mostKnots: 300,
  /** How many knots ahead are tried one by one, before every second, fourth and so on. */
  densely: 8,
  /** How many directions are kept at a knot, and the sine below which two are one. */
  directions: 5,
  sameDirection: 0.03,
  /** After so many knots that can't be reached, those behind are not tried. */
  patience: 4,
  /** Spacing of the samples that a candidate is held against, and the most of them. */
  checkStep: 2,
  mostChecks: 24,
  /** The direction of a stroke is that of the chord over so much to both sides. */
  tangentReach: 5,
  /** A straight worth aiming along: at least so long (longer than the most is as good as the most), its samples so near, looked at in such steps. */
  straightLeast: 18,
  straightMost: 90,
  straightStray: 0.8,
  straightStride: 3,
  /** A stroke is tight where a circle over so much to both sides is smaller than the radius by this factor. */
  tightReach: 5,
  tightSlack: 1.2,
  /** No piece is shorter, and no arc of more than 300 degrees. */
  shortestPiece: 2,
  widestBulge: 3.73,
  /** What a fit costs: a straight, an arc, an arc tighter than the stroke, and mm³ of distance. */
  cost: { straight: 1, arc: 1.2, tight: 4, stray: 0.015 },
});
