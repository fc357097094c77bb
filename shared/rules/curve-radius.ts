import { norm } from '../geometry/exact-math.ts';
import { type Path, pointAt } from '../geometry/path.ts';
import type { Arc } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidLine } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { stretchPlace } from './drawn.ts';
import { findingAt, lengths } from './findings.ts';
import { type Curve, kinkedCurves } from './kinks.ts';

/**
 * No curve of a drawn line is tighter than the kit's radius, whether it was drawn as arcs or as many small
 * kinks: what turns further than the sharpest tidy corner is a curve. What touches is one curve.
 */
export const curveRadius: Rule = {
  id: 'R-curve-radius',
  check: (view) =>
    view.track.layout.lines.filter((line) => !line.given).flatMap((line) => checkLine(view, line)),
};

function checkLine(view: RuleView, line: LaidLine): Draft[] {
  const limit = view.kit.rules.curveRadius;
  return tightCurves(view, line).map(({ from, to, radius, turn }) => ({
    finding: findingAt(
      'R-curve-radius',
      stretchPlace(view, line.path, from, to, pointAt(line.path, (from + to) / 2)),
      {
        // Up to a right angle a tight curve is taken like a corner.
        severity: turn > Math.PI / 2 + TOLERANCE.tangent ? 'may-stop' : 'untidy',
        ...lengths(radius, limit),
        remedy: 'widen-curve',
      },
    ),
  }));
}

function tightCurves({ kit }: RuleView, { path }: LaidLine): Curve[] {
  const { curveRadius: limit, corner } = kit.rules;
  const least = Math.PI - corner.untidyBelow + TOLERANCE.tangent;
  const all = [...tightArcs(path, limit), ...kinkedCurves(path, least, limit)];
  const curves: Curve[] = [];
  for (const curve of all.sort((a, b) => a.from - b.from || a.to - b.to)) {
    const last = curves.at(-1);
    if (last && curve.from <= last.to) curves[curves.length - 1] = together(last, curve);
    else curves.push(curve);
  }
  return curves;
}

const tightArcs = (path: Path, limit: Mm): Curve[] =>
  path.pieces.flatMap((piece, i) => {
    if (piece.kind !== 'arc' || !isTight(piece, limit)) return [];
    const from = path.starts[i]!;
    return [{ from, to: from + piece.length, radius: piece.radius, turn: Math.abs(piece.sweep) }];
  });

const together = (a: Curve, b: Curve): Curve => ({
  from: a.from,
  to: Math.max(a.to, b.to),
  radius: Math.min(a.radius, b.radius),
  // Where they share a stretch, its turn counts in both.
  turn: a.to === b.from ? a.turn + b.turn : Math.max(a.turn, b.turn),
});

/** A radius as small as the limit's own after its ends and bulge were rounded to the file form is not tighter. */
function isTight(arc: Arc, limit: Mm): boolean {
  const chord = norm(arc.to.x - arc.from.x, arc.to.y - arc.from.y);
  return arc.radius * (1 + (2 * TOLERANCE.step) / chord) < limit;
}
