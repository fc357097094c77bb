import { PACES, type Way } from '../documents/kit.ts';
import type { Mm, Seconds } from '../geometry/units.ts';
import { MODEL } from '../run/model.ts';
import { type Exit, exitFor, exitsOf } from '../track/arms.ts';
import { twin } from '../track/track.ts';
import { wayTaken } from './mind.ts';
import { endTurnTime, halfTurnTime, halfWidth, rollOut, SEARCH_TIME, type Turn, turnBy } from './motion.ts';
import { endAt, type Outcome, type Ride } from './ride.ts';
import { edgeUnder, followedAt, type Journey, looksLikeJunction, turnAt } from './roads.ts';

/** A half turn where the robot stands. */
export function turnBack(journey: Journey, ride: Ride): void {
  const { track, kit } = journey;
  const under = edgeUnder(track, ride.road, ride.way);
  const { length } = track.edges[under.edge]!;
  enter(journey, ride, twin(under.edge), length - under.way, halfTurnTime(kit));
}

/** Begins another road, after a turn on the spot of so many seconds. */
function enter(journey: Journey, ride: Ride, edge: number, way: Mm, spin: Seconds): void {
  const { kit } = journey;
  ride.road = journey.from(edge);
  ride.way = way;
  ride.plainFrom = way + kit.robot.barAhead;
  ride.t += spin;
  if (spin > 0) ride.speed = MODEL.afterSpin * kit.robot.paces[PACES[ride.pace]!];
}

/** Turns from the end of a road into another; the ride was counted to the very point where they meet. */
function turnInto(journey: Journey, ride: Ride, edge: number, turn: Turn): void {
  const saved = turn.past / Math.max(ride.speed, 1);
  enter(journey, ride, edge, Math.max(turn.ahead, 0), Math.max(turn.time + saved, 0));
}

/** What happens at the end of a road. */
export function passNode(journey: Journey, ride: Ride): Outcome | undefined {
  if (ride.arrivedAt !== undefined) return endAt(journey, ride, 'finished');
  const { road } = ride;
  if (road.end === 'round') return goRound(ride);
  if (road.end === 'end') return looseEnd(journey, ride);
  if (road.end === 'corner') return turnCorner(journey, ride);
  return passJunction(journey, ride);
}

function goRound(ride: Ride): undefined {
  ride.way -= ride.road.length;
  ride.plainFrom -= ride.road.length;
  return undefined;
}

function looseEnd(journey: Journey, ride: Ride): Outcome | undefined {
  const { kit } = journey;
  ride.way = Math.max(ride.way, ride.road.reach + rollOut(ride.speed));
  if (kit.robot.looseEnd === 'stop') {
    ride.t += SEARCH_TIME;
    return endAt(journey, ride, 'stopped');
  }
  const last = ride.road.parts.at(-1)!.edge;
  enter(journey, ride, twin(last), ride.road.length - ride.way, endTurnTime(kit));
  return undefined;
}

function turnCorner(journey: Journey, ride: Ride): undefined {
  const { track, kit } = journey;
  const node = track.nodes[ride.road.node]!;
  const last = ride.road.parts.at(-1)!.edge;
  const on = node.arms.find((arm) => arm.edge !== twin(last))!;
  if (turnAt(node) <= followedAt(ride.speed, kit)) return goOver(journey, ride, on.edge);
  if (looksLikeJunction(node, kit)) ride.pending = undefined;
  turnInto(journey, ride, on.edge, turnBy(turnAt(node), kit, ride.speed));
  return undefined;
}

/** The ways that a robot sees at the end of its road, from left to right. */
export function waysAhead(journey: Journey, ride: Ride): Way[] {
  const exits = exitsOf(journey.track, ride.road.parts.at(-1)!.edge);
  return (['left', 'straight', 'right'] as const).filter((way) => exitFor(exits, way) !== undefined);
}

function passJunction(journey: Journey, ride: Ride): Outcome | undefined {
  const { kit } = journey;
  const ways = waysAhead(journey, ride);
  const seenFor = ride.sinceJunction - kit.robot.barAhead + halfWidth(kit);
  // A junction too soon after the last one goes unnoticed.
  if (seenFor < MODEL.pause && ways.includes('straight')) {
    return goOver(journey, ride, exitOf(journey, ride, 'straight').edge);
  }
  const taken = wayTaken(ride, kit, ways);
  return taken ? take(journey, ride, taken.way) : { kind: 'fork', ride };
}

const exitOf = ({ track }: Journey, { road }: Ride, way: Way): Exit =>
  exitFor(exitsOf(track, road.parts.at(-1)!.edge), way)!;

/** Follows the line from the end of a road into another one, as if there were nothing between them. */
function goOver(journey: Journey, ride: Ride, edge: number): undefined {
  const { length, marks } = ride.road;
  ride.road = journey.from(edge);
  ride.way -= length;
  ride.plainFrom = Math.max(ride.plainFrom, ...marks.map(({ to }) => to)) - length;
  return undefined;
}

/** Leaves a junction by one of the ways ahead. */
export function take(journey: Journey, ride: Ride, way: Way): undefined {
  const exit = exitOf(journey, ride, way);
  if (way === 'straight') enter(journey, ride, exit.edge, 0, 0);
  else turnInto(journey, ride, exit.edge, turnBy(Math.abs(exit.turn), journey.kit, ride.speed));
  ride.sinceJunction = 0;
  return undefined;
}
