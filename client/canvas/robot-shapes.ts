import type { Robot } from '../../shared/documents/kit.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { COLOUR } from './colours.ts';

export interface RobotLook {
  /** The plate; a second robot on the sheet gets another one. */
  readonly plate?: string;
  /** A robot that only shows where one would stand. */
  readonly faint?: boolean;
}

/** One path in mm from the middle of the axle, heading to the right, filled and stroked. */
export interface RobotShape {
  readonly d: string;
  readonly fill?: string;
  readonly stroke?: string;
  readonly width?: Mm;
}

/** The colours of one robot. */
interface Paints {
  readonly ink: string;
  readonly bar: string;
  readonly plate: string;
}
const FAINT: Paints = { ink: '#cfc8b9', bar: '#c3cde0', plate: COLOUR.sheet };

const WHEEL = { length: 12, width: 4.6 } as const;

/** An open chassis from above: two wheels outside, a castor, an arm with the bar of five sensors. */
export function robotShapes(robot: Robot, look: RobotLook = {}): RobotShape[] {
  const solid: Paints = { ink: COLOUR.ink, bar: COLOUR.accent, plate: look.plate ?? COLOUR.paper };
  const paints = look.faint ? FAINT : solid;
  return [hoop(robot, paints), ...wheels(robot, paints), ...plate(robot, paints), ...bar(robot, paints)];
}

/** A thin hoop round the nose, so that the outline can be seen and the line stays in view. */
function hoop(robot: Robot, { ink }: Paints): RobotShape {
  const nose = robot.length - robot.axleToRear;
  const half = robot.sensorPitch * 2 + 2.2;
  const d = `M2 ${-half}H${robot.barAhead}Q${nose} ${-half} ${nose} 0Q${nose} ${half} ${robot.barAhead} ${half}H2`;
  return { d, stroke: ink, width: 0.9 };
}

function wheels(robot: Robot, { ink }: Paints): RobotShape[] {
  const middle = robot.width / 2 - WHEEL.width / 2;
  const both = [-middle, middle].map((y) =>
    rounded(-WHEEL.length / 2, y - WHEEL.width / 2, WHEEL.length, WHEEL.width, 1.6),
  );
  const axle = `M0 ${-robot.width / 2 + WHEEL.width}V${robot.width / 2 - WHEEL.width}`;
  return [
    { d: both.join(''), fill: ink },
    { d: axle, stroke: ink, width: 2 },
  ];
}

function plate(robot: Robot, { ink, plate: fill }: Paints): RobotShape[] {
  const rear = -robot.axleToRear + 0.6;
  const half = robot.width / 2 - WHEEL.width - 1.2;
  const d =
    `M${rear + 2} ${-half}H3L5.5 ${-half * 0.5}V${half * 0.5}L3 ${half}H${rear + 2}` +
    `Q${rear} ${half} ${rear} ${half - 2}V${-half + 2}Q${rear} ${-half} ${rear + 2} ${-half}`;
  return [
    { d, fill, stroke: ink, width: 1.1 },
    { d: disc(rear + 4.2, 0, 1.9), fill: COLOUR.sheet, stroke: ink, width: 1.1 },
  ];
}

function bar(robot: Robot, { ink, bar: fill }: Paints): RobotShape[] {
  const reach = robot.barAhead;
  const half = robot.sensorPitch * 2 + 2.2;
  const sensors = [-2, -1, 0, 1, 2].map((i) => disc(reach, i * robot.sensorPitch, i === 0 ? 1.25 : 0.95));
  return [
    { d: `M5.5 -2.2H${reach}M5.5 2.2H${reach}`, stroke: ink, width: 0.9 },
    { d: rounded(reach - 1.7, -half, 3.4, 2 * half, 1.7), fill, stroke: ink, width: 0.6 },
    { d: sensors.join(''), fill: COLOUR.sheet },
  ];
}

const disc = (x: Mm, y: Mm, r: Mm): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

function rounded(x: Mm, y: Mm, w: Mm, h: Mm, r: Mm): string {
  const corner = (dx: Mm, dy: Mm) => `a${r} ${r} 0 0 1 ${dx} ${dy}`;
  const [across, down] = [w - 2 * r, h - 2 * r];
  return `M${x + r} ${y}h${across}${corner(r, r)}v${down}${corner(-r, r)}h${-across}${corner(-r, -r)}v${-down}${corner(r, -r)}Z`;
}
