import { degrees, sin } from '../geometry/exact-math.ts';
import type { Mm, Rad } from '../geometry/units.ts';
import { cornerAngle, roundingOfAngle } from '../track/arms.ts';
import type { TrackNode } from '../track/track.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, pointPlace } from './findings.ts';
import { cornerCutAcross } from './mend-corner.ts';

/** A corner's inner angle is wide enough that the robot turns and takes it for no junction. */
export const corner: Rule = {
  id: 'R-corner',
  check: (view) =>
    view.track.nodes
      .filter((node) => node.kind === 'corner' && hasOwnLine(view, node))
      .flatMap((node) => checkCorner(view, node)),
};

const hasOwnLine = ({ track }: RuleView, node: TrackNode): boolean =>
  node.arms.some((arm) => !track.lines[track.edges[arm.edge]!.line]!.line.given);

function checkCorner(view: RuleView, node: TrackNode): Draft[] {
  const { untidyBelow, mayStopBelow } = view.kit.rules.corner;
  const angle = cornerAngle(node);
  const slack = roundingOfAngle(view.track, node.arms);
  if (angle >= untidyBelow - slack) return [];
  const finding = findingAt('R-corner', pointPlace(node.at), {
    severity: angle < mayStopBelow - slack ? 'may-stop' : 'untidy',
    measured: degrees(angle),
    allowed: degrees(untidyBelow),
    unit: 'degrees',
    remedy: 'blunt-corner',
  });
  const mends = () => BLUNT_SPANS.flatMap((span) => cornerCutAcross(view, node, legFor(view, angle, span)));
  return [{ finding, mends }];
}

/**
 * How far apart the two blunt corners are to stand, in clearances: with room to spare, or, where that
 * makes other trouble, just far enough that each is taken for a corner of its own.
 */
const BLUNT_SPANS = [1.2, 1.1] as const;

/** So much of each leg goes. */
const legFor = (view: RuleView, angle: Rad, span: number): Mm =>
  (span * view.kit.rules.clearance) / (2 * sin(angle / 2));
