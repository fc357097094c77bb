import { degrees } from '../geometry/exact-math.ts';
import type { Rad } from '../geometry/units.ts';
import { angleBetween, roundingOfAngle } from '../track/arms.ts';
import type { Arm, TrackNode } from '../track/track.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, pointPlace } from './findings.ts';
import { squaredBranch } from './mend-junction.ts';

/** The arms of a junction leave it far enough apart to be told apart. The narrowest two of a junction count. */
export const junctionAngle: Rule = {
  id: 'R-junction-angle',
  check: (view) =>
    view.track.nodes.filter((node) => node.kind === 'junction').flatMap((node) => checkNode(view, node)),
};

interface Pair {
  readonly arms: readonly [Arm, Arm];
  readonly angle: Rad;
}

const isGiven = ({ track }: RuleView, arm: Arm): boolean =>
  track.lines[track.edges[arm.edge]!.line]!.line.given;

/** Two arms of given lines are as the sheet has them. */
function narrowest(view: RuleView, { arms }: TrackNode): Pair | undefined {
  let least: Pair | undefined;
  arms.forEach((one, i) => {
    for (const two of arms.slice(i + 1)) {
      const angle = angleBetween(one, two);
      const given = isGiven(view, one) && isGiven(view, two);
      if (!given && (!least || angle < least.angle)) least = { arms: [one, two], angle };
    }
  });
  return least;
}

function checkNode(view: RuleView, node: TrackNode): Draft[] {
  const { corner, junction } = view.kit.rules;
  const pair = narrowest(view, node);
  const slack = pair ? roundingOfAngle(view.track, pair.arms) : 0;
  if (!pair || pair.angle >= junction.armsApart - slack) return [];
  const finding = findingAt('R-junction-angle', pointPlace(node.at), {
    // Two arms as narrow as a corner that looks like a junction are one wide line to the sensors.
    severity: pair.angle < corner.mayStopBelow - slack ? 'may-stop' : 'untidy',
    measured: degrees(pair.angle),
    allowed: degrees(junction.armsApart),
    unit: 'degrees',
    remedy: 'square-junction',
  });
  return [{ finding, mends: () => squaredBranch(view, node) }];
}
