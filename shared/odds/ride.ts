import { type Action, PACES, type Way } from '../documents/kit.ts';
import type { Ending } from '../documents/trace.ts';
import type { Mm, MmPerSecond, PaperPoint, Seconds } from '../geometry/units.ts';
import { type Journey, placeOn, type Road } from './roads.ts';

/** An action that waits for its time. */
export interface Waiting {
  readonly due: Seconds;
  readonly action: Action;
  /** Not of a mark: the end of a pace that was for a time only. */
  readonly paceEnds?: boolean;
}

/** A robot on the graph: where it is, how fast, and what it has in mind. Ways are of its axle along its road. */
export interface Ride {
  road: Road;
  way: Mm;
  t: Seconds;
  speed: MmPerSecond;
  /** Index into PACES. */
  pace: number;
  /** The way that a mark chose for the next junction. */
  pending: Way | undefined;
  queue: Waiting[];
  /** Way of the bar from which on it has seen nothing but plain line. */
  plainFrom: Mm;
  /** How far it has come since its last junction. */
  sinceJunction: Mm;
  heldUntil: Seconds;
  /** Whether arriving counts yet: only after it has left a shared berth. */
  counts: boolean;
  arrivedAt: Seconds | undefined;
}

/** What a ride comes to. */
export type Outcome =
  /** It stands on a junction that nothing decides. */
  | { readonly kind: 'fork'; readonly ride: Ride }
  | {
      readonly kind: 'end';
      readonly ending: Ending;
      readonly at: PaperPoint;
      readonly t: Seconds;
      readonly arrived: boolean;
    }
  /** It comes back to where it was, for ever. */
  | { readonly kind: 'endless' };

export const copyOf = (ride: Ride): Ride => ({ ...ride, queue: [...ride.queue] });

/** Times are alike within so much, ways and speeds within a mm: then a ride goes on alike. */
const ALIKE: Seconds = 0.05;

/** All that matters for how a ride goes on, as text. */
export function memoryOf(ride: Ride): string {
  const waiting = ride.queue.map(
    ({ due, action, paceEnds }) =>
      `${Math.round((due - ride.t) / ALIKE)}${paceEnds ? '!' : ''}${JSON.stringify(action)}`,
  );
  const held = Math.max(0, Math.round((ride.heldUntil - ride.t) / ALIKE));
  return `${ride.pace} ${Math.round(ride.speed)} ${ride.pending ?? ''} ${held} ${ride.counts} ${waiting.join()}`;
}

export const placeKey = (ride: Ride): string =>
  `${ride.road.parts[0]!.edge} ${Math.round(ride.way)} ${memoryOf(ride)}`;

const FASTEST = PACES.length - 1;

/** Takes an action that a mark asks for into the queue. */
export function enqueue(ride: Ride, waiting: Waiting): void {
  ride.queue.push(waiting);
  ride.queue.sort((a, b) => a.due - b.due);
}

/** Carries out what changes the robot's mind only: paces, choices and waiting. */
export function changeMind(ride: Ride, action: Action): void {
  switch (action.kind) {
    case 'pace-by':
      changePace(ride, Math.min(Math.max(ride.pace + action.steps, 0), FASTEST));
      return;
    case 'pace-to':
      changePace(ride, PACES.indexOf(action.pace));
      return;
    case 'pace-for': {
      const back = ride.queue.find((waiting) => waiting.paceEnds)?.action;
      const before: Action = back ?? { kind: 'pace-to', pace: PACES[ride.pace]! };
      changePace(ride, PACES.indexOf(action.pace));
      enqueue(ride, { due: ride.t + action.time, action: before, paceEnds: true });
      return;
    }
    case 'choose':
      ride.pending = action.way;
      return;
    case 'wait':
      ride.heldUntil = ride.t + action.time;
      ride.speed = 0;
      return;
    default:
      return;
  }
}

function changePace(ride: Ride, pace: number): void {
  ride.queue = ride.queue.filter((waiting) => !waiting.paceEnds);
  ride.pace = pace;
}

/** The end of a ride where it is; one that has arrived ends in the berth. */
export const endAt = (
  journey: Journey,
  ride: Ride,
  ending: 'parked' | 'stopped' | 'off-paper' | 'finished',
): Outcome => ({
  kind: 'end',
  ending,
  at: ending === 'finished' && journey.to ? journey.to.at : placeOn(journey.track, ride.road, ride.way),
  t: ride.arrivedAt ?? ride.t,
  arrived: ride.arrivedAt !== undefined,
});
