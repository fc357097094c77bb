import { pointAt } from '../geometry/path.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import { type Arm, type TrackNode, twin } from '../track/track.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, pointPlace } from './findings.ts';
import { withoutStub } from './mend-junction.ts';

/**
 * From a junction it is far enough to the next junction, corner or loose end. A short way between two
 * junctions is said once.
 */
export const junctionArms: Rule = { id: 'R-junction-arms', check };

interface Reach {
  readonly arm: Arm;
  readonly length: Mm;
  readonly to: TrackNode;
  /** The directed edge that comes in at `to`. */
  readonly last: number;
}

function check(view: RuleView): Draft[] {
  const said = new Set<number>();
  return view.track.nodes
    .filter((node) => node.kind === 'junction')
    .flatMap((node) =>
      node.arms.flatMap((arm) => {
        const reach = reachOf(view, arm);
        if (!reach || said.has(arm.edge) || !isOwn(view, node, reach)) return [];
        said.add(twin(reach.last));
        return [draftOf(view, node, reach)];
      }),
    );
}

/** How far it is along an arm, over joints; undefined where that is enough. */
function reachOf({ track, kit }: RuleView, arm: Arm): Reach | undefined {
  const allowed = kit.rules.junction.armLength - TOLERANCE.step;
  let last = arm.edge;
  let { length } = track.edges[last]!;
  while (length < allowed) {
    const to = track.nodes[track.edges[last]!.to]!;
    const back = twin(last);
    const on = to.kind === 'joint' ? to.arms.find((other) => other.edge !== back) : undefined;
    if (!on) return { arm, length, to, last };
    last = on.edge;
    length += track.edges[last]!.length;
  }
  return undefined;
}

/** Whether the team drew anything at either end: what lies between given lines is as the sheet has it. */
const isOwn = ({ track }: RuleView, node: TrackNode, { to }: Reach): boolean =>
  [node, to].some(({ arms }) => arms.some((arm) => !track.lines[track.edges[arm.edge]!.line]!.line.given));

function draftOf(view: RuleView, node: TrackNode, { arm, length, to }: Reach): Draft {
  const { track, kit } = view;
  const { line, low, high } = track.edges[arm.edge]!;
  const { path, width } = track.lines[line]!.line;
  const variant = to.kind === 'end' || to.kind === 'corner' ? to.kind : 'junction';
  const finding = findingAt('R-junction-arms', pointPlace(pointAt(path, (low + high) / 2)), {
    variant,
    // Before it looks, a robot goes on until its axle stands on the junction: by then a shorter arm is over.
    severity: length < kit.robot.barAhead + width / 2 ? 'may-stop' : 'untidy',
    ...lengths(length, kit.rules.junction.armLength),
    remedy: variant === 'end' ? 'lengthen-arm' : 'make-room',
  });
  return variant === 'end' ? { finding, mends: () => withoutStub(view, node, to) } : { finding };
}
