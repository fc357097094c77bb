import { norm } from '../geometry/exact-math.ts';
import { pointAt } from '../geometry/path.ts';
import type { Arc } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, Rad } from '../geometry/units.ts';
import type { LaidLine } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { stretchPlace } from './drawn.ts';
import { findingAt, lengths } from './findings.ts';

/** No curve of a drawn line is tighter than the kit's radius. Neighbouring tight arcs are one curve. */
export const curveRadius: Rule = {
  id: 'R-curve-radius',
  check: (view) => view.layout.lines.filter((line) => !line.given).flatMap((line) => checkLine(view, line)),
};

interface Curve {
  readonly from: Mm;
  readonly to: Mm;
  readonly radius: Mm;
  readonly turn: Rad;
}

function checkLine(view: RuleView, line: LaidLine): Draft[] {
  const limit = view.kit.rules.curveRadius;
  return tightCurves(line, limit).map(({ from, to, radius, turn }) => ({
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

function tightCurves({ path }: LaidLine, limit: Mm): Curve[] {
  const curves: Curve[] = [];
  path.pieces.forEach((piece, i) => {
    if (piece.kind !== 'arc' || !isTight(piece, limit)) return;
    const from = path.starts[i]!;
    const curve = { from, to: from + piece.length, radius: piece.radius, turn: Math.abs(piece.sweep) };
    const last = curves.at(-1);
    if (last && last.to === from) curves[curves.length - 1] = together(last, curve);
    else curves.push(curve);
  });
  return curves;
}

const together = (a: Curve, b: Curve): Curve => ({
  from: a.from,
  to: b.to,
  radius: Math.min(a.radius, b.radius),
  turn: a.turn + b.turn,
});

/** A radius as small as the limit's own after its ends and bulge were rounded to the file form is not tighter. */
function isTight(arc: Arc, limit: Mm): boolean {
  const chord = norm(arc.to.x - arc.from.x, arc.to.y - arc.from.y);
  return arc.radius * (1 + (2 * TOLERANCE.step) / chord) < limit;
}
