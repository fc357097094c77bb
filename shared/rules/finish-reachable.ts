import type { Berth } from '../documents/sheet.ts';
import { distance } from '../geometry/exact-math.ts';
import { pathPart } from '../geometry/path.ts';
import { pieceFoot, shapeOf } from '../geometry/piece.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import { twin } from '../track/track.ts';
import { type Departure, reachableFrom } from '../track/travel.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, pointPlace } from './findings.ts';

/**
 * There is a way along the lines from the start berth into the finish berth, whatever the marks choose
 * on it; robots turn where a mark or a loose end makes them.
 */
export const finishReachable: Rule = { id: 'R-finish-reachable', check };

function check(view: RuleView): Draft[] {
  const { finish, start } = view.sheet;
  const from = view.departures.find(({ berth }) => berth === start)?.start;
  if (!finish || finish.startOnly || view.drawing.lines.length === 0 || from?.kind !== 'on') return [];
  const nearest = nearestReached(view, { edge: from.edge, from: Math.max(0, from.axle) }, finish);
  if (nearest <= finish.r + TOLERANCE.samePoint) return [];
  const finding = findingAt('R-finish-reachable', pointPlace(finish.at), {
    severity: 'may-stop',
    ...lengths(nearest, finish.r),
    remedy: 'draw-to-berth',
  });
  return [{ finding }];
}

/** How near the line that can be driven comes to the middle of the berth. */
function nearestReached(view: RuleView, from: Departure, finish: Berth): Mm {
  const { track, kit } = view;
  const reached = reachableFrom(track, kit, [from]);
  const again = track.edges.some(
    (edge) => reached[edge.index] && edge.to === track.edges[from.edge]!.from && edge.index !== from.edge,
  );
  // At the least the robot stands in its berth.
  let nearest = distance(view.sheet.start.at, finish.at);
  for (const edge of track.edges) {
    if (!reached[edge.index]) continue;
    const partly = edge.index === from.edge && !again && !reached[twin(edge.index)];
    const skipped = partly ? from.from : 0;
    const low = edge.along ? edge.low + skipped : edge.low;
    const high = edge.along ? edge.high : edge.high - skipped;
    if (high <= low) continue;
    for (const part of pathPart(track.lines[edge.line]!.line.path, low, high)) {
      if (part.from.x === part.to.x && part.from.y === part.to.y) continue;
      nearest = Math.min(nearest, pieceFoot(shapeOf(part), finish.at).distance);
    }
  }
  return nearest;
}
