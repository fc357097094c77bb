import { type Action, type Kit, PACES, type Way } from '../documents/kit.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import type { Ending, RunEvent, Trace } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm, MmPerSecond, Seconds } from '../geometry/units.ts';
import { halfTurnTime } from '../odds/motion.ts';
import { MODEL } from '../run/model.ts';
import type { StartBerth } from '../run/world.ts';
import type { Start } from '../track/start.ts';
import { twin } from '../track/track.ts';
import type { PlacedMark } from './rail-marks.ts';
import { pointOn, type Rail } from './rails.ts';
import type { Leg } from './samples.ts';

/** All that a ride can meet beside the marks. */
export interface RailMap {
  readonly rails: readonly Rail[];
  readonly sheet: Sheet;
  readonly kit: Kit;
  readonly starts: Readonly<Partial<Record<StartBerth, Start>>>;
  readonly limit: Seconds;
  /** Whether goals look at moments, so that runs need samples. */
  readonly sampled: boolean;
  /** Whether a ride may end where it goes round for ever: only where length and time don't count. */
  readonly cutsLoops: boolean;
}

/** One rail as one ride passed over it: ways of the bar's first plain line, and of the axle. */
export interface Pass {
  readonly rail: number;
  readonly plain: Mm;
  readonly from: Mm;
  to: Mm;
}

export interface RailRun {
  /** What goals can be measured on. Ways are of the axle; clearances are taken for granted. */
  readonly trace: Trace;
  readonly passes: readonly Pass[];
  /** Marks in the order in which they were read, each with the pass during which that was. */
  readonly readings: readonly { readonly mark: number; readonly pass: number; readonly way: Mm }[];
  readonly end: Mm;
}

interface Waiting {
  readonly due: Seconds;
  readonly action: Action;
  readonly read: number;
}

export interface Ride {
  readonly map: RailMap;
  readonly marks: readonly PlacedMark[];
  readonly to: Berth | undefined;
  readonly start: StartBerth;
  readonly choices: readonly number[];
  readonly events: RunEvent[];
  readonly passes: Pass[];
  readonly readings: { mark: number; pass: number; way: Mm }[];
  readonly legs: Leg[];
  /** How often it has begun a rail in one mind. */
  readonly rounds: Map<number, number>;
  rail: Rail;
  way: Mm;
  plain: Mm;
  driven: Mm;
  t: Seconds;
  pace: number;
  pending: Way | undefined;
  queue: Waiting[];
  heldUntil: Seconds;
  counts: boolean;
  arrivedAt: Seconds | undefined;
  made: number;
  probability: number;
  ending: Ending | undefined;
}

export function launched(
  map: RailMap,
  marks: readonly PlacedMark[],
  start: StartBerth,
  choices: readonly number[],
): Ride {
  const { sheet, kit, rails } = map;
  const from = start === 'start' ? sheet.start : sheet.finish!;
  const aim = start === 'start' ? sheet.finish : sheet.start;
  const to = aim?.startOnly ? undefined : aim;
  const found = map.starts[start];
  const on = found?.kind === 'on' ? found : undefined;
  const ride: Ride = {
    map,
    marks,
    to,
    start,
    choices,
    events: [],
    passes: [],
    readings: [],
    legs: [],
    rounds: new Map(),
    rail: rails[on?.edge ?? 0]!,
    way: on?.axle ?? 0,
    plain: on?.bar ?? 0,
    driven: 0,
    // The motors lag, and the pace is approached gently.
    t: MODEL.motorLag + kit.robot.paces[kit.robot.startPace] / (2 * MODEL.paceChange),
    pace: PACES.indexOf(kit.robot.startPace),
    pending: undefined,
    queue: [],
    heldUntil: 0,
    counts: to !== undefined && distance(to.at, from.at) > to.r,
    arrivedAt: undefined,
    made: 0,
    probability: 1,
    ending: on ? undefined : 'never-started',
  };
  if (on) beginPass(ride);
  return ride;
}

function beginPass(ride: Ride): void {
  const { rail, plain, way } = ride;
  ride.passes.push({ rail: rail.edge.index, plain, from: way, to: way });
}

export function here(ride: Ride) {
  const { x, y } = ride.rail ? pointOn(ride.rail, ride.way) : ride.map.sheet.start.at;
  return { t: ride.t, x, y, way: ride.driven, pace: PACES[ride.pace]! };
}

export function enqueue(ride: Ride, waiting: Waiting): void {
  ride.queue.push(waiting);
  ride.queue.sort((a, b) => a.due - b.due);
}

export const speedOf = ({ map, pace }: Ride): MmPerSecond => map.kit.robot.paces[PACES[pace]!];

export function advance(ride: Ride, way: Mm, t: Seconds): void {
  const { rail, pace } = ride;
  if (ride.map.sampled) ride.legs.push({ rail, from: ride.way, to: way, begin: ride.t, end: t, pace });
  ride.driven += way - ride.way;
  ride.way = way;
  ride.t = t;
  ride.passes.at(-1)!.to = way;
}

/** Not a reading: the end of a pace that was for a time only. */
const PACE_ENDS = -1;

export function act(ride: Ride, { action, read }: Waiting): void {
  if (read !== PACE_ENDS) ride.events.push({ kind: 'act', ...here(ride), action, read });
  switch (action.kind) {
    case 'pace-by':
      changePace(ride, Math.min(Math.max(ride.pace + action.steps, 0), PACES.length - 1));
      return;
    case 'pace-to':
      changePace(ride, PACES.indexOf(action.pace));
      return;
    case 'pace-for': {
      const back = ride.queue.find((waiting) => waiting.read === PACE_ENDS)?.action;
      const before: Action = back ?? { kind: 'pace-to', pace: PACES[ride.pace]! };
      changePace(ride, PACES.indexOf(action.pace));
      enqueue(ride, { due: ride.t + action.time, action: before, read: PACE_ENDS });
      return;
    }
    case 'choose':
      ride.pending = action.way;
      return;
    case 'wait':
      ride.heldUntil = ride.t + action.time;
      ride.events.push({ kind: 'wait', ...here(ride), until: ride.heldUntil });
      return;
    case 'signal':
      ride.events.push({ kind: 'signal', ...here(ride), until: ride.t + action.time });
      return;
    case 'turn-back':
      ride.events.push({ kind: 'turn-back', ...here(ride) });
      enter(ride, twin(ride.rail.edge.index), ride.rail.edge.length - ride.way, halfTurnTime(ride.map.kit));
      return;
    case 'park':
      ride.ending = 'parked';
      return;
    case 'nothing':
      return;
  }
}

function changePace(ride: Ride, pace: number): void {
  ride.queue = ride.queue.filter((waiting) => waiting.read !== PACE_ENDS);
  if (pace === ride.pace) return;
  const from = PACES[ride.pace]!;
  ride.pace = pace;
  ride.events.push({ kind: 'pace', ...here(ride), from });
}

/** Begins another rail, after a turn on the spot; `plain` where the bar has seen plain line for longer. */
export function enter(ride: Ride, rail: number, way: Mm, turn: Seconds, plain?: Mm): void {
  const { map } = ride;
  if (map.sampled && turn > 0) {
    const { rail: old, way: at, pace } = ride;
    ride.legs.push({ rail: old, from: at, to: at, begin: ride.t, end: ride.t + turn, pace });
  }
  ride.rail = map.rails[rail]!;
  ride.way = way;
  ride.plain = plain ?? way + map.kit.robot.barAhead;
  ride.t += turn;
  beginPass(ride);
}
