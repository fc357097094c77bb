import { PACES } from '../documents/kit.ts';
import type { Ending, RunEvent, Trace } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm } from '../geometry/units.ts';
import { type Clearances, newClearances, noteClearances } from './clearances.ts';
import type { Journey } from './launch.ts';
import { RUN_RULES, STEP, STEPS_A_HASH, STEPS_A_SAMPLE } from './model.ts';
import { MODE, type RobotState } from './robot.ts';
import { hashState, hashText, newStateHash, type StateHash } from './state-hash.ts';
import { measure, newWayMeter, type WayMeter } from './way-meter.ts';
import type { DriveOptions, World } from './world.ts';

/** What is kept of a run while it goes on. */
export interface Recorder {
  readonly world: World;
  readonly options: DriveOptions;
  readonly journey: Journey;
  readonly meter: WayMeter;
  readonly clearances: Clearances;
  readonly hash: StateHash;
  readonly samples: Trace['samples'];
  readonly events: RunEvent[];
  /** Index of each reading's event. */
  readonly readings: number[];
  /** For each gate, on which side of it the axle's middle was a step ago. */
  readonly gateSides: Float64Array;
  /** What the robot was at during the last step. */
  modeBefore: number;
  beforeX: Mm;
  beforeY: Mm;
  overEdge: boolean;
  /** Whether arriving counts yet; the least squared distance to the finish berth's middle since it does. */
  finishCounts: boolean;
  finishSquare: number;
  arrived: boolean;
  ending: Settled | undefined;
  /** The time limit. */
  readonly lastStep: number;
}

interface Settled {
  readonly kind: Ending;
  readonly atStep: number;
}

/** Begins the record of a run whose robot stands in its berth. */
export function startRecord(world: World, options: DriveOptions, journey: Journey, r: RobotState): Recorder {
  const { to } = journey;
  return {
    world,
    options,
    journey,
    meter: newWayMeter(),
    clearances: newClearances(world.sheet),
    hash: newStateHash(),
    samples: { x: [], y: [], cos: [], sin: [], way: [], pace: [] },
    events: [],
    readings: [],
    gateSides: new Float64Array(world.sheet.gates.length),
    modeBefore: r.mode,
    beforeX: r.x,
    beforeY: r.y,
    overEdge: false,
    finishCounts: to ? distance(to.at, r) > to.r : false,
    finishSquare: Number.POSITIVE_INFINITY,
    arrived: false,
    ending: undefined,
    lastStep: stepsOf(options.limit),
  };
}

/** Values are kept to 0.0001 mm and 0.0001 of a unit vector: enough for pictures and margins. */
const tidy = (value: number): number => Math.round(value * 10_000) / 10_000;

export const timeOf = (stepCount: number): number => tidy(stepCount * STEP);

/** Where and when the robot is, for an event. */
export function whereabouts(k: Recorder, r: RobotState) {
  return {
    t: timeOf(r.stepCount),
    x: tidy(r.x),
    y: tidy(r.y),
    way: tidy(k.meter.way),
    pace: PACES[r.pace]!,
  };
}

/**
 * Brings the way up to date by what the robot was at during the last step. While it turns or searches
 * its sensor sweeps over paper, and the way stands still.
 */
export function measureWay(k: Recorder, r: RobotState): void {
  const mode = k.modeBefore;
  const coasting = mode === MODE.stopped && k.ending?.kind === 'parked';
  if (mode !== MODE.follow && mode !== MODE.creep && mode !== MODE.gap && !coasting) return;
  const { barAhead } = k.world.kit.robot;
  measure(k.meter, k.world.layout.lines, k.world.joins, {
    sensor: { x: r.x + barAhead * r.cos, y: r.y + barAhead * r.sin },
    cos: r.cos,
    sin: r.sin,
    following: mode === MODE.follow,
  });
}

/** At every 10th step: a sample for pictures, the clearances, at times the fingerprint. */
export function sample(k: Recorder, r: RobotState): void {
  if (r.stepCount % STEPS_A_SAMPLE !== 0) return;
  if (r.stepCount % STEPS_A_HASH === 0) hashState(k.hash, r);
  measureWay(k, r);
  noteClearances(k.clearances, k.world.sheet, r, k.world.kit.robot);
  const { samples } = k;
  samples.x.push(tidy(r.x));
  samples.y.push(tidy(r.y));
  samples.cos.push(tidy(r.cos));
  samples.sin.push(tidy(r.sin));
  samples.way.push(tidy(k.meter.way));
  samples.pace.push(r.pace);
}

/** How the run will end, and when. Arriving may be overtaken by parking, stopping or leaving the paper. */
export function settle(k: Recorder, kind: Ending, atStep: number): void {
  if (k.ending && k.ending.kind !== 'finished') return;
  k.ending = { kind, atStep };
}

export const stepsOf = (seconds: number): number => Math.round(seconds / STEP);

/** Whether the run is over after this step. */
export function isOver(k: Recorder, r: RobotState): boolean {
  if (r.stepCount >= k.lastStep) {
    settle(k, k.ending?.kind ?? 'time-up', r.stepCount);
    return true;
  }
  return k.ending !== undefined && r.stepCount >= k.ending.atStep;
}

/** The finished record. */
export function closeRecord(k: Recorder, r: RobotState): Trace {
  const ending = k.ending?.kind ?? 'time-up';
  measureWay(k, r);
  noteClearances(k.clearances, k.world.sheet, r, k.world.kit.robot);
  k.events.push({ kind: 'end', ...whereabouts(k, r), ending });
  hashState(k.hash, r);
  return {
    version: 1,
    start: k.options.start,
    probability: probabilityOf(k.events),
    seed: k.options.seed,
    ending,
    samples: k.samples,
    events: k.events,
    keepOut: Object.fromEntries(Object.entries(k.clearances.keepOut).map(([id, least]) => [id, tidy(least)])),
    edge: tidy(k.clearances.edge),
    ...finishOf(k),
    hash: hashText(k.hash),
  };
}

const probabilityOf = (events: readonly RunEvent[]): number =>
  events.reduce(
    (product, event) =>
      event.kind === 'junction' && event.by === 'chance' ? product / event.arms.length : product,
    1,
  );

/** A run that never came to count towards the finish, because it did not leave a shared berth, has none. */
function finishOf(k: Recorder): { finish?: Mm } {
  const { to } = k.journey;
  if (!to || k.finishSquare === Number.POSITIVE_INFINITY) return {};
  return { finish: tidy(Math.sqrt(k.finishSquare) - to.r) };
}

/** Steps that the run goes on after an ending of each sort. */
export const AFTER = {
  finish: stepsOf(RUN_RULES.afterFinish),
  rest: stepsOf(RUN_RULES.atRest),
} as const;
