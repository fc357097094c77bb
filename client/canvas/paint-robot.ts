import type { Robot } from '../../shared/documents/kit.ts';
import type { Pose } from '../../shared/picture/replay.ts';
import type { Painter } from './painter.ts';
import { type RobotLook, robotShapes } from './robot-shapes.ts';

/** A robot on a canvas, where it stands for as long as the canvas is painted. */
export const paintRobot =
  (pose: Pick<Pose, 'at' | 'heading'>, robot: Robot, look: RobotLook = {}): Painter =>
  (ctx) => {
    const { x, y } = pose.heading;
    ctx.transform(x, y, -y, x, pose.at.x, pose.at.y);
    ctx.lineJoin = 'round';
    ctx.lineCap = 'round';
    for (const { d, fill, stroke, width } of robotShapes(robot, look)) {
      const path = new Path2D(d);
      if (fill) {
        ctx.fillStyle = fill;
        ctx.fill(path);
      }
      if (!stroke) continue;
      ctx.strokeStyle = stroke;
      ctx.lineWidth = width ?? 1;
      ctx.stroke(path);
    }
  };
