import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { type Drivetrain, drivetrain } from '../../shared/run/machine.ts';
import { type Rolling, roll } from '../../shared/run/plant.ts';

/**
 * The plant against published poses. Sources write y up and angles to the left; the sheet has y down,
 * so that y and the angle change sign. Lengths in the sources are m; any unit does.
 */

/** The part of odex that is used here; the package ships its sources, which are not typed as strictly. */
interface OdexSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(
    derivative: (x: number, y: number[]) => number[],
    x: number,
    y: readonly number[],
    xEnd: number,
  ): { readonly y: number[] };
}
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => OdexSolver };

interface Pose {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}

function standing(pose: Pose): Rolling {
  return {
    x: pose.x,
    y: -pose.y,
    cos: Math.cos(pose.angle),
    sin: -Math.sin(pose.angle),
    speedLeft: 0,
    speedRight: 0,
    commandLeft: 0,
    commandRight: 0,
    scaleLeft: 1,
    scaleRight: 1,
    odometer: 0,
    turned: 0,
  };
}

const poseOf = (r: Rolling): Pose => ({ x: r.x, y: -r.y, angle: Math.atan2(-r.sin, r.cos) });

const STEP = 0.002;

function driveFor(r: Rolling, d: Drivetrain, left: number, right: number, seconds: number): Rolling {
  r.commandLeft = left;
  r.commandRight = right;
  for (let i = 0; i < Math.round(seconds / STEP); i++) roll(r, d);
  return r;
}

function expectPose(r: Rolling, pose: Pose, digits: number): void {
  const found = poseOf(r);
  expect(found.x).toBeCloseTo(pose.x, digits);
  expect(found.y).toBeCloseTo(pose.y, digits);
  expect(found.angle).toBeCloseTo(pose.angle, digits);
}

describe('roll', () => {
  // Source: University of Freiburg, Introduction to Mobile Robotics, sheet 3, exercise 2, as solved and
  // printed in github.com/Jingogo/Solutions_Introdcution_to_Mobile_Robotics; wheels 0.5 m apart.
  it('drives the Freiburg sequence of three commands', () => {
    const d = drivetrain(STEP, 0, 0.5);
    const r = standing({ x: 1.5, y: 2.0, angle: Math.PI / 2 });
    driveFor(r, d, 0.3, 0.3, 3);
    expectPose(r, { x: 1.5, y: 2.9, angle: Math.PI / 2 }, 9);
    driveFor(r, d, 0.1, -0.1, 1);
    expectPose(r, { x: 1.5, y: 2.9, angle: 1.1707963 }, 7);
    driveFor(r, d, 0.2, 0, 2);
    expectPose(r, { x: 1.6396758098815527, y: 3.035655185914644, angle: 0.3707963267948966 }, 9);
  });

  // Source: velocity model of Thrun, Burgard and Fox, Probabilistic Robotics, chapter 5 (formula from
  // memory): x' = x − (v/ω) sin θ + (v/ω) sin(θ + ωt), y' = y + (v/ω) cos θ − (v/ω) cos(θ + ωt).
  it.each([
    { from: { x: 0, y: 0, angle: 0 }, v: 1, w: 1, t: Math.PI / 2, to: { x: 1, y: 1, angle: Math.PI / 2 } },
    {
      from: { x: 1, y: 2, angle: Math.PI / 4 },
      v: 0.5,
      w: 0.25,
      t: 2,
      to: { x: 1.504885697596486, y: 2.8511345000876935, angle: 1.2853981633974483 },
    },
  ])('turns as the velocity model says, v $v, ω $w', ({ from, v, w, t, to }) => {
    const track = 0.5;
    const steps = 1000;
    const d = drivetrain(t / steps, 0, track);
    const r = standing(from);
    r.commandLeft = v - (w * track) / 2;
    r.commandRight = v + (w * track) / 2;
    for (let i = 0; i < steps; i++) roll(r, d);
    expectPose(r, to, 9);
  });

  // Source: the same sheet, exercise 1: from (1, 2, π/2) to (1.5, 2, π/2) two commands are enough, over π/4 m.
  it('comes half a metre to the side by a half circle and a turn on the spot', () => {
    const r = standing({ x: 1, y: 2, angle: Math.PI / 2 });
    const steps = 2000;
    const d = drivetrain(Math.PI / steps, 0, 0.5);
    r.commandLeft = 0.5;
    for (let i = 0; i < steps; i++) roll(r, d);
    expectPose(r, { x: 1.5, y: 2, angle: -Math.PI / 2 }, 6);
    expect(r.odometer).toBeCloseTo(Math.PI / 4, 9);
    r.commandLeft = -0.25;
    r.commandRight = 0.25;
    for (let i = 0; i < steps; i++) roll(r, d);
    expectPose(r, { x: 1.5, y: 2, angle: Math.PI / 2 }, 6);
  });

  // Source: odex 2.0.4, Hairer and Wanner's extrapolation integrator, on the same equations.
  it.each([
    { left: 40, right: 40 },
    { left: 20, right: 44 },
    { left: -43.2, right: 43.2 },
    { left: 80, right: 55 },
  ])('follows lagging motors as an integrator does, commands $left and $right mm/s', ({ left, right }) => {
    const [lag, track, seconds] = [0.04, 24, 3];
    const r = driveFor(
      standing({ x: 50, y: 60, angle: 0.3 }),
      drivetrain(STEP, lag, track),
      left,
      right,
      seconds,
    );
    const solver = new Solver(5);
    solver.absoluteTolerance = 1e-11;
    solver.relativeTolerance = 1e-11;
    const { y } = solver.solve(
      (_, [, , angle, l, rr]) => {
        const speed = (l! + rr!) / 2;
        return [
          speed * Math.cos(angle!),
          speed * Math.sin(angle!),
          (rr! - l!) / track,
          (left - l!) / lag,
          (right - rr!) / lag,
        ];
      },
      0,
      [50, 60, 0.3, 0, 0],
      seconds,
    );
    const found = poseOf(r);
    expect(found.x).toBeCloseTo(y[0]!, 3);
    expect(found.y).toBeCloseTo(y[1]!, 3);
    expect(Math.cos(found.angle - y[2]!)).toBeCloseTo(1, 9);
    expect(r.speedLeft).toBeCloseTo(y[3]!, 6);
    expect(r.speedRight).toBeCloseTo(y[4]!, 6);
  });
});
