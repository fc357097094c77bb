import type { Drawing } from '../documents/design.ts';
import { endFromEdgeOf, PACES } from '../documents/kit.ts';
import { distance } from '../geometry/exact-math.ts';
import { pathFoot } from '../geometry/path.ts';
import type { Direction } from '../geometry/piece.ts';
import { isInside } from '../geometry/polygon.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { type TrackNode, twin } from '../track/track.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { stepped, withLine } from './drawn.ts';
import { findingAt, lengths, pointPlace } from './findings.ts';
import { isFinishReached } from './finish-reachable.ts';
import { type Gap, gapsOf } from './gaps.ts';

/**
 * Lines have no gaps; they don't end where a robot at pace fast would leave the paper, nor, beside a way
 * that leads to the finish, where a robot only stops. What is still to be drawn up to the finish is the
 * business of `R-finish-reachable`.
 */
export const looseEnd: Rule = { id: 'R-loose-end', check };

function check(view: RuleView): Draft[] {
  const gaps = gapsOf(view);
  const atGap = new Set(gaps.flatMap(({ ends }) => ends));
  const finished = isFinishReached(view);
  const ends = view.track.nodes.filter((node) => node.kind === 'end' && !atGap.has(node));
  return [
    ...gaps.map((gap) => ({ finding: gapFinding(view, gap), mends: () => closedGap(view, gap) })),
    ...ends.flatMap((node) => checkEnd(view, node, finished)),
  ];
}

const gapFinding = ({ kit }: RuleView, { length, middle }: Gap): Draft['finding'] =>
  findingAt('R-loose-end', pointPlace(middle), {
    variant: 'gap',
    severity: 'may-stop',
    ...lengths(length, kit.rules.junction.snap),
    remedy: 'close-gap',
  });

/** Drawings in which the one end or the other is drawn on over the gap. */
function closedGap({ drawing }: RuleView, { ends: [a, b] }: Gap): Drawing[] {
  return [...drawnOn(drawing, a.at, b.at), ...drawnOn(drawing, b.at, a.at)];
}

function drawnOn(drawing: Drawing, end: PaperPoint, over: PaperPoint): Drawing[] {
  const isHere = (p: PaperPoint): boolean => distance(p, end) <= TOLERANCE.step;
  const to = { x: stepped(over.x), y: stepped(over.y) };
  return drawing.lines.flatMap((line) => {
    if (isHere(line.pieces.at(-1)!.to)) {
      const pieces = [...line.pieces, { to, bulge: 0 }];
      return [withLine(drawing, line, { ...line, pieces }, Number.POSITIVE_INFINITY)];
    }
    if (!isHere(line.from)) return [];
    const pieces = [{ to: line.from, bulge: 0 }, ...line.pieces];
    return [withLine(drawing, line, { ...line, from: to, pieces }, Number.NEGATIVE_INFINITY)];
  });
}

function checkEnd(view: RuleView, node: TrackNode, finished: boolean): Draft[] {
  const { track, travel, kit, sheet } = view;
  const arm = node.arms[0];
  if (!arm || track.lines[track.edges[arm.edge]!.line]!.line.given || isAtHome(view, node)) return [];
  const pace = travel.paceAtEnd[twin(arm.edge)]!;
  const gap = toPaperEdge(node.at, { x: -arm.tangent.x, y: -arm.tangent.y }, sheet.w, sheet.h);
  const allowed = endFromEdgeOf(kit.rules);
  if (PACES[pace] === 'fast' && gap < allowed - TOLERANCE.samePoint) {
    const said = {
      variant: 'edge',
      severity: 'untidy',
      ...lengths(gap, allowed),
      remedy: 'slow-down',
    } as const;
    return [{ finding: findingAt('R-loose-end', pointPlace(node.at), said) }];
  }
  const isDeadEnd = finished && pace >= 0 && kit.robot.looseEnd === 'stop' && !isBesideLine(view, node);
  if (!isDeadEnd) return [];
  const said = { variant: 'loose-end', severity: 'untidy', remedy: 'lead-on' } as const;
  return [{ finding: findingAt('R-loose-end', pointPlace(node.at), said) }];
}

/** In a berth, or in an area where something is to happen, a line may end. */
const isAtHome = ({ sheet }: RuleView, { at }: TrackNode): boolean =>
  [sheet.start, sheet.finish].some((berth) => berth && distance(berth.at, at) <= berth.r) ||
  sheet.areas.some(({ polygon }) => isInside(polygon, at));

/** Whether the end stands so near another line that `R-clearance` speaks of it. */
function isBesideLine({ track, kit }: RuleView, node: TrackNode): boolean {
  const own = track.edges[node.arms[0]!.edge]!.line;
  return track.lines.some(
    ({ line, edges }, i) =>
      i !== own && edges.length > 0 && pathFoot(line.path, node.at).distance < kit.rules.clearance,
  );
}

/** From `p` straight along `d` to where the paper ends. */
function toPaperEdge(p: PaperPoint, d: Direction, w: Mm, h: Mm): Mm {
  const toX = d.x > 0 ? (w - p.x) / d.x : d.x < 0 ? p.x / -d.x : Number.POSITIVE_INFINITY;
  const toY = d.y > 0 ? (h - p.y) / d.y : d.y < 0 ? p.y / -d.y : Number.POSITIVE_INFINITY;
  return Math.min(toX, toY);
}
