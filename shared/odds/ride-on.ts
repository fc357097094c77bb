import { type Action, actionOf, type Kit, PACES } from '../documents/kit.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm, Seconds } from '../geometry/units.ts';
import { changeMind, enqueue, isOver, nextMoment, takeDue } from './mind.ts';
import { after, halfWidth, rollOut, timeFor } from './motion.ts';
import { passNode, turnBack } from './pass-node.ts';
import { endAt, type Outcome, placeKey, type Ride } from './ride.ts';
import type { Journey } from './roads.ts';
import { stopsOn } from './stops.ts';

/** More stretches than this without a fork or an end, and the ride will never end. */
const MOST_STRETCHES = 2000;

/** Rides on to the next junction that nothing decides, to an end, or until it goes round for ever. Changes `ride`. */
export function rideOn(journey: Journey, ride: Ride): Outcome {
  const seen = new Set<string>();
  for (let stretch = 0; stretch < MOST_STRETCHES; stretch++) {
    const key = placeKey(ride);
    if (seen.has(key)) return { kind: 'endless' };
    seen.add(key);
    const outcome = rideRoad(journey, ride);
    if (outcome) return outcome;
  }
  return { kind: 'endless' };
}

/** Rides along the present road. Undefined where the ride goes on, on another road. */
function rideRoad(journey: Journey, ride: Ride): Outcome | undefined {
  for (const stop of stopsOn(journey, ride)) {
    if (stop.way < ride.way) continue;
    if (stop.way > furthest(ride)) break;
    const outcome = rideTo(journey, ride, stop.way);
    if (outcome === 'turned') return undefined;
    if (outcome) return outcome;
    if (stop.kind === 'reading') understand(journey.kit, ride, stop.word!);
    else if (stop.kind === 'enter') ride.arrivedAt ??= ride.t;
    else if (stop.kind === 'away') ride.counts = true;
    else if (stop.kind === 'off') return endAt(journey, ride, 'off-paper');
  }
  return passNode(journey, ride);
}

/** At a loose end the robot rolls on a little while it begins to search. */
const furthest = ({ road, speed }: Ride): Mm =>
  road.end === 'end' ? road.reach + rollOut(speed) : road.length;

function understand(kit: Kit, ride: Ride, word: string): void {
  const action = actionOf(kit, word);
  if (action) enqueue(ride, { due: ride.t + kit.robot.actsAfter, action });
}

/** Rides to a way of the present road, acting whenever something is due. */
function rideTo(journey: Journey, ride: Ride, way: Mm): Outcome | 'turned' | undefined {
  const { kit } = journey;
  for (;;) {
    if (isOver(ride)) return endAt(journey, ride, 'finished');
    const due = nextMoment(ride, (action) => mayBegin(journey, ride, action));
    const target = kit.robot.paces[PACES[ride.pace]!];
    const share = ride.t < ride.heldUntil ? 0 : shareAt(journey, ride);
    const left = Math.max(0, way - ride.way);
    const needed =
      share === 0 ? Number.POSITIVE_INFINITY : timeFor({ speed: ride.speed, target }, left / share);
    if (ride.t + needed <= due) {
      ride.speed = after({ speed: ride.speed, target }, needed).speed;
      moveOn(ride, left, needed);
      return undefined;
    }
    const time = Math.max(0, due - ride.t);
    if (share > 0) {
      const moved = after({ speed: ride.speed, target }, time);
      ride.speed = moved.speed;
      moveOn(ride, Math.min(moved.way * share, left), time);
    } else {
      ride.t = due;
    }
    const acted = actDue(journey, ride);
    if (acted) return acted;
  }
}

function moveOn(ride: Ride, way: Mm, time: Seconds): void {
  ride.way += way;
  ride.sinceJunction += way;
  ride.t += time;
}

function shareAt({ kit }: Journey, { road, way }: Ride): number {
  const middle = way + kit.robot.barAhead / 2 + TOLERANCE.sameWay;
  const bend = road.bends.find(({ to }) => middle < to);
  return bend?.share ?? 1;
}

/** A half turn waits while the robot creeps over a corner or junction. */
function mayBegin({ kit }: Journey, { road, way }: Ride, action: Action): boolean {
  if (action.kind !== 'turn-back' || (road.end !== 'corner' && road.end !== 'junction')) return true;
  return way + kit.robot.barAhead <= road.length - halfWidth(kit);
}

/** Begins the actions whose time has come. */
function actDue(journey: Journey, ride: Ride): Outcome | 'turned' | undefined {
  const next = () => takeDue(ride, (action) => mayBegin(journey, ride, action))?.action;
  for (let action = next(); action; action = next()) {
    if (action.kind === 'park') return endAt(journey, ride, 'parked');
    if (action.kind === 'turn-back') {
      turnBack(journey, ride);
      return 'turned';
    }
    if (action.kind === 'wait') ride.speed = 0;
    changeMind(ride, action);
  }
  return undefined;
}
