import { type Kit, PACES } from '../documents/kit.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import type { Ending, RunEvent, Trace } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm, MmPerSecond, Seconds } from '../geometry/units.ts';
import { changeMind, type Mind, newMind, type Waiting } from '../odds/mind.ts';
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
  /** Ways along a line, by its index, at which the search puts marks of this length. */
  readonly places: (line: number, length: Mm) => readonly Mm[];
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

export interface Ride extends Mind {
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
  counts: boolean;
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
  const mind = newMind(kit, MODEL.motorLag + kit.robot.paces[kit.robot.startPace] / (2 * MODEL.paceChange));
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
    // The motors lag, and the pace is approached gently. A ride that grew by spreading would be slow.
    t: mind.t,
    pace: mind.pace,
    pending: mind.pending,
    queue: mind.queue,
    heldUntil: mind.heldUntil,
    arrivedAt: mind.arrivedAt,
    counts: to !== undefined && distance(to.at, from.at) > to.r,
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

export const speedOf = ({ map, pace }: Ride): MmPerSecond => map.kit.robot.paces[PACES[pace]!];

export function advance(ride: Ride, way: Mm, t: Seconds): void {
  const { rail, pace } = ride;
  if (ride.map.sampled) ride.legs.push({ rail, from: ride.way, to: way, begin: ride.t, end: t, pace });
  ride.driven += way - ride.way;
  ride.way = way;
  ride.t = t;
  ride.passes.at(-1)!.to = way;
}

export function act(ride: Ride, { action, read }: Waiting): void {
  if (read !== undefined) ride.events.push({ kind: 'act', ...here(ride), action, read });
  const before = ride.pace;
  changeMind(ride, action);
  if (ride.pace !== before) ride.events.push({ kind: 'pace', ...here(ride), from: PACES[before]! });
  switch (action.kind) {
    case 'wait':
    case 'signal':
      ride.events.push({ kind: action.kind, ...here(ride), until: ride.t + action.time });
      return;
    case 'turn-back':
      ride.events.push({ kind: 'turn-back', ...here(ride) });
      enter(ride, twin(ride.rail.edge.index), ride.rail.edge.length - ride.way, halfTurnTime(ride.map.kit));
      return;
    case 'park':
      ride.ending = 'parked';
      return;
    default:
      return;
  }
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
