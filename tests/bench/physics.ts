import { Box, Vec2, World } from 'planck';
import type { InkField } from '../../shared/run/ink-field.ts';
import type { Machine } from '../../shared/run/machine.ts';
import { MODEL, STEP } from '../../shared/run/model.ts';
import type { RobotState } from '../../shared/run/robot.ts';
import { step } from '../../shared/run/step.ts';

/** mm of one engine unit. */
const UNIT = 10;

/**
 * The same robot on a general-purpose physics engine, in its cheapest form: one rigid body seen from
 * above, pushed at its two wheels towards their commanded speeds and kept from sliding sideways. Sensors
 * and controller are the project's own step, whose pose is then overwritten by the engine's. One engine
 * unit is a cm. Returns what drives the robot one step further.
 */
export function physicsRobot(robot: RobotState, machine: Machine, field: InkField): () => void {
  const world = new World({ gravity: Vec2(0, 0), allowSleep: false });
  const body = world.createDynamicBody({
    position: Vec2(robot.x / UNIT, robot.y / UNIT),
    angle: Math.atan2(robot.sin, robot.cos),
  });
  // Even mass about the axle, with which a push at a wheel moves that wheel alone: gyradius is half the track.
  const half = machine.halfTrack / UNIT;
  body.createFixture(new Box(half, half), { density: 1 });
  const mass = body.getMass();
  body.setMassData({ mass, center: Vec2(0, 0), I: mass * half * half });

  const push = (side: number, command: number): void => {
    const ahead = body.getWorldVector(Vec2(1, 0));
    const wheel = body.getWorldPoint(Vec2(0, side * half));
    const velocity = body.getLinearVelocityFromWorldPoint(wheel);
    const miss = command / UNIT - Vec2.dot(velocity, ahead);
    body.applyLinearImpulse(Vec2.mul((mass * miss * STEP) / (2 * MODEL.motorLag), ahead), wheel, true);
  };

  return () => {
    const { commandLeft, commandRight } = robot;
    step(robot, machine, field);
    push(-1, commandLeft);
    push(1, commandRight);
    const aside = body.getWorldVector(Vec2(0, 1));
    const slide = -mass * Vec2.dot(body.getLinearVelocity(), aside);
    body.applyLinearImpulse(Vec2.mul(slide, aside), body.getWorldCenter(), true);
    world.step(STEP);
    const position = body.getPosition();
    const heading = body.getWorldVector(Vec2(1, 0));
    robot.x = position.x * UNIT;
    robot.y = position.y * UNIT;
    robot.cos = heading.x;
    robot.sin = heading.y;
  };
}
