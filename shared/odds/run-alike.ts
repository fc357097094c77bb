import { distance } from '../geometry/exact-math.ts';
import type { Driving } from '../run/driving.ts';
import { STEP } from '../run/model.ts';
import { MODE, type QueuedAction, type RobotState } from '../run/robot.ts';

/** mm, mm/s and s within which two robots are in one situation. */
const ALIKE = { place: 4, speed: 5, due: 0.1 } as const;

/** Whether two runs stand in one situation: what follows is the same, but for when. */
export function areAlike(a: Driving, b: Driving): boolean {
  const [r, s] = [a.robot, b.robot];
  return (
    distance(r, s) <= ALIKE.place &&
    sameHeading(r, s) &&
    sameMind(r, s) &&
    Math.abs(r.speed - s.speed) <= ALIKE.speed &&
    a.recorder.finishCounts === b.recorder.finishCounts &&
    a.recorder.arrived === b.recorder.arrived
  );
}

const sameHeading = (r: RobotState, s: RobotState): boolean => r.cos * s.cos + r.sin * s.sin > 0.95;

function sameMind(r: RobotState, s: RobotState): boolean {
  if (r.pace !== s.pace || r.pending !== s.pending || r.queue.length !== s.queue.length) return false;
  return r.queue.every((one, i) => sameWish(one, r.stepCount, s.queue[i]!, s.stepCount));
}

const sameWish = (a: QueuedAction, now: number, b: QueuedAction, then: number): boolean =>
  JSON.stringify(a.action) === JSON.stringify(b.action) &&
  Math.abs(a.dueStep - now - (b.dueStep - then)) * STEP <= ALIKE.due;

/** A pose to come back to (Brent's way of finding a ring: the pose is taken anew after twice as long). */
export interface Round {
  x: number;
  y: number;
  cos: number;
  sin: number;
  pace: number;
  pending: RobotState['pending'];
  takenAt: number;
  wait: number;
  left: boolean;
}

export const newRound = (robot: RobotState): Round => ({
  x: robot.x,
  y: robot.y,
  cos: robot.cos,
  sin: robot.sin,
  pace: -1,
  pending: undefined,
  takenAt: robot.stepCount,
  wait: 64,
  left: false,
});

/** mm: what counts as away from a pose, and as back. */
const AWAY = 6;
const BACK = 1.5;

/** Whether an undisturbed robot with nothing in its queue is back where it was: then it will be so for ever. */
export function isRound(round: Round, robot: RobotState): boolean {
  if (robot.mode !== MODE.follow || robot.queue.length > 0) return false;
  if (robot.stepCount - round.takenAt >= round.wait) {
    Object.assign(round, {
      ...newRound(robot),
      pace: robot.pace,
      pending: robot.pending,
      wait: 2 * round.wait,
    });
    return false;
  }
  const dx = robot.x - round.x;
  const dy = robot.y - round.y;
  const square = dx * dx + dy * dy;
  if (square > AWAY * AWAY) round.left = true;
  if (!round.left || square > BACK * BACK) return false;
  return (
    robot.cos * round.cos + robot.sin * round.sin > 0.98 &&
    robot.pace === round.pace &&
    robot.pending === round.pending
  );
}
