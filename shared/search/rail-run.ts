import { actionOf, PACES, type Way } from '../documents/kit.ts';
import type { RunEventOf, Trace } from '../documents/trace.ts';
import type { Mm } from '../geometry/units.ts';
import { enqueue, isOver, nextMoment, takeDue, wayTaken } from '../odds/mind.ts';
import { endTurnTime } from '../odds/motion.ts';
import { MODEL, RUN_RULES } from '../run/model.ts';
import type { StartBerth } from '../run/world.ts';
import { twin } from '../track/track.ts';
import { isRead, metOn, type PlacedMark } from './rail-marks.ts';
import { effortAt, wayWith } from './rails.ts';
import {
  act,
  advance,
  enter,
  here,
  launched,
  type RailMap,
  type RailRun,
  type Ride,
  speedOf,
} from './ride.ts';
import { samplesOf } from './samples.ts';

/** A ride out of a berth that it is to come back to counts as away after so much. */
const AWAY: Mm = 60;

/** One ride over the rails with marks, from a berth; past the end of `choices` it takes the first arm. */
export function railRun(
  map: RailMap,
  marks: readonly PlacedMark[],
  start: StartBerth,
  choices: readonly number[],
): RailRun {
  const ride = launched(map, marks, start, choices);
  while (ride.ending === undefined) {
    if (map.cutsLoops && goesRound(ride)) ride.ending = 'time-up';
    else rideRail(ride);
  }
  const { events, passes, readings, probability } = ride;
  const ending = ride.ending;
  events.push({ kind: 'end', ...here(ride), ending });
  const arrived = ride.arrivedAt !== undefined;
  const trace: Trace = {
    version: 1,
    start,
    probability,
    seed: 0,
    ending,
    samples: samplesOf(ride.legs),
    events,
    keepOut: {},
    edge: ending === 'off-paper' ? -1 : Number.POSITIVE_INFINITY,
    ...(ride.to ? { finish: arrived ? -ride.to.r : FAR } : {}),
    hash: '',
  };
  return { trace, passes, readings, end: ride.driven };
}

/** How often a ride may begin the same rail in the same mind before it counts as endless. */
const ROUNDS = 2;

const NOTHING_IN_MIND = -1;
const WAYS: readonly Way[] = ['left', 'straight', 'right'];

function goesRound(ride: Ride): boolean {
  const busy = ride.queue.length > 0 || ride.heldUntil > ride.t || ride.arrivedAt !== undefined;
  if (busy || ride.way !== 0) return false;
  const mind = ride.pending ? WAYS.indexOf(ride.pending) : NOTHING_IN_MIND;
  const open = Math.max(0, ride.choices.length - ride.made);
  // Digits of one number: the rail, the choices still settled, the pace and the waiting choice.
  const key = ((ride.rail.edge.index * 1000 + open) * PACES.length + ride.pace) * 4 + mind + 1;
  const times = (ride.rounds.get(key) ?? 0) + 1;
  ride.rounds.set(key, times);
  return times > ROUNDS;
}

/** mm, from a finish that was not reached. */
const FAR: Mm = 1000;
interface Stop {
  readonly way: Mm;
  readonly kind: 'read' | 'gate' | 'finish' | 'off';
  /** Of a reading: the mark; of a gate: which. */
  readonly index: number;
  readonly name: string;
}

function stopsOn(ride: Ride): Stop[] {
  const { rail, map, to, way } = ride;
  const { barAhead } = map.kit.robot;
  const stops: Stop[] = [];
  let { plain } = ride;
  const met = metOn(rail, ride.marks);
  met.forEach((mark, i) => {
    if (mark.to <= plain) return;
    const at = mark.to + MODEL.blackAfter - barAhead;
    const next = met[i + 1]?.from ?? Number.POSITIVE_INFINITY;
    if (at >= way && isRead(rail, mark.from, mark.to, plain, next, map.kit)) {
      stops.push({ way: at, kind: 'read', index: mark.index, name: mark.word });
    }
    plain = mark.to;
  });
  for (const { way: at, gate } of rail.gates) {
    if (at > way) stops.push({ way: at, kind: 'gate', index: 0, name: gate });
  }
  if (to && ride.arrivedAt === undefined) {
    for (const { from, to: until } of rail.berths[ride.start === 'start' ? 'finish' : 'start']) {
      if (until >= way) stops.push({ way: Math.max(from, way), kind: 'finish', index: 0, name: '' });
    }
  }
  if (rail.off !== undefined && rail.off >= way) {
    stops.push({ way: rail.off, kind: 'off', index: 0, name: '' });
  }
  return stops.length > 1 ? stops.sort((a, b) => a.way - b.way) : stops;
}

function rideRail(ride: Ride): void {
  const { rail } = ride;
  for (const stop of stopsOn(ride)) {
    if (stop.way > rail.reach) break;
    rideTo(ride, stop.way);
    if (ride.rail !== rail || ride.ending !== undefined) return;
    pass(ride, stop);
    if (ride.ending !== undefined) return;
  }
  rideTo(ride, rail.reach);
  if (ride.rail === rail && ride.ending === undefined) leaveRail(ride);
}

function pass(ride: Ride, stop: Stop): void {
  const { map, events } = ride;
  switch (stop.kind) {
    case 'gate':
      events.push({ kind: 'gate', ...here(ride), gate: stop.name });
      return;
    case 'finish':
      if (!ride.counts && ride.driven < AWAY) return;
      if (ride.arrivedAt !== undefined) return;
      ride.arrivedAt = ride.t;
      events.push({ kind: 'finish', ...here(ride) });
      return;
    case 'off':
      ride.ending = 'off-paper';
      return;
    case 'read': {
      const action = actionOf(map.kit, stop.name);
      const read = events.length;
      const mark = { mark: String(stop.index), along: true, already: false };
      events.push({ kind: 'read', ...here(ride), word: stop.name, ...mark, ...(action ? { action } : {}) });
      ride.readings.push({ mark: stop.index, pass: ride.passes.length - 1, way: stop.way });
      if (action) enqueue(ride, { due: ride.t + map.kit.robot.actsAfter, action, read });
      return;
    }
  }
}

/** Rides to a way of the present rail; whatever falls due on the way happens there. */
function rideTo(ride: Ride, way: Mm): void {
  const { rail, map } = ride;
  for (;;) {
    const held = ride.heldUntil > ride.t;
    const left = Math.max(0, effortAt(rail, way) - effortAt(rail, ride.way));
    const arrival = held ? Number.POSITIVE_INFINITY : ride.t + left / speedOf(ride);
    const due = Math.max(ride.t, Math.min(map.limit, nextMoment(ride)));
    if (arrival <= due) {
      advance(ride, Math.max(way, ride.way), arrival);
      return;
    }
    const reached = held
      ? ride.way
      : wayWith(rail, effortAt(rail, ride.way) + (due - ride.t) * speedOf(ride));
    advance(ride, Math.max(reached, ride.way), due);
    if (ride.t >= map.limit) ride.ending = 'time-up';
    else if (isOver(ride)) ride.ending = 'finished';
    else actDue(ride);
    if (ride.ending !== undefined || ride.rail !== rail) return;
  }
}

function actDue(ride: Ride): void {
  const { rail } = ride;
  for (let due = takeDue(ride); due; due = takeDue(ride)) {
    act(ride, due);
    if (ride.ending !== undefined || ride.rail !== rail) return;
  }
}

function leaveRail(ride: Ride): void {
  const { rail, map, plain } = ride;
  const { exits, edge } = rail;
  if (exits.length === 0) {
    if (map.kit.robot.looseEnd === 'stop') ride.ending = 'stopped';
    else enter(ride, twin(edge.index), edge.length - rail.reach, endTurnTime(map.kit));
    return;
  }
  if (rail.end !== 'junction') {
    const [exit] = exits;
    const last = metOn(rail, ride.marks).at(-1)?.to ?? plain;
    const kept = rail.end === 'joint' ? Math.max(plain, last) - edge.length : undefined;
    enter(ride, exit!.rail, 0, exit!.turn, kept);
    return;
  }
  passJunction(ride);
}

function passJunction(ride: Ride): void {
  const { way: took, by } = armTaken(ride);
  const { exits, arms } = ride.rail;
  const exit = exits.find((e) => e.way === took)!;
  ride.events.push({ kind: 'junction', ...here(ride), took, by, arms });
  enter(ride, exit.rail, 0, exit.turn);
}

interface Taken {
  readonly way: Way;
  readonly by: RunEventOf<'junction'>['by'];
}

function armTaken(ride: Ride): Taken {
  const { arms } = ride.rail;
  const taken = wayTaken(ride, ride.map.kit, arms);
  if (taken) return taken;
  const settled = ride.choices[ride.made++] ?? 0;
  ride.probability /= arms.length;
  return { way: arms[settled] ?? arms[0]!, by: 'chance' };
}

export interface RailRuns {
  readonly runs: readonly RailRun[];
  readonly tooMany: boolean;
}

/**
 * The runs of a design on the rails, as the undisturbed robot forks: from each start, arms from the left.
 * No further than to the first one that `passes` refuses.
 */
export function railRuns(
  map: RailMap,
  marks: readonly PlacedMark[],
  starts: readonly StartBerth[],
  passes: (run: RailRun) => boolean = () => true,
): RailRuns {
  const runs: RailRun[] = [];
  for (const start of starts) {
    const open: number[][] = [[]];
    let count = 0;
    for (let choices = open.pop(); choices; choices = open.pop()) {
      if (count === RUN_RULES.mostIdealRuns) return { runs, tooMany: true };
      const run = railRun(map, marks, start, choices);
      runs.push(run);
      if (!passes(run)) return { runs, tooMany: false };
      count++;
      for (const more of furtherChoices(run.trace, choices)) open.push(more);
    }
  }
  return { runs, tooMany: false };
}

/** The choices not yet taken at the junctions that a run left open, the first to follow last. */
function furtherChoices(trace: Trace, choices: readonly number[]): number[][] {
  const arms = trace.events.flatMap((event) =>
    event.kind === 'junction' && event.by === 'chance' ? [event.arms.length] : [],
  );
  const further: number[][] = [];
  for (let i = choices.length; i < arms.length; i++) {
    const before = [...choices, ...new Array<number>(i - choices.length).fill(0)];
    for (let arm = arms[i]! - 1; arm > 0; arm--) further.push([...before, arm]);
  }
  return further;
}
