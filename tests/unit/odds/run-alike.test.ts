import { describe, expect, it } from 'vitest';
import type { Action } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { areAlike, isRound, newRound } from '../../../shared/odds/run-alike.ts';
import { type Driving, setOff } from '../../../shared/run/driving.ts';
import { MODE, type RobotState } from '../../../shared/run/robot.ts';
import { SAME_LIGHT, UNDISTURBED, worldOf } from '../../../shared/run/world.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { FORK } from './tracks.ts';

/** A robot at (100, 100) on its way to the lower right: 0.6 across and 0.8 down. */
const POSE = { x: 100, y: 100, cos: 0.6, sin: 0.8, pace: 1, speed: 40, stepCount: 1000, mode: MODE.follow };

const world = worldOf(layOut(FORK.sheet, FORK.drawing), FORK.sheet, DEMO_KIT);

function driving(change: Partial<RobotState> = {}, recorded: Partial<Driving['recorder']> = {}): Driving {
  const run = setOff(world, { ...UNDISTURBED, start: 'start', ambient: SAME_LIGHT, limit: 60 });
  Object.assign(run.robot, POSE, change);
  Object.assign(run.recorder, recorded);
  return run;
}
const towards = (degrees: number) => ({
  cos: Math.cos((degrees * Math.PI) / 180),
  sin: Math.sin((degrees * Math.PI) / 180),
});

describe('areAlike', () => {
  const alike = (change: Partial<RobotState>, than: Partial<RobotState> = {}) =>
    areAlike(driving(than), driving(change));

  it('within 4 mm and 5 mm/s, at any time', () => {
    expect([alike({}), alike({ x: 103.9 }), alike({ y: 96.1 }), alike({ stepCount: 7000 })]).toEqual(
      Array(4).fill(true),
    );
    expect([alike({ x: 104.1 }), alike({ y: 95.9 }), alike({ x: 103, y: 103 })]).toEqual(
      Array(3).fill(false),
    );
    expect([45.1, 44.9, 35.1, 34.9].map((speed) => alike({ speed }))).toEqual([false, true, true, false]);
  });

  it('in one direction, within some 18 degrees', () => {
    for (const at of [0, 60, 90, 200]) {
      expect(alike(towards(at + 18), towards(at))).toBe(true);
      expect(alike(towards(at + 19), towards(at))).toBe(false);
      expect(alike(towards(at + 180), towards(at))).toBe(false);
    }
  });

  it('with the same pace and choice in mind', () => {
    expect(alike({ pace: 2 })).toBe(false);
    expect(alike({ pending: 'left' })).toBe(false);
    expect(alike({ pending: 'left', pace: 2 })).toBe(false);
    expect(alike({ pending: 'left' }, { pending: 'right' })).toBe(false);
    expect(alike({ pending: 'left' }, { pending: 'left' })).toBe(true);
  });

  it('with the same waiting for the same time, to a tenth of a second', () => {
    // A step is 2 ms; the one has driven for 1,000 steps, the other for 3,000.
    const waiting = (dueStep: number, action: Action = { kind: 'park' }) => ({
      queue: [{ dueStep, action, reading: 0 }],
    });
    const than = waiting(1200);
    const later = (dueStep: number, action?: Action) => ({ ...waiting(dueStep, action), stepCount: 3000 });
    expect(alike(later(3200), than)).toBe(true);
    expect([3251, 3249, 3151, 3149].map((due) => alike(later(due), than))).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect(alike(later(3200, { kind: 'turn-back' }), than)).toBe(false);
    expect(alike({}, than)).toBe(false);
    expect(alike(than, {})).toBe(false);
    const two = { queue: [...waiting(1200).queue, ...waiting(1300, { kind: 'wait', time: 2 }).queue] };
    const other = { queue: [...waiting(1200).queue, ...waiting(1300, { kind: 'wait', time: 3 }).queue] };
    expect([alike(two, two), alike(two, other)]).toEqual([true, false]);
  });

  it('as far from having arrived', () => {
    const [plain, left, arrived] = [
      driving({}, { finishCounts: false, arrived: false }),
      driving({}, { finishCounts: true, arrived: false }),
      driving({}, { finishCounts: true, arrived: true }),
    ];
    expect(areAlike(left, driving({}, { finishCounts: true, arrived: false }))).toBe(true);
    expect([areAlike(plain, left), areAlike(left, arrived)]).toEqual([false, false]);
  });
});

describe('isRound', () => {
  /** Whether a robot is back that was here 64 steps ago and at a pose since, after as many steps. */
  function comesBack(
    to: Partial<RobotState>,
    away: Partial<RobotState> = { x: 107 },
    from: Partial<RobotState> = {},
  ) {
    const { robot } = driving(from);
    const round = newRound(robot);
    const at = (steps: number, change: Partial<RobotState>) => {
      Object.assign(robot, POSE, from, change, { stepCount: 1000 + steps });
      return isRound(round, robot);
    };
    expect([at(63, {}), at(64, {}), at(70, away)]).toEqual([false, false, false]);
    return at(90, to);
  }

  it('where the robot was away from its pose by more than 6 mm and comes back within 1.5', () => {
    expect(comesBack({})).toBe(true);
    expect([comesBack({ x: 101.4 }), comesBack({ y: 98.6 })]).toEqual([true, true]);
    expect([comesBack({ x: 101.6 }), comesBack({ y: 98.4 }), comesBack({ x: 101.2, y: 101.2 })]).toEqual(
      Array(3).fill(false),
    );
    expect([
      comesBack({}, { x: 106.1 }),
      comesBack({}, { y: 93.9 }),
      comesBack({}, { x: 95, y: 95 }),
    ]).toEqual(Array(3).fill(true));
    expect([comesBack({}, { x: 105.9 }), comesBack({}, { y: 94.1 })]).toEqual([false, false]);
  });

  it('in the same direction, at the same pace, with the same choice in mind', () => {
    for (const at of [0, 60, 90, 200]) {
      const from = towards(at);
      expect(comesBack(towards(at + 11), { x: 107 }, from)).toBe(true);
      expect(comesBack(towards(at + 12), { x: 107 }, from)).toBe(false);
      expect(comesBack(towards(at + 180), { x: 107 }, from)).toBe(false);
    }
    expect([comesBack({ pace: 2 }), comesBack({ pending: 'left' })]).toEqual([false, false]);
    const chosen = { pending: 'left', pace: 3 } as const;
    expect(comesBack(chosen, { x: 107 }, chosen)).toBe(true);
    expect(comesBack({ ...chosen, pace: 1 }, { x: 107 }, chosen)).toBe(false);
    expect(comesBack({ ...chosen, pending: undefined }, { x: 107 }, chosen)).toBe(false);
  });

  it('only while it follows its line, with nothing that waits', () => {
    expect(comesBack({ mode: MODE.creep })).toBe(false);
    expect(comesBack({ queue: [{ dueStep: 5000, action: { kind: 'park' }, reading: 0 }] })).toBe(false);
  });

  it('looks for the pose it has taken last, each twice as long as the one before', () => {
    const { robot } = driving();
    const round = newRound(robot);
    const at = (steps: number, x: number) => {
      Object.assign(robot, { x, stepCount: 1000 + steps });
      return isRound(round, robot);
    };
    // Before the first pose is taken, the berth itself is none to come back to.
    expect([at(20, 120), at(40, 100)]).toEqual([false, false]);
    // Taken after 64 steps, then after 128 more: from there on 200 counts, and 300 does no longer.
    expect([at(64, 300), at(100, 400), at(192, 200), at(200, 300), at(240, 200)]).toEqual([
      false,
      false,
      false,
      false,
      true,
    ]);
    // And after 256 more.
    expect([at(447, 500), at(448, 500), at(460, 200), at(470, 500)]).toEqual([false, false, false, true]);
  });
});
