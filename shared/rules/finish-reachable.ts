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
import { gapsOf } from './gaps.ts';

/**
 * There is a way along the lines from the start berth into the finish berth, whatever the marks choose
 * on it; robots turn where a mark or a loose end makes them. A gap in the line is `R-loose-end`'s.
 */
export const finishReachable: Rule = { id: 'R-finish-reachable', check };

function check(view: RuleView): Draft[] {
  const { finish } = view.sheet;
  const nearest = nearestToFinish(view);
  if (!finish || nearest === undefined || reaches(nearest, finish)) return [];
  const finding = findingAt('R-finish-reachable', pointPlace(finish.at), {
    // What is still to be drawn is no fault yet: the goals tell what is missing.
    severity: 'untidy',
    ...lengths(nearest, finish.r),
    remedy: 'draw-to-berth',
  });
  return [{ finding }];
}

const reaches = (nearest: Mm, finish: Berth): boolean => nearest <= finish.r + TOLERANCE.samePoint;

/** Whether lines lead from the start berth into a finish berth. */
export function isFinishReached(view: RuleView): boolean {
  const { finish } = view.sheet;
  const nearest = nearestToFinish(view);
  return finish !== undefined && nearest !== undefined && reaches(nearest, finish);
}

/** How near the finish berth's middle robots can come; undefined where none is to come there or can set out. */
function nearestToFinish(view: RuleView): Mm | undefined {
  const { finish, start } = view.sheet;
  const from = view.departures.find(({ berth }) => berth === start)?.start;
  if (!finish || finish.startOnly || view.drawing.lines.length === 0 || from?.kind !== 'on') return undefined;
  return nearestReached(view, { edge: from.edge, from: Math.max(0, from.axle) }, finish);
}

/** How near the line that can be driven comes to the middle of the berth. */
function nearestReached(view: RuleView, from: Departure, finish: Berth): Mm {
  const { track } = view;
  const reached = reachedOver(view, from);
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

/** Edges that a robot can come to, also over gaps: whether it gets across them is told at the gap. */
function reachedOver(view: RuleView, from: Departure): readonly boolean[] {
  const { track, kit } = view;
  const departures = [from];
  const beyond = gapsOf(view).flatMap(({ ends: [a, b] }) => [
    { end: a.index, edge: b.arms[0]!.edge },
    { end: b.index, edge: a.arms[0]!.edge },
  ]);
  for (;;) {
    const reached = reachableFrom(track, kit, departures);
    const next = beyond.filter(
      ({ end, edge }) => !reached[edge] && reached[twin(track.nodes[end]!.arms[0]!.edge)],
    );
    if (next.length === 0) return reached;
    departures.push(...next.map(({ edge }) => ({ edge, from: 0 })));
  }
}
