import type { Drawing } from '../../shared/documents/design.ts';
import { type Kit, USUAL_TOLERANCES } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import { cos, radians, sin } from '../../shared/geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { noteCertain } from '../../shared/run/certain.ts';
import { launch } from '../../shared/run/launch.ts';
import { machineOf } from '../../shared/run/machine.ts';
import { TOLERANCES } from '../../shared/run/model.ts';
import { normal, sfc32 } from '../../shared/run/random.ts';
import { MODE, OPTICS, type RobotState } from '../../shared/run/robot.ts';
import { step } from '../../shared/run/step.ts';
import { type Ambient, SAME_LIGHT, UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';

/** One set-up of a sweep, driven by many slightly different robots in calm weather. */
export interface SetUp {
  readonly drawing: Drawing;
  /** Where the bar starts, and the heading in degrees. */
  readonly start: PaperPoint & { readonly heading: number };
  readonly kit: Kit;
  readonly pace: 'creep' | 'steady' | 'fast';
  /** Speed at the start as a share of the pace. */
  readonly rolling: number;
  /** What came of it so far; undefined while the robot goes on. Asked every 10 steps. */
  readonly outcome: (seen: Seen) => string | undefined;
  readonly seconds: number;
  readonly ambient: Ambient;
  /** mm after a junction in which further ones are ignored. */
  readonly pause: Mm;
  /** What the tolerances of hand-drawn ink are multiplied by. */
  readonly ink: number;
  /** One standard deviation of calibration, as a share of the white level. */
  readonly calibration: number;
}

/** What a set-up may judge by. */
export interface Seen {
  readonly robot: RobotState;
  readonly junctions: number;
  readonly words: readonly string[];
}

export const SWEEP_PACES = ['creep', 'steady', 'fast'] as const;

/** The demo robot, with a reader that allows equal neighbours. */
export const SWEEP_KIT: Kit = {
  ...DEMO_KIT,
  equalNeighbours: true,
  chart: [],
  robot: { ...DEMO_KIT.robot, unmarkedJunction: 'any' },
};

export const SET_UP = {
  kit: SWEEP_KIT,
  rolling: 0.8,
  ambient: SAME_LIGHT,
  /** The table of the model's description was made without the pause that the model now has. */
  pause: 0,
  ink: 0,
  calibration: USUAL_TOLERANCES.calibration,
} as const;

const SHEET = { w: 297, h: 260 };

/** How often each outcome came of `runs` robots, seeds from `seed` on. */
export function outcomes(setUp: SetUp, runs: number, seed: number): Map<string, number> {
  const kit: Kit = { ...setUp.kit, robot: { ...setUp.kit.robot, startPace: setUp.pace } };
  const sheet = sheetFor(setUp, kit.robot.barAhead);
  const world = worldOf(layOut(sheet, setUp.drawing), sheet, kit);
  const machine = { ...machineOf(kit), pause: setUp.pause };
  const counts = new Map<string, number>();
  for (let i = 0; i < runs; i++) {
    const robot = launch(machine, sheet, sheet.start, {
      ...UNDISTURBED,
      seed: seed + i,
      disturbance: 1,
      ambient: setUp.ambient,
      ink: setUp.ink,
    });
    if (setUp.calibration > USUAL_TOLERANCES.calibration) {
      miscalibrate(robot, setUp.calibration, seed + i);
      noteCertain(robot, machine);
    }
    robot.speed = setUp.rolling * kit.robot.paces[setUp.pace];
    const found = outcomeOf(setUp, robot, () => step(robot, machine, world.field));
    counts.set(found, (counts.get(found) ?? 0) + 1);
  }
  return counts;
}

/** Adds to the robot's own error of calibration, drawn from a die of its own, until both make up `share`. */
function miscalibrate({ optics }: RobotState, share: number, seed: number): void {
  const die = sfc32(~seed);
  const { calibration } = USUAL_TOLERANCES;
  const { calibrationOfBlack } = TOLERANCES;
  const more = Math.sqrt(share * share - calibration * calibration);
  for (let o = 0; o < optics.length; o += OPTICS) {
    const black = optics[o + 2]! - 1 / optics[o + 3]! + more * calibrationOfBlack * normal(die);
    const white = optics[o + 2]! * (1 + more * normal(die));
    optics[o + 2] = white;
    optics[o + 3] = 1 / (white - black);
  }
}

function outcomeOf(setUp: SetUp, robot: RobotState, oneStep: () => void): string {
  const steps = setUp.seconds * 500;
  while (robot.stepCount < steps) {
    for (let i = 0; i < 10; i++) oneStep();
    const found = setUp.outcome({
      robot,
      junctions: robot.notes.filter((note) => note.kind === 'junction').length,
      words: robot.notes.flatMap((note) => (note.kind === 'read' ? [note.word] : [])),
    });
    if (found) return found;
    if (robot.mode === MODE.stopped) return 'lost';
  }
  return 'time-up';
}

function sheetFor(setUp: SetUp, barAhead: Mm): Sheet {
  const heading = radians(setUp.start.heading);
  const at = { x: setUp.start.x - barAhead * cos(heading), y: setUp.start.y - barAhead * sin(heading) };
  return {
    ...SHEET,
    start: { name: { en: 'start' }, at, heading, r: 10 },
    gates: [],
    areas: [],
    keepOut: [],
    given: { lines: [], marks: [] },
  };
}

/** Whether the axle's middle is within `reach` of a place, heading within 60 degrees of `heading` (in degrees). */
export function passes(robot: RobotState, place: PaperPoint, heading: number, reach: Mm = 9): boolean {
  const dx = robot.x - place.x;
  const dy = robot.y - place.y;
  const along = robot.cos * cos(radians(heading)) + robot.sin * sin(radians(heading));
  return dx * dx + dy * dy < reach * reach && along > 0.5;
}
