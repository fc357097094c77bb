import RAPIER from '@dimforge/rapier2d-compat';
import { Box, Vec2, World } from 'planck';
import type { InkField } from '../../shared/run/ink-field.ts';
import type { Machine } from '../../shared/run/machine.ts';
import { MODEL, STEP } from '../../shared/run/model.ts';
import type { RobotState } from '../../shared/run/robot.ts';
import { step } from '../../shared/run/step.ts';

/** mm of one engine unit. */
const UNIT = 10;

/**
 * The same robot on two general-purpose physics engines, in its cheapest form: one rigid body seen from
 * above, pushed at its two wheels towards their commanded speeds and kept from sliding sideways. Sensors
 * and controller are the project's own step, whose pose is then overwritten by the engine's. One engine
 * unit is a cm. Each function returns what drives the robot one step further.
 */
export type PhysicsRobot = (robot: RobotState, machine: Machine, field: InkField) => () => void;

/** Share of a wheel's miss that its push takes away in a step. */
const PUSH = STEP / (2 * MODEL.motorLag);

export const planckRobot: PhysicsRobot = (robot, machine, field) => {
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
    body.applyLinearImpulse(Vec2.mul(mass * miss * PUSH, ahead), wheel, true);
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
};

/** Loads the second engine's WebAssembly. Call before the first `rapierRobot`. */
export const readyRapier = (): Promise<void> => RAPIER.init();

/** Body without a shape, and all pushes of a step added up before they cross into WebAssembly. */
export const rapierRobot: PhysicsRobot = (robot, machine, field) => {
  const world = new RAPIER.World({ x: 0, y: 0 });
  world.timestep = STEP;
  const half = machine.halfTrack / UNIT;
  const body = world.createRigidBody(
    RAPIER.RigidBodyDesc.dynamic()
      .setTranslation(robot.x / UNIT, robot.y / UNIT)
      .setRotation(Math.atan2(robot.sin, robot.cos))
      .setAdditionalMassProperties(1, { x: 0, y: 0 }, half * half)
      .setCanSleep(false),
  );
  const velocity = { x: 0, y: 0 };
  const position = { x: 0, y: 0 };
  const impulse = { x: 0, y: 0 };
  return () => {
    const { commandLeft, commandRight, cos, sin } = robot;
    step(robot, machine, field);
    body.linvel(velocity);
    const along = velocity.x * cos + velocity.y * sin;
    const aside = velocity.y * cos - velocity.x * sin;
    const spin = body.angvel() * half;
    const left = (commandLeft / UNIT - (along + spin)) * PUSH;
    const right = (commandRight / UNIT - (along - spin)) * PUSH;
    impulse.x = (left + right) * cos + aside * sin;
    impulse.y = (left + right) * sin - aside * cos;
    body.applyImpulse(impulse, true);
    body.applyTorqueImpulse((left - right) * half, true);
    world.step();
    body.translation(position);
    const heading = body.rotation();
    robot.x = position.x * UNIT;
    robot.y = position.y * UNIT;
    robot.cos = Math.cos(heading);
    robot.sin = Math.sin(heading);
  };
};
