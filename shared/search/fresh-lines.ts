import type { Line } from '../documents/design.ts';
import type { Kit } from '../documents/kit.ts';
import { cos, radians, sin } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { ahead, bend, drawLine, type Step, turn } from '../library/pen.ts';
import { rolled, type Sfc32 } from '../run/random.ts';

/** A whole number of millimetres from `least` to `most`, in steps of five. */
export const between = (die: Sfc32, least: Mm, most: Mm): Mm =>
  least + 5 * rolled(die, Math.floor((most - least) / 5) + 1);

export const oneOf = <T>(die: Sfc32, things: readonly T[]): T => things[rolled(die, things.length)]!;

/** Right is 1, left is −1. */
export const aSide = (die: Sfc32): 1 | -1 => (rolled(die, 2) === 0 ? 1 : -1);

/** Where the pen is, and which way it goes, in degrees clockwise from +x. */
export interface Pose extends PaperPoint {
  readonly heading: number;
}

export const onward = ({ x, y, heading }: Pose, way: Mm): Pose => ({
  x: hundredth(x + way * cos(radians(heading))),
  y: hundredth(y + way * sin(radians(heading))),
  heading,
});

export const turned = (pose: Pose, by: number): Pose => ({ ...pose, heading: pose.heading + by });

const hundredth = (value: Mm): Mm => Math.round(value * 100) / 100;

/** Lines as they are laid, one after another; the last one is the one that the robot is to follow. */
export interface Laying {
  readonly lines: Line[];
  readonly width: Mm;
  /** Where the present line begins, and its moves so far. */
  from: Pose;
  steps: Step[];
  pose: Pose;
}

export function startLaying(kit: Kit, from: Pose): Laying {
  return { lines: [], width: kit.rules.lineWidth.nominal, from, steps: [], pose: from };
}

/** Goes straight on. */
export function layAhead(laying: Laying, way: Mm): void {
  laying.steps.push(ahead(way));
  laying.pose = onward(laying.pose, way);
}

/** Turns by a right angle: a corner, or an arc with straights that let the robot settle. */
export function layTurn(laying: Laying, side: 1 | -1, radius: Mm | undefined): void {
  if (radius === undefined) {
    laying.steps.push(turn(90 * side));
    laying.pose = turned(laying.pose, 90 * side);
    return;
  }
  laying.steps.push(bend(90 * side, radius));
  const across = turned(onward(laying.pose, radius), 90 * side);
  laying.pose = onward(across, radius);
}

/** Ends the present line here; the next begins in this place, in a direction of its own. */
export function beginLine(laying: Laying, heading: number): void {
  endLine(laying);
  laying.from = { ...laying.pose, heading };
  laying.pose = laying.from;
  laying.steps = [];
}

export function endLine(laying: Laying): void {
  if (laying.steps.length === 0) return;
  const { lines, from, steps, width } = laying;
  lines.push(lineFrom(`line-${lines.length + 1}`, from, width, steps));
}

/** A line has a place that it begins in, and no heading. */
const lineFrom = (id: string, { x, y, heading }: Pose, width: Mm, steps: readonly Step[]): Line =>
  drawLine({ id, from: { x, y }, heading, width }, steps);

/** A straight line beside the present one. */
function layBeside(laying: Laying, from: Pose, way: Mm): void {
  const { lines, width } = laying;
  const id = `side-${lines.length + 1}`;
  lines.push(lineFrom(id, from, width, [ahead(way)]));
}

/** Between two junctions, or from the berth: a straight, sometimes with a turn before it. */
export function layApproach(laying: Laying, die: Sfc32, straight: Mm): void {
  if (rolled(die, 3) > 0) {
    layAhead(laying, between(die, 45, 70));
    layTurn(laying, aSide(die), oneOf(die, [undefined, 25, 30, 40]));
  }
  layAhead(laying, straight);
}

export type JunctionKind = 'fork' | 'side' | 'crossing';

/** Ends of lines that lead nowhere. */
const deadEnd = (die: Sfc32): Mm => between(die, 45, 60);

/** A junction at the present place: the way leads on by one of its arms, the others end soon. */
export function layJunction(laying: Laying, die: Sfc32, kind: JunctionKind): void {
  const { pose } = laying;
  const side = aSide(die);
  if (kind === 'crossing') {
    const reach = deadEnd(die);
    layBeside(laying, onward(turned(pose, 90), -reach), 2 * reach);
    return;
  }
  if (kind === 'fork') {
    layBeside(laying, turned(pose, -90 * side), deadEnd(die));
    beginLine(laying, pose.heading + 90 * side);
    return;
  }
  if (rolled(die, 2) === 0) {
    layBeside(laying, turned(pose, 90 * side), deadEnd(die));
    return;
  }
  layAhead(laying, deadEnd(die));
  endLine(laying);
  laying.steps = [];
  laying.from = turned(pose, 90 * side);
  laying.pose = laying.from;
}
