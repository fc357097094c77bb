import type { Robot } from '../../shared/documents/kit.ts';
import type { Pose } from '../../shared/picture/replay.ts';
import { COLOUR } from './colours.ts';
import type { Painter } from './painter.ts';

type Context = CanvasRenderingContext2D;

export interface RobotLook {
  /** The plate; a second robot on the sheet gets another one. */
  readonly plate?: string;
  /** A robot that only shows where one would stand. */
  readonly faint?: boolean;
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
export const paintRobot =
  (pose: Pick<Pose, 'at' | 'heading'>, robot: Robot, look: RobotLook = {}): Painter =>
  (ctx) => {
    const { x, y } = pose.heading;
    ctx.transform(x, y, -y, x, pose.at.x, pose.at.y);
    const solid: Paints = { ink: COLOUR.ink, bar: COLOUR.accent, plate: look.plate ?? COLOUR.paper };
    const paints = look.faint ? FAINT : solid;
    ctx.lineJoin = 'round';
    ctx.lineCap = 'round';
    ctx.strokeStyle = paints.ink;
    paintHoop(ctx, robot);
    paintWheels(ctx, robot, paints);
    paintPlate(ctx, robot, paints);
    paintBar(ctx, robot, paints);
  };

/** A thin hoop round the nose, so that the outline can be seen and the line stays in view. */
function paintHoop(ctx: Context, robot: Robot): void {
  const nose = robot.length - robot.axleToRear;
  const half = robot.sensorPitch * 2 + 2.2;
  ctx.beginPath();
  ctx.moveTo(2, -half);
  ctx.lineTo(robot.barAhead, -half);
  ctx.quadraticCurveTo(nose, -half, nose, 0);
  ctx.quadraticCurveTo(nose, half, robot.barAhead, half);
  ctx.lineTo(2, half);
  ctx.lineWidth = 0.9;
  ctx.stroke();
}

function paintWheels(ctx: Context, robot: Robot, { ink }: Paints): void {
  ctx.fillStyle = ink;
  for (const side of [-1, 1]) {
    const middle = side * (robot.width / 2 - WHEEL.width / 2);
    ctx.beginPath();
    traceRounded(ctx, -WHEEL.length / 2, middle - WHEEL.width / 2, WHEEL.length, WHEEL.width, 1.6);
    ctx.fill();
  }
  ctx.beginPath();
  ctx.moveTo(0, -robot.width / 2 + WHEEL.width);
  ctx.lineTo(0, robot.width / 2 - WHEEL.width);
  ctx.lineWidth = 2;
  ctx.stroke();
}

function paintPlate(ctx: Context, robot: Robot, { plate }: Paints): void {
  const rear = -robot.axleToRear + 0.6;
  const half = robot.width / 2 - WHEEL.width - 1.2;
  ctx.beginPath();
  ctx.moveTo(rear + 2, -half);
  ctx.lineTo(3, -half);
  ctx.lineTo(5.5, -half * 0.5);
  ctx.lineTo(5.5, half * 0.5);
  ctx.lineTo(3, half);
  ctx.lineTo(rear + 2, half);
  ctx.quadraticCurveTo(rear, half, rear, half - 2);
  ctx.lineTo(rear, -half + 2);
  ctx.quadraticCurveTo(rear, -half, rear + 2, -half);
  ctx.fillStyle = plate;
  ctx.fill();
  ctx.lineWidth = 1.1;
  ctx.stroke();
  ctx.beginPath();
  ctx.arc(rear + 4.2, 0, 1.9, 0, 2 * Math.PI);
  ctx.fillStyle = COLOUR.sheet;
  ctx.fill();
  ctx.stroke();
}

function paintBar(ctx: Context, robot: Robot, { bar }: Paints): void {
  const reach = robot.barAhead;
  const half = robot.sensorPitch * 2 + 2.2;
  ctx.beginPath();
  for (const side of [-2.2, 2.2]) {
    ctx.moveTo(5.5, side);
    ctx.lineTo(reach, side);
  }
  ctx.lineWidth = 0.9;
  ctx.stroke();
  ctx.beginPath();
  traceRounded(ctx, reach - 1.7, -half, 3.4, 2 * half, 1.7);
  ctx.fillStyle = bar;
  ctx.fill();
  ctx.lineWidth = 0.6;
  ctx.stroke();
  ctx.fillStyle = COLOUR.sheet;
  for (let i = -2; i <= 2; i++) {
    ctx.beginPath();
    ctx.arc(reach, i * robot.sensorPitch, i === 0 ? 1.25 : 0.95, 0, 2 * Math.PI);
    ctx.fill();
  }
}

/** A rectangle with round corners, for browsers whose canvas has none. */
function traceRounded(ctx: Context, x: number, y: number, w: number, h: number, r: number): void {
  ctx.moveTo(x + r, y);
  ctx.arcTo(x + w, y, x + w, y + h, r);
  ctx.arcTo(x + w, y + h, x, y + h, r);
  ctx.arcTo(x, y + h, x, y, r);
  ctx.arcTo(x, y, x + w, y, r);
  ctx.closePath();
}
