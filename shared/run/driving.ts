import type { Trace } from '../documents/trace.ts';
import { journeyOf, launch } from './launch.ts';
import { type Machine, machineOf } from './machine.ts';
import { closeRecord, isOver, measureWay, type Recorder, startRecord } from './recorder.ts';
import { newRobot, type RobotState } from './robot.ts';
import { step } from './step.ts';
import { watch } from './watch.ts';
import type { DriveOptions, World } from './world.ts';

/**
 * A run under way, for those who ask what happens and not what it looks like: the same steps and events as
 * `drive`, without samples, clearances and fingerprint.
 */
export interface Driving {
  readonly machine: Machine;
  readonly robot: RobotState;
  /** Its events tell what has happened so far. */
  readonly recorder: Recorder;
}

/** At 80 mm/s the way is measured every 3 mm: often enough to know on which line the robot is. */
const STEPS_A_LOOK = 20;

/** Puts a robot into its berth. Refuses a start from a finish berth that the sheet lacks. */
export function setOff(world: World, options: DriveOptions): Driving {
  const machine = machineOf(world.kit);
  const journey = journeyOf(world.sheet, options.start);
  const robot = launch(machine, world.sheet, journey.from, options);
  const recorder = startRecord(world, options, journey, robot);
  measureWay(recorder, robot);
  return { machine, robot, recorder };
}

/** Drives one step; false where the run is over. */
export function goOn({ machine, robot, recorder }: Driving): boolean {
  if (isOver(recorder, robot)) return false;
  recorder.modeBefore = robot.mode;
  step(robot, machine, recorder.world.field);
  watch(recorder, robot);
  if (robot.stepCount % STEPS_A_LOOK === 0) measureWay(recorder, robot);
  return true;
}

/**
 * A run like this one that goes on by itself, with other choices for the junctions to come. It is made as a
 * new robot is, so that engines see one shape of object only and keep the step fast.
 */
export function branched({ machine, robot, recorder }: Driving, choices: readonly number[]): Driving {
  const twin = newRobot({ choices, die: undefined, sheetMiddle: robot.sheetMiddle, pace: robot.pace });
  Object.assign(twin, robot, {
    choices,
    choicesMade: 0,
    die: robot.die && { ...robot.die },
    queue: [...robot.queue],
    bands: robot.bands.slice(),
    notes: [...robot.notes],
  });
  const { world, options, journey } = recorder;
  const record = startRecord(world, options, journey, twin);
  Object.assign(record, recorder, {
    meter: { ...recorder.meter },
    events: [...recorder.events],
    readings: [...recorder.readings],
    gateSides: recorder.gateSides.slice(),
  });
  return { machine, robot: twin, recorder: record };
}

/** What a run did, and where. */
export type LightTrace = Pick<Trace, 'start' | 'seed' | 'ending' | 'events'>;

/** A whole run, without what only pictures and margins need. */
export function driveLightly(world: World, options: DriveOptions): LightTrace {
  const driving = setOff(world, options);
  while (goOn(driving));
  return closeRecord(driving.recorder, driving.robot);
}
