import type { Area } from '../documents/sheet.ts';
import { type Box, boxesMeet, boxOf } from '../geometry/box.ts';
import { type LeastDistance, pieceDistance } from '../geometry/distances.ts';
import { type Path, pathFrom, pointAt } from '../geometry/path.ts';
import { pathIntersections } from '../geometry/path-intersections.ts';
import { isInside } from '../geometry/polygon.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidLine } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { stretchPlace } from './drawn.ts';
import { findingAt, lengths, pointPlace } from './findings.ts';

/** No line leads into an area to keep out of, or so near that a robot on it would reach in with its side. */
export const keepOut: Rule = {
  id: 'R-keep-out',
  check: (view) => {
    const own = view.track.layout.lines.filter((line) => !line.given);
    return view.sheet.keepOut.flatMap((area) => own.flatMap((line) => checkLine(view, line, area)));
  },
};

function checkLine(view: RuleView, { path }: LaidLine, { polygon }: Area): Draft[] {
  const allowed = view.kit.robot.width / 2;
  const box = boxOf(polygon);
  if (!path.pieces.some((piece) => boxesMeet(piece.box, box, allowed))) return [];
  const outline = pathFrom(
    polygon.map((from, i) => ({ from, to: polygon[(i + 1) % polygon.length]!, bulge: 0 })),
  );
  const inside = stretchesInside(path, outline, polygon);
  const [first] = inside;
  if (first) {
    const place = stretchPlace(view, path, first.from, first.to, pointAt(path, (first.from + first.to) / 2));
    const length = inside.reduce((sum, { from, to }) => sum + to - from, 0);
    const said = {
      variant: 'through',
      severity: 'stops',
      ...lengths(length, 0),
      remedy: 'go-round',
    } as const;
    return [{ finding: findingAt('R-keep-out', place, said) }];
  }
  const nearest = leastTo(path, outline, box, allowed);
  if (!nearest || nearest.distance >= allowed - TOLERANCE.step) return [];
  const said = {
    variant: 'near',
    severity: 'stops',
    ...lengths(nearest.distance, allowed),
    remedy: 'go-round',
  } as const;
  return [{ finding: findingAt('R-keep-out', pointPlace(nearest.pointA), said) }];
}

interface Stretch {
  readonly from: Mm;
  readonly to: Mm;
}

function stretchesInside(path: Path, outline: Path, polygon: Area['polygon']): Stretch[] {
  const ways = [0, ...pathIntersections(path, outline).map((m) => m.a), path.length].sort((a, b) => a - b);
  return ways.slice(1).flatMap((to, i) => {
    const from = ways[i]!;
    const isIn = to - from > TOLERANCE.step && isInside(polygon, pointAt(path, (from + to) / 2));
    return isIn ? [{ from, to }] : [];
  });
}

function leastTo(path: Path, outline: Path, box: Box, reach: Mm): LeastDistance | undefined {
  let least: LeastDistance | undefined;
  for (const piece of path.pieces) {
    if (!boxesMeet(piece.box, box, reach)) continue;
    for (const side of outline.pieces) {
      const found = pieceDistance(piece, side);
      if (!least || found.distance < least.distance) least = found;
    }
  }
  return least;
}
