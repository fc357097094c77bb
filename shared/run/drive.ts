import type { Trace } from '../documents/trace.ts';
import { journeyOf, launch } from './launch.ts';
import { machineOf } from './machine.ts';
import { closeRecord, isOver, sample, startRecord } from './recorder.ts';
import { step } from './step.ts';
import { watch } from './watch.ts';
import type { DriveOptions, World } from './world.ts';

/**
 * One run of one robot, from its berth to its end. A run from the start berth is to reach the finish
 * berth and the other way round. The same world and options give the same trace, bit for bit.
 * Refuses a start from a finish berth that the sheet lacks.
 */
export function drive(world: World, options: DriveOptions): Trace {
  const machine = machineOf(world.kit);
  const journey = journeyOf(world.sheet, options.start);
  const robot = launch(machine, world.sheet, journey.from, options);
  const recorder = startRecord(world, options, journey, robot);
  sample(recorder, robot);
  while (!isOver(recorder, robot)) {
    recorder.modeBefore = robot.mode;
    step(robot, machine, world.field);
    watch(recorder, robot);
    sample(recorder, robot);
  }
  return closeRecord(recorder, robot);
}
